using Orlop.Review.Findings;

namespace Orlop.Review.Mending;

/// <summary>A change that clears a finding alone.</summary>
/// <param name="SlotId">What it is of.</param>
/// <param name="Option">The choice.</param>
/// <param name="Verdicts">What the review says with it, by check and subject.</param>
internal sealed record SingleChange(string SlotId, MendOption Option, IReadOnlyDictionary<(string, string), Verdict> Verdicts)
{
    /// <summary>It is a change of the same kind, costs and weighs as much or more, and no finding reads better with it.</summary>
    public bool IsNoBetterThan(SingleChange other) =>
        SlotId == other.SlotId && Option.Traits.Route == other.Option.Traits.Route && Option.Traits.Means == other.Option.Traits.Means && Option.Traits.Circuit == other.Option.Traits.Circuit
        && Option.Cost.PriceMoney >= other.Option.Cost.PriceMoney && Option.Cost.AddedKg >= other.Option.Cost.AddedKg
        && Verdicts.Keys.Concat(other.Verdicts.Keys).All(key => RankOf(Verdicts, key) >= RankOf(other.Verdicts, key));

    // From best to worst; what nothing is said of is as good as what holds.
    private static int RankOf(IReadOnlyDictionary<(string, string), Verdict> verdicts, (string, string) key) => verdicts.TryGetValue(key, out Verdict verdict)
        ? verdict switch { Verdict.Holds => 0, Verdict.Tight => 1, Verdict.Unknown => 2, _ => 3 }
        : 0;
}
