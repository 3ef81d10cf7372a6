using Orlop.Electrics.Working;

namespace Orlop.Electrics.Energy;

/// <summary>Sunlight on a horizontal plane without clouds, and how light divides into beam and sky.</summary>
public static class ClearSky
{
    /// <summary>Sunlight outside the air at the mean distance (Kopp and Lean 2011, from memory).</summary>
    public const double SolarConstantWPerM2 = 1361;

    private const double LeastCosine = 0.01;

    /// <summary>Light on the horizontal under a clear sky, W/m²: 1098 cos z exp(−0.059/cos z), 0 with the sun down (Haurwitz 1945).</summary>
    /// <param name="cosZenith">Cosine of the sun's distance from the zenith, −1 to 1.</param>
    public static double HaurwitzWPerM2(double cosZenith)
    {
        Guard.InRange(cosZenith, -1, 1, "", "clear sky");
        return Haurwitz(cosZenith);
    }

    /// <summary>Share of sky light in the light on the horizontal, 0 to 1, of the hourly clearness (Erbs, Klein and Duffie 1982).</summary>
    /// <param name="clearness">Light on the horizontal over that outside the air, 0 and more.</param>
    public static double DiffuseFraction(double clearness)
    {
        Guard.InRange(clearness, 0, double.MaxValue, "", "diffuse share");
        return Diffuse(clearness);
    }

    internal static double Haurwitz(double cosZenith) => cosZenith > 0 ? 1098 * cosZenith * Math.Exp(-0.059 / cosZenith) : 0;

    internal static double Diffuse(double k) => k <= 0.22
        ? 1 - (0.09 * k)
        : k <= 0.8 ? 0.9511 + (k * (-0.1604 + (k * (4.388 + (k * (-16.638 + (k * 12.336))))))) : 0.165;

    // Beam across the ray and sky light of the light on the horizontal; near the horizon all of it is sky.
    internal static (double Beam, double Sky) Split(double horizontal, double cosZenith, double distanceRatio)
    {
        if (cosZenith < LeastCosine)
        {
            return (0, horizontal);
        }

        double sky = horizontal * Diffuse(horizontal * distanceRatio * distanceRatio / (SolarConstantWPerM2 * cosZenith));
        return ((horizontal - sky) / cosZenith, sky);
    }
}
