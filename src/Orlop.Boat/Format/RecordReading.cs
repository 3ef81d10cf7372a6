using System.Globalization;
using System.Text.Json;
using Orlop.Boat.Things;
using Orlop.Boat.Validation;
using Orlop.Boat.Values;

namespace Orlop.Boat.Format;

/// <summary>Makes records from JSON objects by their schema. A value of the wrong type or name becomes a problem and is left out.</summary>
internal sealed class RecordReading(ProblemList problems)
{
    private const string Kind = "kind";
    private const string UnitMember = "unit";

    /// <summary>A thing with its kind; null when it has none that is known.</summary>
    public Thing? Thing(JsonElement element, Spot spot)
    {
        if (element.ValueKind != JsonValueKind.Object)
        {
            problems.Add(spot, FoundJson.Words(element), "an object with kind and id", "A thing is an object.");
            return null;
        }

        if (!element.TryGetProperty(Kind, out JsonElement given))
        {
            problems.Add(spot.At(Kind), "nothing", Kinds, "The thing does not say what kind it is.");
            return null;
        }

        if (given.ValueKind != JsonValueKind.String || !FoundJson.TryText(given, out string kind) || !ThingKinds.ByName.TryGetValue(kind, out Type? type))
        {
            problems.Add(spot.At(Kind), FoundJson.Words(given), Kinds, "There is no such kind of thing.");
            return null;
        }

        return (Thing)Record(RecordSchema.Of(type), element, spot, Kind);
    }

    /// <summary>Reads one value of a field, or one item of its list; null when it does not fit.</summary>
    public object? Value(FieldSchema field, FieldType type, JsonElement element, Spot spot)
    {
        JsonValueKind kind = element.ValueKind;
        object? value = type switch
        {
            FieldType.Flag when kind is JsonValueKind.True or JsonValueKind.False => kind == JsonValueKind.True,
            FieldType.Number when kind == JsonValueKind.Number => element.GetDouble(),
            FieldType.Count when kind == JsonValueKind.Number && element.TryGetInt32(out int count) => count,
            FieldType.Quantity when kind == JsonValueKind.Number => new Quantity(element.GetDouble()),
            FieldType.Quantity or FieldType.Place or FieldType.Box or FieldType.Record when kind == JsonValueKind.Object => Nested(field, type, element, spot),
            FieldType.List when kind == JsonValueKind.Array => Items(field, element, spot),
            FieldType.Thing => Thing(element, spot),
            _ when kind == JsonValueKind.String && FoundJson.TryText(element, out string text) => OfText(field, type, text),
            _ => null,
        };
        if (value is null)
        {
            problems.Add(spot, FoundJson.Words(element), AllowedWords.Of(field, type), Refusal(field, type, element));
        }

        return value;
    }

    private static string Kinds { get; } = string.Join(", ", ThingKinds.ByName.Keys.Order(StringComparer.Ordinal));

    /// <summary>The value of a field that files write as text; null when the text does not fit.</summary>
    public static object? OfText(FieldSchema field, FieldType type, string text) => type switch
    {
        FieldType.Id or FieldType.Text or FieldType.Reference => text,
        FieldType.Choice => field.TryChoice(text, out object? choice) ? choice : null,
        FieldType.Terminal => Terminal.TryParse(text, out Terminal terminal) ? terminal : null,
        FieldType.Date => DateOnly.TryParseExact(text, "yyyy-MM-dd", CultureInfo.InvariantCulture, DateTimeStyles.None, out DateOnly date) ? date : null,
        _ => null,
    };

    private static string Refusal(FieldSchema field, FieldType type, JsonElement element) => element.ValueKind switch
    {
        JsonValueKind.Null => $"{field.Label} is null; leave the field out where it is not known.",
        JsonValueKind.String when type is FieldType.Number or FieldType.Quantity or FieldType.Count => $"{field.Label} is a text where a number is wanted.",
        JsonValueKind.String when type == FieldType.Choice => $"{field.Label} is none of its choices.",
        JsonValueKind.String when type == FieldType.Terminal => $"{field.Label} is not a terminal.",
        JsonValueKind.String when type == FieldType.Date => $"{field.Label} is not a day.",
        _ => $"{field.Label} is of the wrong type.",
    };

    private object Nested(FieldSchema field, FieldType type, JsonElement element, Spot spot)
    {
        if (type == FieldType.Quantity && element.TryGetProperty(UnitMember, out JsonElement unit))
        {
            string wanted = field.Unit?.Text ?? "";
            bool isIt = unit.ValueKind == JsonValueKind.String && FoundJson.TryText(unit, out string text) && text == wanted;
            if (!isIt)
            {
                problems.Add(spot.At(UnitMember), FoundJson.Words(unit), $"\"{wanted}\"", $"Wrong unit: {field.Name} is always in {field.Unit?.Words ?? "no unit"}.");
            }
        }

        return Record(field.Record!, element, spot, type == FieldType.Quantity ? UnitMember : null);
    }

    private object Items(FieldSchema field, JsonElement list, Spot spot)
    {
        List<object?> items = new(list.GetArrayLength());
        foreach (JsonElement element in list.EnumerateArray())
        {
            items.Add(Value(field, field.ItemType!.Value, element, spot.At(items.Count)));
        }

        return field.List(items);
    }

    private object Record(RecordSchema schema, JsonElement element, Spot spot, string? besides)
    {
        object?[] values = new object?[schema.Fields.Count];
        bool[] isSet = new bool[values.Length], isSeen = new bool[values.Length];
        bool isBesidesSeen = false;
        foreach (JsonProperty property in element.EnumerateObject())
        {
            bool isText = FoundJson.TryName(property, out string name);
            int index = isText ? schema.IndexOf(name) : -1;
            if (isText && name == besides ? isBesidesSeen : index >= 0 && isSeen[index])
            {
                problems.Add(spot.At(name), "it twice", "it once", $"The field {name} is given more than once.");
            }
            else if (isText && name == besides)
            {
                isBesidesSeen = true;
            }
            else if (index < 0)
            {
                problems.Add(spot.At(name), name, NearestField.Allowed(schema, besides), NearestField.Advice(schema, name, field => field.Name));
            }
            else
            {
                isSeen[index] = true;
                values[index] = Value(schema.Fields[index], schema.Fields[index].Type, property.Value, spot.At(name));
                isSet[index] = values[index] is not null;
            }
        }

        for (int i = 0; i < values.Length; i++)
        {
            if (schema.Fields[i].IsRequired && !isSeen[i])
            {
                problems.Add(spot.At(schema.Fields[i].Name), "nothing", AllowedWords.Of(schema.Fields[i], schema.Fields[i].Type), $"{schema.Fields[i].Label} is missing.");
            }
        }

        return schema.Create(values, isSet);
    }
}
