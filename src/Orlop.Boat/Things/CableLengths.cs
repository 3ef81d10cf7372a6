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

    private static bool IsSame(double oneM, double otherM) => Math.Abs(oneM - otherM) <= SameM;
}
