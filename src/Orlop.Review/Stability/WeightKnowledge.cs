using Orlop.Boat.Values;

namespace Orlop.Review.Stability;

/// <summary>
/// How far a mass or a place may be off where the owner gave no deviation. Weighed 1 %, from a sheet 5 %, estimated 15 %, guessed 30 % (the first three from memory, unverified
/// practice of weight reports; the last is our own), and as a guess where nothing says how it is known: no mass is exact; a place 0.05 m where the mass was weighed or the thing has a place of its own, no source.
/// </summary>
public static class WeightKnowledge
{
    /// <summary>One standard deviation of a place that nobody gave one for (common practice, no source).</summary>
    public const double PlaceDeviationM = 0.05;

    /// <summary>One standard deviation of a mass.</summary>
    public static double DeviationKg(Quantity massKg)
    {
        ArgumentNullException.ThrowIfNull(massKg);
        return massKg.PlusMinus ?? (Math.Abs(massKg.Value) * ShareOf(massKg.Known));
    }

    private static double ShareOf(Knowledge known) => known switch
    {
        Knowledge.Measured => 0.01,
        Knowledge.Sheet => 0.05,
        Knowledge.Estimated => 0.15,
        _ => 0.30,
    };
}
