using System.Collections.Immutable;
using System.Globalization;
using System.Text;
using System.Text.Json.Nodes;
using Orlop.Boat.Things;
using Orlop.Hull.Floating;
using Orlop.Presentation.Quantities;
using Orlop.Review;
using Orlop.Review.Stability;

namespace Orlop.Presentation.Views.Floating;

/// <summary>A table for other programs, in the model's units: hydrostatics, righting levers or cross curves. A number that is not known is null, or an empty cell.</summary>
/// <param name="Kind">"hydrostatics", "gz" or "kn".</param>
/// <param name="AssumedKgM">Height that the trim of cross curves was taken with; null for the other tables.</param>
/// <param name="Columns">What the columns are called, with their units.</param>
/// <param name="Rows">Text or numbers, as many as there are columns.</param>
public sealed record StabilityTable(string Kind, double? AssumedKgM, IReadOnlyList<string> Columns, IReadOnlyList<IReadOnlyList<object?>> Rows)
{
    // Shallower than this share of the deepest draught, no boat is loaded.
    private const double LeastDraughtFraction = 0.2;
    private static readonly double[] Heels = [5, 10, 15, 20, 25, 30, 40, 50, 60, 70, 80, 90];

    /// <summary>Names of the tables there are.</summary>
    public static IReadOnlyList<string> Kinds { get; } = ["hydrostatics", "gz", "kn"];

    /// <summary>One of the tables; without rows where the hull, or the weight it needs, is not known.</summary>
    public static StabilityTable Of(string kind, StabilityView view, IEnumerable<Condition> conditions, Memo memo) => kind switch
    {
        "hydrostatics" => Hydrostatics(view),
        "gz" => Levers(view, conditions, memo),
        "kn" => CrossCurvesOf(view),
        _ => throw new ArgumentOutOfRangeException(nameof(kind), kind, $"Not a table; allowed: {string.Join(", ", Kinds)}."),
    };

    /// <summary>The table for a spreadsheet, numbers with a full stop.</summary>
    public string Csv()
    {
        StringBuilder text = new();
        foreach (IEnumerable<string> line in Rows.Select(row => row.Select(Cell)).Prepend(Columns))
        {
            text.AppendJoin(',', line).Append('\n');
        }

        return text.ToString();
    }

    /// <summary>Columns and rows as JSON.</summary>
    public JsonObject Json() => new()
    {
        ["table"] = Kind,
        ["assumedKgM"] = AssumedKgM,
        ["columns"] = new JsonArray([.. Columns.Select(column => (JsonNode)column)]),
        ["rows"] = new JsonArray([.. Rows.Select(row => (JsonNode)new JsonArray([.. row.Select(Node)]))]),
    };

    private static StabilityTable Hydrostatics(StabilityView view) => new(
        "hydrostatics", null,
        ["draught_m", "displacement_kg", "volume_m3", "immersion_kg_per_cm", "trimming_kg_m_per_cm", "lcb_m", "lcf_m", "kb_m", "bm_m", "km_m", "longitudinal_km_m", "waterplane_m2", "wetted_m2", "waterline_length_m", "waterline_breadth_m", "block_coefficient", "waterplane_coefficient"],
        [.. (HydrostaticView.RowsOf(view, DisplayUnits.Metric) ?? []).Select(row => (IReadOnlyList<object?>)
        [
            Math.Round(row.DraughtM, 6), row.DisplacementKg, row.VolumeM3, row.ImmersionKgPerCm, row.TrimmingKgMPerCm, row.LcbM, row.LcfM, row.KbM, row.BmM, row.KmM, row.LongitudinalKmM, row.WaterplaneAreaM2, row.WettedAreaM2,
            row.WaterlineLengthM, row.WaterlineBreadthM, row.BlockCoefficient, row.WaterplaneCoefficient,
        ])]);

    // From port to starboard, levers with the sign of the heel they right her from; those of a boat that has flooded are told apart.
    private static StabilityTable Levers(StabilityView view, IEnumerable<Condition> conditions, Memo memo) => new(
        "gz", null, ["condition", "heel_deg", "gz_m", "draught_m", "trim_deg", "flooded"],
        [
            .. conditions.Select(condition => FloatingFacts.Of(view, condition, memo)).SelectMany(facts =>
                (facts.Floating?.Port.Points.Reverse() ?? []).Select(point => Row(view, facts, facts.Port, point))
                    .Concat((facts.Floating?.Starboard.Points.Skip(1) ?? []).Select(point => Row(view, facts, facts.Starboard, point)))),
        ]);

    private static IReadOnlyList<object?> Row(StabilityView view, FloatingFacts facts, RightingFeatures? side, RightingPoint point) =>
    [
        facts.Condition.Id, Math.Round(point.HeelDeg, 3), point.GzM, point.Attitude.DraughtM, point.Attitude.TrimDeg,
        FloodedLevers.At(view.Boat, side, point.HeelDeg) switch { true => "yes", false => "no", null => null },
    ];

    private static StabilityTable CrossCurvesOf(StabilityView view)
    {
        if (view.Bodies.Hull is not { } hull || HydrostaticView.RowsOf(view, DisplayUnits.Metric) is not { } rows)
        {
            return new StabilityTable("kn", null, ["displacement_kg", "heel_deg", "kn_m"], []);
        }

        double kg = view.Weight.Total?.Centre.ZM ?? (hull.Lowest.ZM + hull.Highest.ZM) / 2;
        bool isUneven = view.Boat.All<HullLines>().Any(lines => lines.StarboardStations.Count > 0);
        ImmutableArray<double> heels = isUneven ? [.. Heels.Reverse().Select(heel => -heel), .. Heels] : [.. Heels];
        ImmutableArray<CrossCurve> curves = CrossCurves.Calculate("hull", hull, view.WaterKgPerM3, kg, [.. rows.Where(row => row.DraughtM >= LeastDraughtFraction * rows[^1].DraughtM).Select(row => row.DisplacementKg)], heels);
        return new StabilityTable(
            "kn", kg, ["displacement_kg", "heel_deg", "kn_m"],
            [.. curves.SelectMany(curve => curve.Points.Select(point => (IReadOnlyList<object?>)[curve.DisplacementKg, point.HeelDeg, point.KnM]))]);
    }

    private static string Cell(object? value) => value switch
    {
        double number when double.IsFinite(number) => number.ToString("R", CultureInfo.InvariantCulture),
        string text => text,
        _ => "",
    };

    private static JsonNode? Node(object? value) => value switch
    {
        double number when double.IsFinite(number) => JsonValue.Create(number),
        string text => JsonValue.Create(text),
        _ => null,
    };
}
