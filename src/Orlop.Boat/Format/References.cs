using System.Collections;

namespace Orlop.Boat.Format;

/// <summary>The ids that a record refers to, in its fields and in the records and lists that it holds; its terminals are not among them.</summary>
internal static class References
{
    /// <summary>Each id, as often as it stands there.</summary>
    public static IEnumerable<string> In(object record) => RecordSchema.Of(record.GetType()).Fields.SelectMany(field => field.Get(record) switch
    {
        IEnumerable items when field.Type == FieldType.List => items.Cast<object?>().SelectMany(item => In(field, item)),
        var value => In(field, value),
    });

    private static IEnumerable<string> In(FieldSchema field, object? value) => (field.ItemType ?? field.Type, value) switch
    {
        (FieldType.Reference, string id) => [id],
        (FieldType.Record, { } inner) => In(inner),
        _ => [],
    };
}
