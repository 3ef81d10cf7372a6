namespace Orlop.Boat.Things;

/// <summary>A cable's length and the stretches of its run say the same thing twice; where one is changed, the other follows if it said the same before.</summary>
public static class CableLengths
{
    // Lengths are typed to the millimetre.
    private const double SameM = 0.0005;

    /// <summary>The changed thing, with the length of its only stretch after its own, or its own after its stretches.</summary>
    public static Thing Following(Thing was, Thing becomes)
    {
        if (was is not Cable before || becomes is not Cable after || before.LengthM is not { } lengthWas || after.LengthM is not { } length || !IsSame(before.Run.Sum(leg => leg.LengthM), lengthWas.Value))
        {
            return becomes;
        }

        bool isLengthChanged = !IsSame(lengthWas.Value, length.Value), isRunChanged = !before.Run.Equals(after.Run);
        double runM = after.Run.Sum(leg => leg.LengthM);
        return isLengthChanged && !isRunChanged && after.Run is [var only] ? after with { Run = [only with { LengthM = length.Value }] }
            : isRunChanged && !isLengthChanged && after.Run.Count > 0 && !IsSame(runM, length.Value) ? after with { LengthM = length with { Value = runM } }
            : after;
    }

    // A run is added up from stretches that were each rounded; an estimated length may be off by twice its ±.
    private const double RoundingFraction = 0.02;
    private const double Deviations = 2;

    /// <summary>A cable's longest length one way and what the stretches of its run add up to, both in metres, where they do not agree within 2 % and twice its ±; null where they do, or one is not given.</summary>
    public static (double LengthM, double RunM)? Apart(Cable cable)
    {
        ArgumentNullException.ThrowIfNull(cable);
        Values.Quantity? longest = cable.Cores.Select(core => core.LengthM).Append(cable.LengthM).OfType<Values.Quantity>().MaxBy(length => length.Value);
        double runM = cable.Run.Sum(leg => leg.LengthM);
        return longest is null || cable.Run.Count == 0 || Math.Abs(runM - longest.Value) <= (RoundingFraction * longest.Value) + (Deviations * (longest.PlusMinus ?? 0)) + SameM ? null : (longest.Value, runM);
    }

    private static bool IsSame(double oneM, double otherM) => Math.Abs(oneM - otherM) <= SameM;
}
