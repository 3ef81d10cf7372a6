using System.Runtime.CompilerServices;
using System.Runtime.InteropServices;

namespace Orlop.Hull.Surfaces;

/// <summary>
/// Sums over triangles from which the volume between them and any point, and its moment, follow without looking at the triangles again. With corners a, b, c from an origin, d = a·(b×c),
/// n = (b-a)×(c-a) and s = a+b+c: six times the tetrahedron over a point f is d - f·n, and 24 times its moment about f is (d - f·n)(s - 3f).
/// </summary>
[StructLayout(LayoutKind.Sequential)]
internal struct SurfaceSums
{
    private double _sixfold;
    private Point3 _normal;
    private Point3 _sixfoldTimesSum;
    private Point3 _normalXTimesSum;
    private Point3 _normalYTimesSum;
    private Point3 _normalZTimesSum;

    /// <summary>Adds one triangle, its corners from the origin of the sums.</summary>
    public void Add(Point3 a, Point3 b, Point3 c)
    {
        var sixfold = a.Dot(b.Cross(c));
        var normal = (b - a).Cross(c - a);
        var sum = a + b + c;
        _sixfold += sixfold;
        _normal += normal;
        _sixfoldTimesSum += sixfold * sum;
        _normalXTimesSum += normal.XM * sum;
        _normalYTimesSum += normal.YM * sum;
        _normalZTimesSum += normal.ZM * sum;
    }

    /// <summary>Adds the sums over other triangles from the same origin.</summary>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public void Add(in SurfaceSums other)
    {
        _sixfold += other._sixfold;
        _normal += other._normal;
        _sixfoldTimesSum += other._sixfoldTimesSum;
        _normalXTimesSum += other._normalXTimesSum;
        _normalYTimesSum += other._normalYTimesSum;
        _normalZTimesSum += other._normalZTimesSum;
    }

    /// <summary>Six times the volume between the triangles and a point.</summary>
    public readonly double SixfoldVolume(Point3 from) => _sixfold - from.Dot(_normal);

    /// <summary>24 times the first moment of that volume about the point.</summary>
    public readonly Point3 MomentTimes24(Point3 from) =>
        _sixfoldTimesSum - ((from.XM * _normalXTimesSum) + (from.YM * _normalYTimesSum) + (from.ZM * _normalZTimesSum)) - (3 * SixfoldVolume(from) * from);
}
