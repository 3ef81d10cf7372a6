using System.Buffers;
using System.Collections;
using System.Globalization;
using System.Text.Encodings.Web;
using System.Text.Json;
using Orlop.Boat.Things;
using Orlop.Boat.Values;

namespace Orlop.Boat.Format;

/// <summary>Writes the canonical text: a field a line, a small record (a place, a core, a quantity) on one line, nothing for what is not known.</summary>
internal sealed class BoatWriting : IDisposable
{
    private static readonly JavaScriptEncoder Plain = JavaScriptEncoder.UnsafeRelaxedJsonEscaping;

    private readonly Stream _utf8;
    private readonly Utf8JsonWriter _json;
    private readonly ArrayBufferWriter<byte> _line = new();
    private readonly Utf8JsonWriter _compact;

    public BoatWriting(Stream utf8)
    {
        _utf8 = utf8;
        _json = new Utf8JsonWriter(utf8, new JsonWriterOptions { Indented = true, NewLine = "\n", Encoder = Plain });
        _compact = new Utf8JsonWriter(_line, new JsonWriterOptions { Encoder = Plain });
    }

    public void Write(BoatModel boat)
    {
        _json.WriteStartObject();
        _json.WriteNumber("formatVersion", boat.FormatVersion);
        _json.WriteStartArray("things");
        foreach (Thing thing in boat.Things)
        {
            WriteThing(thing);
        }

        _json.WriteEndArray();
        _json.WriteEndObject();
        _json.Flush();
        _utf8.WriteByte((byte)'\n');
    }

    public void Dispose()
    {
        _json.Dispose();
        _compact.Dispose();
    }

    /// <summary>One value as compact JSON, as a cell of a table holds it.</summary>
    internal static string Compact(FieldSchema field, object value)
    {
        ArrayBufferWriter<byte> line = new();
        using Utf8JsonWriter json = new(line, new JsonWriterOptions { Encoder = Plain });
        CompactValue(json, field, field.Type, value);
        json.Flush();
        return System.Text.Encoding.UTF8.GetString(line.WrittenSpan);
    }

    private static bool IsEmpty(FieldSchema field, object? value) => value is null || (field.Type == FieldType.List && !((IEnumerable)value).GetEnumerator().MoveNext());

    private void WriteThing(Thing thing)
    {
        _json.WriteStartObject();
        _json.WriteString("kind", ThingKinds.NameOf(thing));
        WriteFields(RecordSchema.Of(thing.GetType()), thing);
        _json.WriteEndObject();
    }

    private void WriteFields(RecordSchema schema, object record)
    {
        foreach (FieldSchema field in schema.Fields)
        {
            object? value = field.Get(record);
            if (!IsEmpty(field, value))
            {
                _json.WritePropertyName(field.Name);
                WriteValue(field, field.Type, value!);
            }
        }
    }

    private void WriteValue(FieldSchema field, FieldType type, object value, bool isItem = false)
    {
        if (type == FieldType.Thing)
        {
            WriteThing((Thing)value);
        }
        else if (type == FieldType.List)
        {
            _json.WriteStartArray();
            foreach (object item in (IEnumerable)value)
            {
                WriteValue(field, field.ItemType!.Value, item, isItem: true);
            }

            _json.WriteEndArray();
        }
        else if (type == FieldType.Record && HasThings(field.Record!))
        {
            _json.WriteStartObject();
            WriteFields(field.Record!, value);
            _json.WriteEndObject();
        }
        else
        {
            WriteOnOneLine(field, type, value, isItem);
        }
    }

    private static bool HasThings(RecordSchema schema) => schema.Fields.Any(field => field.Type == FieldType.Thing);

    private void WriteOnOneLine(FieldSchema field, FieldType type, object value, bool isItem)
    {
        _line.ResetWrittenCount();
        _compact.Reset();
        if (isItem)
        {
            // The writer starts no line of its own for a raw item of a list.
            Span<byte> lineStart = _line.GetSpan(1 + (2 * _json.CurrentDepth))[..(1 + (2 * _json.CurrentDepth))];
            lineStart.Fill((byte)' ');
            lineStart[0] = (byte)'\n';
            _line.Advance(lineStart.Length);
        }

        CompactValue(_compact, field, type, value);
        _compact.Flush();
        _json.WriteRawValue(_line.WrittenSpan, skipInputValidation: true);
    }

    private static void CompactValue(Utf8JsonWriter json, FieldSchema field, FieldType type, object value)
    {
        switch (value)
        {
            case bool flag:
                json.WriteBooleanValue(flag);
                break;
            case double number:
                json.WriteNumberValue(number);
                break;
            case int count:
                json.WriteNumberValue(count);
                break;
            case Quantity { Known: Knowledge.Exact, PlusMinus: null, On: null, Method: null, Typed: null } exact:
                json.WriteNumberValue(exact.Value);
                break;
            case DateOnly date:
                json.WriteStringValue(date.ToString("yyyy-MM-dd", CultureInfo.InvariantCulture));
                break;
            case Enum choice:
                json.WriteStringValue(FieldNames.Kebab(choice.ToString()));
                break;
            case string or Terminal:
                json.WriteStringValue(value.ToString());
                break;
            case Thing thing:
                json.WriteStartObject();
                json.WriteString("kind", ThingKinds.NameOf(thing));
                CompactFields(json, RecordSchema.Of(thing.GetType()), thing);
                json.WriteEndObject();
                break;
            case IEnumerable items when type == FieldType.List:
                json.WriteStartArray();
                foreach (object item in items)
                {
                    CompactValue(json, field, field.ItemType!.Value, item);
                }

                json.WriteEndArray();
                break;
            default:
                json.WriteStartObject();
                CompactFields(json, field.Record!, value);
                json.WriteEndObject();
                break;
        }
    }

    private static void CompactFields(Utf8JsonWriter json, RecordSchema schema, object record)
    {
        foreach (FieldSchema field in schema.Fields)
        {
            object? value = field.Get(record);
            if (!IsEmpty(field, value))
            {
                json.WritePropertyName(field.Name);
                CompactValue(json, field, field.Type, value!);
            }
        }
    }
}
