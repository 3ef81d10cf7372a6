using System.Collections.Immutable;
using Orlop.Boat;
using Orlop.Boat.Things;
using Orlop.Hull.Criteria;
using Orlop.Hull.Floating;
using Orlop.Hull.Measuring;
using Orlop.Review.Stability;

namespace Orlop.Presentation.Views.Floating;

/// <summary>A point of a curve of righting levers: a lever above 0 turns her back upright, to either side.</summary>
/// <param name="HeelDeg">Heel, starboard positive.</param>
/// <param name="LeverM">The lever.</param>
/// <param name="DeviationM">One standard deviation; null where it cannot be told.</param>
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
/// <param name="Heeling">What heels her in those rules, with its own curve, to the weaker side.</param>
public sealed record RightingView(RightingSide Starboard, RightingSide Port, bool IsPortWeaker, ImmutableArray<DrawnCriterion> Criteria, ImmutableArray<HeelingLever> Heeling)
{
    /// <summary>The side to judge by.</summary>
    public RightingSide Weaker => IsPortWeaker ? Port : Starboard;

    /// <summary>The levers; null where there are none.</summary>
    public static RightingView? Of(StabilityView view, FloatingFacts facts)
    {
        if (facts is not { Floating: { } floating, Starboard: { } starboard, Port: { } port, Loaded.Total: { } total })
        {
            return null;
        }

        return new RightingView(
            Side(view.Boat, floating.Starboard, starboard, isPort: false, total),
            Side(view.Boat, floating.Port, port, isPort: true, total),
            facts.IsPortWeaker,
            view.Basis?.Rules.Contains(StabilityRule.GeneralIntact) == true && facts.WeakerCurve is { } curve ? Drawn(curve, facts.Weaker!) : [],
            [.. HeelingLevers.Of(view, facts.Condition, facts.IsPortWeaker ? -1 : 1)]);
    }

    private static RightingSide Side(BoatModel boat, RightingCurve curve, RightingFeatures features, bool isPort, WeightTotal total)
    {
        int side = isPort ? -1 : 1;
        return new RightingSide(
            isPort, [.. curve.Points.Select(point => new LeverPoint(point.HeelDeg, side * point.GzM, point.GzSlopes.Deviation(total) is var deviation && double.IsFinite(deviation) ? deviation : null))], features,
            features.DownfloodingOpening is { } opening ? boat.Find(opening)?.Title ?? opening : null);
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
