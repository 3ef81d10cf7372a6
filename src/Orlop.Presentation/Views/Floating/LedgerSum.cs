using Orlop.Hull.Measuring;

namespace Orlop.Presentation.Views.Floating;

/// <summary>What a sum of the weight ledger is of.</summary>
public enum SumKind { Listed, Rest, Whole }

/// <summary>A sum of the weight ledger, liquids in tanks with it; null is not known.</summary>
/// <param name="Kind">Of what.</param>
/// <param name="MassKg">Mass.</param>
/// <param name="DeviationKg">One standard deviation of the mass; the rest has none of its own.</param>
/// <param name="XM">Its centre, forward of the after perpendicular.</param>
/// <param name="YM">Its centre, to port of the centre line.</param>
/// <param name="ZM">Its centre, above the base line.</param>
/// <param name="How">How it is known, in words.</param>
public sealed record LedgerSum(SumKind Kind, double? MassKg, double? DeviationKg, double? XM, double? YM, double? ZM, string How)
{
    /// <summary>What it is called.</summary>
    public string Title => Kind switch
    {
        SumKind.Listed => "Listed and in tanks",
        SumKind.Rest => "All the rest: hull, ballast, what nobody listed",
        _ => "The whole boat",
    };

    internal static LedgerSum Of(SumKind kind, WeightTotal total, string how) =>
        new(kind, total.MassKg, total.MassDeviationKg, total.Centre.XM, total.Centre.YM, total.Centre.ZM, how);
}
