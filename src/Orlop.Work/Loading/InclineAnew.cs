using Orlop.Boat;
using Orlop.Boat.Alterations;
using Orlop.Boat.Things;
using Orlop.Hull.Floating;
using Orlop.Review;
using Orlop.Review.Findings;
using Orlop.Review.Practices;
using Orlop.Review.Stability;
using Orlop.Review.Stability.Checks;

namespace Orlop.Work.Loading;

/// <summary>That a boat is to be inclined anew when the work is done, as the check on what changed since the latest test asks.</summary>
/// <param name="Asks">What changed since the test, as the finding says it.</param>
/// <param name="MomentKgM">The moment of weights moved to one side that heels her to <see cref="HeelDeg"/>, no tank slack; null where it cannot be told.</param>
public sealed record InclineAnew(Sentence Asks, double? MomentKgM)
{
    /// <summary>The heel of the largest shift to aim at, between the 2° and 4° of 2008 IS Code annex 1.</summary>
    public const double HeelDeg = 3;

    /// <summary>Null where the check does not ask for it. Tests that were made since the work began count as its own, and do not take the asking away.</summary>
    internal static InclineAnew? Of(BoatModel asAltered, Alteration alteration, Condition? condition)
    {
        DateOnly? begun = alteration.Edits.Select(edit => edit.BuiltOn).Concat(alteration.Ticks.Select(tick => (DateOnly?)tick.On)).Min();
        BoatModel altered = AlteredBoat.Holding(asAltered, alteration);
        BoatModel boat = begun is not { } first ? altered : altered.WithThings(altered.Things.Where(thing => thing is not BerthTest test || !(test.On >= first)));
        Memo memo = new();
        StabilityView view = new(boat, Practice.Of(boat, memo), memo);
        if (new DriftCheck().Run(view).FirstOrDefault(finding => finding.Verdict == Verdict.Fails) is not { } drifted)
        {
            return null;
        }

        StabilityView? pressed = condition is null ? null : new StabilityView(PressedTanks.Of(boat, condition).Boat, view.Practice, memo);
        bool isAfloat = pressed?.LoadedIn(condition!).Missing.IsEmpty == true;
        return new InclineAnew(drifted.Headline, isAfloat && pressed!.FloatingIn(condition!)?.Rest is { Status: FloatingStatus.Floats, MassKg: var mass, Position: { MetacentricHeightM: > 0 and var gm } }
            ? mass * gm * Math.Tan(HeelDeg * Math.PI / 180) : null);
    }
}
