using Orlop.Hull.Surfaces;

namespace Orlop.Hull.Measuring;

/// <summary>What became of one item: put aboard (nothing before), taken off (nothing now), moved or changed.</summary>
/// <param name="Was">As it was when the total was known; null when it is new.</param>
/// <param name="Now">As it is; null when it is gone.</param>
public sealed record WeightChange(LedgerItem? Was, LedgerItem? Now);

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

    /// <summary>The total of an estimate.</summary>
    public static WeightTotal Of(WeightEstimateResult estimate)
    {
        ArgumentNullException.ThrowIfNull(estimate);
        Point3 centre = estimate.Centre;
        double mass = estimate.MassKg;
        double[,] slopes = { { 1, 0, 0, 0 }, { centre.XM, mass, 0, 0 }, { centre.YM, 0, mass, 0 }, { centre.ZM, 0, 0, mass } };
        return new WeightTotal([mass, mass * centre.XM, mass * centre.YM, mass * centre.ZM], Carried(slopes, estimate.Covariance));
    }

    /// <summary>Mass and centre with their covariance, to be drawn from.</summary>
    public WeightSpread Spread()
    {
        (Point3 centre, double mass) = (Centre, MassKg);
        double[,] slopes = { { 1, 0, 0, 0 }, { -centre.XM / mass, 1 / mass, 0, 0 }, { -centre.YM / mass, 0, 1 / mass, 0 }, { -centre.ZM / mass, 0, 0, 1 / mass } };
        return new WeightSpread(mass, centre, [.. Carried(slopes, _covariance).Cast<double>()]);
    }

    /// <summary>The total of a list, each item independent of the others; null when it has no mass.</summary>
    public static WeightTotal? Of(IEnumerable<LedgerItem> items)
    {
        WeightTotal total = new WeightTotal(new double[4], new double[4, 4]).With(items.Select(item => new WeightChange(null, item)));
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
            bool isMoved = change is { Was: { } was, Now: { } now } && was.MassKg == now.MassKg && was.MassDeviationKg == now.MassDeviationKg;
            if (isMoved)
            {
                Point3 step = change.Now!.Place - change.Was!.Place;
                Add(sums, covariance, change.Now.MassKg, change.Now.MassDeviationKg, [0, step.XM, step.YM, step.ZM]);
            }
            else
            {
                AddItem(sums, covariance, change.Was, -1);
                AddItem(sums, covariance, change.Now, 1);
            }

            AddPlaces(covariance, change.Was);
            AddPlaces(covariance, change.Now);
        }

        return new WeightTotal(sums, covariance);
    }

    /// <summary>Standard deviation of a result that changes by these amounts per kg of displacement and per metre of LCG, TCG and KG (linear propagation).</summary>
    public double Deviation(double perMass, double perLcg, double perTcg, double perKg)
    {
        Point3 centre = Centre;
        double[] shares =
        [
            perMass - (((perLcg * centre.XM) + (perTcg * centre.YM) + (perKg * centre.ZM)) / MassKg), perLcg / MassKg, perTcg / MassKg, perKg / MassKg,
        ];
        return Math.Sqrt(Math.Max(0, FourUnknowns.Spread(_covariance, shares)));
    }

    private static void AddItem(double[] sums, double[,] covariance, LedgerItem? item, double sign)
    {
        if (item is not null)
        {
            Add(sums, covariance, sign * item.MassKg, item.MassDeviationKg, [1, item.Place.XM, item.Place.YM, item.Place.ZM]);
        }
    }

    private static void Add(double[] sums, double[,] covariance, double massKg, double deviationKg, double[] perKg)
    {
        for (int i = 0; i < 4; i++)
        {
            sums[i] += massKg * perKg[i];
            for (int j = 0; j < 4; j++)
            {
                covariance[i, j] += deviationKg * deviationKg * perKg[i] * perKg[j];
            }
        }
    }

    private static void AddPlaces(double[,] covariance, LedgerItem? item)
    {
        if (item is not null)
        {
            covariance[1, 1] += Square(item.MassKg * item.PlaceDeviation.XM);
            covariance[2, 2] += Square(item.MassKg * item.PlaceDeviation.YM);
            covariance[3, 3] += Square(item.MassKg * item.PlaceDeviation.ZM);
        }

        static double Square(double value) => value * value;
    }

    private static double[,] Carried(double[,] slopes, double[,] covariance)
    {
        double[,] carried = new double[4, 4];
        for (int i = 0; i < 4; i++)
        {
            for (int j = 0; j < 4; j++)
            {
                for (int k = 0; k < 4; k++)
                {
                    for (int l = 0; l < 4; l++)
                    {
                        carried[i, j] += slopes[i, k] * covariance[k, l] * slopes[j, l];
                    }
                }
            }
        }

        return carried;
    }
}
