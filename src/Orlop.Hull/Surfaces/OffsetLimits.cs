namespace Orlop.Hull.Surfaces;

/// <summary>What the lengths of a table of offsets may be.</summary>
/// <param name="XM">Forward of the after perpendicular.</param>
/// <param name="HalfBreadthM">From the centre line.</param>
/// <param name="HeightM">Above the base line.</param>
public sealed record OffsetLimits(OffsetRange XM, OffsetRange HalfBreadthM, OffsetRange HeightM)
{
    private const double FarthestM = 200;

    /// <summary>The engine's own: 200 m each way.</summary>
    public static OffsetLimits Widest { get; } = new(new OffsetRange(-FarthestM, FarthestM), new OffsetRange(0, FarthestM), new OffsetRange(-FarthestM, FarthestM));
}

/// <summary>From the least to the most, both allowed.</summary>
public readonly record struct OffsetRange(double LeastM, double MostM);
