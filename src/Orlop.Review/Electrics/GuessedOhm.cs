using Orlop.Boat.Values;
using Orlop.Review.Networks;

namespace Orlop.Review.Electrics;

/// <summary>How far a source's resistance that nobody measured or read from a sheet may truly lie from what is put down: two standard deviations either way.</summary>
internal static class GuessedOhm
{
    /// <summary>No sound source has less than this share of what is usual for its kind (from memory).</summary>
    public const double LeastFactor = 0.25;

    private const double DeviationsRatio = 2;

    /// <summary>It is guessed or estimated.</summary>
    public static bool IsDoubted(Quantity? ohm) => ohm?.Known is Knowledge.Guessed or Knowledge.Estimated;

    /// <summary>The least it may be, ohm: above nothing.</summary>
    public static double Least(Quantity ohm) => Math.Max(LeastFactor * ohm.Value, ohm.Value - (DeviationsRatio * Deviation(ohm)));

    /// <summary>The most it may be, ohm.</summary>
    public static double Most(Quantity ohm) => ohm.Value + (DeviationsRatio * Deviation(ohm));

    /// <summary>One standard deviation, ohm: as typed, else half of it.</summary>
    public static double Deviation(Quantity ohm) => ohm.PlusMinus ?? (TypicalBattery.ResistanceDeviationFraction * ohm.Value);

    /// <summary>The least is that share, and not the two deviations.</summary>
    public static bool IsAtFloor(Quantity ohm) => ohm.Value - (DeviationsRatio * Deviation(ohm)) < LeastFactor * ohm.Value;
}
