using Orlop.Hull.Surfaces;

namespace Orlop.Hull.Hydrostatics;

/// <summary>Area of a mesh's skin below the water plane; a deck that is under water counts.</summary>
internal static class WettedSurface
{
    public static double AreaM2(in WaterPlane plane, TriangleMesh mesh)
    {
        var area = 0.0;
        foreach (var triangle in mesh.Triangles)
        {
            area += WetArea(plane, mesh.Corners[triangle.A], mesh.Corners[triangle.B], mesh.Corners[triangle.C]);
        }

        return area;
    }

    private static double WetArea(in WaterPlane plane, Point3 a, Point3 b, Point3 c)
    {
        Span<double> heights = [plane.HeightM(a), plane.HeightM(b), plane.HeightM(c)];
        var whole = 0.5 * (b - a).Cross(c - a).LengthM;
        var wetCount = (heights[0] < 0 ? 1 : 0) + (heights[1] < 0 ? 1 : 0) + (heights[2] < 0 ? 1 : 0);
        return wetCount switch
        {
            0 => 0,
            3 => whole,
            1 => whole * CornerShare(heights, isWet: true),
            _ => whole * (1 - CornerShare(heights, isWet: false)),
        };
    }

    // Share of the triangle cut off by the plane at its one wet, or its one dry, corner.
    private static double CornerShare(ReadOnlySpan<double> heights, bool isWet)
    {
        for (var i = 0; i < 3; i++)
        {
            if (heights[i] < 0 == isWet)
            {
                var (alone, next, last) = (heights[i], heights[(i + 1) % 3], heights[(i + 2) % 3]);
                return alone / (alone - next) * (alone / (alone - last));
            }
        }

        return 0;
    }
}
