using System.Collections.Immutable;
using Orlop.Hull.Surfaces;

namespace Orlop.Hull.Measuring;

/// <summary>A freeboard survey as read.</summary>
public sealed record FreeboardInput
{
    public required string Subject { get; init; }

    /// <summary>Closed hull that the marks are placed on.</summary>
    public required TriangleMesh Hull { get; init; }

    /// <summary>At least four, at both ends and on both sides.</summary>
    public required ImmutableArray<FreeboardReading> Readings { get; init; }

    /// <summary>Density of the water at the berth, measured; 950 to 1100.</summary>
    public required double WaterKgPerM3 { get; init; }

    /// <summary>How much hog or sag may be expected, as a standard deviation amidships against the ends; above 0 to 1.</summary>
    public required double HogDeviationM { get; init; }
}
