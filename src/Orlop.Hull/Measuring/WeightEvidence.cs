using System.Collections.Immutable;
using Orlop.Hull.Surfaces;
using Orlop.Hull.Working;

namespace Orlop.Hull.Measuring;

/// <summary>
/// One independent measurement of a boat's weight: a value that should equal a weighted sum of displacement, LCG, TCG and KG, with a standard deviation. Most measure one of the
/// four; an inclining test measures displacement and KG together, linear about a first estimate.
/// </summary>
public sealed record WeightEvidence
{
    private WeightEvidence(string id, double mass, double lcg, double tcg, double kg, double value, double deviation)
    {
        Guard.InRange(value, -1e7, 1e7, "", id, "value");
        Guard.Positive(deviation, 1e7, "", id, "standard deviation");
        Id = id;
        Shares = [mass, lcg, tcg, kg];
        Value = value;
        Deviation = deviation;
    }

    /// <summary>What it is called.</summary>
    public string Id { get; }

    internal double[] Shares { get; }

    internal double Value { get; }

    internal double Deviation { get; }

    /// <summary>Displacement, as by weighing or from freeboards and hydrostatics.</summary>
    public static WeightEvidence OfDisplacement(string id, double massKg, double deviationKg) =>
        new(id, 1, 0, 0, 0, Guard.Positive(massKg, 1e7, "kg", id), deviationKg);

    /// <summary>Centre of gravity fore and aft, as from trim.</summary>
    public static WeightEvidence OfLcg(string id, double lcgM, double deviationM) => new(id, 0, 1, 0, 0, lcgM, deviationM);

    /// <summary>Centre of gravity across, as from list.</summary>
    public static WeightEvidence OfTcg(string id, double tcgM, double deviationM) => new(id, 0, 0, 1, 0, tcgM, deviationM);

    /// <summary>
    /// Displacement, LCG and TCG from one set of readings, each of which moves all three: as three pieces that are independent of each other, displacement, then what is left of LCG with the part taken off
    /// that goes with displacement, then what is left of TCG (covariance = L·D·Lᵀ, unit lower triangular L; the pieces are L⁻¹x with variances D).
    /// </summary>
    /// <param name="id">What it is called.</param>
    /// <param name="massKg">Displacement.</param>
    /// <param name="lcgM">Centre of gravity fore and aft.</param>
    /// <param name="tcgM">Centre of gravity across.</param>
    /// <param name="covariance">Of the three, in kg and m, three rows of three.</param>
    public static ImmutableArray<WeightEvidence> OfAfloat(string id, double massKg, double lcgM, double tcgM, ImmutableArray<double> covariance)
    {
        Guard.Positive(massKg, 1e7, "kg", id);
        if (covariance.IsDefault || covariance.Length != 9)
        {
            throw new ArgumentException($"{id}: {(covariance.IsDefault ? 0 : covariance.Length)} numbers of covariance; 9 are needed, three rows of three.", nameof(covariance));
        }

        double xByMass = covariance[3] / covariance[0], yByMass = covariance[6] / covariance[0];
        double xLeft = covariance[4] - (xByMass * covariance[3]), yByX = (covariance[7] - (yByMass * covariance[3])) / xLeft;
        double yLeft = covariance[8] - (yByMass * covariance[6]) - (yByX * yByX * xLeft);
        double yByMassAlone = yByMass - (yByX * xByMass);
        return
        [
            new(id, 1, 0, 0, 0, massKg, Math.Sqrt(covariance[0])),
            new(id, -xByMass, 1, 0, 0, lcgM - (xByMass * massKg), Math.Sqrt(xLeft)),
            new(id, -yByMassAlone, -yByX, 1, 0, tcgM - (yByMassAlone * massKg) - (yByX * lcgM), Math.Sqrt(yLeft)),
        ];
    }

    /// <summary>Height of the centre of gravity.</summary>
    public static WeightEvidence OfKg(string id, double kgM, double deviationM) => new(id, 0, 0, 0, 1, kgM, deviationM);

    /// <summary>The righting moment per unit of tan heel, Δ·GM, as an inclining test measures it whatever she weighs: Δ and KG come out of it tied together.</summary>
    /// <param name="id">What it is called.</param>
    /// <param name="momentKgM">Slope of moments over tangents of heel, in kg·m.</param>
    /// <param name="deviationKgM">Its standard deviation.</param>
    /// <param name="then">Her metacentre as she was, about the first estimate.</param>
    public static WeightEvidence OfRightingMoment(string id, double momentKgM, double deviationKgM, MetacentreThen then)
    {
        ArgumentNullException.ThrowIfNull(then);
        // In metres, over the displacement then: the same equation, in numbers of one's own size.
        double mass = then.Boat.MassKg;
        return Linear(id, (momentKgM - then.RightingMomentKgM) / mass, deviationKgM / mass, then, (1 / mass) * then.PerEstimate, then.CameDeviationKgM(0) / mass);
    }

    /// <summary>GM itself, as the period of roll tells it: GM = KM - KG - free surface of the boat as she was.</summary>
    /// <param name="id">What it is called.</param>
    /// <param name="gmM">GM measured, the loss by free surfaces in it.</param>
    /// <param name="deviationM">Its standard deviation.</param>
    /// <param name="then">Her metacentre as she was, about the first estimate.</param>
    public static WeightEvidence OfGm(string id, double gmM, double deviationM, MetacentreThen then)
    {
        ArgumentNullException.ThrowIfNull(then);
        double mass = then.Boat.MassKg, gm = then.RightingMomentKgM / mass;
        WeightSlopes slopes = (1 / mass) * (then.PerEstimate - new WeightSlopes(gm, 0, 0, 0));
        return Linear(id, gmM - gm, deviationM, then, slopes, then.CameDeviationKgM(gm) / mass);
    }

    // What is measured more than was expected, about the estimate that it was expected by.
    private static WeightEvidence Linear(string id, double surplus, double deviation, MetacentreThen then, WeightSlopes slopes, double cameDeviation)
    {
        (double mass, Point3 centre) = (then.EstimatedMassKg, then.EstimatedCentre);
        double value = surplus + (slopes.PerMassKg * mass) + (slopes.PerLcgM * centre.XM) + (slopes.PerTcgM * centre.YM) + (slopes.PerKgM * centre.ZM);
        return new WeightEvidence(id, slopes.PerMassKg, slopes.PerLcgM, slopes.PerTcgM, slopes.PerKgM, value, Math.Sqrt((deviation * deviation) + (cameDeviation * cameDeviation)));
    }
}
