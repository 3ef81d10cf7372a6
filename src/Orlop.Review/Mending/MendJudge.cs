using System.Collections.Frozen;
using System.Collections.Immutable;
using Orlop.Boat;
using Orlop.Review.Electrics;
using Orlop.Review.Findings;

namespace Orlop.Review.Mending;

/// <summary>
/// Judges a boat with changes by the true review of her electrics, beside the draft they start from: what is to be cleared must hold or be tight, and
/// nothing else may newly fail or newly be unknown.
/// </summary>
internal sealed class MendJudge
{
    private readonly ReviewEngine _engine;
    private readonly FrozenDictionary<(string, string), Verdict> _before;
    private readonly CancellationToken _token;

    public MendJudge(ReviewEngine engine, BoatModel draft, CancellationToken token)
    {
        (_engine, _token) = (engine, token);
        Before = Findings(draft);
        _before = Before.ToFrozenDictionary(finding => (finding.CheckId, finding.SubjectId), finding => finding.Verdict);
    }

    /// <summary>The worst finding of each check on each subject of the draft.</summary>
    public ImmutableArray<Finding> Before { get; }

    /// <summary>An engine of the electrics alone.</summary>
    public static ReviewEngine NewEngine() => new([new ElectricsDiscipline()]);

    /// <summary>The worst finding of each check on each subject.</summary>
    public ImmutableArray<Finding> Findings(BoatModel boat) => [.. _engine.Review(boat, _token).Findings.Select(pair => pair.Shown)];

    /// <summary>What stands against a boat; empty for a good one.</summary>
    public ImmutableArray<Objection> Judge(BoatModel boat, IReadOnlySet<(string, string)> targets) =>
        [.. Findings(boat).Where(finding => IsBad(finding, targets)).Select(finding => new Objection(finding))];

    private bool IsBad(Finding finding, IReadOnlySet<(string, string)> targets)
    {
        (string, string) key = (finding.CheckId, finding.SubjectId);
        Verdict? was = _before.TryGetValue(key, out Verdict found) ? found : null;
        return finding.Verdict switch
        {
            Verdict.Fails => targets.Contains(key) || was != Verdict.Fails,
            Verdict.Unknown => targets.Contains(key) || (was != Verdict.Unknown && !IsOfMakingOff(finding.CheckId)),
            _ => false,
        };
    }

    // What lies on a stud in which order is told when it is made.
    private static bool IsOfMakingOff(string checkId) => checkId is "ring-fits-stud" or "stud-stack" or "lug-fits-cable";
}
