using Orlop.Electrics.Working;

namespace Orlop.Electrics.Energy;

/// <summary>Sunlight on the horizontal outside the air: no place on the ground gets so much.</summary>
public static class LightOutsideAir
{
    private const double RadPerDeg = Math.PI / 180;

    /// <summary>
    /// Light of a day, Wh/m², 0 and more: (24 h/π) G/r² (cos φ cos δ sin ω + ω sin φ sin δ), cos ω = −tan φ tan δ at sunset (FAO Irrigation and Drainage Paper 56, eq. 21; Duffie and Beckman, eq. 1.10.3;
    /// both from memory).
    /// </summary>
    /// <param name="latitudeDeg">φ, north positive, −90 to 90.</param>
    /// <param name="declinationDeg">δ of the sun, −23.5 to 23.5.</param>
    /// <param name="distanceRatio">r, the sun's distance over its mean, 0.98 to 1.02.</param>
    public static double DayWhPerM2(double latitudeDeg, double declinationDeg, double distanceRatio)
    {
        Guard.InRange(latitudeDeg, -90, 90, "°", "light outside the air");
        Guard.InRange(declinationDeg, -23.5, 23.5, "°", "light outside the air");
        Guard.InRange(distanceRatio, 0.98, 1.02, "", "light outside the air");
        (double sinLatitude, double cosLatitude) = Math.SinCos(RadPerDeg * latitudeDeg);
        (double sinD, double cosD) = Math.SinCos(RadPerDeg * declinationDeg);
        double sunset = Math.Acos(Math.Clamp(-(sinLatitude * sinD) / (cosLatitude * cosD), -1, 1));
        double light = (cosLatitude * cosD * Math.Sin(sunset)) + (sunset * sinLatitude * sinD);
        return 24 / Math.PI * ClearSky.SolarConstantWPerM2 / (distanceRatio * distanceRatio) * Math.Max(0, light);
    }

    /// <summary>The mean day of a month, Wh/m².</summary>
    /// <param name="latitudeDeg">North positive, −90 to 90.</param>
    /// <param name="month">1 to 12.</param>
    public static double MonthWhPerM2(double latitudeDeg, int month)
    {
        Guard.InRange(month, 1, 12, "", "light outside the air");
        return Enumerable.Range(EnergyCalendar.FirstDayOf(month - 1), EnergyCalendar.DayCountOf(month - 1)).Average(day => Day(latitudeDeg, day));
    }

    // By the sun at noon.
    private static double Day(double latitudeDeg, int day)
    {
        SunPosition sun = SunPosition.At(EnergyCalendar.FirstJulianDay + day + 0.5, 0, 0);
        return DayWhPerM2(latitudeDeg, sun.DeclinationDeg, sun.DistanceRatio);
    }
}
