using System.Globalization;
using Orlop.Boat.Format;
using Orlop.Boat.Things;
using Orlop.Presentation.Quantities;

namespace Orlop.Presentation.Views;

/// <summary>A record that is being filled in: the fields that must be given and those that are asked for at once, as typed so far.</summary>
public sealed class RecordDraft
{
    // May stay empty, but much rests on them.
    private static readonly string[] FirstAsked = ["capacityAh", "internalResistanceOhm", "isMinusBonded", "ambientC", "material"];

    private readonly Dictionary<FieldSchema, string> _texts = [];
    private readonly Dictionary<FieldSchema, string> _refusals = [];
    private readonly Dictionary<FieldSchema, IReadOnlyList<string>> _chosen = [];

    public RecordDraft(RecordSchema schema)
    {
        Schema = schema;
        Fields = [.. schema.Fields.Where(field => (field.IsRequired && field.Type != FieldType.List) || FirstAsked.Contains(field.Name) || ChoiceLists.Is(field) || IsOneOf(field))];
        Inner = Fields.Where(field => field.Type is FieldType.Place or FieldType.Box or FieldType.Record)
            .ToDictionary(field => field, field => new RecordDraft(field.Record!));
    }

    public RecordSchema Schema { get; }

    /// <summary>The fields that are asked for.</summary>
    public IReadOnlyList<FieldSchema> Fields { get; }

    /// <summary>Drafts of the records that some of the fields hold.</summary>
    public IReadOnlyDictionary<FieldSchema, RecordDraft> Inner { get; }

    /// <summary>The field may stay empty where another of its kind is given, but one of them must be: a stretch of a run follows a way or lies in a space.</summary>
    public bool IsOneOf(FieldSchema field)
    {
        ArgumentNullException.ThrowIfNull(field);
        return Schema.Type == typeof(RunLeg) && field.Type == FieldType.Reference;
    }

    /// <summary>What was typed into a field.</summary>
    public string this[FieldSchema field]
    {
        get => _texts.GetValueOrDefault(field, "");
        set => _texts[field] = value;
    }

    /// <summary>The field as it is read: the value of a limit in the unit of the limit that is chosen.</summary>
    public FieldSchema AsRead(FieldSchema field) => OwnLimits.In(field, this[OwnLimits.NameField]);

    /// <summary>Something was typed or chosen.</summary>
    public bool IsTyped => _texts.Values.Any(text => !string.IsNullOrWhiteSpace(text)) || Inner.Values.Any(inner => inner.IsTyped) || _chosen.Values.Any(chosen => chosen.Count > 0);

    /// <summary>Every field that is asked for has something in it: it may be kept without being asked.</summary>
    public bool IsFilled => Fields.All(asked => Inner.TryGetValue(asked, out RecordDraft? inner) ? inner.IsFilled : !string.IsNullOrWhiteSpace(this[asked]));

    /// <summary>The fields that the last <see cref="Make"/> refused, in the order of the form, those of inner records by themselves.</summary>
    /// <param name="id">Start of the ids of its boxes on the page.</param>
    public IEnumerable<RefusedField> Refused(string id) => Fields.SelectMany(field => Inner.TryGetValue(field, out RecordDraft? inner)
        ? inner.Refused($"{id}-{field.Name}")
        : RefusedField.If($"{id}-{field.Name}", FieldLabels.Of(field), Refusal(field)));

    /// <summary>What was ticked in a list of choices.</summary>
    public IReadOnlyList<string> Chosen(FieldSchema field) => _chosen.GetValueOrDefault(field, []);

    /// <summary>Puts what a record says into every field that is asked for, to be corrected; what it leaves out stays as typed.</summary>
    public void Begin(object record, DisplayUnits units, CultureInfo culture)
    {
        foreach (FieldSchema field in Fields.Where(field => !ChoiceLists.Is(field)))
        {
            if (field.Get(record) is not { } value)
            {
                continue;
            }

            if (Inner.TryGetValue(field, out RecordDraft? inner))
            {
                inner.Begin(value, units, culture);
            }
            else
            {
                this[field] = FieldText.Edit(OwnLimits.In(field, record), value, units, culture);
            }
        }
    }

    /// <summary>Ticks these in a list of choices and no others; never refused.</summary>
    public string? Choose(FieldSchema field, IReadOnlyList<string> ids)
    {
        _chosen[field] = ids;
        return null;
    }

    /// <summary>Why a field was refused by the last <see cref="Make"/>, or null.</summary>
    public string? Refusal(FieldSchema field) => _refusals.GetValueOrDefault(field);

    /// <summary>The record, or null with <see cref="Refusal"/> set for each field that cannot be used.</summary>
    public object? Make(DisplayUnits units, CultureInfo culture)
    {
        _refusals.Clear();
        Dictionary<FieldSchema, object?> values = [];
        foreach (FieldSchema field in Fields.Where(field => !ChoiceLists.Is(field)))
        {
            if (Inner.TryGetValue(field, out RecordDraft? inner))
            {
                values[field] = inner.Make(units, culture);
                if (values[field] is null)
                {
                    _refusals[field] = $"{FieldLabels.Of(field)} is not complete.";
                }

                continue;
            }

            if (OwnLimits.IsValue(field) && this[OwnLimits.NameField].Length == 0)
            {
                _refusals[field] = "Choose the limit first: its unit goes by it.";
                continue;
            }

            FieldReading read = FieldText.Read(AsRead(field), this[field], units, culture);
            values[field] = read.Value;
            if (!read.IsGood)
            {
                _refusals[field] = read.Refusal!;
            }
        }

        if (Fields.Where(IsOneOf).ToList() is { Count: > 0 } either && either.Count(field => values.GetValueOrDefault(field) is not null) != 1)
        {
            either.ForEach(field => _refusals[field] = "Choose the way it follows, or the space it lies in where it follows none: one of the two.");
        }

        return _refusals.Count == 0 ? _chosen.Aggregate(Schema.Make(values), (made, chosen) => ChoiceLists.With(chosen.Key, made, chosen.Value)) : null;
    }
}
