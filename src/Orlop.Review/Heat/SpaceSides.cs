using Orlop.Boat.Things;
using Orlop.Review.Energy;

namespace Orlop.Review.Heat;

/// <summary>What goes through the walls of a space.</summary>
internal static class SpaceSides
{
    /// <summary>Where films and sun come from.</summary>
    public const string Source = "surface resistances of ISO 6946; sun as sol-air temperature over 17 W/m²K (light wind), both from memory";

    // ISO 6946, heat going level: inside and outside of a wall, m² K/W.
    private const double InsideM2KPerW = 0.13;
    private const double OutsideM2KPerW = 0.04;

    // Summer film of sol-air tables, a light wind; calm air leaves a deck hotter.
    private const double SunFilmWPerM2K = 17;

    /// <summary>Heat through a square metre for each kelvin; null, and a gap, where nobody said.</summary>
    public static double? TransmittanceWPerM2K(Space space, SpaceWall wall, PlanGaps gaps)
    {
        if (wall.TransmittanceWPerM2K is { } given)
        {
            return given;
        }

        if (wall is { ThicknessMm: { } thickness, ConductivityWPerMK: { } conductivity })
        {
            return 1 / (InsideM2KPerW + (thickness / 1000 / conductivity) + (wall.Space is null ? OutsideM2KPerW : InsideM2KPerW));
        }

        gaps.Need(null, space.Id, "walls");
        return null;
    }

    /// <summary>By how much the sun makes the other side warmer.</summary>
    public static double SunK(Space space, SpaceWall wall, Condition condition, PlanGaps gaps)
    {
        if (wall.SunWPerM2 is not { } sun || wall.Space is not null || !condition.SunShines)
        {
            return 0;
        }

        if (wall.AbsorbedFraction is not { } absorbed)
        {
            gaps.Need(null, space.Id, "walls");
            return 0;
        }

        return absorbed * sun / SunFilmWPerM2K;
    }
}
