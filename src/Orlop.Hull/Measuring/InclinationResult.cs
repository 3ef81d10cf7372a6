using System.Collections.Immutable;
using Orlop.Hull.Working;

namespace Orlop.Hull.Measuring;

/// <summary>GM from an inclining test.</summary>
/// <param name="ThroughOrigin">Line forced through no moment, no heel.</param>
/// <param name="WithIntercept">Line free to miss the origin: right when the zero of the plumb line is in doubt.</param>
/// <param name="DeterminationCoefficient">r² of the free line.</param>
/// <param name="Band">The free line over the readings, with its band.</param>
/// <param name="Outliers">Readings too far from the free line for chance (studentised residual, 5 % shared among all readings).</param>
/// <param name="Cautions">What makes the test a weak one: its largest heel, readings to one side alone, too few of them, a line that fits badly.</param>
/// <param name="Working">The steps.</param>
public sealed record InclinationResult(
    LineFit ThroughOrigin, LineFit WithIntercept, double DeterminationCoefficient, ImmutableArray<LineBandPoint> Band, ImmutableArray<string> Outliers, ImmutableArray<string> Cautions, ImmutableArray<WorkingStep> Working)
{
    /// <summary>How far the readings scatter about the free line (root mean square), over the largest heel among them.</summary>
    public double ScatterFraction { get; init; }
}
