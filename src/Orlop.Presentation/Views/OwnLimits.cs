using Orlop.Boat.Format;
using Orlop.Boat.Things;
using Orlop.Boat.Values;
using Orlop.Presentation.Quantities;
using Orlop.Presentation.Words;

namespace Orlop.Presentation.Views;

/// <summary>The owner's own limits on a form: which limit is chosen from the list, and its value is read and shown in the unit of that limit.</summary>
public static class OwnLimits
{
    private static readonly RecordSchema Schema = RecordSchema.Of(typeof(OwnLimit));

    /// <summary>The record is a limit of the owner's.</summary>
    public static bool Are(RecordSchema schema) => schema == Schema;

    /// <summary>The field says which limit it is.</summary>
    public static bool IsName(FieldSchema field) => field == NameField;

    /// <summary>The field that says which limit it is.</summary>
    public static FieldSchema NameField { get; } = Schema.Field("limit")!;

    /// <summary>The field as it is read and shown where that limit is chosen; as it is where none is, and any other field.</summary>
    /// <param name="field">A field of any record.</param>
    /// <param name="limitId">The limit; its last word is its unit.</param>
    public static FieldSchema In(FieldSchema field, string? limitId)
    {
        ArgumentNullException.ThrowIfNull(field);
        return IsValue(field) && limitId is not null && UnitOf(limitId) is { } unit ? field.In(unit, new AllowedAttribute(0, double.MaxValue)) : field;
    }

    /// <summary>The same, of a record that is there.</summary>
    public static FieldSchema In(FieldSchema field, object record) => In(field, (record as OwnLimit)?.Limit);

    /// <summary>The field is the value of a limit: without the limit it has no unit.</summary>
    public static bool IsValue(FieldSchema field) => field == Schema.Field("value");

    /// <summary>"Greatest heel while lifting (°)".</summary>
    public static string Choice(string limitId, DisplayUnits units) =>
        UnitOf(limitId) is { } unit && Units.BySuffix.TryGetValue(unit.Suffix, out Dimension? dimension) && dimension.BareSymbol(units) is { Length: > 0 } symbol
            ? $"{LimitWords.Of(limitId)} ({symbol})" : LimitWords.Of(limitId);

    /// <summary>The limit that an address asks for and that the owner has not set: <c>own/most-lifting-heel-deg</c>; null for anything else.</summary>
    public static string? Asked(Thing thing, string? path) =>
        thing is PracticeChoice practice && path?.Split('/') is ["own", var id] && LimitWords.Choosable.Contains(id) && practice.Own.All(own => own.Limit != id) ? id : null;

    private static UnitSuffix? UnitOf(string limitId) =>
        limitId.Split('-')[^1] is { Length: > 0 } last ? UnitSuffix.All.FirstOrDefault(unit => string.Equals(unit.Suffix, last, StringComparison.OrdinalIgnoreCase)) : null;
}
