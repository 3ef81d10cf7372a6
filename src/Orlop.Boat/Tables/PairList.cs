using System.Collections;
using System.Globalization;
using System.Text.Json;
using Orlop.Boat.Format;

namespace Orlop.Boat.Tables;

/// <summary>A list of a thing's id with a number, as people write it in a cell: <c>at-anchor: 2; under-way: 1</c>.</summary>
internal static class PairList
{
    /// <summary>The field is such a list.</summary>
    public static bool Fits(FieldSchema field) =>
        field.Type == FieldType.List && field.Record is { Fields: [{ Type: FieldType.Reference }, { Type: FieldType.Count or FieldType.Number }] };

    public static string Text(FieldSchema field, IEnumerable items)
    {
        (FieldSchema of, FieldSchema number) = (field.Record!.Fields[0], field.Record.Fields[1]);
        return string.Join("; ", items.Cast<object>().Select(item => string.Create(CultureInfo.InvariantCulture, $"{of.Get(item)}: {number.Get(item):R}")));
    }

    /// <summary>The same list as JSON; what is no number stays text, and does not fit there. A title stands for the id of the one thing of the boat that has it.</summary>
    public static string Json(FieldSchema field, string cell, BoatModel boat)
    {
        (FieldSchema of, FieldSchema number) = (field.Record!.Fields[0], field.Record.Fields[1]);
        return $"[{string.Join(',', cell.Split(';', StringSplitOptions.RemoveEmptyEntries | StringSplitOptions.TrimEntries).Select(Pair))}]";

        string Pair(string text)
        {
            string[] halves = text.Split(':', 2, StringSplitOptions.TrimEntries);
            string count = halves.Length < 2 ? "null" : double.TryParse(halves[1], NumberStyles.Float, CultureInfo.InvariantCulture, out double value) && double.IsFinite(value)
                ? value.ToString("R", CultureInfo.InvariantCulture) : Quoted(halves[1]);
            return $"{{{Quoted(of.Name)}:{Quoted(Id(boat, of.RefersTo!, halves[0]))},{Quoted(number.Name)}:{count}}}";
        }
    }

    // An id goes before a title that reads alike; of several with one title nothing tells which is meant.
    private static string Id(BoatModel boat, Type kind, string said) => boat.Find(said) is null && boat.Things.Where(thing => kind.IsInstanceOfType(thing) && string.Equals(thing.Title, said, StringComparison.OrdinalIgnoreCase)).ToList() is [var only] ? only.Id : said;

    private static string Quoted(string text) => JsonSerializer.Serialize(text);
}
