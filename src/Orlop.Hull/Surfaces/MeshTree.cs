using Orlop.Hull.Hydrostatics;

namespace Orlop.Hull.Surfaces;

/// <summary>
/// The triangles of a mesh in boxes within boxes, each with the sums over what it holds, so that a plane costs about the square root of their number: only boxes that it may cut are opened.
/// </summary>
internal sealed class MeshTree
{
    private const int MostInLeaf = 4;

    /// <summary>Share of the distances within which a height counts as not told from its rounding.</summary>
    private const double Rounding = 1e-13;

    private readonly Point3[] _corners;
    private readonly MeshTreeNode[] _nodes;
    private readonly double _reachM;
    private int _count;

    public MeshTree(TriangleMesh mesh)
    {
        Centre = mesh.Centre;
        _reachM = Math.Max(mesh.Highest.LengthM, mesh.Lowest.LengthM) + (mesh.Highest - mesh.Lowest).LengthM;
        var triangles = mesh.Triangles.ToArray();
        _corners = new Point3[3 * triangles.Length];
        _nodes = new MeshTreeNode[Math.Max(1, triangles.Length)];
        if (triangles.Length > 0)
        {
            Fill(mesh, triangles, 0, triangles.Length);
        }
    }

    /// <summary>Origin of all sums.</summary>
    public Point3 Centre { get; }

    /// <summary>A box stands before the two that it holds; <see cref="MeshTreeNode.After"/> leads past them.</summary>
    public ReadOnlySpan<MeshTreeNode> Nodes => _nodes.AsSpan(0, _count);

    /// <summary>Volume inside, positive when the triangles face outwards.</summary>
    public double SignedVolumeM3 => _count == 0 ? 0 : _nodes[0].Sums.SixfoldVolume(default) / 6;

    /// <summary>How near to the plane a box's height may come before its triangles are asked one by one, so that the two triangles at an edge are never told apart.</summary>
    public double MarginM(in WaterPlane plane) => Rounding * (_reachM + Math.Abs(plane.Draught));

    /// <summary>The corners of a leaf's triangles, three each; none for a box that holds others.</summary>
    public ReadOnlySpan<Point3> CornersOf(in MeshTreeNode node) => _corners.AsSpan(node.FirstCorner, node.CornerCount);

    // Splits at the middle triangle along the longest side of the triangles' own middles.
    private int Fill(TriangleMesh mesh, Triangle[] triangles, int first, int count)
    {
        var at = _count++;
        var (middle, half) = BoxOf(mesh, triangles.AsSpan(first, count));
        if (count <= MostInLeaf)
        {
            var sums = Store(mesh, triangles.AsSpan(first, count), 3 * first);
            _nodes[at] = new MeshTreeNode(middle, half, sums, _count, 3 * first, 3 * count);
            return at;
        }

        Sort(mesh, triangles, first, count);
        var left = Fill(mesh, triangles, first, count / 2);
        var right = Fill(mesh, triangles, first + (count / 2), count - (count / 2));
        var both = _nodes[left].Sums;
        both.Add(_nodes[right].Sums);
        _nodes[at] = new MeshTreeNode(middle, half, both, _count, 0, 0);
        return at;
    }

    private SurfaceSums Store(TriangleMesh mesh, ReadOnlySpan<Triangle> triangles, int firstCorner)
    {
        var sums = default(SurfaceSums);
        foreach (ref readonly var triangle in triangles)
        {
            var (a, b, c) = (mesh.Corners[triangle.A], mesh.Corners[triangle.B], mesh.Corners[triangle.C]);
            (_corners[firstCorner], _corners[firstCorner + 1], _corners[firstCorner + 2]) = (a, b, c);
            firstCorner += 3;
            sums.Add(a - Centre, b - Centre, c - Centre);
        }

        return sums;
    }

    private static void Sort(TriangleMesh mesh, Triangle[] triangles, int first, int count)
    {
        var keys = new Point3[count];
        var (low, high) = (new Point3(double.PositiveInfinity, double.PositiveInfinity, double.PositiveInfinity), new Point3(double.NegativeInfinity, double.NegativeInfinity, double.NegativeInfinity));
        for (var i = 0; i < count; i++)
        {
            var triangle = triangles[first + i];
            keys[i] = mesh.Corners[triangle.A] + mesh.Corners[triangle.B] + mesh.Corners[triangle.C];
            (low, high) = (Point3.Least(low, keys[i]), Point3.Greatest(high, keys[i]));
        }

        var size = high - low;
        var along = Array.ConvertAll<Point3, double>(keys, size.XM >= size.YM && size.XM >= size.ZM ? key => key.XM : size.YM >= size.ZM ? key => key.YM : key => key.ZM);
        along.AsSpan().Sort(triangles.AsSpan(first, count));
    }

    private static (Point3 Middle, Point3 Half) BoxOf(TriangleMesh mesh, ReadOnlySpan<Triangle> triangles)
    {
        Point3 low = mesh.Corners[triangles[0].A], high = low;
        foreach (ref readonly var triangle in triangles)
        {
            var (a, b, c) = (mesh.Corners[triangle.A], mesh.Corners[triangle.B], mesh.Corners[triangle.C]);
            low = Point3.Least(Point3.Least(low, a), Point3.Least(b, c));
            high = Point3.Greatest(Point3.Greatest(high, a), Point3.Greatest(b, c));
        }

        return (0.5 * (low + high), 0.5 * (high - low));
    }
}
