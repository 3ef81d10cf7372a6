using System.Collections.Frozen;
using Orlop.Boat.Format;
using Orlop.Boat.Things;

namespace Orlop.Boat.Tables;

/// <summary>The columns of a table of a climate's months.</summary>
internal static class ClimateColumns
{
    /// <summary>Id of the climate; may be left out where the boat has one.</summary>
    public const string Climate = "climate";

    public static readonly RecordSchema Schema = RecordSchema.Of(typeof(ClimateMonth));

    public static readonly FieldSchema Month = Schema.Field("calendarMonth")!;

    public static readonly FieldSchema Air = Schema.Field("airC")!;

    /// <summary>The columns in which light can be told, of which a table has one.</summary>
    public static readonly LightColumn[] Light =
    [
        new(Schema.Field("sunWhPerM2")!.Column, "Wh/m2", _ => 1),
        new("sun_kwh_per_m2", "kWh/m2", _ => 1000),
        new("sun_mj_per_m2", "MJ/m2", _ => 1000 / 3.6),
        new("clearness_ratio", "", outside => outside),
    ];

    /// <summary>Those that are written, in order.</summary>
    public static readonly string[] Written = [Climate, Month.Column, Air.Column, Light[0].Name];

    /// <summary>All that are read.</summary>
    public static readonly FrozenSet<string> Known = Written.Concat(Light.Select(column => column.Name)).ToFrozenSet(StringComparer.Ordinal);
}

/// <summary>A column that tells the mean light of a day on the horizontal.</summary>
/// <param name="Name">As the header writes it.</param>
/// <param name="Unit">Of its numbers; empty for clearness, the light over that outside the air.</param>
/// <param name="WhPerM2">What one of its unit is in Wh/m², of the light outside the air in Wh/m².</param>
internal sealed record LightColumn(string Name, string Unit, Func<double, double> WhPerM2);
