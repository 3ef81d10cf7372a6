using Orlop.Review.Findings;

namespace Orlop.Review.Mending;

/// <summary>A change that clears a finding alone; of a device that is moved, with the cable that leads on.</summary>
/// <param name="SlotIds">What it is of.</param>
/// <param name="Traits">Of its first choice.</param>
/// <param name="Cost">Of all its choices.</param>
/// <param name="Verdicts">What the review says with it, by check and subject.</param>
internal sealed record SingleChange(string SlotIds, MendTraits Traits, MendCost Cost, IReadOnlyDictionary<(string, string), Verdict> Verdicts)
{
    /// <summary>It is a change of the same kind, costs and weighs as much or more, and no finding reads better with it.</summary>
    public bool IsNoBetterThan(SingleChange other) =>
        SlotIds == other.SlotIds && Traits.Route == other.Traits.Route && Traits.IsMoved == other.Traits.IsMoved && Traits.Means == other.Traits.Means && Traits.Circuit == other.Traits.Circuit
        && Cost.PriceMoney >= other.Cost.PriceMoney && Cost.AddedKg >= other.Cost.AddedKg
        && Verdicts.Keys.Concat(other.Verdicts.Keys).All(key => RankOf(Verdicts, key) >= RankOf(other.Verdicts, key));

    // From best to worst; what nothing is said of is as good as what holds.
    private static int RankOf(IReadOnlyDictionary<(string, string), Verdict> verdicts, (string, string) key) => verdicts.TryGetValue(key, out Verdict verdict)
        ? verdict switch { Verdict.Holds => 0, Verdict.Tight => 1, Verdict.Unknown => 2, _ => 3 }
        : 0;
}
