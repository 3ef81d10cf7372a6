using System.Collections.Immutable;
using Orlop.Boat.Things;
using Orlop.Hull.Surfaces;
using Orlop.Review.Findings;
using static Orlop.Review.Stability.StabilityLines;

namespace Orlop.Review.Stability.Checks;

/// <summary>A tank that is a box has room for it inside the hull.</summary>
public sealed class TankInsideHullCheck : ICheck<StabilityView>
{
    // A box that touches the plating as measured may cross it by this share.
    private const double OutsideFraction = 0.01;

    public CheckDescription Description { get; } = new(
        "tank-inside-hull",
        "Tank lies inside the hull",
        "Each tank that the hull does not side: unknown where more than a hundredth of its box lies outside the hull to its deck, or outside her length and breadth where it stands on deck (our rule, no source).",
        []);

    public IEnumerable<Finding> Run(StabilityView view) =>
        view.Bodies.Hull is not { } hull ? [] : view.Boat.All<Tank>().Where(tank => !tank.IsHullSided).Select(tank => Judge(tank, hull));

    private Finding Judge(Tank tank, TriangleMesh hull)
    {
        Point3 low = WeightLedger.At(tank.From), high = WeightLedger.At(tank.To);
        BoxCutResult cut = BoxCut.Calculate(tank.Title, hull, low, high);
        bool standsOnDeck = cut.Status == BoxCutStatus.Outside && low.ZM > (hull.Lowest.ZM + hull.Highest.ZM) / 2
            && low.XM >= hull.Lowest.XM && high.XM <= hull.Highest.XM && low.YM >= hull.Lowest.YM && high.YM <= hull.Highest.YM;
        ImmutableArray<FindingInput> inputs = [new FindingInput(tank.Id, "from"), new FindingInput(tank.Id, "to"), new FindingInput(tank.Id, "isHullSided")];
        double outside = Math.Round(1 - cut.InsideFraction, 3);
        WorkingLine working = new("Outside", "share of its box outside the hull to its deck", new Amount(outside, "Fraction"), "box cut by the hull's surface; the skin has no thickness");
        return outside > OutsideFraction && !standsOnDeck
            ? Unknown(Description, tank.Id, null, Sentence.Of($"{tank.Title}: {new Amount(outside, "Fraction")} of its box lies outside the hull, so what it holds and where cannot be told: correct its corners, or say that the hull is its side"), inputs) with { Working = [working] }
            : new Finding
            {
                CheckId = Description.Id,
                SubjectId = tank.Id,
                Verdict = Verdict.Holds,
                Headline = standsOnDeck ? Sentence.Of($"{tank.Title} stands on deck") : Sentence.Of($"{tank.Title} lies inside the hull"),
                Working = [working],
                Inputs = inputs,
                Caution = Caution,
            };
    }
}
