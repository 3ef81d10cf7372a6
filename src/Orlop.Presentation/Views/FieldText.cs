using System.Collections;
using System.Globalization;
using Orlop.Boat;
using Orlop.Boat.Format;
using Orlop.Boat.Things;
using Orlop.Boat.Values;
using Orlop.Presentation.Quantities;
using Orlop.Presentation.Words;

namespace Orlop.Presentation.Views;

/// <summary>The values of a thing's fields as text that people read and type.</summary>
public static class FieldText
{
    /// <summary>The value as it stands in a form's box; empty when there is none. A guess ends in "?", as it may be typed.</summary>
    public static string Edit(FieldSchema field, object? value, DisplayUnits units, CultureInfo culture) => (field.Type, value) switch
    {
        (_, null) => "",
        (FieldType.Quantity, Quantity quantity) => WithMark(quantity, QuantityText.InField(quantity, Suffix(field), units, culture), culture),
        (FieldType.Number, double number) => QuantityText.InField(number, Suffix(field), units, culture),
        (FieldType.Count, int count) => count.ToString(CultureInfo.InvariantCulture),
        (FieldType.Flag, bool flag) => flag ? "yes" : "no",
        (FieldType.Choice, { } choice) => ChoiceId(choice),
        (FieldType.Date, DateOnly day) => day.ToString("yyyy-MM-dd", CultureInfo.InvariantCulture),
        _ => value.ToString() ?? "",
    };

    /// <summary>The value in one line, for a list, a comparison or paper; a dash when there is none.</summary>
    /// <param name="boat">To say what is referred to by its name; without her, by its id.</param>
    public static string Show(FieldSchema field, object? value, DisplayUnits units, CultureInfo culture, BoatModel? boat = null) => (field.Type, value) switch
    {
        (_, null) => "—",
        (FieldType.Quantity, Quantity quantity) => Marked(quantity, QuantityText.ShownInField(quantity, Suffix(field), units, culture)),
        (FieldType.Number, double number) => QuantityText.ShownInField(number, Suffix(field), units, culture),
        (FieldType.Choice, { } choice) => FieldWords.OfChoice(ChoiceId(choice)),
        (FieldType.Reference, string id) => boat?.Find(id)?.Title ?? id,
        (FieldType.Terminal, Terminal terminal) => boat?.Find(terminal.Part) is { } part ? terminal.Name == TerminalNames.Bar ? part.Title : $"{part.Title}, {terminal.Name}" : terminal.ToString(),
        (FieldType.Text, string text) => FieldWords.OfKnown(field, text),
        (FieldType.List, IEnumerable items) => List(field, items, units, culture, boat),
        (FieldType.Place, Place place) => InWords(place, units, culture),
        (FieldType.Box or FieldType.Record, { } record) => Record(field.Record!, record, units, culture, boat),
        _ => Edit(field, value, units, culture),
    };

    /// <summary>Reads what was typed into a field of one value. Empty text empties a field that may be empty.</summary>
    public static FieldReading Read(FieldSchema field, string? typed, DisplayUnits units, CultureInfo culture)
    {
        FieldReading read = ReadText(field, typed?.Trim() ?? "", units, culture);
        return read.IsGood ? read : read with { Refusal = $"{FieldLabels.Of(field)}: {read.Refusal}" };
    }

    private static FieldReading ReadText(FieldSchema field, string text, DisplayUnits units, CultureInfo culture)
    {
        if (text.Length == 0)
        {
            return IsName(field) ? FieldReading.Refused("it cannot be left empty. Give a name: it is what you and others will look for.")
                : field.IsNullable && !field.IsRequired ? new FieldReading(true, null)
                : FieldReading.Refused($"it cannot be left empty. Give {Allowed(field, units, culture)}.");
        }

        return field.Type switch
        {
            FieldType.Quantity => Quantity(field, text, units, culture),
            FieldType.Number => Number(field, text, units, culture),
            FieldType.Count => int.TryParse(text, NumberStyles.AllowLeadingSign, CultureInfo.InvariantCulture, out int count)
                ? InRange(field, text, count, count, units, culture)
                : FieldReading.Refused($"'{text}' is not a whole number. Allowed: {Allowed(field, units, culture)}."),
            FieldType.Flag => text is "yes" or "no" ? new FieldReading(true, text == "yes") : FieldReading.Refused($"'{text}' is neither yes nor no."),
            FieldType.Choice => Choice(field, text),
            FieldType.Terminal => Terminal.TryParse(text, out Terminal terminal)
                ? new FieldReading(true, terminal)
                : FieldReading.Refused($"'{text}' is not a terminal; write it as part.terminal, for example bank.+"),
            FieldType.Date => DateOnly.TryParseExact(text, "yyyy-MM-dd", CultureInfo.InvariantCulture, DateTimeStyles.None, out DateOnly day)
                ? new FieldReading(true, day)
                : FieldReading.Refused($"'{text}' is not a day; write it as 2026-04-30."),
            _ => new FieldReading(true, text),
        };
    }

