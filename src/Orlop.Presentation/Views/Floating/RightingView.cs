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

/// <summary>The side on which a number of the levers is worse.</summary>
public enum WorseSide { Starboard, Port }

/// <summary>The levers to one side.</summary>
/// <param name="IsPort">Which side it is.</param>
/// <param name="Points">The levers, as if no water came in.</param>
/// <param name="Features">What is read from them.</param>
/// <param name="FloodingTitle">What goes under first; null where nothing does.</param>
/// <param name="Greatest">The greatest lever before water comes in, with its heel; null where there is none.</param>
public sealed record RightingSide(bool IsPort, ImmutableArray<LeverPoint> Points, RightingFeatures Features, string? FloodingTitle, (double LeverM, double HeelDeg)? Greatest)
{
    /// <summary>"port" or "starboard".</summary>
    public string Name => IsPort ? "port" : "starboard";
}

/// <summary>The righting levers of a boat in a condition, to both sides, with what is read from them and what they are held against.</summary>
/// <param name="Starboard">Levers to starboard.</param>
/// <param name="Port">Levers to port.</param>
/// <param name="IsPortDrawn">Port is the side that is drawn alone, and that criteria and heeling levers are for.</param>
/// <param name="ShorterRange">The side where the range is shorter; null where both are alike.</param>
/// <param name="SmallerLever">The side where the greatest lever before water comes in is smaller; null where both are alike.</param>
/// <param name="Criteria">Those of the rules she is held against that can be drawn.</param>
/// <param name="Heeling">What heels her in those rules, with its own curve, to the side drawn.</param>
public sealed record RightingView(
    RightingSide Starboard, RightingSide Port, bool IsPortDrawn, WorseSide? ShorterRange, WorseSide? SmallerLever, ImmutableArray<DrawnCriterion> Criteria, ImmutableArray<HeelingLever> Heeling)
{
    // Nearer than they are printed.
    private const double SameRangeDeg = 0.05;
    private const double SameLeverM = 0.0005;

    /// <summary>The side that is drawn alone.</summary>
    public RightingSide Drawn => IsPortDrawn ? Port : Starboard;

    /// <summary>By what a side is the worse one: "shorter range and smaller greatest lever"; empty where it is in nothing.</summary>
    public string WorseBy(bool isPort)
    {
        WorseSide side = isPort ? WorseSide.Port : WorseSide.Starboard;
        return string.Join(" and ", [.. ShorterRange == side ? new[] { "shorter range" } : [], .. SmallerLever == side ? new[] { "smaller greatest lever" } : []]);
    }

    /// <summary>"To starboard: shorter range", "To port".</summary>
    public string Named(bool isPort) => $"To {(isPort ? "port" : "starboard")}{(WorseBy(isPort) is { Length: > 0 } why ? $": {why}" : "")}";

    /// <summary>What a chart of one side alone says of both: "to starboard: shorter range; smaller greatest lever to port".</summary>
    public string Title => $"to {Drawn.Name}{(WorseBy(IsPortDrawn) is { Length: > 0 } why ? $": {why}" : "")}{(WorseBy(!IsPortDrawn) is { Length: > 0 } other ? $"; {other} to {(IsPortDrawn ? Starboard : Port).Name}" : "")}";

    /// <summary>The levers, with the side drawn where the range is shorter; null where there are none.</summary>
    public static RightingView? Of(StabilityView view, FloatingFacts facts)
    {
        ArgumentNullException.ThrowIfNull(facts);
        return Of(view, facts, facts.IsPortShorter);
    }

    /// <summary>The levers with one side drawn; null where there are none.</summary>
    public static RightingView? Of(StabilityView view, FloatingFacts facts, bool isPort)
    {
        ArgumentNullException.ThrowIfNull(view);
        if (facts is not { Floating: { } floating, Starboard: { } starboard, Port: { } port, Loaded.Total: { } total })
        {
            return null;
        }

        return new RightingView(
            Side(view.Boat, floating.Starboard, starboard, isPort: false, total),
            Side(view.Boat, floating.Port, port, isPort: true, total),
            isPort,
            Worse(RangeText.Deg(port), RangeText.Deg(starboard), SameRangeDeg),
            Worse(FloatingBoat.GreatestLeverM(floating.Port), FloatingBoat.GreatestLeverM(floating.Starboard), SameLeverM),
            view.Basis?.Rules.Contains(StabilityRule.GeneralIntact) == true ? DrawnOn(isPort ? floating.Port : floating.Starboard, isPort ? port : starboard) : [],
            [.. HeelingLevers.Of(view, facts.Condition, isPort ? -1 : 1)]);
    }

    private static WorseSide? Worse(double port, double starboard, double same) => Math.Abs(port - starboard) > same ? port < starboard ? WorseSide.Port : WorseSide.Starboard : null;

    private static RightingSide Side(BoatModel boat, RightingCurve curve, RightingFeatures features, bool isPort, WeightTotal total)
    {
        int side = isPort ? -1 : 1;
        return new RightingSide(
            isPort, [.. curve.Points.Select(point => new LeverPoint(point.HeelDeg, side * point.GzM, point.GzSlopes.Deviation(total) is var deviation && double.IsFinite(deviation) ? deviation : null))], features,
            features.DownfloodingOpening is { } opening ? boat.Find(opening)?.Title ?? opening : null,
            FloatingBoat.GreatestLever(curve));
    }

    private static ImmutableArray<DrawnCriterion> DrawnOn(RightingCurve curve, RightingFeatures features)
    {
        double flooding = Math.Abs(features.DownfloodingDeg ?? double.PositiveInfinity);
        (double to30, double to40) = (Math.Min(30, flooding), Math.Min(40, flooding));
        return
        [
            .. GeneralCriteria.Check(curve).Select(result => result.Id switch
            {
                "area-to-30" => Of(result, 0, to30, "MRad"),
                "area-30-to-40" => Of(result, to30, to40, "MRad"),
                "lever-at-30" => Of(result, 30, 90, "M"),
                _ => null,
            }).OfType<DrawnCriterion>(),
        ];
    }

    private static DrawnCriterion Of(CriterionResult result, double fromDeg, double toDeg, string suffix) =>
        new(result.Id, result.Subject, fromDeg, toDeg, result.Value, result.Least, suffix, result.Source);
}
