using System.Collections.Immutable;
using Orlop.Hull.Working;

namespace Orlop.Hull.Surfaces;

/// <summary>Simple closed bodies: tanks, spaces and hulls whose answers are known.</summary>
public static class Solids
{
    private const double MostM = 1000;

    /// <summary>A box between two opposite corners.</summary>
    public static TriangleMesh Box(Point3 low, Point3 high)
    {
        Guard.Place(low, "box");
        Guard.Place(high, "box");
        Guard.Positive(high.XM - low.XM, MostM, "m", "box", "length");
        Guard.Positive(high.YM - low.YM, MostM, "m", "box", "breadth");
        Guard.Positive(high.ZM - low.ZM, MostM, "m", "box", "height");
        return Prism(low.XM, high.XM, [(low.YM, low.ZM), (high.YM, low.ZM), (high.YM, high.ZM), (low.YM, high.ZM)]);
    }

    /// <summary>A prism along x with a convex section of (y, z) corners in order round it, either way.</summary>
    public static TriangleMesh Prism(double fromXM, double toXM, ImmutableArray<(double YM, double ZM)> section)
    {
        Guard.Positive(toXM - fromXM, MostM, "m", "prism", "length");
        Guard.InRange(section.Length, 3, 100_000, "corners", "prism", "section");
        var area = Enumerable.Range(0, section.Length)
            .Sum(i => (section[i].YM * section[(i + 1) % section.Length].ZM) - (section[(i + 1) % section.Length].YM * section[i].ZM));
        ImmutableArray<(double YM, double ZM)> round = area > 0 ? section : [.. section.Reverse()];
        var count = round.Length;
        var corners = round.Select(point => new Point3(fromXM, point.YM, point.ZM)).Concat(round.Select(point => new Point3(toXM, point.YM, point.ZM)));
        var triangles = ImmutableArray.CreateBuilder<Triangle>();
        for (var i = 0; i < count; i++)
        {
            var next = (i + 1) % count;
            triangles.Add(new Triangle(i, next, count + next));
            triangles.Add(new Triangle(i, count + next, count + i));
        }

        for (var i = 1; i < count - 1; i++)
        {
            triangles.Add(new Triangle(0, i + 1, i));
            triangles.Add(new Triangle(count, count + i, count + i + 1));
        }

        return new TriangleMesh([.. corners], triangles.ToImmutable());
    }

    /// <summary>A lying round cylinder along x, its section a polygon of <paramref name="sides"/> corners on the circle.</summary>
    public static TriangleMesh Cylinder(double fromXM, double toXM, double centreYM, double centreZM, double radiusM, int sides)
    {
        Guard.Positive(radiusM, MostM, "m", "cylinder");
        Guard.InRange(sides, 3, 100_000, "sides", "cylinder");
        return Prism(fromXM, toXM, [.. Enumerable.Range(0, sides)
            .Select(i => Math.Tau * i / sides)
            .Select(angle => (centreYM + (radiusM * Math.Cos(angle)), centreZM + (radiusM * Math.Sin(angle))))]);
    }

    /// <summary>An ellipsoid with half-axes along x, y and z, its corners on the surface at <paramref name="rings"/> steps from pole to pole and twice as many round.</summary>
    public static TriangleMesh Ellipsoid(Point3 centre, Point3 halfAxes, int rings)
    {
        Guard.Place(centre, "ellipsoid");
        Guard.Positive(halfAxes.XM, MostM, "m", "ellipsoid");
        Guard.Positive(halfAxes.YM, MostM, "m", "ellipsoid");
        Guard.Positive(halfAxes.ZM, MostM, "m", "ellipsoid");
        Guard.InRange(rings, 2, 2000, "rings", "ellipsoid");
        var round = 2 * rings;
        var corners = ImmutableArray.CreateBuilder<Point3>();
        corners.Add(centre - new Point3(0, 0, halfAxes.ZM));
        for (var ring = 1; ring < rings; ring++)
        {
            var (sinLatitude, cosLatitude) = Math.SinCos(Math.PI * ring / rings);
            for (var i = 0; i < round; i++)
            {
                var (sin, cos) = Math.SinCos(Math.Tau * i / round);
                corners.Add(centre + new Point3(halfAxes.XM * sinLatitude * cos, halfAxes.YM * sinLatitude * sin, -halfAxes.ZM * cosLatitude));
            }
        }

        corners.Add(centre + new Point3(0, 0, halfAxes.ZM));
        var top = corners.Count - 1;
        var triangles = ImmutableArray.CreateBuilder<Triangle>();
        for (var i = 0; i < round; i++)
        {
            triangles.Add(new Triangle(0, Corner(1, i + 1), Corner(1, i)));
            for (var ring = 1; ring < rings - 1; ring++)
            {
                triangles.Add(new Triangle(Corner(ring, i), Corner(ring, i + 1), Corner(ring + 1, i + 1)));
                triangles.Add(new Triangle(Corner(ring, i), Corner(ring + 1, i + 1), Corner(ring + 1, i)));
            }

            triangles.Add(new Triangle(top, Corner(rings - 1, i), Corner(rings - 1, i + 1)));
        }

        return new TriangleMesh(corners.ToImmutable(), triangles.ToImmutable());

        int Corner(int ring, int i) => 1 + ((ring - 1) * round) + (i % round);
    }
}
