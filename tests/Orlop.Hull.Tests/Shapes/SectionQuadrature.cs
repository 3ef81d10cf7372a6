using Orlop.Hull.Hydrostatics;
using Orlop.Hull.Surfaces;

namespace Orlop.Hull.Tests.Shapes;

/// <summary>
/// Another way to the same integrals: turn the boat into the water's axes, cut her into sections, integrate each section along its outline (Green with a field that is zero above the
/// water, so nothing is clipped and no cut surface is made), and sum the sections by Gauss's rule between all corners and crossings, where every integrand is a polynomial.
/// </summary>
internal static class SectionQuadrature
{
    private static readonly double[] Nodes = [-Math.Sqrt(0.6), 0, Math.Sqrt(0.6)];
    private static readonly double[] Weights = [5.0 / 9, 8.0 / 9, 5.0 / 9];

    /// <summary>Volume, first moments (along, across, up), waterplane area, its first and second moments along and across and their product, all in the water's axes.</summary>
    public static double[] Integrate(TriangleMesh mesh, Attitude attitude)
    {
        Point3[] corners = [.. mesh.Corners.Select(corner => Turned(corner, attitude))];
        var stops = new SortedSet<double>(corners.Select(corner => corner.XM));
        foreach (var triangle in mesh.Triangles)
        {
            foreach (var (a, b) in new[] { (triangle.A, triangle.B), (triangle.B, triangle.C), (triangle.C, triangle.A) })
            {
                var (from, to) = (corners[a], corners[b]);
                if (from.ZM < 0 != to.ZM < 0)
                {
                    stops.Add(from.XM + (from.ZM / (from.ZM - to.ZM) * (to.XM - from.XM)));
                }
            }
        }

        var sums = new double[10];
        double[] at = [.. stops];
        for (var i = 1; i < at.Length; i++)
        {
            var (middle, half) = (0.5 * (at[i - 1] + at[i]), 0.5 * (at[i] - at[i - 1]));
            for (var node = 0; node < 3; node++)
            {
                var x = middle + (half * Nodes[node]);
                var section = Section(corners, mesh, x);
                double[] terms =
                [
                    section.Area, x * section.Area, section.Across, section.Up,
                    section.Breadth, x * section.Breadth, section.BreadthFirst, x * x * section.Breadth, section.BreadthSecond, x * section.BreadthFirst,
                ];
                for (var k = 0; k < terms.Length; k++)
                {
                    sums[k] += Weights[node] * half * terms[k];
                }
            }
        }

        return sums;
    }

    public static Point3 Turned(Point3 place, Attitude attitude)
    {
        var (sinHeel, cosHeel) = Math.SinCos(attitude.HeelDeg * Math.PI / 180);
        var (sinTrim, cosTrim) = Math.SinCos(attitude.TrimDeg * Math.PI / 180);
        var (across, up) = ((place.YM * cosHeel) - (place.ZM * sinHeel), (place.YM * sinHeel) + (place.ZM * cosHeel));
        return new Point3((place.XM * cosTrim) - (up * sinTrim), across, (place.XM * sinTrim) + (up * cosTrim) - attitude.DraughtM);
    }

    private static (double Area, double Across, double Up, double Breadth, double BreadthFirst, double BreadthSecond) Section(Point3[] corners, TriangleMesh mesh, double x)
    {
        double area = 0, across = 0, up = 0, breadth = 0, first = 0, second = 0;
        foreach (var triangle in mesh.Triangles)
        {
            if (Cut(corners[triangle.A], corners[triangle.B], corners[triangle.C], x) is not var (from, to))
            {
                continue;
            }

            foreach (var (a, b) in AtWater(from, to))
            {
                var step = b.YM - a.YM;
                for (var node = 0; node < 3; node++)
                {
                    var share = 0.5 * (1 + Nodes[node]);
                    var (y, z) = (a.YM + (share * step), Math.Min(0, a.ZM + (share * (b.ZM - a.ZM))));
                    area -= 0.5 * Weights[node] * step * z;
                    across -= 0.5 * Weights[node] * step * y * z;
                    up -= 0.5 * Weights[node] * step * z * z / 2;
                }
            }

            if (from.ZM < 0 != to.ZM < 0)
            {
                var y = from.YM + (from.ZM / (from.ZM - to.ZM) * (to.YM - from.YM));
                var sign = to.ZM >= 0 ? 1 : -1;
                breadth += sign * y;
                first += sign * y * y / 2;
                second += sign * y * y * y / 3;
            }
        }

        return (area, across, up, breadth, first, second);
    }

    // The outline runs with the body on its left as seen from ahead: from the edge that goes aft to the one that goes forward, seen on the triangle's outside.
    private static (Point3 From, Point3 To)? Cut(Point3 a, Point3 b, Point3 c, double x)
    {
        Point3? rising = null, falling = null;
        foreach (var (from, to) in new[] { (a, b), (b, c), (c, a) })
        {
            if (from.XM < x != to.XM < x)
            {
                var crossing = from + ((x - from.XM) / (to.XM - from.XM) * (to - from));
                if (to.XM >= x)
                {
                    rising = crossing;
                }
                else
                {
                    falling = crossing;
                }
            }
        }

        return rising is { } up && falling is { } down ? (down, up) : null;
    }

    private static IEnumerable<(Point3 A, Point3 B)> AtWater(Point3 from, Point3 to)
    {
        if (from.ZM < 0 == to.ZM < 0)
        {
            return [(from, to)];
        }

        var middle = from + (from.ZM / (from.ZM - to.ZM) * (to - from));
        return [(from, middle), (middle, to)];
    }
}