    /// <summary>What may be typed, in a few words.</summary>
    public static string Allowed(FieldSchema field, DisplayUnits units, CultureInfo culture) => field.Type switch
    {
        FieldType.Quantity or FieldType.Number when field.Unit is not null => string.Join("; ", new[] { Example(field, units, culture), FieldLimits.FromTo(field, units, culture) }.OfType<string>()),
        FieldType.Count => FieldLimits.FromTo(field, units, culture) is { } range ? $"a whole number, {range}" : "a whole number",
        FieldType.Choice => string.Join(", ", field.Choices.Select(FieldWords.OfChoice)),
        FieldType.Flag => "yes or no",
        FieldType.Date => "a day such as 2026-04-30",
        FieldType.Terminal => "part.terminal, for example bank.+",
        FieldType.Reference => "a thing from the list",
        _ => "words",
    };

    private static string? Example(FieldSchema field, DisplayUnits units, CultureInfo culture) =>
        FieldLimits.Examples(field, units, culture) is var examples && examples == FieldLimits.Range(field, units, culture) ? null : $"e.g. {examples}";

    private static FieldReading Quantity(FieldSchema field, string text, DisplayUnits units, CultureInfo culture)
    {
        QuantityReading read = Parse(field, text, units, culture);
        return read.Quantity is { } quantity
            ? InRange(field, text, quantity.Value, quantity, units, culture, read.Remark) with { IsOneOfTwo = read.IsOneOfTwo }
            : FieldReading.Refused(read.Refusal ?? $"'{text}' is not understood.");
    }

    private static FieldReading Number(FieldSchema field, string text, DisplayUnits units, CultureInfo culture)
    {
        QuantityReading read = Parse(field, text, units, culture);
        return read.Quantity is { } quantity
            ? InRange(field, text, quantity.Value, quantity.Value, units, culture, read.Remark) with { IsOneOfTwo = read.IsOneOfTwo }
            : FieldReading.Refused(read.Refusal ?? $"'{text}' is not understood.");
    }

    // Where one mark leaves two meanings, the field's range may leave one.
    private static QuantityReading Parse(FieldSchema field, string text, DisplayUnits units, CultureInfo culture)
    {
        QuantityReading Read(string one) => QuantityText.Parse(one, Suffix(field), units, culture, FieldLimits.Examples(field, units, culture));
        return Read(text) is { Quantity: not null } read ? read : TwoMeanings.OneLeft(text, culture, Read, number => FieldLimits.IsIn(field, number)) ?? Read(text);
    }

    private static FieldReading InRange(FieldSchema field, string text, double number, object value, DisplayUnits units, CultureInfo culture, string? remark = null) =>
        FieldLimits.IsIn(field, number)
            ? new FieldReading(true, value, null, remark)
            : FieldReading.Refused($"'{text}' is out of range{(remark is null ? "" : $" ({char.ToLowerInvariant(remark[0])}{remark[1..].TrimEnd('.')})")}. Allowed: {FieldLimits.Range(field, units, culture)}.");

    private static FieldReading Choice(FieldSchema field, string text)
    {
        int index = field.Choices.ToList().IndexOf(text);
        return index >= 0
            ? new FieldReading(true, Enum.GetValues(field.ValueType).GetValue(index))
            : FieldReading.Refused($"'{text}' is none of: {string.Join(", ", field.Choices.Select(FieldWords.OfChoice))}.");
    }

    private static string Suffix(FieldSchema field) => FieldLimits.Suffix(field);

    private static bool IsName(FieldSchema field) => field is { Type: FieldType.Text, Name: "name" };

    internal static string ChoiceId(object choice) => FieldNames.Kebab(choice.ToString()!);

    private static string WithMark(Quantity quantity, string text, CultureInfo culture) => quantity.Known switch
    {
        Knowledge.Guessed when !text.EndsWith('?') => text + "?",
        Knowledge.Estimated when quantity.Typed is not { } typed || QuantityText.AsTyped(typed, culture) != text => "about " + text,
        _ => text,
    };

    private static string Marked(Quantity quantity, string text) =>
        Wording.LooksGuessed(quantity) ? $"{text.TrimEnd('?', ' ')} ({Wording.Of(quantity.Known)})" : text;

    private static string InWords(Place place, DisplayUnits units, CultureInfo culture)
    {
        string Along(double lengthM, string positive, string negative) => $"{QuantityText.Shown(Math.Abs(lengthM), "M", units, culture)} {(lengthM < 0 ? negative : positive)}";
        return string.Join(", ",
            Along(place.XM, "forward of the after perpendicular", "abaft the after perpendicular"),
            Along(place.YM, "to port", "to starboard"),
            Along(place.ZM, "above the base line", "below the base line"));
    }

    private static string List(FieldSchema field, IEnumerable items, DisplayUnits units, CultureInfo culture, BoatModel? boat)
    {
        List<string> texts = [.. items.Cast<object>().Select(item => ChoiceLists.Is(field) ? FieldWords.OfChoice(ChoiceId(item)) : field.Record is { } schema ? Record(schema, item, units, culture, boat) : boat?.Find(item.ToString()!)?.Title ?? item.ToString() ?? "")];
        return texts.Count == 0 ? "—" : string.Join("; ", texts);
    }

    private static string Record(RecordSchema schema, object record, DisplayUnits units, CultureInfo culture, BoatModel? boat) => string.Join(", ",
        schema.Fields.Where(inner => inner.Get(record) is not (null or false)).Select(inner => inner.Type == FieldType.Id
            ? Show(inner, inner.Get(record), units, culture, boat)
            : $"{FieldLabels.InSentence(inner)} {Show(OwnLimits.In(inner, record), inner.Get(record), units, culture, boat)}"));
}
