using System.Collections.Immutable;

namespace Orlop.Hull.Surfaces;

/// <summary>
/// The part of a closed body on one side of a plane, closed again. A corner on the plane counts as beyond it, and a crossing belongs to its edge, so the cut runs in closed lines
/// whatever the plane passes through. Each line is capped by a fan over a point in the plane; where a line is hollow the fan overlaps itself with opposite signs, which leaves every
/// integral over the body exact.
/// </summary>
internal sealed class PlaneCut
{
    private readonly TriangleMesh _body;
    private readonly Point3 _normal;
    private readonly double _offset;
    private readonly Dictionary<int, int> _kept = [];
    private readonly Dictionary<(int Inside, int Beyond), int> _crossings = [];
    private readonly Dictionary<int, int> _cut = [];
    private readonly ImmutableArray<Point3>.Builder _corners = ImmutableArray.CreateBuilder<Point3>();
    private readonly ImmutableArray<Triangle>.Builder _triangles = ImmutableArray.CreateBuilder<Triangle>();

    private PlaneCut(TriangleMesh body, Point3 normal, double offset) => (_body, _normal, _offset) = (body, normal, offset);

    /// <summary>What lies where normal·place is below the offset; null when that is nothing. The normal has length 1.</summary>
    public static TriangleMesh? Keep(TriangleMesh body, Point3 normal, double offset)
    {
        var insideCount = body.Corners.Count(corner => normal.Dot(corner) < offset);
        return insideCount == body.Corners.Length ? body : insideCount == 0 ? null : new PlaneCut(body, normal, offset).Cut();
    }

    private TriangleMesh Cut()
    {
        foreach (var triangle in _body.Triangles)
        {
            var (a, b, c) = (triangle.A, triangle.B, triangle.C);
            switch ((IsInside(a) ? 1 : 0) | (IsInside(b) ? 2 : 0) | (IsInside(c) ? 4 : 0))
            {
                case 7: _triangles.Add(new Triangle(Kept(a), Kept(b), Kept(c))); break;
                case 1: AddCorner(a, b, c); break;
                case 2: AddCorner(b, c, a); break;
                case 4: AddCorner(c, a, b); break;
                case 3: AddStump(a, b, c); break;
                case 6: AddStump(b, c, a); break;
                case 5: AddStump(c, a, b); break;
            }
        }

        while (_cut.Count > 0)
        {
            AddCap(TakeLine(_cut.Keys.First()));
        }

        return new TriangleMesh(_corners.ToImmutable(), _triangles.ToImmutable());
    }

    private bool IsInside(int corner) => Height(_body.Corners[corner]) < 0;

    private double Height(Point3 place) => _normal.Dot(place) - _offset;

    private void AddCorner(int inside, int next, int last)
    {
        var (onNext, onLast) = (Crossing(inside, next), Crossing(inside, last));
        _triangles.Add(new Triangle(Kept(inside), onNext, onLast));
        _cut.Add(onNext, onLast);
    }

    private void AddStump(int first, int second, int beyond)
    {
        var (onSecond, onFirst) = (Crossing(second, beyond), Crossing(first, beyond));
        _triangles.Add(new Triangle(Kept(first), Kept(second), onSecond));
        _triangles.Add(new Triangle(Kept(first), onSecond, onFirst));
        _cut.Add(onSecond, onFirst);
    }

    private int Kept(int corner)
    {
        if (!_kept.TryGetValue(corner, out var found))
        {
            found = Add(_body.Corners[corner]);
            _kept[corner] = found;
        }

        return found;
    }

    private int Crossing(int inside, int beyond)
    {
        if (!_crossings.TryGetValue((inside, beyond), out var found))
        {
            var (from, to) = (_body.Corners[inside], _body.Corners[beyond]);
            var (heightFrom, heightTo) = (Height(from), Height(to));
            found = Add(heightTo == 0 ? to : OnPlane(from + (heightFrom / (heightFrom - heightTo) * (to - from))));
            _crossings[(inside, beyond)] = found;
        }

        return found;
    }

    private Point3 OnPlane(Point3 near) => near - (Height(near) * _normal);

    private int Add(Point3 place)
    {
        _corners.Add(place);
        return _corners.Count - 1;
    }

    private List<int> TakeLine(int start)
    {
        var line = new List<int>();
        for (var at = start; _cut.Remove(at, out var next); at = next)
        {
            line.Add(at);
        }

        return line;
    }

    // Two pieces there and back close each other.
    private void AddCap(List<int> line)
    {
        if (line.Count < 3)
        {
            return;
        }

        var middle = Add(OnPlane(1.0 / line.Count * line.Aggregate(default(Point3), (sum, corner) => sum + _corners[corner])));
        for (var i = 0; i < line.Count; i++)
        {
            _triangles.Add(new Triangle(middle, line[(i + 1) % line.Count], line[i]));
        }
    }
}
