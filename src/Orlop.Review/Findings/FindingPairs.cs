using System.Collections.Immutable;

namespace Orlop.Review.Findings;

/// <summary>Matches findings before and after, by check and subject.</summary>
public static class FindingPairs
{
    // Uses that differ by less than this are the same: rounding, not the alteration.
    private const double SameUseFraction = 1e-6;

    /// <summary>Groups the findings of each boat over its conditions, pairs the groups and orders them as they are shown.</summary>
    public static ImmutableArray<PairedFinding> Of(IEnumerable<Finding> before, IEnumerable<Finding> after)
    {
        Dictionary<(string Check, string Subject), FindingGroup> was = Groups(before), becomes = Groups(after);
        return InOrder(was.Keys.Union(becomes.Keys)
            .Select(key => Pair(key.Check, key.Subject, was.GetValueOrDefault(key), becomes.GetValueOrDefault(key))));
    }

    /// <summary>The pairs as they are in one condition, in order, with what is the same in all; a pair of which nothing is judged there is left out.</summary>
    public static ImmutableArray<PairedFinding> In(string conditionId, IEnumerable<PairedFinding> pairs)
    {
        IEnumerable<Finding> There(FindingGroup? group) => group is null ? [] : group.All.Where(finding => finding.ConditionId is null || finding.ConditionId == conditionId);
        PairedFinding[] all = [.. pairs];
        return Of(all.SelectMany(pair => There(pair.Before)), all.SelectMany(pair => There(pair.After)));
    }

    /// <summary>Pairs in the order they are shown.</summary>
    internal static ImmutableArray<PairedFinding> InOrder(IEnumerable<PairedFinding> pairs) =>
    [
        .. pairs.OrderBy(pair => pair.Change)
            .ThenByDescending(pair => Verdicts.Weight(pair.Shown.Verdict))
            .ThenByDescending(pair => Verdicts.GravityOf(pair.Shown))
            .ThenBy(pair => pair.CheckId, StringComparer.Ordinal)
            .ThenBy(pair => pair.SubjectId, StringComparer.Ordinal),
    ];

    private static Dictionary<(string Check, string Subject), FindingGroup> Groups(IEnumerable<Finding> findings) => findings
        .GroupBy(finding => (finding.CheckId, finding.SubjectId))
        .ToDictionary(group => group.Key, group =>
        {
            ImmutableArray<Finding> all =
            [
                .. group.OrderByDescending(finding => Verdicts.Weight(finding.Verdict))
                    .ThenByDescending(finding => finding.IsFlooding)
                    .ThenByDescending(Verdicts.GravityAmongAlike)
                    .ThenBy(finding => finding.ConditionId, StringComparer.Ordinal),
            ];
            return new FindingGroup(all[0], all);
        });

    private static PairedFinding Pair(string check, string subject, FindingGroup? before, FindingGroup? after) =>
        new(check, subject, ChangeOf(before, after), before, after);

    // The worst of all conditions tells the change, unless it hides one that fails only now.
    private static Change ChangeOf(FindingGroup? before, FindingGroup? after) =>
        after is not null && after.All.Any(finding => FailsOnlyNow(before, finding)) ? Change.NewTrouble : ChangeOf(before?.Worst, after?.Worst);

    private static bool FailsOnlyNow(FindingGroup? before, Finding after) =>
        after.Verdict == Verdict.Fails && before?.All.Any(finding => finding.ConditionId == after.ConditionId && finding.Verdict == Verdict.Fails) != true;

    private static Change ChangeOf(Finding? before, Finding? after)
    {
        if (after is null)
        {
            return Change.Gone;
        }

        int was = before is null ? 0 : Verdicts.Weight(before.Verdict), becomes = Verdicts.Weight(after.Verdict);
        bool isTrouble = after.Verdict is Verdict.Fails or Verdict.Tight;
        bool wasTrouble = before?.Verdict is Verdict.Fails or Verdict.Tight;
        double moved = Verdicts.GravityAmongAlike(after) - (before is null ? 0 : Verdicts.GravityAmongAlike(before));
        return (isTrouble, wasTrouble) switch
        {
            (true, false) => Change.NewTrouble,
            (true, true) when becomes == was && after.IsFlooding != before!.IsFlooding => after.IsFlooding ? Change.Worse : Change.Better,
            (true, true) when becomes > was || (becomes == was && moved > SameUseFraction) => Change.Worse,
            (true, true) when becomes < was || moved < -SameUseFraction => Change.Better,
            (true, true) => Change.AsBefore,
            (false, _) when after.Verdict == Verdict.Unknown => before?.Verdict == Verdict.Unknown ? Change.AsBefore : Change.Unknown,
            (false, true) => Change.Better,
            _ => before?.Verdict == Verdict.Unknown ? Change.Better : Change.Holds,
        };
    }
}
