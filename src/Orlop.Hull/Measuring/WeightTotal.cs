using Orlop.Hull.Surfaces;

namespace Orlop.Hull.Measuring;

/// <summary>
/// Mass and centre of a loaded boat with their errors: mass and moments M, Mx, My, Mz and their covariance, which add up exactly as items come and go. An item that is
/// only moved keeps its mass, errors and all. Immutable.
/// </summary>
public sealed class WeightTotal
{
    private readonly double[] _sums;
    private readonly double[,] _covariance;

    private WeightTotal(double[] sums, double[,] covariance) => (_sums, _covariance) = (sums, covariance);

    /// <summary>Total mass.</summary>
    public double MassKg => _sums[0];

    /// <summary>LCG, TCG and KG.</summary>
    public Point3 Centre => new(_sums[1] / _sums[0], _sums[2] / _sums[0], _sums[3] / _sums[0]);

    public double MassDeviationKg => Deviation(1, 0, 0, 0);

    public double LcgDeviationM => Deviation(0, 1, 0, 0);

    public double TcgDeviationM => Deviation(0, 0, 1, 0);

    public double KgDeviationM => Deviation(0, 0, 0, 1);

    /// <summary>Nothing at all, known exactly: what changes add to it is the mass and the moments that came.</summary>
    public static WeightTotal Nothing { get; } = new(new double[4], new double[4, 4]);

    /// <summary>The total of an estimate.</summary>
    public static WeightTotal Of(WeightEstimateResult estimate)
    {
        ArgumentNullException.ThrowIfNull(estimate);
        return Of([estimate.MassKg, estimate.Centre.XM, estimate.Centre.YM, estimate.Centre.ZM], estimate.Covariance);
    }

    /// <summary>Mass and centre with their covariance, to be drawn from.</summary>
    public WeightSpread Spread() => new(MassKg, Centre, [.. Covariance().Cast<double>()]);

    /// <summary>The total of a list, each item independent of the others; null when it has no mass.</summary>
    public static WeightTotal? Of(IEnumerable<LedgerItem> items)
    {
        WeightTotal total = Nothing.With(items.Select(item => new WeightChange(null, item)));
        return total.MassKg > 0 ? total : null;
    }

    /// <summary>The total after these changes; an item that did not change leaves every bit as it was.</summary>
    public WeightTotal With(IEnumerable<WeightChange> changes)
    {
        ArgumentNullException.ThrowIfNull(changes);
        double[] sums = [.. _sums];
        double[,] covariance = (double[,])_covariance.Clone();
        foreach (WeightChange change in changes.Where(change => change.Was != change.Now))
        {
            if (change is { IsOneThing: true, Was: { } was, Now: { } now })
            {
                // One error makes both masses heavier or lighter, in proportion.
                double[] came = [.. Moments(now).Zip(Moments(was), (after, before) => after - before)];
                double ratio = now.MassKg > 0 ? now.MassDeviationKg / now.MassKg : 0;
                Add(sums, covariance, came, [.. came.Select(moment => ratio * moment)]);
            }
            else
            {
                AddItem(sums, covariance, change.Was, -1);
                AddItem(sums, covariance, change.Now, 1);
            }

            AddPlaces(covariance, change);
        }

        return new WeightTotal(sums, covariance);
    }

    /// <summary>The same mass and centre, every deviation so many times as wide.</summary>
    public WeightTotal Widened(double ratio)
    {
        double[,] covariance = (double[,])_covariance.Clone();
        for (int i = 0; i < 16; i++)
        {
            covariance[i / 4, i % 4] *= ratio * ratio;
        }

        return new WeightTotal([.. _sums], covariance);
    }

    /// <summary>With what came, errors of its own and all.</summary>
    public WeightTotal Plus(WeightTotal came)
    {
        ArgumentNullException.ThrowIfNull(came);
        double[,] covariance = (double[,])_covariance.Clone();
        for (int i = 0; i < 16; i++)
        {
            covariance[i / 4, i % 4] += came._covariance[i / 4, i % 4];
        }

        return new WeightTotal([.. _sums.Zip(came._sums, (one, other) => one + other)], covariance);
    }

    /// <summary>
    /// The same boat after one measurement more (Gauss-Markov, as in <see cref="WeightEstimate"/>, of which this is one step): x + C·h·(value - h·x)/(h·C·h + deviation²), C less (C·h)(C·h)ᵀ over the same.
    /// </summary>
    public WeightTotal Knowing(WeightEvidence evidence)
    {
        ArgumentNullException.ThrowIfNull(evidence);
        double[] values = [MassKg, Centre.XM, Centre.YM, Centre.ZM], shares = evidence.Shares;
        double[,] covariance = Covariance();
        double[] carried = [.. Enumerable.Range(0, 4).Select(i => Enumerable.Range(0, 4).Sum(j => covariance[i, j] * shares[j]))];
        double spread = carried.Zip(shares, (a, b) => a * b).Sum() + (evidence.Deviation * evidence.Deviation);
        double residual = evidence.Value - shares.Zip(values, (a, b) => a * b).Sum();
        for (int i = 0; i < 4; i++)
        {
            values[i] += carried[i] * residual / spread;
            for (int j = 0; j < 4; j++)
            {
                covariance[i, j] -= carried[i] * carried[j] / spread;
            }
        }

        return Of(values, covariance);
    }

