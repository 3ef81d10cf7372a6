namespace Orlop.Review.Mending;

/// <summary>What a set is sought to have least of.</summary>
public enum MendAim
{
    /// <summary>The least to pay; of those the fewest changes, then the least mass, then what is nearest to what is there.</summary>
    Cost,

    /// <summary>The least mass added; of those the fewest changes, then the least to pay, then what is nearest to what is there.</summary>
    Mass,
}

/// <summary>What two sets are compared by, in order, in whole hundredths of the currency and whole grams, so that sums are exact.</summary>
internal readonly record struct MendWeight(long Main, long Changes, long Second, long Step) : IComparable<MendWeight>
{
    private const double PerMoney = 100;
    private const double PerKg = 1000;
    private const double PerStep = 1000;

    public static MendWeight Of(MendOption option, MendAim aim)
    {
        long price = (long)Math.Round(option.Cost.PriceMoney * PerMoney), mass = (long)Math.Round(option.Cost.AddedKg * PerKg), step = (long)Math.Round(option.StepFactor * PerStep);
        return aim == MendAim.Cost ? new(price, option.IsKept ? 0 : 1, mass, step) : new(mass, option.IsKept ? 0 : 1, price, step);
    }

    /// <summary>The first figure in money or kilograms.</summary>
    public double MainIn(MendAim aim) => Main / (aim == MendAim.Cost ? PerMoney : PerKg);

    public int CompareTo(MendWeight other) => (Main, Changes, Second, Step).CompareTo((other.Main, other.Changes, other.Second, other.Step));

    public static MendWeight operator +(MendWeight a, MendWeight b) => new(a.Main + b.Main, a.Changes + b.Changes, a.Second + b.Second, a.Step + b.Step);
}
