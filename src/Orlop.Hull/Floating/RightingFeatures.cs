namespace Orlop.Hull.Floating;

/// <summary>
/// What is read from a curve of righting levers. Angles carry the sign of their side. A null means that the curve has none up to its last point.
/// </summary>
public sealed record RightingFeatures
{
    /// <summary>Greatest righting lever before the angle of vanishing stability, as if no water came in, positive to either side; null when she never rights herself.</summary>
    public required double? GreatestGzM { get; init; }

    /// <summary>Heel of the greatest lever.</summary>
    public required double? GreatestGzDeg { get; init; }

    /// <summary>Angle of loll: heel at which the levers first become righting, 0 for a boat stable upright; null when they never do.</summary>
    public required double? LollDeg { get; init; }

    /// <summary>Heel beyond which she no longer rights herself.</summary>
    public required double? VanishingDeg { get; init; }

    /// <summary>Heel at which the first opening goes under; 0 when one is under water upright.</summary>
    public required double? DownfloodingDeg { get; init; }

    /// <summary>Which opening that is.</summary>
    public required string? DownfloodingOpening { get; init; }

    /// <summary>Water has come in at a heel to this side, in degrees with its sign or without: the first opening is under. Levers there are worked out as if it were shut, and are not the boat's.</summary>
    public bool IsFloodedAt(double heelDeg) => DownfloodingDeg is { } flooding && Math.Abs(heelDeg) >= Math.Abs(flooding);

    /// <summary>From loll to vanishing or to downflooding, whichever comes first; null when she never rights herself, or rights herself to the last point.</summary>
    public double? RangeDeg => (LollDeg, VanishingDeg, DownfloodingDeg) switch
    {
        (null, _, _) or (_, null, null) => null,
        var (loll, vanishing, flooding) => Math.Max(0, Math.Min(Math.Abs(vanishing ?? double.MaxValue), Math.Abs(flooding ?? double.MaxValue)) - Math.Abs(loll.Value)),
    };
}
