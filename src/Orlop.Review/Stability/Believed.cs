using Orlop.Review.Findings;

namespace Orlop.Review.Stability;

/// <summary>What holds by its numbers, and may not be believed: she fills where she rests, or her weight is from berth tests that contradict each other, or put her centre where no boat has it. That is one finding of its own; here nothing holds. A criterion that holds of a hull that nobody measured says so.</summary>
internal static class Believed
{
    /// <summary>The finding; unknown in place of holding, with why, where its numbers are not hers.</summary>
    public static Finding Of(StabilityView view, CheckDescription check, Finding finding)
    {
        if (!check.RestsOnFloatingDry || finding.Verdict is not (Verdict.Holds or Verdict.Tight))
        {
            return finding;
        }

        UnderAtRest? under = view.Conditions.FirstOrDefault(condition => condition.Id == finding.ConditionId) is { } condition ? view.UnderAtRestIn(condition) : null;
        return under is not null ? Doubted(finding, Filling(under), under.Asked)
            : view.Weight.Contradiction is { } contradiction ? Doubted(finding, Sentence.Of($"{contradiction.Briefly}, so this cannot be told"), new FindingInput(contradiction.TestId, "aboard"))
            : view.Weight.Impossible is { } impossible ? Doubted(finding, Sentence.Of($"{impossible.Said}, where no boat has it, so this cannot be told"), impossible.Input)
            : check.IsCriterion && view.NotMeasured is { } said ? finding with { Headline = Sentence.Of($"{finding.Headline}; this is of a hull not wholly measured: {said}") }
            : finding;
    }

    private static Sentence Filling(UnderAtRest under) => under switch
    {
        { Fills: true } => Sentence.Of($"{under.Where}: she fills, and this is not hers"),
        _ => Sentence.Of($"{under.Where}, {under.Why}: she may fill, so this cannot be told"),
    };

    private static Finding Doubted(Finding finding, Sentence why, FindingInput? asked) => finding with
    {
        Verdict = Verdict.Unknown,
        UseFraction = null,
        GravityRatio = finding.UseFraction ?? finding.GravityRatio,
        Headline = Sentence.Of($"{finding.Headline}; but {why}"),
        Inputs = asked is null ? finding.Inputs : [.. finding.Inputs, asked],
    };
}
