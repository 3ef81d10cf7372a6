using System.Collections.Immutable;
using Orlop.Electrics.Working;

namespace Orlop.Electrics.Energy;

/// <summary>A kind of day and how much it counts.</summary>
/// <param name="ShareFraction">Of a clear sky.</param>
/// <param name="WeightFraction">Share of days.</param>
public readonly record struct WeatherPoint(double ShareFraction, double WeightFraction);

/// <summary>
/// Days of a year, each with its share of a clear sky. Drawn: a truncated exponential distribution about each month's mean (Bendt, Collares-Pereira and Rabl
/// 1981, its parameter solved so that the mean is kept exactly), and a day that resembles the last (common practice, from memory). Reproducible by seed.
/// </summary>
public sealed class WeatherYears
{
    // Clearness of the dullest day 0.05 (the source's), over that of a clear day, about 0.72.
    private const double DullestShare = 0.07;

    // Chance that a day is like the one before: the correlation of one day with the next, about 0.3.
    private const double AlikeFraction = 0.3;

    private static readonly (double At, double Weight)[] Nodes =
    [
        (-0.8611363115940526, 0.3478548451374538), (-0.3399810435848563, 0.6521451548625461), (0.3399810435848563, 0.6521451548625461), (0.8611363115940526, 0.3478548451374538),
    ];

    private const double EvenRate = 1e-6;

    private readonly ImmutableArray<double> _means;
    private readonly double[] _rates;

    /// <param name="meanShare">Mean share of a clear sky in each month, 0 to 1; twelve.</param>
    public WeatherYears(ImmutableArray<double> meanShare)
    {
        if (meanShare.IsDefault || meanShare.Length != 12 || meanShare.Any(share => !(share is >= 0 and <= 1)))
        {
            throw new ArgumentOutOfRangeException(nameof(meanShare), "Weather: twelve shares of a clear sky, each 0 to 1.");
        }

        _means = meanShare;
        _rates = [.. meanShare.Select(RateOf)];
    }

    /// <summary>
    /// A month's mean weather: four days and how much each counts, so that light on a tilted plane, which a clear day gives out of proportion, has the mean it has
    /// over all days (Gauss-Legendre over the ranks; the shares scaled to the month's mean).
    /// </summary>
    /// <param name="month">1 to 12.</param>
    public ImmutableArray<WeatherPoint> MeanDays(int month)
    {
        Guard.InRange(month, 1, 12, "", "weather");
        double mean = _means[month - 1];
        WeatherPoint[] points = [.. Nodes.Select(node => new WeatherPoint(ShareAt(month - 1, (1 + node.At) / 2), node.Weight / 2))];
        double found = points.Sum(point => point.ShareFraction * point.WeightFraction);
        return found > 0 ? [.. points.Select(point => point with { ShareFraction = Math.Min(1, point.ShareFraction * mean / found) })] : [new WeatherPoint(0, 1)];
    }

    /// <summary>A year of a seed; the same seed and number give the same year.</summary>
    public double[] Year(ulong seed, int number)
    {
        ulong state = seed + (0x9E3779B97F4A7C15UL * ((ulong)number << 20));
        double[] shares = new double[EnergyCalendar.DayCount];
        double rank = Uniform(ref state);
        for (int day = 0; day < shares.Length; day++)
        {
            if (Uniform(ref state) >= AlikeFraction)
            {
                rank = Uniform(ref state);
            }

            shares[day] = ShareAt(EnergyCalendar.MonthOf(day), rank);
        }

        return shares;
    }

    private double ShareAt(int month, double rank)
    {
        double mean = _means[month];
        if (mean is <= DullestShare or >= 1)
        {
            return mean;
        }

        double rate = _rates[month], width = 1 - DullestShare;
        return DullestShare + (Math.Abs(rate) < EvenRate ? rank * width : Math.Log(1 + (rank * (Math.Exp(rate * width) - 1))) / rate);
    }

    // Rate of density exp(rate × x) on the shares that a day may have, so that its mean is the month's: bisection.
    private static double RateOf(double mean)
    {
        if (mean is <= DullestShare or >= 1)
        {
            return 0;
        }

        double low = -500, high = 500;
        for (int round = 0; round < 100; round++)
        {
            double middle = (low + high) / 2;
            (low, high) = MeanAt(middle) < mean ? (middle, high) : (low, middle);
        }

        return (low + high) / 2;
    }

    private static double MeanAt(double rate)
    {
        double width = 1 - DullestShare;
        return Math.Abs(rate) < EvenRate
            ? DullestShare + (width / 2)
            : DullestShare + (width / (1 - Math.Exp(-rate * width))) - (1 / rate);
    }

    // SplitMix64 (Steele, Lea and Flood 2014): upper 53 bits as a number from 0 to below 1.
    private static double Uniform(ref ulong state)
    {
        state += 0x9E3779B97F4A7C15UL;
        ulong mixed = (state ^ (state >> 30)) * 0xBF58476D1CE4E5B9UL;
        mixed = (mixed ^ (mixed >> 27)) * 0x94D049BB133111EBUL;
        return ((mixed ^ (mixed >> 31)) >> 11) * (1.0 / (1UL << 53));
    }
}
