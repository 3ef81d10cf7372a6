using Orlop.Hull.Working;

namespace Orlop.Hull.Measuring;

/// <summary>
/// One independent measurement of a boat's weight: a value that should equal a weighted sum of displacement, LCG, TCG and KG, with a standard deviation. Most measure one of the
/// four; an inclining test on a hull whose KM changes with displacement measures KG and some of the displacement.
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

    /// <summary>Height of the centre of gravity.</summary>
    public static WeightEvidence OfKg(string id, double kgM, double deviationM) => new(id, 0, 0, 0, 1, kgM, deviationM);

    /// <summary>
    /// GM from an inclining or rolling test: GM = KM - KG - free surface, with KM linear about the displacement it was read at.
    /// </summary>
    /// <param name="id">What it is called.</param>
    /// <param name="gmM">GM measured.</param>
    /// <param name="deviationM">Its standard deviation.</param>
    /// <param name="kmM">KM less the free surface's loss at <paramref name="atMassKg"/>.</param>
    /// <param name="atMassKg">Displacement that KM was read at.</param>
    /// <param name="kmPerKg">Change of KM in m per kg of displacement.</param>
    public static WeightEvidence OfGm(string id, double gmM, double deviationM, double kmM, double atMassKg, double kmPerKg) =>
        new(id, kmPerKg, 0, 0, -1, gmM - kmM + (kmPerKg * atMassKg), deviationM);
}
