using Orlop.Hull.Measuring;
using Orlop.Review.Findings;

namespace Orlop.Review.Stability;

/// <summary>A result with one standard deviation, held against a limit with two of them on either side: a band that straddles the limit is unknown.</summary>
/// <param name="Value">The result.</param>
/// <param name="Deviation">One standard deviation, 0 or more; infinite or NaN when it cannot be told.</param>
/// <param name="Slopes">How the result changes with the boat's weight, to say what would settle it; null where they cannot be told.</param>
/// <param name="Beside">What else the band is from; null where it is from her weight alone.</param>
internal readonly record struct Banded(double Value, double Deviation, WeightSlopes? Slopes = null, BesideWeight? Beside = null)
{
    private const double BandFactor = 2;

    /// <summary>A result whose band comes from the errors of a boat's weight; infinitely wide where its slopes are not known.</summary>
    public static Banded Of(double value, LoadedBoat loaded, WeightSlopes? slopes) => new(value, slopes?.Deviation(loaded.Total!) ?? double.PositiveInfinity, slopes);

    /// <summary>The same result, resting on a number beside her weight too.</summary>
    public Banded With(BesideWeight beside) => this with { Deviation = Math.Sqrt((Deviation * Deviation) + beside.Variance), Beside = beside };

    /// <summary>Half of the band.</summary>
    public double Half => BandFactor * Deviation;

    /// <summary>Must be at least the limit.</summary>
    public Verdict AtLeast(double limit) => Of(Value - limit, UseAtLeast(limit));

    /// <summary>Must be at most the limit.</summary>
    public Verdict AtMost(double limit) => Of(limit - Value, UseAtMost(limit));

    /// <summary>The limit over the value; null when there is no such ratio.</summary>
    public UseOf? UseAtLeast(double limit) => Value > 0 && limit >= 0 ? new UseOf(limit, Value) : null;

    /// <summary>The value over the limit; null when there is no such ratio.</summary>
    public UseOf? UseAtMost(double limit) => limit > 0 && Value >= 0 ? new UseOf(Value, limit) : null;

    private Verdict Of(double margin, UseOf? use)
    {
        if (!double.IsFinite(margin) || !double.IsFinite(Deviation) || Deviation < 0)
        {
            return Verdict.Unknown;
        }

        if (Math.Abs(margin) < Half)
        {
            return Verdict.Unknown;
        }

        return margin < 0 ? Verdict.Fails : use?.Fraction >= Verdicts.TightFromFraction ? Verdict.Tight : Verdict.Holds;
    }
}
