using System.Collections.Immutable;
using Orlop.Hull.Surfaces;
using Orlop.Hull.Working;

namespace Orlop.Hull.Measuring;

/// <summary>How one piece of evidence agrees with all of it together.</summary>
/// <param name="Id">Which.</param>
/// <param name="StandardisedRatio">Residual over its own standard deviation; beyond about 3 one of the two is wrong.</param>
public sealed record EvidenceFit(string Id, double StandardisedRatio);

/// <summary>Best estimate of a boat's weight from all evidence.</summary>
public sealed record WeightEstimateResult
{
    internal WeightEstimateResult(double[] values, double[,] covariance, ImmutableArray<EvidenceFit> fits, ImmutableArray<WorkingStep> working)
    {
        (MassKg, Centre) = (values[0], new Point3(values[1], values[2], values[3]));
        Covariance = covariance;
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
