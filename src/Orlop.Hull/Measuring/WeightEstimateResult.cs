using System.Collections.Immutable;
using Orlop.Hull.Surfaces;
using Orlop.Hull.Working;

namespace Orlop.Hull.Measuring;

/// <summary>How one piece of evidence agrees with all of it together.</summary>
/// <param name="Id">Which.</param>
/// <param name="StandardisedRatio">Residual over its own standard deviation; beyond about 3 one of the two is wrong.</param>
/// <param name="IsAlone">Nothing else tells what it measured: its ratio is 0, and says nothing.</param>
public sealed record EvidenceFit(string Id, double StandardisedRatio, bool IsAlone = false);

/// <summary>Best estimate of a boat's weight from all evidence.</summary>
public sealed record WeightEstimateResult
{
    internal WeightEstimateResult(double[] values, double[,] covariance, double birgeRatio, ImmutableArray<EvidenceFit> fits, ImmutableArray<WorkingStep> working)
    {
        (MassKg, Centre) = (values[0], new Point3(values[1], values[2], values[3]));
        Covariance = covariance;
        BirgeRatio = birgeRatio;
        Fits = fits;
        Working = working;
    }

    /// <summary>Displacement.</summary>
    public double MassKg { get; }

    /// <summary>LCG, TCG and KG.</summary>
    public Point3 Centre { get; }

    public double MassDeviationKg => Math.Sqrt(Covariance[0, 0]);

    public double LcgDeviationM => Math.Sqrt(Covariance[1, 1]);

    public double TcgDeviationM => Math.Sqrt(Covariance[2, 2]);

    public double KgDeviationM => Math.Sqrt(Covariance[3, 3]);

    /// <summary>
    /// By how much the deviations of list and measurements together are too small for how far these lie from each other: √(χ²/ν), ν the numbers more than the four that are sought; 1 where there are no more.
    /// Source: R. T. Birge, Physical Review 40 (1932) 207 (from memory).
    /// </summary>
    public double BirgeRatio { get; }

    public ImmutableArray<EvidenceFit> Fits { get; }

    public ImmutableArray<WorkingStep> Working { get; }

    internal double[,] Covariance { get; }

    /// <summary>Standard deviation of a result that changes by these amounts per kg of displacement and per metre of LCG, TCG and KG (linear propagation).</summary>
    public double Deviation(double perMass, double perLcg, double perTcg, double perKg)
    {
        double[] shares = [perMass, perLcg, perTcg, perKg];
        return Math.Sqrt(FourUnknowns.Spread(Covariance, shares));
    }
}
