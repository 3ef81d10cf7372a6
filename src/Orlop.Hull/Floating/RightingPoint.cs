using Orlop.Hull.Hydrostatics;
using Orlop.Hull.Measuring;

namespace Orlop.Hull.Floating;

/// <summary>One heel of a curve of righting levers.</summary>
/// <param name="HeelDeg">Heel held, positive to starboard.</param>
/// <param name="GzM">Level distance of B from G across the boat: the lever that turns her back. Has the sign of the heel when it rights her.</param>
/// <param name="Attitude">Draught and trim she takes at this heel.</param>
/// <param name="RiseM">Rise of G over B since heel 0, liquids and all: work done against the lever over weight.</param>
/// <param name="GmM">Stiffness in turning about the level fore-and-aft axis over weight at this heel; at rest upright the metacentric height.</param>
public sealed record RightingPoint(double HeelDeg, double GzM, Attitude Attitude, double RiseM, double GmM)
{
    /// <summary>How the lever changes with the weight at this heel, draught and trim following.</summary>
    public required WeightSlopes GzSlopes { get; init; }

    /// <summary>How the rise changes with the weight.</summary>
    public required WeightSlopes RiseSlopes { get; init; }
}
