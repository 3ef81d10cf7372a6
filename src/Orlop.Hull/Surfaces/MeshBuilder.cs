using System.Collections.Immutable;

namespace Orlop.Hull.Surfaces;

/// <summary>Collects triangles, joining corners at the same place, leaving out what has collapsed, and taking away skins that lie back to back and bound nothing.</summary>
internal sealed class MeshBuilder
{
    private readonly Dictionary<Point3, int> _index = [];
    private readonly ImmutableArray<Point3>.Builder _corners = ImmutableArray.CreateBuilder<Point3>();
    private readonly HashSet<Triangle> _triangles = [];

    /// <summary>Two triangles along the shorter diagonal, which treats both ends and both sides of a boat alike.</summary>
    public void AddQuad(Point3 a, Point3 b, Point3 c, Point3 d)
    {
        if ((c - a).LengthM <= (d - b).LengthM)
        {
            AddTriangle(a, b, c);
            AddTriangle(a, c, d);
        }
        else
        {
            AddTriangle(a, b, d);
            AddTriangle(b, c, d);
        }
    }

    public void AddTriangle(Point3 a, Point3 b, Point3 c)
    {
        var (first, second, third) = (Corner(a), Corner(b), Corner(c));
        if (first == second || second == third || third == first)
        {
            return;
        }

        if (!_triangles.Remove(LowestFirst(first, third, second)))
        {
            _triangles.Add(LowestFirst(first, second, third));
        }
    }

    public TriangleMesh Build() =>
        new(_corners.ToImmutable(), [.. _triangles.OrderBy(triangle => triangle.A).ThenBy(triangle => triangle.B).ThenBy(triangle => triangle.C)]);

    private int Corner(Point3 place)
    {
        if (!_index.TryGetValue(place, out var found))
        {
            found = _corners.Count;
            _index[place] = found;
            _corners.Add(place);
        }

        return found;
    }

    private static Triangle LowestFirst(int a, int b, int c) =>
        a < b && a < c ? new Triangle(a, b, c) : b < c ? new Triangle(b, c, a) : new Triangle(c, a, b);
}
