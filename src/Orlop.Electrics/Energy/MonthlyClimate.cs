using System.Collections.Immutable;
using Orlop.Electrics.Working;

namespace Orlop.Electrics.Energy;

/// <summary>The clock of a place, the same all year.</summary>
/// <param name="LongitudeDeg">East positive, −180 to 180.</param>
/// <param name="FromUtcHour">Ahead of universal time, −12 to 14.</param>
public sealed record PlaceClock(double LongitudeDeg, double FromUtcHour)
{
    /// <summary>Hour at which the sun is highest by this clock, mean of the year; the equation of time moves it by up to a quarter of an hour.</summary>
    public double MeanNoonHour => 12 + FromUtcHour - (LongitudeDeg / 15);

    internal void Check(string subject)
    {
        Guard.InRange(LongitudeDeg, -180, 180, "°", subject);
        Guard.InRange(FromUtcHour, -12, 14, "h", subject);
    }
}

/// <summary>Sun and air of a place, month by month.</summary>
public sealed record MonthlyClimate
{
    /// <summary>What it is, for messages.</summary>
    public required string Subject { get; init; }

    /// <summary>North positive, −66 to 66: beyond, a day may have no end.</summary>
    public required double LatitudeDeg { get; init; }

    /// <summary>Whose hours a day's hours are; null for local mean time, in which the sun is highest about noon.</summary>
    public PlaceClock? Clock { get; init; }

    /// <summary>Mean light on the horizontal in a day of each month, Wh/m², 0 to 12 000; twelve.</summary>
    public required ImmutableArray<double> SunWhPerM2 { get; init; }

    /// <summary>Mean temperature of the air in each month, −60 to 60; twelve.</summary>
    public required ImmutableArray<double> AirC { get; init; }

    /// <summary>Refuses what is out of range or no number.</summary>
    internal void Check()
    {
        Guard.InRange(LatitudeDeg, -66, 66, "°", Subject);
        Clock?.Check(Subject);
        Guard.InRange(SunWhPerM2.IsDefault ? 0 : SunWhPerM2.Length, 12, 12, "months", Subject, nameof(SunWhPerM2));
        Guard.InRange(AirC.IsDefault ? 0 : AirC.Length, 12, 12, "months", Subject, nameof(AirC));
        for (int month = 0; month < 12; month++)
        {
            Guard.InRange(SunWhPerM2[month], 0, 12_000, "Wh/m²", $"{Subject}, month {month + 1}", nameof(SunWhPerM2));
            Guard.InRange(AirC[month], -60, 60, "°C", $"{Subject}, month {month + 1}", nameof(AirC));
        }
    }
}

/// <summary>A climate beside a clear sky: what share of it each month has.</summary>
/// <param name="ClearDayWhPerM2">Light on the horizontal in a clear day, mean of each month; twelve.</param>
/// <param name="ShareFraction">The climate over the clear sky; twelve.</param>
/// <param name="TooBrightMonths">The months, from 1, of which the climate has more light than a clear sky gives: their light is not known.</param>
public sealed record ClimateShare(ImmutableArray<double> ClearDayWhPerM2, ImmutableArray<double> ShareFraction, ImmutableArray<int> TooBrightMonths)
{
    // An hour's step of the day's integral: within 0.2 % of a minute's.
    private const int StepsAnHour = 6;

    /// <summary>Holds a climate against the clear sky of its latitude (Haurwitz), day by day.</summary>
    public static ClimateShare Of(MonthlyClimate climate)
    {
        ArgumentNullException.ThrowIfNull(climate);
        climate.Check();
        return Of(climate, new SunPath(climate.LatitudeDeg, climate.Clock));
    }

    internal static ClimateShare Of(MonthlyClimate climate, SunPath path)
    {
        double[] clear = new double[12];
        for (int day = 0; day < EnergyCalendar.DayCount; day++)
        {
            int month = EnergyCalendar.MonthOf(day);
            for (int step = 0; step < 24 * StepsAnHour; step++)
            {
                clear[month] += ClearSky.Haurwitz(path.At(day, (step + 0.5) / StepsAnHour).Up) / (StepsAnHour * EnergyCalendar.DayCountOf(month));
            }
        }

        double[] share = [.. climate.SunWhPerM2.Zip(clear, (given, sky) => sky > 0 ? given / sky : given > 0 ? double.PositiveInfinity : 0)];
        return new ClimateShare([.. clear], [.. share], [.. Enumerable.Range(1, 12).Where(month => share[month - 1] > 1)]);
    }

    /// <summary>The same with the months that are too bright at a share of a clear sky.</summary>
    internal ClimateShare Taking(double share) => this with { ShareFraction = [.. ShareFraction.Select(one => one > 1 ? share : one)], TooBrightMonths = [] };
}
