using System.Collections.Immutable;
using Orlop.Electrics.Working;

namespace Orlop.Electrics.Conductors;

/// <summary>Greatest resistance of copper conductors at 20 °C, IEC 60228 tables 2 and 3, class 2 and 5, plain and tinned, 0.5 to 300 mm².</summary>
internal static class Iec60228
{
    private sealed record Row(double AreaMm2, double Class2Plain, double Class5Plain, double Class2Tinned, double Class5Tinned)
    {
        public double OhmPerM(StrandClass strand, bool isTinned) => 1e-3 * (strand, isTinned) switch
        {
            (StrandClass.Class2, false) => Class2Plain,
            (StrandClass.Class2, true) => Class2Tinned,
            (StrandClass.Class5, false) => Class5Plain,
            (StrandClass.Class5, true) => Class5Tinned,
            _ => throw new ArgumentOutOfRangeException(nameof(strand), strand, "strand class: allowed class 2 and class 5."),
        };
    }

    private static readonly ImmutableArray<Row> Rows = Load();

    public static double? OhmPerMAt20(double areaMm2, StrandClass strand, bool isTinned) =>
        Rows.FirstOrDefault(row => Math.Abs(row.AreaMm2 - areaMm2) <= 1e-9 * areaMm2)?.OhmPerM(strand, isTinned);

    public static double StrandMarginFraction(double areaMm2, StrandClass strand, bool isTinned)
    {
        var below = Rows.LastOrDefault(row => row.AreaMm2 <= areaMm2) ?? Rows[0];
        var above = Rows.FirstOrDefault(row => row.AreaMm2 >= areaMm2) ?? Rows[^1];
        return Math.Max(Excess(below), Excess(above));

        double Excess(Row row) => (row.OhmPerM(strand, isTinned) * row.AreaMm2 / AnnealedCopper.ResistivityAt20OhmMm2PerM) - 1;
    }

    private static ImmutableArray<Row> Load()
    {
        var csv = EmbeddedCsv.Read("iec60228.csv");
        return [.. csv.Rows.Select(row => new Row(
            csv.Number(row, "area_mm2"), csv.Number(row, "class2_plain_ohm_per_km_20c"), csv.Number(row, "class5_plain_ohm_per_km_20c"),
            csv.Number(row, "class2_tinned_ohm_per_km_20c"), csv.Number(row, "class5_tinned_ohm_per_km_20c")))];
    }
}
