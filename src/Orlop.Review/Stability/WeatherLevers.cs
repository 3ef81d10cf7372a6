using System.Collections.Immutable;
using Orlop.Boat.Things;
using Orlop.Hull.Criteria;
using Orlop.Hull.Floating;
using Orlop.Hull.Hydrostatics;

namespace Orlop.Review.Stability;

/// <summary>The weather criterion as the owner's figures and her form have it.</summary>
internal static class WeatherLevers
{
    /// <summary>The criterion with the wind heeling her to one side; null where she does not float upright with a waterline.</summary>
    /// <param name="view">The boat.</param>
    /// <param name="basis">What she is judged by; area and centre of what the wind meets are given.</param>
    /// <param name="loaded">Her condition.</param>
    /// <param name="boat">The boat as it is floated.</param>
    /// <param name="side">1 for starboard, -1 for port.</param>
    public static WeatherCriterionResult? Of(StabilityView view, StabilityBasis basis, LoadedBoat loaded, FloatingInput boat, int side)
    {
        ImmutableArray<Opening> openings = view.OpeningsIn(loaded.Condition);
        RightingCurve leeward = Levers.To(side, boat, openings), windward = Levers.To(-side, boat, openings);
        if (leeward.Points.IsEmpty || view.Bodies.Hull is not { } hull)
        {
            return null;
        }

        Attitude upright = leeward.Points[0].Attitude;
        ImmersedPart part = Submersion.Calculate(hull, upright);
        double keel = hull.Lowest.ZM, draught = (upright.WaterHeightM(0.5 * (hull.Lowest.XM + hull.Highest.XM), 0) ?? double.NaN) - keel;
        double lever = basis.WindCentreM!.Value - (keel + (0.5 * draught));
        if (!(part.WaterlineLengthM > 0) || !(draught > 0) || !(lever > 0))
        {
            return null;
        }

        double? edge = Levers.To(side, boat, DeckEdge.Of(view.Boat)).Features.DownfloodingDeg;
        return WeatherCriterion.Check(new WeatherInput
        {
            Leeward = leeward,
            Windward = windward,
            WindAreaM2 = basis.WindAreaM2!.Value,
            WindLeverM = lever,
            DeckEdgeDeg = edge is { } heel && heel != 0 ? Math.Abs(heel) : null,
            Roll = new RollbackInput
            {
                Subject = loaded.Condition.Title,
                WaterlineLengthM = part.WaterlineLengthM,
                BeamM = hull.Highest.YM - hull.Lowest.YM,
                DraughtM = draught,
                BlockCoefficient = Math.Min(1, part.VolumeM3 / (part.WaterlineLengthM * part.WaterlineBreadthM * draught)),
                KgM = boat.CentreOfGravity.ZM - keel,
                GmM = leeward.InitialGmM!.Value,
                Bilge = basis.BilgeKeelAreaM2 is { Value: > 0 } ? BilgeShape.Keels : basis.IsSharpBilge == true ? BilgeShape.Sharp : BilgeShape.Round,
                KeelAreaM2 = basis.BilgeKeelAreaM2?.Value ?? 0,
            },
        });
    }
}
