using System.Collections.Immutable;
using Orlop.Boat;
using Orlop.Boat.Things;
using Orlop.Hull.Criteria;
using Orlop.Hull.Floating;
using Orlop.Review.Stability;

namespace Orlop.Presentation.Views.Floating;

/// <summary>A point of a curve of righting levers: a lever above 0 turns her back upright, to either side.</summary>
/// <param name="HeelDeg">Heel, starboard positive.</param>
/// <param name="LeverM">The lever.</param>
/// <param name="DeviationM">One standard deviation; null where it was not asked for or cannot be told.</param>
public sealed record LeverPoint(double HeelDeg, double LeverM, double? DeviationM = null);

/// <summary>A criterion on the levers, to be drawn into them.</summary>
/// <param name="Id">Its short name.</param>
/// <param name="Subject">What is asked.</param>
/// <param name="FromDeg">Heel it begins at, without sign.</param>
/// <param name="ToDeg">Heel it ends at, without sign.</param>
/// <param name="Value">What was found, in <paramref name="Unit"/>; null when it could not be.</param>
/// <param name="Least">The least that is asked.</param>
/// <param name="Unit">Unit suffix of both.</param>
/// <param name="Source">Document and clause.</param>
public sealed record DrawnCriterion(string Id, string Subject, double FromDeg, double ToDeg, double? Value, double Least, string Unit, string Source);

/// <summary>The levers to one side.</summary>
public sealed record RightingSide(bool IsPort, ImmutableArray<LeverPoint> Points, RightingFeatures Features, string? FloodingTitle)
{
    /// <summary>"port" or "starboard".</summary>
    public string Name => IsPort ? "port" : "starboard";
}

/// <summary>The righting levers of a boat in a condition, to both sides, with what is read from them and what they are held against.</summary>
/// <param name="Starboard">Levers to starboard.</param>
/// <param name="Port">Levers to port.</param>
/// <param name="IsPortWeaker">Port is the side to judge by.</param>
/// <param name="Criteria">Those of the rules she is held against that can be drawn.</param>
public sealed record RightingView(RightingSide Starboard, RightingSide Port, bool IsPortWeaker, ImmutableArray<DrawnCriterion> Criteria)
{
    private const double BandStepDeg = 10;

    /// <summary>The side to judge by.</summary>
    public RightingSide Weaker => IsPortWeaker ? Port : Starboard;

    /// <summary>The levers; null where there are none.</summary>
    /// <param name="withBand">Work out how sure the weaker side's levers are: eight more curves.</param>
    public static RightingView? Of(StabilityView view, FloatingFacts facts, bool withBand)
    {
        if (facts is not { Floating: { } floating, Starboard: { } starboard, Port: { } port })
        {
            return null;
        }

        Func<double, double?> band = withBand ? Band(facts) : _ => null;
        return new RightingView(
            Side(view.Boat, floating.Starboard, starboard, isPort: false, facts.IsPortWeaker ? _ => null : band),
            Side(view.Boat, floating.Port, port, isPort: true, facts.IsPortWeaker ? band : _ => null),
            facts.IsPortWeaker,
            view.Basis?.Rules.Contains(StabilityRule.GeneralIntact) == true && facts.WeakerCurve is { } curve ? Drawn(curve, facts.Weaker!) : []);
    }

    private static RightingSide Side(BoatModel boat, RightingCurve curve, RightingFeatures features, bool isPort, Func<double, double?> band)
    {
        int side = isPort ? -1 : 1;
        return new RightingSide(
            isPort, [.. curve.Points.Select(point => new LeverPoint(point.HeelDeg, side * point.GzM, band(point.HeelDeg)))], features,
            features.DownfloodingOpening is { } opening ? boat.Find(opening)?.Title ?? opening : null);
    }

    // The band at ten-degree steps; straight between them.
    private static Func<double, double?> Band(FloatingFacts facts)
    {
        RightingCurve weaker = facts.WeakerCurve!;
        double last = Math.Abs(weaker.Points[^1].HeelDeg), reach = Math.Min(last, (Math.Ceiling(Math.Abs(facts.Weaker?.VanishingDeg ?? last) / BandStepDeg) + 1) * BandStepDeg);
        int side = facts.IsPortWeaker ? -1 : 1;
        Dictionary<FloatingInput, RightingCurve> curves = [];
        RightingCurve Curve(FloatingInput input) => curves.TryGetValue(input, out RightingCurve? known) ? known
            : curves[input] = RightingCurve.Calculate(new RightingInput { Boat = input, ToDeg = side * reach, StepDeg = BandStepDeg });
        int count = (int)Math.Floor(reach / BandStepDeg);
        double[] deviations = [.. Enumerable.Range(0, count + 1).Select(index => ResultDeviation.Of(facts.Loaded, input => Curve(input).Points.ElementAtOrDefault(index)?.GzM))];
        return heelDeg =>
        {
            double at = Math.Abs(heelDeg) / BandStepDeg;
            int before = (int)Math.Floor(at);
            double? deviation = before == at && before < deviations.Length ? deviations[before]
                : before + 1 < deviations.Length ? deviations[before] + ((at - before) * (deviations[before + 1] - deviations[before])) : null;
            return deviation is { } value && double.IsFinite(value) ? value : null;
        };
    }

    private static ImmutableArray<DrawnCriterion> Drawn(RightingCurve curve, RightingFeatures features)
    {
        double flooding = Math.Abs(features.DownfloodingDeg ?? double.PositiveInfinity);
        (double to30, double to40) = (Math.Min(30, flooding), Math.Min(40, flooding));
        return
        [
            .. GeneralCriteria.Check(curve).Select(result => result.Id switch
            {
                "area-to-30" => Drawn(result, 0, to30, "MRad"),
                "area-30-to-40" => Drawn(result, to30, to40, "MRad"),
                "lever-at-30" => Drawn(result, 30, 90, "M"),
                _ => null,
            }).OfType<DrawnCriterion>(),
        ];
    }

    private static DrawnCriterion Drawn(CriterionResult result, double fromDeg, double toDeg, string suffix) =>
        new(result.Id, result.Subject, fromDeg, toDeg, result.Value, result.Least, suffix, result.Source);
}
