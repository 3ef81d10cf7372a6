using Orlop.Hull.Surfaces;

namespace Orlop.Hull.Floating;

/// <summary>A tank whose liquid runs to the low side at every angle, its surface level and its volume unchanged.</summary>
public sealed record Tank
{
    public required string Id { get; init; }

    /// <summary>Closed inner surface in the boat's axes.</summary>
    public required TriangleMesh Shape { get; init; }

    /// <summary>Liquid over what the tank holds, 0 to 1; pressed full at 1, with no free surface.</summary>
    public required double FillFraction { get; init; }

    /// <summary>Density of the liquid, 500 to 2500.</summary>
    public required double LiquidKgPerM3 { get; init; }
}
