using Orlop.Hull.Surfaces;

namespace Orlop.Hull.Hydrostatics;

/// <summary>How far the cut of the water plane reaches along and across the boat's heading.</summary>
internal static class WaterlineReach
{
    public static (double LengthM, double BreadthM) Measure(in WaterPlane plane, TriangleMesh mesh)
    {
        double leastAlong = double.PositiveInfinity, mostAlong = double.NegativeInfinity, leastAcross = double.PositiveInfinity, mostAcross = double.NegativeInfinity;
        Span<int> corners = stackalloc int[4];
        foreach (var triangle in mesh.Triangles)
        {
            (corners[0], corners[1], corners[2], corners[3]) = (triangle.A, triangle.B, triangle.C, triangle.A);
            for (var i = 0; i < 3; i++)
            {
                var (from, to) = (mesh.Corners[corners[i]], mesh.Corners[corners[i + 1]]);
                var (heightFrom, heightTo) = (plane.HeightM(from), plane.HeightM(to));
                if (heightFrom < 0 == heightTo < 0)
                {
                    continue;
                }

                var crossing = from + (heightFrom / (heightFrom - heightTo) * (to - from));
                var (along, across) = (plane.Along.Dot(crossing), plane.Across.Dot(crossing));
                (leastAlong, mostAlong) = (Math.Min(leastAlong, along), Math.Max(mostAlong, along));
                (leastAcross, mostAcross) = (Math.Min(leastAcross, across), Math.Max(mostAcross, across));
            }
        }

        return mostAlong >= leastAlong ? (mostAlong - leastAlong, mostAcross - leastAcross) : (0, 0);
    }
}
