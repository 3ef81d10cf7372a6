using System.Collections.Immutable;
using Orlop.Hull.Surfaces;

namespace Orlop.Hull.Measuring;

/// <summary>A weight and how well it is known.</summary>
/// <param name="MassKg">Displacement, above 0 to 10 000 000.</param>
/// <param name="Centre">LCG, TCG and KG.</param>
/// <param name="Covariance">Of displacement (kg), LCG, TCG and KG (m), four rows of four.</param>
public sealed record WeightSpread(double MassKg, Point3 Centre, ImmutableArray<double> Covariance)
{
    /// <summary>The spread of an estimate.</summary>
    public static WeightSpread Of(WeightEstimateResult estimate)
    {
        ArgumentNullException.ThrowIfNull(estimate);
        return new WeightSpread(estimate.MassKg, estimate.Centre, [.. estimate.Covariance.Cast<double>()]);
    }
}
