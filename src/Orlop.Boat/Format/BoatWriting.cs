using System.Buffers;
using System.Collections;
using System.Globalization;
using System.Text;
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
    private readonly Utf8JsonWriter _lines;
    private readonly ArrayBufferWriter<byte> _line = new();
    private readonly Utf8JsonWriter _compact;

    public BoatWriting(Stream utf8)
    {
        _utf8 = utf8;
        _lines = new Utf8JsonWriter(utf8, new JsonWriterOptions { Indented = true, NewLine = "\n", Encoder = Plain });
        _compact = new Utf8JsonWriter(_line, new JsonWriterOptions { Encoder = Plain });
    }

    /// <summary>One value as compact JSON, as a cell of a table holds it.</summary>
    public static string Compact(FieldSchema field, object value)
    {
        using BoatWriting writing = new(Stream.Null);
        writing.Value(writing._compact, field, field.Type, value);
        writing._compact.Flush();
        return Encoding.UTF8.GetString(writing._line.WrittenSpan);
    }

    public void Write(BoatModel boat)
    {
        _lines.WriteStartObject();
        _lines.WriteNumber("formatVersion", boat.FormatVersion);
        _lines.WriteStartArray("things");
        foreach (Thing thing in boat.Things)
        {
            Record(_lines, RecordSchema.Of(thing.GetType()), thing);
        }

        _lines.WriteEndArray();
        _lines.WriteEndObject();
        _lines.Flush();
        _utf8.WriteByte((byte)'\n');
    }

    public void Dispose()
    {
        _lines.Dispose();
        _compact.Dispose();
    }

    private static bool IsEmpty(FieldSchema field, object? value) => value is null || (field.Type == FieldType.List && !((IEnumerable)value).GetEnumerator().MoveNext());

    private static bool TakesLines(FieldSchema field, FieldType type) =>
        type is FieldType.List or FieldType.Thing || (type == FieldType.Record && field.Record!.Fields.Any(inner => inner.Type == FieldType.Thing));

    private void Record(Utf8JsonWriter json, RecordSchema schema, object record)
    {
        json.WriteStartObject();
        if (record is Thing thing)
        {
            json.WriteString("kind", ThingKinds.NameOf(thing));
        }

        foreach (FieldSchema field in schema.Fields)
        {
            object? value = field.Get(record);
            if (IsEmpty(field, value))
            {
                continue;
            }

            json.WritePropertyName(field.Name);
            if (json == _lines && !TakesLines(field, field.Type))
            {
                OnOneLine(field, field.Type, value!, isItem: false);
            }
            else
            {
                Value(json, field, field.Type, value!);
            }
        }

        json.WriteEndObject();
    }

    private void List(Utf8JsonWriter json, FieldSchema field, IEnumerable items)
    {
        json.WriteStartArray();
        foreach (object item in items)
        {
            if (json == _lines && !TakesLines(field, field.ItemType!.Value))
            {
                OnOneLine(field, field.ItemType.Value, item, isItem: true);
            }
            else
            {
                Value(json, field, field.ItemType!.Value, item);
            }
        }

        json.WriteEndArray();
    }

    private void OnOneLine(FieldSchema field, FieldType type, object value, bool isItem)
    {
        _line.ResetWrittenCount();
        _compact.Reset();
        if (isItem)
        {
            // The writer starts no line of its own for a raw item of a list.
            Span<byte> lineStart = _line.GetSpan(1 + (2 * _lines.CurrentDepth))[..(1 + (2 * _lines.CurrentDepth))];
            lineStart.Fill((byte)' ');
            lineStart[0] = (byte)'\n';
            _line.Advance(lineStart.Length);
        }

        Value(_compact, field, type, value);
        _compact.Flush();
        _lines.WriteRawValue(_line.WrittenSpan, skipInputValidation: true);
    }

    private void Value(Utf8JsonWriter json, FieldSchema field, FieldType type, object value)
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
                Record(json, RecordSchema.Of(thing.GetType()), thing);
                break;
            case IEnumerable items when type == FieldType.List:
                List(json, field, items);
                break;
            default:
                Record(json, field.Record!, value);
                break;
        }
    }
}
