using Orlop.Hull.Surfaces;

namespace Orlop.Hull.Hydrostatics;

/// <summary>
/// The part of a closed body below the water plane. Places are in the boat's axes; second moments are about the waterplane's own centroid, in its plane, the longitudinal one
/// for turning about the athwartships axis.
/// </summary>
public sealed record ImmersedPart
{
    /// <summary>Volume below the water.</summary>
    public required double VolumeM3 { get; init; }

    /// <summary>Centre of that volume; null when nothing is immersed.</summary>
    public required Point3? CentreOfBuoyancy { get; init; }

    /// <summary>Area that the water plane cuts out of the body.</summary>
    public required double WaterplaneAreaM2 { get; init; }

    /// <summary>Centre of that area, the centre of flotation; null when the plane cuts nothing.</summary>
    public required Point3? CentreOfFlotation { get; init; }

    /// <summary>∫ a² dA, a from the centroid along the boat's heading in the water plane.</summary>
    public required double LongitudinalSecondMomentM4 { get; init; }

    /// <summary>∫ b² dA, b from the centroid across the boat's heading in the water plane.</summary>
    public required double TransverseSecondMomentM4 { get; init; }

    /// <summary>∫ a b dA.</summary>
    public required double ProductMomentM4 { get; init; }

    /// <summary>Reach of the cut along the boat's heading; 0 when the plane cuts nothing.</summary>
    public required double WaterlineLengthM { get; init; }

    /// <summary>Reach of the cut across the boat's heading.</summary>
    public required double WaterlineBreadthM { get; init; }

    /// <summary>Area of skin below the water, a deck under water included.</summary>
    public required double WettedAreaM2 { get; init; }
}
