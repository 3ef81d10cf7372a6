using Orlop.Hull.Hydrostatics;

namespace Orlop.Hull.Surfaces;

/// <summary>A box of triangles.</summary>
/// <param name="middle">Middle of the box.</param>
/// <param name="half">Half its sides.</param>
/// <param name="sums">Sums over all triangles in it.</param>
/// <param name="after">The next box that is not inside this one.</param>
/// <param name="firstCorner">Where a leaf's corners start.</param>
/// <param name="cornerCount">How many it has; 0 for a box that holds boxes.</param>
internal readonly struct MeshTreeNode(Point3 middle, Point3 half, in SurfaceSums sums, int after, int firstCorner, int cornerCount)
{
    public readonly SurfaceSums Sums = sums;

    private readonly Point3 _middle = middle;
    private readonly Point3 _half = half;

    public int After { get; } = after;

    public int FirstCorner { get; } = firstCorner;

    public int CornerCount { get; } = cornerCount;

    /// <summary>Height of the middle over a plane, and how far the box reaches above and below that.</summary>
    public (double Middle, double Reach) Heights(in WaterPlane plane) =>
        (plane.HeightM(_middle), (Math.Abs(plane.Up.XM) * _half.XM) + (Math.Abs(plane.Up.YM) * _half.YM) + (Math.Abs(plane.Up.ZM) * _half.ZM));
}