    /// <summary>Standard deviation of a result that changes by these amounts per kg of displacement and per metre of LCG, TCG and KG (linear propagation).</summary>
    public double Deviation(double perMass, double perLcg, double perTcg, double perKg) => DeviationBy(this, new WeightSlopes(perMass, perLcg, perTcg, perKg));

    /// <summary>Standard deviation that the errors of <paramref name="part"/> alone, a part of this boat, give a result that changes so with her weight.</summary>
    public double DeviationBy(WeightTotal part, WeightSlopes slopes)
    {
        ArgumentNullException.ThrowIfNull(part);
        Point3 centre = Centre;
        return part.MomentDeviation(
            slopes.PerMassKg - (((slopes.PerLcgM * centre.XM) + (slopes.PerTcgM * centre.YM) + (slopes.PerKgM * centre.ZM)) / MassKg),
            slopes.PerLcgM / MassKg, slopes.PerTcgM / MassKg, slopes.PerKgM / MassKg);
    }

    /// <summary>Mass times place, in kg·m; unlike the centre it is told of nothing too, and of what went.</summary>
    public Point3 Moment => new(_sums[1], _sums[2], _sums[3]);

    /// <summary>Standard deviation of a sum of mass and moments, each with its share.</summary>
    public double MomentDeviation(double perMass, double perLong, double perTransverse, double perVertical) =>
        Math.Sqrt(Math.Max(0, FourUnknowns.Spread(_covariance, [perMass, perLong, perTransverse, perVertical])));

    /// <summary>Covariance of four numbers that change so with mass and moments.</summary>
    internal double[,] CarriedBy(double[,] slopes) => FourUnknowns.Carried(slopes, _covariance);

    // Of values and covariance in displacement, LCG, TCG and KG.
    private static WeightTotal Of(double[] values, double[,] covariance)
    {
        (double mass, double x, double y, double z) = (values[0], values[1], values[2], values[3]);
        double[,] slopes = { { 1, 0, 0, 0 }, { x, mass, 0, 0 }, { y, 0, mass, 0 }, { z, 0, 0, mass } };
        return new WeightTotal([mass, mass * x, mass * y, mass * z], FourUnknowns.Carried(slopes, covariance));
    }

    // In displacement, LCG, TCG and KG.
    private double[,] Covariance()
    {
        (Point3 centre, double mass) = (Centre, MassKg);
        double[,] slopes = { { 1, 0, 0, 0 }, { -centre.XM / mass, 1 / mass, 0, 0 }, { -centre.YM / mass, 0, 1 / mass, 0 }, { -centre.ZM / mass, 0, 0, 1 / mass } };
        return FourUnknowns.Carried(slopes, _covariance);
    }

    private static double[] Moments(LedgerItem item) => [item.MassKg, item.MassKg * item.Place.XM, item.MassKg * item.Place.YM, item.MassKg * item.Place.ZM];

    private static void AddItem(double[] sums, double[,] covariance, LedgerItem? item, double sign)
    {
        if (item is not null)
        {
            Add(sums, covariance, [.. Moments(item).Select(moment => sign * moment)], Moments(item with { MassKg = item.MassDeviationKg }));
        }
    }

    private static void Add(double[] sums, double[,] covariance, double[] moments, double[] deviations)
    {
        for (int i = 0; i < 4; i++)
        {
            sums[i] += moments[i];
            for (int j = 0; j < 4; j++)
            {
                covariance[i, j] += deviations[i] * deviations[j];
            }
        }
    }

    // What stands where it stood is wrong by the same distance as before.
    private static void AddPlaces(double[,] covariance, WeightChange change)
    {
        (LedgerItem? was, LedgerItem? now) = (change.Was, change.Now);
        if (change.IsOneThing && was!.Place == now!.Place && was.PlaceDeviation == now.PlaceDeviation)
        {
            AddPlace(covariance, now.MassKg - was.MassKg, now.PlaceDeviation);
            return;
        }

        AddPlace(covariance, was?.MassKg ?? 0, was?.PlaceDeviation ?? default);
        AddPlace(covariance, now?.MassKg ?? 0, now?.PlaceDeviation ?? default);
    }

    private static void AddPlace(double[,] covariance, double massKg, Point3 deviation)
    {
        covariance[1, 1] += massKg * massKg * deviation.XM * deviation.XM;
        covariance[2, 2] += massKg * massKg * deviation.YM * deviation.YM;
        covariance[3, 3] += massKg * massKg * deviation.ZM * deviation.ZM;
    }
}
