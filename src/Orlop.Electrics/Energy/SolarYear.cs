using System.Collections.Immutable;

namespace Orlop.Electrics.Energy;

/// <summary>What the panels could give in each step of a year, of the day's share of a clear sky, and when it is dark.</summary>
internal sealed class SolarYear
{
    private readonly EnergyInput _input;
    private readonly SunPath _path;
    private readonly (SolarArray Array, (PanelPlane Plane, PlaneFace Face)[] Planes)[] _arrays;

    public SolarYear(EnergyInput input, SunPath path)
    {
        (_input, _path) = (input, path);
        _arrays = [.. input.Solar.Select(array => (array, array.Planes.Select(plane => (plane, new PlaneFace(plane.TiltDeg, plane.AzimuthDeg))).ToArray()))];
    }

    /// <summary>Power of one moment, W, and whether the sun is down.</summary>
    public (double PowerW, bool IsDark) At(int day, double hour, double share)
    {
        (double East, double North, double Up) sun = _path.At(day, hour);
        return sun.Up <= 0 ? (0, true) : (Power(day, sun, share), false);
    }

    /// <summary>Power of one moment in mean weather, W, and whether the sun is down.</summary>
    public (double PowerW, bool IsDark) At(int day, double hour, ImmutableArray<WeatherPoint> weather)
    {
        (double East, double North, double Up) sun = _path.At(day, hour);
        if (sun.Up <= 0)
        {
            return (0, true);
        }

        double power = 0;
        foreach (WeatherPoint point in weather)
        {
            power += point.WeightFraction * Power(day, sun, point.ShareFraction);
        }

        return (power, false);
    }

    private double Power(int day, (double East, double North, double Up) sun, double share)
    {
        if (_arrays.Length == 0)
        {
            return 0;
        }

        double horizontal = share * ClearSky.Haurwitz(sun.Up);
        (double beam, double sky) = ClearSky.Split(horizontal, sun.Up, _path.DistanceRatio(day));
        double air = _input.Climate.AirC[EnergyCalendar.MonthOf(day)], power = 0;
        foreach ((SolarArray array, (PanelPlane Plane, PlaneFace Face)[] planes) in _arrays)
        {
            double given = 0;
            foreach ((PanelPlane plane, PlaneFace face) in planes)
            {
                given += Of(plane, face, sun, beam, sky, horizontal, air);
            }

            power += Math.Min(array.MostW, given * array.EfficiencyFraction);
        }

        return power;
    }

    private double Of(PanelPlane plane, PlaneFace face, (double East, double North, double Up) sun, double beam, double sky, double horizontal, double air)
    {
        double light = (beam * Math.Max(0, face.Cosine(sun))) + (sky * (1 + face.CosTilt) / 2) + (horizontal * _input.AlbedoFraction * (1 - face.CosTilt) / 2);
        double cell = air + ((PanelOutput.UsualNominalCellC - 20) / 800 * light);
        return plane.PeakW * (1 - plane.LostFraction) * light / 1000 * Math.Max(0, 1 - (PanelOutput.UsualLossPerK * (cell - 25)));
    }
}
