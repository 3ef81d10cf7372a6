namespace Orlop.Electrics.Energy;

/// <summary>The sun's way through the year at a latitude, by local mean time. Declination and the equation of time are taken at each midnight and go straight between.</summary>
internal sealed class SunPath
{
    private const double RadPerDeg = Math.PI / 180;

    private readonly double _sinLatitude;
    private readonly double _cosLatitude;
    private readonly double[] _declination = new double[EnergyCalendar.DayCount + 1];
    private readonly double[] _lead = new double[EnergyCalendar.DayCount + 1];
    private readonly double[] _distance = new double[EnergyCalendar.DayCount + 1];

    public SunPath(double latitudeDeg)
    {
        (_sinLatitude, _cosLatitude) = Math.SinCos(RadPerDeg * latitudeDeg);
        for (int day = 0; day <= EnergyCalendar.DayCount; day++)
        {
            SunPosition sun = SunPosition.At(EnergyCalendar.FirstJulianDay + day, 0, 0);
            _declination[day] = RadPerDeg * sun.DeclinationDeg;
            _lead[day] = RadPerDeg * Math.IEEERemainder(sun.HourAngleDeg + 180, 360);
            _distance[day] = sun.DistanceRatio;
        }
    }

    public double DistanceRatio(int day) => _distance[day];

    /// <summary>Unit vector to the sun, east, north, up.</summary>
    public (double East, double North, double Up) At(int day, double hour)
    {
        double share = hour / 24;
        double hourAngle = (Math.PI * ((hour / 12) - 1)) + _lead[day] + (share * (_lead[day + 1] - _lead[day]));
        (double sinD, double cosD) = Math.SinCos(_declination[day] + (share * (_declination[day + 1] - _declination[day])));
        (double sinH, double cosH) = Math.SinCos(hourAngle);
        return (-cosD * sinH, (sinD * _cosLatitude) - (cosD * _sinLatitude * cosH), (_sinLatitude * sinD) + (_cosLatitude * cosD * cosH));
    }
}
