using Orlop.Electrics.Working;

namespace Orlop.Electrics.Energy;

/// <summary>
/// The sun's way through the year at a latitude: by the clock of a place, or by local mean time where none is told. Declination and the equation of time are taken at each midnight and go straight
/// between; its distance is that of the day's midnight.
/// </summary>
public sealed class SunPath
{
    private const double RadPerDeg = Math.PI / 180;

    private readonly double _sinLatitude;
    private readonly double _cosLatitude;
    private readonly double _fromUniversalHours;
    private readonly double _longitude;
    private readonly double[] _declination = new double[EnergyCalendar.DayCount + 1];
    private readonly double[] _lead = new double[EnergyCalendar.DayCount + 1];
    private readonly double[] _distance = new double[EnergyCalendar.DayCount + 1];

    /// <summary>Of a place.</summary>
    /// <param name="latitudeDeg">North positive, −90 to 90.</param>
    /// <param name="clock">Its clock; null for local mean time.</param>
    public SunPath(double latitudeDeg, PlaceClock? clock = null)
    {
        Guard.InRange(latitudeDeg, -90, 90, "°", "sun path");
        clock?.Check("sun path");
        (_longitude, _fromUniversalHours) = clock is null ? (0, 0) : (RadPerDeg * clock.LongitudeDeg, clock.FromUtcHour);
        (_sinLatitude, _cosLatitude) = Math.SinCos(RadPerDeg * latitudeDeg);
        for (int day = 0; day <= EnergyCalendar.DayCount; day++)
        {
            SunPosition sun = SunPosition.At(EnergyCalendar.FirstJulianDay + day, 0, 0);
            _declination[day] = RadPerDeg * sun.DeclinationDeg;
            _lead[day] = RadPerDeg * Math.IEEERemainder(sun.HourAngleDeg + 180, 360);
            _distance[day] = sun.DistanceRatio;
        }
    }

    /// <summary>The sun's distance over its mean on a day of the year, 0 to 364.</summary>
    public double DistanceRatio(int day) => _distance[day];

    /// <summary>Unit vector to the sun, east, north, up.</summary>
    /// <param name="day">Day of the year, 0 to 364.</param>
    /// <param name="hour">Of the clock, 0 to 24.</param>
    public (double East, double North, double Up) At(int day, double hour)
    {
        double universal = hour - _fromUniversalHours, share = universal / 24;
        double hourAngle = (Math.PI * ((universal / 12) - 1)) + _longitude + _lead[day] + (share * (_lead[day + 1] - _lead[day]));
        (double sinD, double cosD) = Math.SinCos(_declination[day] + (share * (_declination[day + 1] - _declination[day])));
        (double sinH, double cosH) = Math.SinCos(hourAngle);
        return (-cosD * sinH, (sinD * _cosLatitude) - (cosD * _sinLatitude * cosH), (_sinLatitude * sinD) + (_cosLatitude * cosD * cosH));
    }
}
