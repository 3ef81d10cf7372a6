using System.Collections.Immutable;
using Orlop.Electrics.Working;

namespace Orlop.Electrics.Energy;

/// <summary>A month over many years of drawn weather.</summary>
/// <param name="Month">1 to 12.</param>
/// <param name="ChanceFraction">Share of years in which it is below the reserve at least once in the month.</param>
/// <param name="ChanceDeviationFraction">One standard deviation of that share, from the number of years.</param>
/// <param name="DullFraction">Least charge that one year in twenty does not reach.</param>
/// <param name="MiddleFraction">Least charge of the middle year.</param>
/// <param name="UnmetWh">Asked and not given, mean of a year.</param>
public sealed record SampledMonth(int Month, double ChanceFraction, double ChanceDeviationFraction, double DullFraction, double MiddleFraction, double UnmetWh);

/// <summary>Many years of drawn weather.</summary>
/// <param name="YearCount">How many.</param>
/// <param name="Months">Each month; no numbers where they hang on a month whose light is not known.</param>
/// <param name="MeanFraction">Mean charge by month and hour of the day, twelve times twenty-four.</param>
/// <param name="BelowFraction">Share of time below the reserve by month and hour of the day.</param>
/// <param name="WorstResidualRatio">Greatest share of its turnover that a year's books are off by: rounding.</param>
public sealed record EnergySample(
    int YearCount, ImmutableArray<SampledMonth> Months, ImmutableArray<double> MeanFraction, ImmutableArray<double> BelowFraction, double WorstResidualRatio);

/// <summary>The chance of running short: years of drawn weather in hourly steps, the same for the same seed on any number of cores.</summary>
public static class EnergySampling
{
    /// <summary>Years, usual.</summary>
    public const int UsualYearCount = 1000;

    // Charge that two runs end at alike and that a lead-acid battery only comes ever nearer to: less than anybody is shown.
    private const double SameFraction = 1e-4;

    private const int ShareSteps = 32;
    private const int ChunkCount = 16;
    private const double DullQuantile = 0.05;

    /// <summary>Draws years.</summary>
    /// <param name="simulation">Prepared.</param>
    /// <param name="yearCount">1 to 100 000.</param>
    /// <param name="seed">Of the draws.</param>
    public static EnergySample Calculate(EnergySimulation simulation, int yearCount = UsualYearCount, ulong seed = 1, CancellationToken token = default)
    {
        ArgumentNullException.ThrowIfNull(simulation);
        Guard.InRange(yearCount, 1, 100_000, "years", simulation.Input.Subject);
        WeatherYears weather = simulation.Weather;
        (double[] table, bool[] isDark) = Table(simulation.Solar);
        EnergyTally[] years = new EnergyTally[yearCount];
        EnergyTally[] chunks = [.. Enumerable.Range(0, ChunkCount).Select(_ => new EnergyTally(simulation.Input.ReserveFraction, 1))];
        double[] residuals = new double[yearCount];
        Parallel.For(0, ChunkCount, new ParallelOptions { CancellationToken = token }, chunk =>
        {
            double[] sunW = new double[EnergyCalendar.DayCount * 24];
            for (int year = chunk; year < yearCount; year += ChunkCount)
            {
                token.ThrowIfCancellationRequested();
                Fill(sunW, table, weather.Year(seed, year));
                EnergyTally tally = new(simulation.Input.ReserveFraction, 1);
                EnergyTotals totals = simulation.Run(sunW, isDark, 0, 1, tally, null);
                residuals[year] = totals.ScaleWh > 0 ? Math.Abs(totals.ResidualWh) / totals.ScaleWh : 0;
                chunks[chunk].Add(tally);
                years[year] = tally;
            }
        });

        EnergyTally all = chunks.Aggregate((sum, next) =>
        {
            sum.Add(next);
            return sum;
        });
        return new EnergySample(yearCount, [.. Enumerable.Range(0, 12).Select(month => MonthOf(years, month))], all.MeanFraction, all.BelowFraction, residuals.Max());
    }

    /// <summary>What is sure of the same years at both ends of a light that is not known (<see cref="EnergySimulation.Ends"/>): no number where it hangs on it.</summary>
    public static EnergySample Sure(EnergySample dark, EnergySample clear)
    {
        ArgumentNullException.ThrowIfNull(dark);
        ArgumentNullException.ThrowIfNull(clear);
        static ImmutableArray<double> Each(ImmutableArray<double> some, ImmutableArray<double> others) => [.. some.Zip(others, Same)];
        return dark with
        {
            Months = [.. dark.Months.Zip(clear.Months, Same)],
            MeanFraction = Each(dark.MeanFraction, clear.MeanFraction),
            BelowFraction = Each(dark.BelowFraction, clear.BelowFraction),
            WorstResidualRatio = Math.Max(dark.WorstResidualRatio, clear.WorstResidualRatio),
        };
    }

    private static SampledMonth Same(SampledMonth one, SampledMonth other)
    {
        double chance = Same(one.ChanceFraction, other.ChanceFraction);
        return new SampledMonth(
            one.Month, chance, double.IsNaN(chance) ? chance : one.ChanceDeviationFraction, Same(one.DullFraction, other.DullFraction), Same(one.MiddleFraction, other.MiddleFraction), Same(one.UnmetWh, other.UnmetWh));
    }

    private static double Same(double one, double other) => Math.Abs(one - other) <= SameFraction * Math.Max(1, Math.Abs(one)) ? one : double.NaN;

    private static SampledMonth MonthOf(EnergyTally[] years, int month)
    {
        double[] least = [.. years.Select(year => year.LeastOf(month)).Order()];
        double chance = years.Count(year => year.WasBelow(month)) / (double)years.Length;
        return new SampledMonth(month + 1, chance, Math.Sqrt(chance * (1 - chance) / years.Length), Quantile(least, DullQuantile), Quantile(least, 0.5), years.Average(year => year.UnmetOf(month)));
    }

    private static double Quantile(double[] sorted, double share) => sorted[(int)(share * (sorted.Length - 1))];

    // The panels' power in each hour at even shares of a clear sky; straight between them.
    private static (double[] PowerW, bool[] IsDark) Table(SolarYear solar)
    {
        double[] table = new double[EnergyCalendar.DayCount * 24 * (ShareSteps + 1)];
        bool[] isDark = new bool[EnergyCalendar.DayCount * 24];
        Parallel.For(0, EnergyCalendar.DayCount, day =>
        {
            for (int hour = 0; hour < 24; hour++)
            {
                int at = (day * 24) + hour;
                for (int step = 0; step <= ShareSteps; step++)
                {
                    (table[(at * (ShareSteps + 1)) + step], isDark[at]) = solar.At(day, hour + 0.5, step / (double)ShareSteps);
                }
            }
        });
        return (table, isDark);
    }

    private static void Fill(double[] sunW, double[] table, double[] shares)
    {
        for (int at = 0; at < sunW.Length; at++)
        {
            double place = shares[at / 24] * ShareSteps;
            int below = Math.Min(ShareSteps - 1, (int)place), row = (at * (ShareSteps + 1)) + below;
            sunW[at] = table[row] + ((place - below) * (table[row + 1] - table[row]));
        }
    }
}
