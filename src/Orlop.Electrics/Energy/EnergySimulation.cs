using System.Collections.Immutable;
using Orlop.Electrics.Working;

namespace Orlop.Electrics.Energy;

/// <summary>A battery through a day, a span of days, a year. Prepared once for one input; safe from several threads.</summary>
public sealed class EnergySimulation
{
    private readonly EnergyInput _input;
    private readonly SolarYear _solar;
    private readonly DayPower _inUse;
    private readonly DayPower _lying;

    private readonly SunPath _path;

    private EnergySimulation(EnergyInput input, SunPath path, ClimateShare climate)
    {
        (_input, _path, Climate) = (input, path, climate);
        _solar = new SolarYear(input, path);
        (_inUse, _lying) = (DayPower.InUse(input), DayPower.Lying(input));
    }

    /// <summary>The climate beside a clear sky; where it is brighter in a month, what hangs on that month is found by <see cref="Ends"/>.</summary>
    public ClimateShare Climate { get; }

    /// <summary>Prepares an input; refuses what is out of range.</summary>
    public static EnergySimulation Of(EnergyInput input)
    {
        ArgumentNullException.ThrowIfNull(input);
        input.Check();
        SunPath path = new(input.Climate.LatitudeDeg, input.Climate.Clock);
        return new EnergySimulation(input, path, ClimateShare.Of(input.Climate, path));
    }

    /// <summary>The same place with other loads, sources or days.</summary>
    public EnergySimulation With(EnergyInput input)
    {
        ArgumentNullException.ThrowIfNull(input);
        input.Check();
        return ReferenceEquals(input.Climate, _input.Climate) ? new EnergySimulation(input, _path, Climate) : Of(input);
    }

    /// <summary>
    /// The same with the months that are brighter than a clear sky all dark, and all clear. More light never leaves less charge, so what is the same with both hangs on no such month,
    /// whatever light it has; the dark one is never above what is true.
    /// </summary>
    public (EnergySimulation Dark, EnergySimulation Clear) Ends() => (new(_input, _path, Climate.Taking(0)), new(_input, _path, Climate.Taking(1)));

    /// <summary>A year from 1 January, in the mean weather of each month.</summary>
    /// <param name="stepsPerHour">1 to 60.</param>
    public EnergyResult Year(int stepsPerHour = 1) => Span(0, EnergyCalendar.DayCount, stepsPerHour, keepsMoments: false);

    /// <summary>Days from one on, in the mean weather of each month.</summary>
    /// <param name="firstDay">Day of the year, 0 to 364.</param>
    /// <param name="dayCount">1 to 365; a span goes over the new year.</param>
    /// <param name="stepsPerHour">1 to 60.</param>
    /// <param name="keepsMoments">Each step is kept.</param>
    public EnergyResult Span(int firstDay, int dayCount, int stepsPerHour = 1, bool keepsMoments = true)
    {
        Guard.InRange(firstDay, 0, EnergyCalendar.DayCount - 1, "d", _input.Subject);
        Guard.InRange(dayCount, 1, EnergyCalendar.DayCount, "d", _input.Subject);
        Guard.InRange(stepsPerHour, 1, 60, "1/h", _input.Subject);
        ImmutableArray<WeatherPoint>[] weather = [.. Enumerable.Range(1, 12).Select(Weather.MeanDays)];
        int perDay = 24 * stepsPerHour;
        double[] sunW = new double[dayCount * perDay];
        bool[] isDark = new bool[sunW.Length];
        Parallel.For(0, dayCount, day =>
        {
            int date = (firstDay + day) % EnergyCalendar.DayCount;
            ImmutableArray<WeatherPoint> days = weather[EnergyCalendar.MonthOf(date)];
            for (int step = 0, at = day * perDay; step < perDay; step++, at++)
            {
                (sunW[at], isDark[at]) = _solar.At(date, (step + 0.5) / stepsPerHour, days);
            }
        });

        EnergyTally tally = new(_input.ReserveFraction, stepsPerHour);
        EnergyMoment[]? moments = keepsMoments ? new EnergyMoment[sunW.Length] : null;
        EnergyTotals totals = Run(sunW, isDark, firstDay, stepsPerHour, tally, moments);
        return new EnergyResult
        {
            Totals = totals,
            LeastFraction = tally.Least,
            BelowAtHour = tally.BelowAtHour,
            Months = tally.Months,
            MeanFraction = tally.MeanFraction,
            BelowFraction = tally.BelowFraction,
            Moments = moments is null ? [] : ImmutableArray.Create(moments),
        };
    }

    internal WeatherYears Weather => field ??= Climate.TooBrightMonths is [var month, ..]
        ? throw new InvalidOperationException($"{_input.Climate.Subject}: month {month} has more light than a clear sky gives at this latitude.")
        : new WeatherYears(Climate.ShareFraction);

    /// <summary>What it was prepared from.</summary>
    public EnergyInput Input => _input;

    internal SolarYear Solar => _solar;

    /// <summary>Goes through the days; the sun's power of each step is given.</summary>
    internal EnergyTotals Run(double[] sunW, bool[] isDark, int firstDay, int stepsPerHour, EnergyTally tally, EnergyMoment[]? moments)
    {
        StoreStep store = new(_input, stepsPerHour);
        store.Begin(firstDay);
        int at = 0;
        for (int day = 0; at < sunW.Length; day++)
        {
            int date = (firstDay + day) % EnergyCalendar.DayCount, month = EnergyCalendar.MonthOf(date);
            DayPower power = _input.Cycle.IsInUse(day, date) ? _inUse : _lying;
            double unmet = store.UnmetWh;
            store.BeginDay(date, day);
            for (int hour = 0; hour < 24; hour++)
            {
                double always = power.AlwaysW[hour], dark = power.DarkW[hour], engine = power.EngineW[hour], shore = power.ShoreW[hour];
                for (int step = 0; step < stepsPerHour; step++, at++)
                {
                    double load = isDark[at] ? always + dark : always;
                    store.Step(sunW[at], engine, shore, load);
                    double charge = store.ChargeFraction;
                    tally.Count(month, hour, charge, at);
                    if (moments is not null)
                    {
                        moments[at] = new EnergyMoment((at + 1) / (double)stepsPerHour, charge, store.SunW, store.EngineW, store.ShoreW, load);
                    }
                }
            }

            tally.CountUnmet(month, store.UnmetWh - unmet);
        }

        return store.Totals;
    }
}
