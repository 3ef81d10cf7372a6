using System.Collections.Immutable;
using System.Globalization;
using Orlop.Boat;
using Orlop.Boat.Things;
using Orlop.Hull.Hydrostatics;
using Orlop.Hull.Surfaces;
using Orlop.Presentation.Quantities;
using Orlop.Review.Stability;

namespace Orlop.Presentation.Views.Floating;

/// <summary>The hydrostatic table of the hull, level and upright, at round draughts.</summary>
/// <param name="Heads">What the columns are called, with their units.</param>
/// <param name="Rows">One for each draught, the shallowest first.</param>
public sealed record HydrostaticView(IReadOnlyList<string> Heads, IReadOnlyList<IReadOnlyList<string>> Rows)
{
    private const int LeastRowCount = 10;
    private const double HalfStep = 0.5;
    private static readonly double[] RoundSteps = [0.01, 0.02, 0.05, 0.1, 0.2, 0.25, 0.5, 1, 2];

    private static readonly (string Name, string Suffix, Func<HydrostaticRow, double> Value, int DecimalCount)[] Columns =
    [
        ("Draught", "M", row => row.DraughtM, 3), ("Displacement", "Kg", row => row.DisplacementKg, 0), ("Sinks by", "KgPerCm", row => row.ImmersionKgPerCm, 1),
        ("Trims by", "KgMPerCm", row => row.TrimmingKgMPerCm, 1), ("LCB", "M", row => row.LcbM, 3), ("LCF", "M", row => row.LcfM, 3), ("KB", "M", row => row.KbM, 3),
        ("BM", "M", row => row.BmM, 3), ("KM", "M", row => row.KmM, 3), ("Waterplane", "M2", row => row.WaterplaneAreaM2, 2), ("Block coefficient", "Coefficient", row => row.BlockCoefficient, 3),
    ];

    /// <summary>The table; null without a hull.</summary>
    public static HydrostaticView? Of(StabilityView view, DisplayUnits units, CultureInfo culture)
    {
        if (RowsOf(view, units) is not { } rows)
        {
            return null;
        }

        AxisUnit[] axes = [.. Columns.Select(column => AxisUnit.For(column.Suffix, units))];
        return new HydrostaticView(
            [.. Columns.Select((column, index) => axes[index].Symbol.Length == 0 ? column.Name : $"{column.Name}, {axes[index].Symbol}")],
            [.. rows.Select(row => (IReadOnlyList<string>)[.. Columns.Select((column, index) => axes[index].FromModel(column.Value(row)).ToString("F" + column.DecimalCount.ToString(CultureInfo.InvariantCulture), culture))])]);
    }

    /// <summary>The rows in the model's units, at round draughts of a reader's units; null without a hull.</summary>
    internal static ImmutableArray<HydrostaticRow>? RowsOf(StabilityView view, DisplayUnits units) => view.Bodies.Hull is not { } hull ? null : HydrostaticTable.Calculate(new HydrostaticInput
    {
        Subject = "hull",
        Hull = hull,
        DraughtsM = [.. Draughts(view.Boat, hull, units)],
        WaterKgPerM3 = view.WaterKgPerM3,
        TrimLengthM = hull.Highest.XM - hull.Lowest.XM,
    }).Rows;

    // Round draughts of the reader's units, from over the keel to where the lowest deck edge goes under.
    private static IEnumerable<double> Draughts(BoatModel boat, TriangleMesh hull, DisplayUnits units)
    {
        AxisUnit unit = AxisUnit.For("M", units);
        double deckEdgeM = boat.All<HullLines>().SelectMany(lines => lines.Stations.Concat(lines.StarboardStations)).Where(station => station.Points.Count > 0)
            .Select(station => station.Points[^1].HeightM).DefaultIfEmpty(hull.Highest.ZM).Min();
        double least = unit.FromModel(hull.Lowest.ZM), most = unit.FromModel(deckEdgeM);
        double step = RoundSteps.LastOrDefault(round => (most - least) / round >= LeastRowCount, RoundSteps[0]);
        for (double number = Math.Ceiling((least / step) + HalfStep); number * step <= most; number++)
        {
            yield return unit.ToModel(number * step);
        }
    }
}
