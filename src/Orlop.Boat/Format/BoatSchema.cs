using System.Text.Encodings.Web;
using System.Text.Json;
using System.Text.Json.Nodes;
using Orlop.Boat.Things;
using Orlop.Boat.Validation;
using Orlop.Boat.Values;

namespace Orlop.Boat.Format;

/// <summary>The JSON Schema of the boat file (draft 2020-12), made from the same fields that reading and writing use. It cannot say what points at what.</summary>
public static class BoatSchema
{
    private const string DatePattern = "^[0-9]{4}-[0-9]{2}-[0-9]{2}$";
    private static readonly JsonSerializerOptions Indented = new() { WriteIndented = true, NewLine = "\n", Encoder = JavaScriptEncoder.UnsafeRelaxedJsonEscaping };

    /// <summary>The schema as text.</summary>
    public static string Write()
    {
        JsonObject definitions = new()
        {
            ["id"] = new JsonObject { ["type"] = "string", ["pattern"] = "^[a-z][a-z0-9-]*$", ["maxLength"] = RecordRules.MostIdLetters },
            ["text"] = new JsonObject { ["type"] = "string", ["pattern"] = "\\S" },
            ["terminal"] = new JsonObject { ["type"] = "string", ["pattern"] = "^[^.]+\\..+$" },
            ["day"] = new JsonObject { ["type"] = "string", ["pattern"] = DatePattern },
            ["thing"] = AnyOf(ThingKinds.ByName),
            ["thing-in-an-edit"] = AnyOf(ThingKinds.ByName.Where(kind => kind.Value != typeof(Alteration))),
        };
        foreach ((string kind, Type type) in ThingKinds.ByName.OrderBy(kind => kind.Key, StringComparer.Ordinal))
        {
            definitions[kind] = OfRecord(RecordSchema.Of(type), kind, definitions);
        }

        JsonObject root = new()
        {
            ["$schema"] = "https://json-schema.org/draft/2020-12/schema",
            ["$id"] = $"urn:orlop:boat:{BoatModel.CurrentFormatVersion}",
            ["title"] = $"Orlop boat file, version {BoatModel.CurrentFormatVersion}",
            ["type"] = "object",
            ["properties"] = new JsonObject
            {
                ["formatVersion"] = new JsonObject { ["type"] = "integer", ["minimum"] = 1, ["maximum"] = BoatModel.CurrentFormatVersion },
                ["things"] = new JsonObject { ["type"] = "array", ["items"] = Ref("thing") },
            },
            ["required"] = new JsonArray("formatVersion", "things"),
            ["additionalProperties"] = false,
            ["$defs"] = definitions,
        };
        return root.ToJsonString(Indented) + "\n";
    }

    private static JsonObject Ref(string name) => new() { ["$ref"] = $"#/$defs/{name}" };

    private static JsonObject AnyOf(IEnumerable<KeyValuePair<string, Type>> kinds) =>
        new() { ["anyOf"] = new JsonArray([.. kinds.Select(kind => kind.Key).Order(StringComparer.Ordinal).Select(Ref)]) };

    private static JsonObject OfRecord(RecordSchema schema, string? kind, JsonObject definitions)
    {
        JsonObject properties = [];
        JsonArray required = [];
        if (kind is not null)
        {
            properties["kind"] = new JsonObject { ["const"] = kind };
            required.Add("kind");
        }

        foreach (FieldSchema field in schema.Fields)
        {
            properties[field.Name] = OfField(field, definitions);
            if (field.IsRequired)
            {
                required.Add(field.Name);
            }
        }

        JsonObject record = new() { ["type"] = "object", ["properties"] = properties };
        if (required.Count > 0)
        {
            record["required"] = required;
        }

        record["additionalProperties"] = false;
        return record;
    }

    private static JsonObject OfField(FieldSchema field, JsonObject definitions)
    {
        JsonObject schema = field.Type == FieldType.List
            ? new JsonObject { ["type"] = "array", ["items"] = OfValue(field, field.ItemType!.Value, definitions) }
            : OfValue(field, field.Type, definitions);
        string unit = field.Unit is { Text: not "" } known ? $" In {known.Words}." : "";
        if ((field.Description + unit).TrimStart() is { Length: > 0 } description)
        {
            schema["description"] = description;
        }

        return schema;
    }

    private static JsonObject OfValue(FieldSchema field, FieldType type, JsonObject definitions) => type switch
    {
        FieldType.Id or FieldType.Reference => Ref("id"),
        FieldType.Text => Ref("text"),
        FieldType.Terminal => Ref("terminal"),
        FieldType.Date => Ref("day"),
        FieldType.Thing => Ref("thing-in-an-edit"),
        FieldType.Flag => new JsonObject { ["type"] = "boolean" },
        FieldType.Choice => new JsonObject { ["enum"] = new JsonArray([.. field.Choices.Select(choice => (JsonNode)choice)]) },
        FieldType.Number or FieldType.Count => Number(field, type),
        FieldType.Quantity => OfQuantity(field, definitions),
        _ => Defined(field.Record!, definitions),
    };

    private static JsonObject Number(FieldSchema field, FieldType type)
    {
        JsonObject number = new() { ["type"] = type == FieldType.Count ? "integer" : "number" };
        if (field.Allowed is AllowedAttribute allowed)
        {
            number["minimum"] = allowed.Least;
            if (allowed.Most < double.MaxValue)
            {
                number["maximum"] = allowed.Most;
            }
        }

        return number;
    }

    private static JsonObject OfQuantity(FieldSchema field, JsonObject definitions)
    {
        JsonObject known = OfRecord(field.Record!, null, definitions);
        JsonNode properties = known["properties"]!;
        properties["value"] = Number(field, FieldType.Number);
        properties["unit"] = new JsonObject { ["const"] = field.Unit?.Text ?? "" };
        return new JsonObject { ["anyOf"] = new JsonArray(Number(field, FieldType.Number), known) };
    }

    private static JsonObject Defined(RecordSchema schema, JsonObject definitions)
    {
        string name = $"{FieldNames.Kebab(schema.Type.Name)}-record";
        if (!definitions.ContainsKey(name))
        {
            definitions[name] = OfRecord(schema, null, definitions);
        }

        return Ref(name);
    }
}
