using System.Collections.Immutable;
using Orlop.Boat.Things;
using Orlop.Review.Findings;

namespace Orlop.Review.Stability;

/// <summary>Findings of a boat of which it is not told whether things are what was aboard at a test: judged both ways, as if they came since and as if they had been there as they are. Where the verdicts differ, it is unknown.</summary>
internal static class EitherWay
{
    /// <summary>The findings, believed; those of <paramref name="view"/> where there is nothing untold.</summary>
    public static IEnumerable<Finding> Of(StabilityView view, IReadOnlyDictionary<string, CheckDescription> checks, Func<StabilityView, IEnumerable<Finding>> run)
    {
        Finding[] found = [.. run(view).Select(finding => Believed.Of(view, checks[finding.CheckId], finding))];
        if (view.IfSame is not { } same)
        {
            return found;
        }

        Dictionary<(string, string, string?), Finding> others = run(same).Select(finding => Believed.Of(same, checks[finding.CheckId], finding))
            .GroupBy(KeyOf).ToDictionary(group => group.Key, group => group.MaxBy(finding => Verdicts.Weight(finding.Verdict))!);
        (BerthTest test, ImmutableArray<UntoldThing> things) = view.Untold[0];
        return found.Select(finding => checks[finding.CheckId].RestsOnFloatingDry && others.GetValueOrDefault(KeyOf(finding)) is { } other && Differ(finding.Verdict, other.Verdict) ? Doubted(finding, other, test, things) : finding);
    }

    private static (string, string, string?) KeyOf(Finding finding) => (finding.CheckId, finding.SubjectId, finding.ConditionId);

    // Tight and holding are both within the limit.
    private static bool Differ(Verdict one, Verdict other) => one switch
    {
        Verdict.Unknown => false,
        Verdict.Fails => other != Verdict.Fails,
        _ => other is Verdict.Fails or Verdict.Unknown,
    };

    private static Finding Doubted(Finding finding, Finding other, BerthTest test, ImmutableArray<UntoldThing> things) => finding with
    {
        Verdict = Verdict.Unknown,
        UseFraction = null,
        GravityRatio = finding.UseFraction ?? finding.GravityRatio,
        Headline = Sentence.Of($"{finding.Headline}; but nothing tells whether {UntoldThing.Names(things)} was aboard at {test.Title} as it is now, and if so: {other.Headline}"),
        Inputs = [.. finding.Inputs, new FindingInput(test.Id, "aboard")],
    };
}
