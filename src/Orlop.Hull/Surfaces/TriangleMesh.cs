using System.Collections.Immutable;

namespace Orlop.Hull.Surfaces;

/// <summary>
/// A surface made of triangles. The engine works with it only when it is closed, that is when <see cref="MeshCheck"/> finds nothing; every calculation checks that once
/// for each mesh.
/// </summary>
public sealed class TriangleMesh
{
    private readonly Lazy<ImmutableArray<MeshProblem>> _problems;
    private readonly Lazy<MeshTree> _tree;

    public TriangleMesh(ImmutableArray<Point3> corners, ImmutableArray<Triangle> triangles)
    {
        Corners = corners.IsDefault ? [] : corners;
        Triangles = triangles.IsDefault ? [] : triangles;
        _problems = new Lazy<ImmutableArray<MeshProblem>>(() => MeshCheck.Find(this));
        _tree = new Lazy<MeshTree>(() => new MeshTree(this));
        (Lowest, Highest) = Bounds(Corners);
    }

    public ImmutableArray<Point3> Corners { get; }

    public ImmutableArray<Triangle> Triangles { get; }

    /// <summary>What keeps the mesh from being a closed body; empty when nothing does.</summary>
    public ImmutableArray<MeshProblem> Problems => _problems.Value;

    /// <summary>Smallest x, y and z of all corners.</summary>
    public Point3 Lowest { get; }

    /// <summary>Greatest x, y and z of all corners.</summary>
    public Point3 Highest { get; }

    internal Point3 Centre => 0.5 * (Lowest + Highest);

    internal MeshTree Tree => _tree.Value;

    /// <summary>Volume inside, negative when the triangles face inwards; exact for any closed mesh (divergence theorem).</summary>
    public double SignedVolumeM3 => Tree.SignedVolumeM3;

    /// <summary>The same surface with each corner moved by a rule that keeps orientation.</summary>
    public TriangleMesh Moved(Func<Point3, Point3> rule) => new([.. Corners.Select(rule)], Triangles);

    /// <summary>The same surface shifted by a step.</summary>
    public TriangleMesh Shifted(Point3 step) => Moved(corner => corner + step);

    /// <summary>The body turned inside out: the surface of a hollow in another body.</summary>
    public TriangleMesh Reversed() => new(Corners, [.. Triangles.Select(triangle => new Triangle(triangle.A, triangle.C, triangle.B))]);

    /// <summary>Refuses a mesh that is not a closed body, with the first thing wrong and how many more there are.</summary>
    internal TriangleMesh Closed(string where) =>
        Problems.IsEmpty
            ? this
            : throw new ArgumentException($"{where}: not a closed body: {Problems[0].Message}{(Problems.Length > 1 ? $" (and {Problems.Length - 1} more)" : "")}");

    private static (Point3 Lowest, Point3 Highest) Bounds(ImmutableArray<Point3> corners)
    {
        if (corners.IsEmpty)
        {
            return default;
        }

        Point3 low = corners[0], high = corners[0];
        foreach (var corner in corners)
        {
            (low, high) = (Point3.Least(low, corner), Point3.Greatest(high, corner));
        }

        return (low, high);
    }
}
