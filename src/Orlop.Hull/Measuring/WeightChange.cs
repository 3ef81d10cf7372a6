namespace Orlop.Hull.Measuring;

/// <summary>What became of one item: put aboard (nothing before), taken off (nothing now), moved or changed.</summary>
/// <param name="Was">As it was when the total was known; null when it is new.</param>
/// <param name="Now">As it is; null when it is gone.</param>
public sealed record WeightChange(LedgerItem? Was, LedgerItem? Now)
{
    /// <summary>The same thing before and after, moved, or more or fewer of the same pieces: each weighs what it weighed, so one error makes both heavier or lighter.</summary>
    public bool IsOneThing => Was is not null && Now is not null && IsSame(Was.MassKg / Was.PieceCount, Now.MassKg / Now.PieceCount) && IsSame(Was.MassDeviationKg / Was.PieceCount, Now.MassDeviationKg / Now.PieceCount);

    private static bool IsSame(double one, double other) => Math.Abs(one - other) <= 1e-12 * Math.Abs(one);
}
