using System.Collections.Immutable;

namespace Orlop.Electrics.Energy;

/// <summary>What is counted of the charge: by month, by hour, and when it first is below the reserve.</summary>
internal sealed class EnergyTally(double reserveFraction, int stepsPerHour)
{
    // A charge that stands at the reserve is not below it.
    private const double RoundingFraction = 1e-12;

    private readonly double[] _least = [.. Enumerable.Repeat(double.PositiveInfinity, 12)];
    private readonly double[] _unmet = new double[12];
    private readonly double[] _sum = new double[12 * 24];
    private readonly long[] _below = new long[12 * 24];
    private readonly long[] _count = new long[12 * 24];

    /// <summary>Step at whose end it first was below the reserve, from 1.</summary>
    public long? FirstBelow { get; private set; }

    public double Least => _least.Min();

    public double LeastOf(int month) => _least[month];

    public double UnmetOf(int month) => _unmet[month];

    public bool WasBelow(int month) => _least[month] < reserveFraction - RoundingFraction;

    public ImmutableArray<EnergyMonth> Months => [.. Enumerable.Range(0, 12).Select(month =>
    {
        Range hours = (month * 24)..((month + 1) * 24);
        long count = _count[hours].Sum();
        return new EnergyMonth(month + 1, count == 0 ? double.NaN : _least[month], count == 0 ? double.NaN : _below[hours].Sum() / (double)count, _unmet[month]);
    })];

    public ImmutableArray<double> MeanFraction => [.. _sum.Select((sum, at) => sum / _count[at])];

    public ImmutableArray<double> BelowFraction => [.. _below.Select((below, at) => below / (double)_count[at])];

    public double? BelowAtHour => FirstBelow / (double)stepsPerHour;

    public void Count(int month, int hour, double charge, long step)
    {
        int at = (month * 24) + hour;
        _sum[at] += charge;
        _count[at]++;
        if (charge < _least[month])
        {
            _least[month] = charge;
        }

        if (charge < reserveFraction - RoundingFraction)
        {
            _below[at]++;
            FirstBelow ??= step + 1;
        }
    }

    public void CountUnmet(int month, double wh) => _unmet[month] += wh;

    /// <summary>Takes another's counts in.</summary>
    public void Add(EnergyTally other)
    {
        for (int at = 0; at < _sum.Length; at++)
        {
            _sum[at] += other._sum[at];
            _below[at] += other._below[at];
            _count[at] += other._count[at];
        }
    }
}
