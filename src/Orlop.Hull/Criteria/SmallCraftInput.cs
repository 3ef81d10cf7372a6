using Orlop.Hull.Floating;

namespace Orlop.Hull.Criteria;

/// <summary>Design category of a small craft.</summary>
public enum DesignCategory
{
    /// <summary>Ocean.</summary>
    A,

    /// <summary>Offshore.</summary>
    B,

    /// <summary>Inshore.</summary>
    C,

    /// <summary>Sheltered waters.</summary>
    D,
}

/// <summary>What the small-craft criteria are found from. What is not known is null and leaves its criterion unknown.</summary>
public sealed record SmallCraftInput
{
    public required string Subject { get; init; }

    public required DesignCategory Category { get; init; }

    /// <summary>Length of hull, 2.5 to 24.</summary>
    public required double HullLengthM { get; init; }

    /// <summary>Beam of hull, above 0 to 12.</summary>
    public required double HullBeamM { get; init; }

    /// <summary>Heel with all the crew to one side, -90 to 90.</summary>
    public double? OffsetLoadHeelDeg { get; init; }

    /// <summary>Least height of a downflooding opening over the water, fully loaded and upright, -5 to 20.</summary>
    public double? DownfloodingHeightM { get; init; }

    /// <summary>Side area above the waterline, above 0 to 1000.</summary>
    public double? WindAreaM2 { get; init; }

    /// <summary>Length on the waterline, above 0 to 24.</summary>
    public double? WaterlineLengthM { get; init; }

    /// <summary>Draught of the hull at mid-length, above 0 to 10.</summary>
    public double? DraughtM { get; init; }

    /// <summary>Levers to the lee side.</summary>
    public RightingCurve? Curve { get; init; }
}
