using Orlop.Electrics.Working;

namespace Orlop.Electrics.Energy;

/// <summary>Light on a tilted plane: beam, sky and what the ground or water throws back.</summary>
public static class PlaneIrradiance
{
    private const double RadPerDeg = Math.PI / 180;

    /// <summary>W/m²: beam × cosine of incidence + sky (1 + cos b)/2 + horizontal × albedo (1 − cos b)/2 (isotropic sky, Liu and Jordan 1963).</summary>
    /// <param name="beamWPerM2">Across the ray, 0 to 1500.</param>
    /// <param name="skyWPerM2">Sky light on the horizontal, 0 to 1500.</param>
    /// <param name="horizontalWPerM2">All light on the horizontal, 0 to 2000.</param>
    /// <param name="cosIncidence">Cosine between the sun and the plane's normal, −1 to 1; below 0 the sun is behind it.</param>
    /// <param name="tiltDeg">0 to 180.</param>
    /// <param name="albedoFraction">Thrown back, 0 to 1.</param>
    public static double WPerM2(double beamWPerM2, double skyWPerM2, double horizontalWPerM2, double cosIncidence, double tiltDeg, double albedoFraction)
    {
        const string where = "light on a plane";
        Guard.InRange(beamWPerM2, 0, 1500, "W/m²", where);
        Guard.InRange(skyWPerM2, 0, 1500, "W/m²", where);
        Guard.InRange(horizontalWPerM2, 0, 2000, "W/m²", where);
        Guard.InRange(cosIncidence, -1, 1, "", where);
        Guard.InRange(tiltDeg, 0, 180, "°", where);
        Guard.InRange(albedoFraction, 0, 1, "", where);
        double cosTilt = Math.Cos(RadPerDeg * tiltDeg);
        return (beamWPerM2 * Math.Max(0, cosIncidence)) + (skyWPerM2 * (1 + cosTilt) / 2) + (horizontalWPerM2 * albedoFraction * (1 - cosTilt) / 2);
    }

    /// <summary>Cosine of incidence on a plane, below 0 behind it; without an azimuth the mean of what meets its face, over every heading.</summary>
    public static double CosIncidence(SunPosition sun, double tiltDeg, double? azimuthDeg)
    {
        (double sinE, double cosE) = Math.SinCos(RadPerDeg * sun.ElevationDeg);
        (double sinA, double cosA) = Math.SinCos(RadPerDeg * sun.AzimuthDeg);
        return new PlaneFace(Guard.InRange(tiltDeg, 0, 180, "°", "incidence"), azimuthDeg).Cosine((cosE * sinA, cosE * cosA, sinE));
    }
}
