using System.Collections.Frozen;
using System.Collections.Immutable;
using Orlop.Boat;
using Orlop.Review.Electrics;
using Orlop.Review.Findings;

namespace Orlop.Review.Mending;

/// <summary>What is asked of a set of changes.</summary>
/// <param name="Targets">Check and subject of what must neither fail nor be unknown.</param>
/// <param name="IsTightBad">It must not be tight either.</param>
/// <param name="IsNewTightBad">Nothing may become tight that held.</param>
/// <param name="MayBeTight">What may be tight all the same.</param>
internal sealed record MendAsked(IReadOnlySet<(string, string)> Targets, bool IsTightBad, bool IsNewTightBad, IReadOnlySet<(string, string)> MayBeTight);

/// <summary>
/// Judges a boat with changes by the true review of her electrics, beside the draft they start from: what is to be cleared must hold or be tight, and
/// nothing else may newly fail or newly be unknown. Where what is tight is to be cleared too, it must hold.
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
    public ImmutableArray<Finding> Findings(BoatModel boat) => Reviewed(boat, _token);

    /// <summary>The same for a set that was found, also where the search was stopped meanwhile: it was reviewed before, and most of it is remembered.</summary>
    public ImmutableArray<Finding> ToTheEnd(BoatModel boat) => Reviewed(boat, CancellationToken.None);

    private ImmutableArray<Finding> Reviewed(BoatModel boat, CancellationToken token) => [.. _engine.Review(boat, token).Findings.Select(pair => pair.Shown)];

    /// <summary>What does not hold in a boat.</summary>
    public ImmutableArray<Finding> Troubles(BoatModel boat) => [.. Findings(boat).Where(finding => finding.Verdict != Verdict.Holds)];

    /// <summary>What of a boat's troubles stands against her; empty for a good one.</summary>
    public ImmutableArray<Objection> Judge(ImmutableArray<Finding> troubles, MendAsked asked) =>
        [.. troubles.Where(finding => IsBad(finding, asked)).Select(finding => new Objection(finding))];

    private bool IsBad(Finding finding, MendAsked asked)
    {
        (string, string) key = (finding.CheckId, finding.SubjectId);
        Verdict? was = _before.TryGetValue(key, out Verdict found) ? found : null;
        return finding.Verdict switch
        {
            Verdict.Fails => asked.Targets.Contains(key) || (was != Verdict.Fails && !IsPutInOrder(finding.CheckId)),
            Verdict.Unknown => asked.Targets.Contains(key) || (was != Verdict.Unknown && !IsOfMakingOff(finding.CheckId)),
            Verdict.Tight => !asked.MayBeTight.Contains(key) && ((asked.IsTightBad && asked.Targets.Contains(key)) || (asked.IsNewTightBad && was is null or Verdict.Holds)),
            _ => false,
        };
    }

    // Rings that a set leaves in no order are put in order with it (StudOrder).
    private static bool IsPutInOrder(string checkId) => checkId is "stud-stack";

    // What lies on a stud in which order is told when it is made.
    private static bool IsOfMakingOff(string checkId) => checkId is "ring-fits-stud" or "stud-stack" or "lug-fits-cable" or "ends-told";
}
