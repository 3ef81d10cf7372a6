using System.Buffers;
using Orlop.Hull.Surfaces;

namespace Orlop.Hull.Hydrostatics;

/// <summary>
/// What lies below a plane, exactly (divergence theorem over the clipped triangles). Volume and its first moment are summed as tetrahedra from a point on the plane, so the
/// cut surface adds nothing; the cut surface itself is summed along its edge (Green). A corner on the plane counts as dry, and the crossing of an edge is computed from its
/// wet to its dry end in both triangles that share it, so a plane through corners, edges or faces leaves no gap.
/// </summary>
internal struct Immersion
{
    private const int MostOnStack = 1024;

    private Point3 _foot;
    private double _sixfoldVolume;
    private Point3 _momentTimes24;
    private double _twofoldArea;
    private double _sixfoldMomentAlong;
    private double _sixfoldMomentAcross;
    private double _secondAlongTimes12;
    private double _secondAcrossTimes12;
    private double _productTimes24;

    public readonly double Volume => _sixfoldVolume / 6;

    /// <summary>First moment of the volume about the origin of the axes.</summary>
    public readonly Point3 Moment => ((1.0 / 24) * _momentTimes24) + (Volume * _foot);

    public readonly double Area => _twofoldArea / 2;

    public static Immersion Below(in WaterPlane plane, TriangleMesh mesh)
    {
        var count = mesh.Corners.Length;
        if (count <= MostOnStack)
        {
            Span<double> heights = stackalloc double[count];
            return Sum(plane, mesh, heights);
        }

        var rented = ArrayPool<double>.Shared.Rent(count);
        var result = Sum(plane, mesh, rented.AsSpan(0, count));
        ArrayPool<double>.Shared.Return(rented);
        return result;
    }

    /// <summary>Area, first moments along and across, second moments and product of the cut surface about the origin of the axes.</summary>
    public readonly PlaneMoments CutSurface(in WaterPlane plane)
    {
        var (along, across) = (plane.Along.Dot(_foot), plane.Across.Dot(_foot));
        var (area, first, firstAcross) = (Area, _sixfoldMomentAlong / 6, _sixfoldMomentAcross / 6);
        return new PlaneMoments(
            area,
            first + (area * along),
            firstAcross + (area * across),
            (_secondAlongTimes12 / 12) + (2 * along * first) + (area * along * along),
            (_secondAcrossTimes12 / 12) + (2 * across * firstAcross) + (area * across * across),
            (_productTimes24 / 24) + (along * firstAcross) + (across * first) + (area * along * across));
    }

    private static Immersion Sum(in WaterPlane plane, TriangleMesh mesh, Span<double> heights)
    {
        var corners = mesh.Corners.AsSpan();
        for (var i = 0; i < corners.Length; i++)
        {
            heights[i] = plane.HeightM(corners[i]);
        }

        var centre = mesh.Centre;
        var sum = new Immersion { _foot = centre - (plane.HeightM(centre) * plane.Up) };
        foreach (ref readonly var triangle in mesh.Triangles.AsSpan())
        {
            var (heightA, heightB, heightC) = (heights[triangle.A], heights[triangle.B], heights[triangle.C]);
            var wet = (heightA < 0 ? 1 : 0) | (heightB < 0 ? 2 : 0) | (heightC < 0 ? 4 : 0);
            if (wet == 0)
            {
                continue;
            }

            var a = corners[triangle.A] - sum._foot;
            var b = corners[triangle.B] - sum._foot;
            var c = corners[triangle.C] - sum._foot;
            switch (wet)
            {
                case 7: sum.AddWet(a, b, c); break;
                case 1: sum.AddOneWet(plane, a, b, c, heightA, heightB, heightC); break;
                case 2: sum.AddOneWet(plane, b, c, a, heightB, heightC, heightA); break;
                case 4: sum.AddOneWet(plane, c, a, b, heightC, heightA, heightB); break;
                case 3: sum.AddTwoWet(plane, a, b, c, heightA, heightB, heightC); break;
                case 6: sum.AddTwoWet(plane, b, c, a, heightB, heightC, heightA); break;
                default: sum.AddTwoWet(plane, c, a, b, heightC, heightA, heightB); break;
            }
        }

        return sum;
    }

    private void AddWet(Point3 a, Point3 b, Point3 c)
    {
        var sixfold = a.Dot(b.Cross(c));
        _sixfoldVolume += sixfold;
        _momentTimes24 += sixfold * (a + b + c);
    }

    private void AddOneWet(in WaterPlane plane, Point3 wet, Point3 next, Point3 last, double heightWet, double heightNext, double heightLast)
    {
        var onNext = Crossing(wet, next, heightWet, heightNext);
        var onLast = Crossing(wet, last, heightWet, heightLast);
        AddWet(wet, onNext, onLast);
        AddEdge(plane, onLast, onNext);
    }

    private void AddTwoWet(in WaterPlane plane, Point3 first, Point3 second, Point3 dry, double heightFirst, double heightSecond, double heightDry)
    {
        var onSecond = Crossing(second, dry, heightSecond, heightDry);
        var onFirst = Crossing(first, dry, heightFirst, heightDry);
        AddWet(first, second, onSecond);
        AddWet(first, onSecond, onFirst);
        AddEdge(plane, onFirst, onSecond);
    }

    private static Point3 Crossing(Point3 wet, Point3 dry, double heightWet, double heightDry) =>
        wet + (heightWet / (heightWet - heightDry) * (dry - wet));

    private void AddEdge(in WaterPlane plane, Point3 from, Point3 to)
    {
        var (x1, y1) = (plane.Along.Dot(from), plane.Across.Dot(from));
        var (x2, y2) = (plane.Along.Dot(to), plane.Across.Dot(to));
        var cross = (x1 * y2) - (x2 * y1);
        _twofoldArea += cross;
        _sixfoldMomentAlong += cross * (x1 + x2);
        _sixfoldMomentAcross += cross * (y1 + y2);
        _secondAlongTimes12 += cross * ((x1 * x1) + (x1 * x2) + (x2 * x2));
        _secondAcrossTimes12 += cross * ((y1 * y1) + (y1 * y2) + (y2 * y2));
        _productTimes24 += cross * ((x1 * y2) + (2 * x1 * y1) + (2 * x2 * y2) + (x2 * y1));
    }
}
