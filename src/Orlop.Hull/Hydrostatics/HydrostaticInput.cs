using System.Collections.Immutable;
using Orlop.Hull.Surfaces;

namespace Orlop.Hull.Hydrostatics;

/// <summary>A hull and the draughts its hydrostatic curves are wanted at.</summary>
public sealed record HydrostaticInput
{
    public required string Subject { get; init; }

    /// <summary>Closed hull.</summary>
    public required TriangleMesh Hull { get; init; }

    /// <summary>Draughts at the origin, in any order.</summary>
    public required ImmutableArray<double> DraughtsM { get; init; }

    /// <summary>Density of the water, 950 to 1100.</summary>
    public required double WaterKgPerM3 { get; init; }

    /// <summary>Length that trim is counted over, between the marks where draughts are read; above 0 to 1000.</summary>
    public required double TrimLengthM { get; init; }

    /// <summary>Trim that is held, -10 to 10.</summary>
    public double TrimDeg { get; init; }
}
