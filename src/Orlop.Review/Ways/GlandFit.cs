using Orlop.Boat;
using Orlop.Boat.Things;
using Orlop.Boat.Values;

namespace Orlop.Review.Ways;

/// <summary>Whether a cable goes through a gland and is held by it: diameters in mm, each with its ±.</summary>
internal static class GlandFit
{
    private const double DeviationsRatio = 2;

    /// <summary>One diameter is more than the other by two standard deviations of both; null where it is not known which is more.</summary>
    public static bool? IsOver(Quantity? one, Quantity? other)
    {
        if (one is null || other is null)
        {
            return null;
        }

        double halfMm = DeviationsRatio * Math.Sqrt(Math.Pow(one.PlusMinus ?? 0, 2) + Math.Pow(other.PlusMinus ?? 0, 2)), overMm = one.Value - other.Value;
        return overMm > halfMm ? true : overMm <= -halfMm ? false : null;
    }

    /// <summary>The glands that a cable goes through as it runs.</summary>
    public static IEnumerable<PassedHole> On(Cable cable, BoatModel boat) => PassedHole.On(cable, boat).Where(passed => passed.Hole.Guard == EdgeGuard.Gland);

    /// <summary>The thickest cable, in mm, that all glands on a cable's run take; infinite where none is told.</summary>
    public static double MostMm(Cable cable, BoatModel boat) => On(cable, boat).Select(gland => gland.Hole.BoreMm?.Value ?? double.PositiveInfinity).DefaultIfEmpty(double.PositiveInfinity).Min();

    /// <summary>A gland that every cable in a way goes through and that this one certainly does not; null where there is none.</summary>
    public static WayHole? TooNarrow(Way way, Cable cable) =>
        PassedHole.Of(way).Select(passed => passed.Hole).FirstOrDefault(hole => hole is { Guard: EdgeGuard.Gland, Place: null } && IsOver(cable.OuterDiameterMm, hole.BoreMm) == true);
}
