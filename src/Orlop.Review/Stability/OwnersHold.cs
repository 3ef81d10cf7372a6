using Orlop.Boat.Things;
using Orlop.Hull.Floating;
using Orlop.Review.Findings;
using Orlop.Review.Practices;
using static Orlop.Review.Stability.StabilityLines;

namespace Orlop.Review.Stability;

/// <summary>Holds a result of every condition against a limit that the owner set; where there is nothing to float, says so in one way. Nothing where none is set, or where she capsizes or goes under.</summary>
internal static class OwnersHold
{
    /// <summary>The findings, one a condition; none where the owner set no such limit.</summary>
    /// <param name="check">Which check.</param>
    /// <param name="view">The boat.</param>
    /// <param name="what">What cannot be told without a hull or a weight: "her list".</param>
    /// <param name="judge">The finding of a condition in which she comes to rest.</param>
    public static IEnumerable<Finding> Run(CheckDescription check, StabilityView view, string what, Func<LoadedBoat, FloatingPosition, Finding> judge)
    {
        if (check.LimitIds.All(id => view.Practice?.Find(id) is null))
        {
            yield break;
        }

        foreach (Condition condition in view.Conditions)
        {
            LoadedBoat loaded = view.LoadedIn(condition);
            // That she capsizes or goes under is one finding, which names what the owner wants kept.
            if (view.FloatingIn(condition) is { } lost && Ending.IsLost(lost.Rest))
            {
                continue;
            }

            yield return view.FloatingIn(condition) switch
            {
                null => WhyUnknown.Of(check, view, loaded, what),
                { Rest: { Status: FloatingStatus.Floats, Position: { } at } } => judge(loaded, at),
                _ => Judged(check, WhyUnknown.SubjectOf(view), loaded, Verdict.Unknown, null, Sentence.Of($"{Begun(what)} {Electrics.FindingLines.In(condition)} cannot be told: no position of rest was found"), []),
            };
        }
    }

    /// <summary>The limits on how she lies at rest that the owner set, as lines of working of a loading in which none of them can be kept.</summary>
    public static IEnumerable<WorkingLine> Lost(StabilityView view) =>
        from wanted in new (string Id, string Name, string Suffix)[] { (LimitIds.MostListDeg, "list at most", "Deg"), (LimitIds.MostTrimDeg, "trim at most", "Deg"), (LimitIds.LeastGmM, "GM at least", "M"), (LimitIds.LeastFreeboardM, "freeboard at least", "M") }
        let limit = view.Practice?.Find(wanted.Id)
        where limit is not null
        select new WorkingLine("Not kept either", $"the owner's own limit, {wanted.Name}", new Amount(limit.Value, wanted.Suffix), limit.Source);

    /// <summary>A result held against the owner's limit.</summary>
    public static Finding Held(CheckDescription check, StabilityView view, LoadedBoat loaded, Banded banded, Limit limit, bool isMost, string unit, Sentence found, IEnumerable<WorkingLine> working)
    {
        Verdict verdict = isMost ? banded.AtMost(limit.Value) : banded.AtLeast(limit.Value);
        Sentence asked = Sentence.Of($"{found}, {(isMost ? "at most" : "at least")} {Measure(limit.Value, unit)} wanted");
        return Judged(
            check, WhyUnknown.SubjectOf(view), loaded, verdict, isMost ? banded.UseAtMost(limit.Value) : banded.UseAtLeast(limit.Value),
            verdict == Verdict.Unknown ? Sentence.Of($"{asked}, {Unsure(view, loaded, banded, unit, limit.Value)}") : asked,
            [.. working, BandLine(banded, unit), LimitLine(limit, unit)]);
    }

    private static WorkingLine LimitLine(Limit limit, string unit) => Line(new Hull.Working.WorkingStep(limit.Id, "limit", limit.Value, unit, limit.Source));
}
