using System.Collections.Immutable;

namespace Orlop.Hull.Surfaces;

/// <summary>
/// Whether a mesh bounds a body: every edge is run once each way, all corners are real, and the volume inside is positive (then the triangles face outwards). It does not
/// look for a surface that passes through itself.
/// </summary>
public static class MeshCheck
{
    private const double FarthestM = 1000;

    /// <summary>All that is wrong, empty for a closed body. A count of a kind beyond ten is left out.</summary>
    public static ImmutableArray<MeshProblem> Find(TriangleMesh mesh)
    {
        ArgumentNullException.ThrowIfNull(mesh);
        if (mesh.Triangles.Length < 4)
        {
            return [new(MeshProblemKind.TooFewTriangles, default, $"{mesh.Triangles.Length} triangles; a body needs at least 4")];
        }

        var basic = CornerProblems(mesh).Take(10).ToImmutableArray();
        if (!basic.IsEmpty)
        {
            return basic;
        }

        var edges = EdgeProblems(mesh);
        if (!edges.IsEmpty)
        {
            return edges;
        }

        var volume = mesh.SignedVolumeM3;
        return volume > 0
            ? []
            : [new(MeshProblemKind.InsideOut, mesh.Centre, FormattableString.Invariant($"the body is inside out or empty: its volume is {volume:0.###} m³"))];
    }

    private static IEnumerable<MeshProblem> CornerProblems(TriangleMesh mesh)
    {
        for (var i = 0; i < mesh.Corners.Length; i++)
        {
            var corner = mesh.Corners[i];
            var reach = Math.Max(Math.Abs(corner.XM), Math.Max(Math.Abs(corner.YM), Math.Abs(corner.ZM)));
            if (!(reach <= FarthestM))
            {
                yield return new MeshProblem(MeshProblemKind.ImpossibleCorner, corner, FormattableString.Invariant($"corner {i} is at {corner}; allowed -{FarthestM} to {FarthestM} m"));
            }
        }

        foreach (var triangle in mesh.Triangles)
        {
            if (!IsThere(triangle.A) || !IsThere(triangle.B) || !IsThere(triangle.C))
            {
                yield return new MeshProblem(MeshProblemKind.MissingCorner, default, $"a triangle names corners {triangle.A}, {triangle.B}, {triangle.C}; there are {mesh.Corners.Length}");
            }
            else if (triangle.A == triangle.B || triangle.B == triangle.C || triangle.C == triangle.A)
            {
                yield return new MeshProblem(MeshProblemKind.CollapsedTriangle, mesh.Corners[triangle.A], $"a triangle uses a corner twice at {mesh.Corners[triangle.A]}");
            }
        }

        bool IsThere(int corner) => corner >= 0 && corner < mesh.Corners.Length;
    }

    private static ImmutableArray<MeshProblem> EdgeProblems(TriangleMesh mesh)
    {
        var runs = new Dictionary<(int From, int To), int>(3 * mesh.Triangles.Length);
        foreach (var triangle in mesh.Triangles)
        {
            Count(triangle.A, triangle.B);
            Count(triangle.B, triangle.C);
            Count(triangle.C, triangle.A);
        }

        var clashes = runs.Where(run => run.Value > 1).Take(10)
            .Select(run => new MeshProblem(MeshProblemKind.ClashingEdge, Middle(run.Key), $"two triangles run the edge at {Middle(run.Key)} the same way"));
        var holes = runs.Keys.Where(edge => !runs.ContainsKey((edge.To, edge.From))).Take(10)
            .Select(edge => new MeshProblem(MeshProblemKind.OpenEdge, Middle(edge), $"open edge at {Middle(edge)}"));
        return [.. clashes, .. holes];

        void Count(int from, int to) => runs[(from, to)] = runs.GetValueOrDefault((from, to)) + 1;

        Point3 Middle((int From, int To) edge) => 0.5 * (mesh.Corners[edge.From] + mesh.Corners[edge.To]);
    }
}
