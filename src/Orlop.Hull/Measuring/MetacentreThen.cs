using Orlop.Hull.Surfaces;

namespace Orlop.Hull.Measuring;

/// <summary>
/// Her metacentre at a test, and how her righting moment then follows from the boat that is estimated. With m and its moments what came since, Δt = Δ - m, Lt = (Δ·LCG - m·x)/Δt,
/// S = Δt·GM = Δt·KM(Δt, Lt) - F - (Δ·KG - m·z), F the free surfaces' part.
/// </summary>
public sealed record MetacentreThen
{
    /// <summary>The boat as she was at the test, by the first estimate.</summary>
    public required WeightTotal Boat { get; init; }

    /// <summary>What came since, less what went: the boat that is estimated is the boat then with it.</summary>
    public required WeightTotal Came { get; init; }

    /// <summary>Height of the metacentre over the base line.</summary>
    public required double KmM { get; init; }

    /// <summary>Its change in m per kg of displacement.</summary>
    public required double KmPerKg { get; init; }

    /// <summary>Its change in m per m that the centre lies further forward.</summary>
    public required double KmPerLcgRatio { get; init; }

    /// <summary>What slack tanks took from the righting moment then: liquid's density times second moment of the surfaces, in kg·m; 0 or more.</summary>
    public double FreeSurfaceKgM { get; init; }

    /// <summary>Δ·GM then, by the first estimate, in kg·m.</summary>
    public double RightingMomentKgM => (Boat.MassKg * (KmM - Boat.Centre.ZM)) - FreeSurfaceKgM;

    /// <summary>How KG as read at the test changes with the displacement it is reckoned with, Δ·GM being measured: dKM/dΔ + (KM - KG)/Δ.</summary>
    public double ReadKgPerKg => KmPerKg + ((KmM - Boat.Centre.ZM) / Boat.MassKg);

    internal double EstimatedMassKg => Boat.MassKg + Came.MassKg;

    internal Point3 EstimatedCentre => (1 / EstimatedMassKg) * (Boat.Moment + Came.Moment);

    /// <summary>Change of Δ·GM then with the boat that is estimated, in kg·m.</summary>
    internal WeightSlopes PerEstimate
    {
        get
        {
            Point3 now = EstimatedCentre;
            double perMass = KmM + (Boat.MassKg * KmPerKg) + (KmPerLcgRatio * (now.XM - Boat.Centre.XM)) - now.ZM;
            return new WeightSlopes(perMass, EstimatedMassKg * KmPerLcgRatio, 0, -EstimatedMassKg);
        }
    }

    /// <summary>Standard deviation of Δ·GM, less so many times Δ, by what came since, in kg·m.</summary>
    internal double CameDeviationKgM(double lessM) =>
        Came.MomentDeviation(-(KmM + (Boat.MassKg * KmPerKg) - (KmPerLcgRatio * Boat.Centre.XM) - lessM), -KmPerLcgRatio, 0, 1);
}
