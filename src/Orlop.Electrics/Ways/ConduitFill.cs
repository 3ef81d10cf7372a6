using Orlop.Electrics.Working;

namespace Orlop.Electrics.Ways;

/// <summary>How full a conduit is: the cross-sections of its cables, over their outer diameters, over its own inside.</summary>
/// <remarks>As US NFPA 70, chapter 9, counts it.</remarks>
public static class ConduitFill
{
    // Three cables of one size may wedge side by side where the conduit is about three times as wide: NFPA 70, chapter 9, Table 1, informational note.
    private const double JamFromRatio = 2.8;
    private const double JamToRatio = 3.2;

    /// <summary>Cross-section of a round thing in mm², from its diameter in mm.</summary>
    public static double RoundMm2(double diameterMm) => Math.PI / 4 * Guard.Positive(diameterMm, 10_000, "mm", "Conduit fill") * diameterMm;

    /// <summary>Share of the inside that the cables take; above 1 where they do not go in at all.</summary>
    /// <param name="insideMm2">Cross-section inside, in mm².</param>
    /// <param name="cablesMm2">Cross-section of each cable, in mm².</param>
    public static double Fraction(double insideMm2, IEnumerable<double> cablesMm2)
    {
        ArgumentNullException.ThrowIfNull(cablesMm2);
        Guard.Positive(insideMm2, 1e8, "mm²", "Conduit fill");
        return cablesMm2.Sum(area => Guard.Positive(area, 1e8, "mm²", "Conduit fill")) / insideMm2;
    }

    /// <summary>Three cables may jam in it while they are pulled round a bend.</summary>
    public static bool MayJam(double innerMm, IReadOnlyList<double> outerMm)
    {
        ArgumentNullException.ThrowIfNull(outerMm);
        return outerMm.Count == 3 && innerMm / outerMm.Average() is >= JamFromRatio and <= JamToRatio;
    }
}
