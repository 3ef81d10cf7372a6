using Orlop.Boat.Values;
using Orlop.Review.Networks;

namespace Orlop.Review.Electrics;

/// <summary>How far a source's resistance may truly lie from what is put down: two standard deviations either way. What was measured or read from a sheet has the ± that was typed with it, and none where none was.</summary>
internal static class OhmBand
{
    /// <summary>No sound source has less than this share of what is usual for its kind (from memory).</summary>
    public const double LeastFactor = 0.25;

    private const double DeviationsRatio = 2;

    /// <summary>Nobody measured it or read it from a sheet: it is guessed or estimated.</summary>
    public static bool IsDoubted(Quantity? ohm) => ohm?.Known is Knowledge.Guessed or Knowledge.Estimated;

    /// <summary>It may be more or less than is put down.</summary>
    public static bool IsWide(Quantity? ohm) => ohm is not null && Deviation(ohm) > 0;

    /// <summary>The least it may be, ohm: above nothing.</summary>
    public static double Least(Quantity ohm) => Math.Max(LeastFactor * ohm.Value, ohm.Value - (DeviationsRatio * Deviation(ohm)));

    /// <summary>The most it may be, ohm.</summary>
    public static double Most(Quantity ohm) => ohm.Value + (DeviationsRatio * Deviation(ohm));

    /// <summary>One standard deviation, ohm: as typed, else half of what is guessed or estimated and nothing of what is measured or on a sheet.</summary>
    public static double Deviation(Quantity ohm) => ohm.PlusMinus ?? (IsDoubted(ohm) ? TypicalBattery.ResistanceDeviationFraction * ohm.Value : 0);

    /// <summary>The least is that share, and not the two deviations.</summary>
    public static bool IsAtFloor(Quantity ohm) => ohm.Value - (DeviationsRatio * Deviation(ohm)) < LeastFactor * ohm.Value;
}
