using System.Collections.Immutable;
using Orlop.Hull.Surfaces;

namespace Orlop.Hull.Tests.Shapes;

/// <summary>A closed symmetric hull whose half-breadth is a formula of x and z, with its corners on the formula's surface; for tests of the engine against closed forms.</summary>
public static class FunctionHull
{
    /// <summary>Half-breadth at x and z, zero at both ends; a flat deck closes the top. Heights are those of the rows.</summary>
    public static TriangleMesh Build(double lengthM, ImmutableArray<double> heightsM, int steps, Func<double, double, double> halfBreadthM)
    {
        var corners = new List<Point3>();
        var index = new Dictionary<Point3, int>();
        var triangles = new List<Triangle>();
        var rows = heightsM.Length;
        for (var i = 0; i < steps; i++)
        {
            for (var j = 0; j < rows - 1; j++)
            {
                Quad(At(i, j, 1), At(i + 1, j, 1), At(i + 1, j + 1, 1), At(i, j + 1, 1), isMirrored: true);
                Quad(At(i, j, -1), At(i + 1, j, -1), At(i + 1, j + 1, -1), At(i, j + 1, -1), isMirrored: false);
            }

            Quad(At(i, 0, 1), At(i + 1, 0, 1), At(i + 1, 0, -1), At(i, 0, -1), isMirrored: false);
            Quad(At(i, rows - 1, 1), At(i + 1, rows - 1, 1), At(i + 1, rows - 1, -1), At(i, rows - 1, -1), isMirrored: true);
        }

        return new TriangleMesh([.. corners], [.. Paired(triangles)]);

        Point3 At(int i, int j, int side)
        {
            var x = lengthM * (((double)i / steps) - 0.5);
            var y = i == 0 || i == steps ? 0 : halfBreadthM(x, heightsM[j]);
            return new Point3(x, y == 0 ? 0 : side * y, heightsM[j]);
        }

        int Corner(Point3 place)
        {
            if (!index.TryGetValue(place, out var found))
            {
                found = corners.Count;
                index[place] = found;
                corners.Add(place);
            }

            return found;
        }

        void Quad(Point3 a, Point3 b, Point3 c, Point3 d, bool isMirrored)
        {
            Add(a, b, c, isMirrored);
            Add(a, c, d, isMirrored);
        }

        void Add(Point3 a, Point3 b, Point3 c, bool isMirrored)
        {
            var (first, second, third) = (Corner(a), Corner(b), Corner(c));
            if (first != second && second != third && third != first)
            {
                triangles.Add(isMirrored ? new Triangle(first, third, second) : new Triangle(first, second, third));
            }
        }
    }

    /// <summary>y = (B/2)(1-(2x/L)²)(1-(d/T)²)(1+0.2a₂…) and its modified family of the Delft tests (1992); d is depth below the waterline at T. Vertical topsides above it.</summary>
    public static double WigleyHalfBreadthM(double xM, double zM, double lengthM, double beamM, double draughtM, double a2 = 0, double alpha = 0)
    {
        var x2 = Math.Pow(2 * xM / lengthM, 2);
        var z2 = Math.Pow(Math.Max(0, draughtM - zM) / draughtM, 2);
        var fullness = ((1 - z2) * (1 - x2) * (1 + (a2 * x2))) + (alpha * z2 * (1 - Math.Pow(z2, 4)) * Math.Pow(1 - x2, 4));
        return beamM / 2 * fullness;
    }

    /// <summary>The Wigley hull with vertical topsides: origin amidships at the keel.</summary>
    public static TriangleMesh Wigley(double lengthM, double beamM, double draughtM, double depthM, int steps, int rows, double a2 = 0, double alpha = 0) =>
        Build(lengthM, [.. Enumerable.Range(0, rows + 1).Select(j => draughtM * j / rows), depthM], steps,
            (x, z) => z <= 0 ? 0 : WigleyHalfBreadthM(x, z, lengthM, beamM, draughtM, a2, alpha));

    // Where the hull has no breadth its two skins lie on each other and bound nothing.
    private static IEnumerable<Triangle> Paired(List<Triangle> triangles)
    {
        var present = triangles.Select(Key).ToHashSet();
        return triangles.Where(triangle => !present.Contains(Key(new Triangle(triangle.A, triangle.C, triangle.B))));
    }

    private static (int First, int Second, int Third) Key(Triangle triangle) =>
        triangle.A < triangle.B && triangle.A < triangle.C ? (triangle.A, triangle.B, triangle.C)
        : triangle.B < triangle.C ? (triangle.B, triangle.C, triangle.A)
        : (triangle.C, triangle.A, triangle.B);
}
