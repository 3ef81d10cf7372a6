using System.Collections;
using System.Globalization;
using Orlop.Boat.Format;
using Orlop.Boat.Values;

namespace Orlop.Boat.Tables;

/// <summary>One column of a table: a field, or one part of a field that takes several columns.</summary>
/// <param name="Name">As the header writes it: <c>length_m</c>, <c>place_x_m</c>, <c>length_m_known</c>.</param>
/// <param name="Field">The field it belongs to.</param>
/// <param name="Part">The part of the quantity, place or box it holds; null when it holds the field itself.</param>
internal sealed record TableColumn(string Name, FieldSchema Field, FieldSchema? Part)
{
    /// <summary>Says how well a quantity is known; written only where a row needs it.</summary>
    public bool IsKnowledge => Field.Type == FieldType.Quantity && Part!.Name != "value";

    /// <summary>All columns a kind can have, in order.</summary>
    public static IReadOnlyList<TableColumn> Of(RecordSchema schema) => [.. schema.Fields.SelectMany(Of)];

    /// <summary>The text of its cell for a thing; empty where nothing is known.</summary>
    public string Text(object thing) => Field.Get(thing) switch
    {
        null => "",
        Quantity quantity => Text(quantity),
        var value when Part is null => Text(Field, value),
        var value => Text(Part, Part.Get(value)),
    };

    private static IEnumerable<TableColumn> Of(FieldSchema field) => field.Type switch
    {
        FieldType.Quantity => field.Record!.Fields.Select(part => new TableColumn(part.Name == "value" ? field.Column : $"{field.Column}_{part.Column}", field, part)),
        FieldType.Place or FieldType.Box => field.Record!.Fields.Select(part => new TableColumn($"{field.Column}_{part.Column}", field, part)),
        _ => [new TableColumn(field.Column, field, null)],
    };

    private string Text(Quantity quantity) => Part!.Name == "known" && quantity.Known == Knowledge.Exact ? "" : Text(Part, Part.Get(quantity));

    private static string Text(FieldSchema field, object? value) => value switch
    {
        null => "",
        bool flag => flag ? "true" : "false",
        double number => number.ToString("R", CultureInfo.InvariantCulture),
        int count => count.ToString(CultureInfo.InvariantCulture),
        DateOnly date => date.ToString("yyyy-MM-dd", CultureInfo.InvariantCulture),
        Enum choice => FieldNames.Kebab(choice.ToString()),
        string or Terminal => value.ToString()!,
        IEnumerable list when !list.GetEnumerator().MoveNext() => "",
        IEnumerable list when PairList.Fits(field) => PairList.Text(field, list),
        _ => BoatWriting.Compact(field, value),
    };
}
