using System.Collections.Immutable;
using Orlop.Boat;
using Orlop.Boat.Things;
using Orlop.Hull.Floating;
using Orlop.Review;
using Orlop.Review.Findings;
using Orlop.Review.Practices;
using Orlop.Review.Stability;

namespace Orlop.Work.Loading;

/// <summary>How a boat lies with a weight on the hook, and what the review of her stability holds against it.</summary>
/// <param name="HeelDeg">Heel expected at rest, degrees, to starboard positive; null where it cannot be told, or she does not lie steady.</param>
/// <param name="IsLost">A position of rest was looked for, and none that is afloat and steady was found.</param>
/// <param name="Fails">What fails in that condition.</param>
/// <param name="Untold">What cannot be told of it.</param>
internal sealed record LiftingStanding(double? HeelDeg, bool IsLost, ImmutableArray<Finding> Fails, ImmutableArray<Finding> Untold)
{
    private const int MostUntoldLines = 4;

    /// <summary>Of the boat as altered, in one condition alone.</summary>
    public static LiftingStanding Of(BoatModel asAltered, Condition condition, CancellationToken token)
    {
        BoatModel boat = asAltered.WithThings(asAltered.Things.Where(thing => thing is not Condition other || other.Id == condition.Id));
        Memo memo = new();
        Practice? practice = Practice.Of(boat, memo);
        Finding[] found = [.. new StabilityDiscipline().Review(boat, practice, memo, token).Where(finding => finding.ConditionId == condition.Id)];
        StabilityView view = new(boat, practice, memo);
        FloatingResult? rest = view.LoadedIn(condition).Missing.IsEmpty ? view.FloatingIn(condition)?.Rest : null;
        double? heel = rest is { Status: FloatingStatus.Floats, Position: { IsStable: true, IsLoll: false } at } ? at.Attitude.HeelDeg : null;
        return new LiftingStanding(heel, rest is not null && heel is null, [.. found.Where(finding => finding.Verdict == Verdict.Fails)], [.. found.Where(finding => finding.Verdict == Verdict.Unknown)]);
    }

    /// <summary>Nothing of this mass is lifted before what fails is settled: trials and readings with it wait.</summary>
    public bool Waits => IsLost || Fails.Length > 0;

    /// <summary>What the step that lifts says of it.</summary>
    public IEnumerable<Sentence> Words()
    {
        yield return this switch
        {
            { HeelDeg: { } heel } => Sentence.Of($"With it on the hook she is expected to heel {new Amount(Math.Round(Math.Abs(heel), 1), "Deg")} to {(heel < 0 ? "port" : "starboard")}, at rest in still water, as altered."),
            { IsLost: true } => Sentence.Of($"With it on the hook no position was found in which she lies afloat and steady: it is not lifted."),
            _ => Sentence.Of($"How far she heels with it on the hook cannot be told: what is not known below is found out before anything is lifted."),
        };
        foreach (Finding finding in Fails)
        {
            yield return Sentence.Of($"Fails: {finding.Headline}.");
        }

        foreach (Finding finding in Untold.Take(MostUntoldLines))
        {
            yield return Sentence.Of($"Cannot be told: {finding.Headline}.");
        }

        if (Untold.Length > MostUntoldLines)
        {
            yield return Sentence.Of($"And {Untold.Length - MostUntoldLines} more that cannot be told in this condition, under Stability.");
        }

        if (Fails.Length > 0)
        {
            yield return Sentence.Of($"Lift nothing of this mass before what fails is settled.");
        }

        yield return Sentence.Of($"{(Waits ? "Once that is settled, begin with" : "Begin with")} a smaller load: a quarter of it, then a half. Read her heel and look at the lowest edge each time: with the whole she heels about four times, then twice as much. Where it is more than that, or more than is expected, set it down and find out why (common practice, no source).");
    }
}
