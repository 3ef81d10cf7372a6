using System.Globalization;
using System.Text.Json;
using Orlop.Boat.Format;
using Orlop.Boat.Validation;

namespace Orlop.Boat.Tables;

/// <summary>Reads one cell of a table by its field.</summary>
internal sealed class CellReading(BoatModel boat, ProblemList problems)
{
    /// <summary>The value of a field, or of a part of the field <paramref name="of"/>; null for a blank cell and for one that does not fit.</summary>
    public object? Value(FieldSchema field, string cell, Spot spot, FieldSchema? of = null)
    {
        if (cell.Length == 0)
        {
            return null;
        }

        object? value = field.Type switch
        {
            FieldType.Number => double.TryParse(cell, NumberStyles.Float, CultureInfo.InvariantCulture, out double number) && double.IsFinite(number) ? number : null,
            FieldType.Count => int.TryParse(cell, NumberStyles.AllowLeadingSign, CultureInfo.InvariantCulture, out int count) ? count : null,
            FieldType.Flag => bool.TryParse(cell, out bool flag) ? flag : null,
            FieldType.List when PairList.Fits(field) && !cell.TrimStart().StartsWith('[') => JsonValue(field, PairList.Json(field, cell, boat), spot),
            FieldType.List or FieldType.Record => JsonValue(field, cell, spot),
            _ => RecordReading.OfText(field, field.Type, cell),
        };
        if (value is null)
        {
            FieldSchema asked = of?.Type == FieldType.Quantity && field.Name == "value" ? of : field;
            Spot at = asked == of ? spot.Parent : spot;
            problems.Add(at, $"'{FoundJson.Short(cell)}'", AllowedWords.Of(asked, field.Type), Refusal(field, asked, cell));
        }

        return value;
    }

    private static string Refusal(FieldSchema field, FieldSchema asked, string cell) =>
        field.Type == FieldType.Number && cell.Contains(',', StringComparison.Ordinal) ? $"{asked.Label} is not a number; write a decimal point, not a comma."
        : $"{asked.Label} does not fit.";

    private object? JsonValue(FieldSchema field, string cell, Spot spot)
    {
        try
        {
            using JsonDocument document = JsonDocument.Parse(cell, new JsonDocumentOptions { MaxDepth = BoatJson.DeepestNesting });
            return new RecordReading(problems).Value(field, field.Type, document.RootElement, spot);
        }
        catch (JsonException)
        {
            return null;
        }
    }
}
