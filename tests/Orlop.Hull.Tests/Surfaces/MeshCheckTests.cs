using Orlop.Hull.Floating;
using Orlop.Hull.Hydrostatics;
using Orlop.Hull.Surfaces;
using Xunit;

namespace Orlop.Hull.Tests.Surfaces;

public sealed class MeshCheckTests
{
    private static readonly TriangleMesh Box = Solids.Box(new Point3(0, -1, 0), new Point3(4, 1, 1));

    [Fact]
    public void Find_Box_FindsNothing() => Assert.Empty(MeshCheck.Find(Box));

    [Fact]
    public void Find_TriangleMissing_NamesItsThreeEdges()
    {
        var holed = new TriangleMesh(Box.Corners, Box.Triangles.RemoveAt(3));
        Assert.Equal(3, holed.Problems.Count(problem => problem.Kind == MeshProblemKind.OpenEdge));
    }

    [Fact]
    public void Find_TriangleTurned_NamesTheClash()
    {
        var first = Box.Triangles[0];
        var turned = new TriangleMesh(Box.Corners, Box.Triangles.SetItem(0, new Triangle(first.A, first.C, first.B)));
        Assert.Contains(turned.Problems, problem => problem.Kind == MeshProblemKind.ClashingEdge);
    }

    [Fact]
    public void Find_InsideOut_IsNamed() => Assert.Equal(MeshProblemKind.InsideOut, Assert.Single(Box.Reversed().Problems).Kind);

    [Fact]
    public void Find_CornerNotFinite_IsNamed()
    {
        var spoilt = new TriangleMesh(Box.Corners.SetItem(2, new Point3(double.NaN, 0, 0)), Box.Triangles);
        Assert.Equal(MeshProblemKind.ImpossibleCorner, Assert.Single(spoilt.Problems).Kind);
    }

    [Fact]
    public void Find_MissingCorner_IsNamed()
    {
        var spoilt = new TriangleMesh(Box.Corners, Box.Triangles.SetItem(2, new Triangle(0, 1, 99)));
        Assert.Equal(MeshProblemKind.MissingCorner, Assert.Single(spoilt.Problems).Kind);
    }

    [Fact]
    public void Find_CollapsedTriangle_IsNamed()
    {
        var spoilt = new TriangleMesh(Box.Corners, Box.Triangles.SetItem(2, new Triangle(0, 1, 1)));
        Assert.Equal(MeshProblemKind.CollapsedTriangle, Assert.Single(spoilt.Problems).Kind);
    }

    [Fact]
    public void Find_Nothing_SaysTooFew() => Assert.Equal(MeshProblemKind.TooFewTriangles, Assert.Single(new TriangleMesh(default, default).Problems).Kind);

    [Fact]
    public void Submersion_OpenMesh_IsRefusedWithThePlace()
    {
        var holed = new TriangleMesh(Box.Corners, Box.Triangles.RemoveAt(3));
        var refusal = Assert.Throws<ArgumentException>(() => Submersion.Calculate(holed, Attitude.Upright(0.5)));
        Assert.Contains("open edge at (", refusal.Message, StringComparison.Ordinal);
        var boat = new FloatingInput { Subject = "skiff", Buoyancy = [holed], MassKg = 100, CentreOfGravity = default, WaterKgPerM3 = 1000 };
        Assert.StartsWith("skiff: hull: not a closed body", Assert.Throws<ArgumentException>(() => Equilibrium.Solve(boat)).Message, StringComparison.Ordinal);
    }

    [Fact]
    public void Solids_Volumes_AreTheirFormulas()
    {
        Assert.Equal(8, Box.SignedVolumeM3, 1e-14);
        Assert.Equal(0.5 * 6 * Math.Sin(Math.Tau / 6) * 4 * 10, Solids.Cylinder(-5, 5, 1, 3, 2, 6).SignedVolumeM3, 1e-12);
        Assert.Equal(4.0 / 3 * Math.PI * 3 * 2 * 1, Solids.Ellipsoid(new Point3(1, 2, 3), new Point3(3, 2, 1), 100).SignedVolumeM3, 0.02);
        Assert.Equal(12, Solids.Prism(0, 4, [(0, 0), (0, 2), (3, 0)]).SignedVolumeM3, 1e-13);
    }

    [Fact]
    public void Solids_ImpossibleSize_IsRefused()
    {
        Assert.Throws<ArgumentOutOfRangeException>(() => Solids.Box(default, default));
        Assert.Throws<ArgumentOutOfRangeException>(() => Solids.Box(default, new Point3(double.NaN, 1, 1)));
        Assert.Throws<ArgumentOutOfRangeException>(() => Solids.Cylinder(0, 1, 0, 0, double.NaN, 12));
        Assert.Throws<ArgumentOutOfRangeException>(() => Solids.Ellipsoid(default, new Point3(1, 1, 1), 1));
    }
}
