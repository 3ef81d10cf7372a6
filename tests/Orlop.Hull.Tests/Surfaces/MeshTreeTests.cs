using Orlop.Hull.Hydrostatics;
using Orlop.Hull.Surfaces;
using Xunit;

namespace Orlop.Hull.Tests.Surfaces;

public sealed class MeshTreeTests
{
    // The same sums triangle by triangle, without boxes: the divergence theorem over clipped triangles, with the clip written another way.
    [Theory]
    [InlineData(3, 0)]
    [InlineData(8, 1)]
    [InlineData(40, 2)]
    [InlineData(120, 3)]
    public void Below_AnyPlane_AgreesWithEveryTriangleClippedAlone(int fineness, int seed)
    {
        var random = new Random(seed);
        var body = Solids.Ellipsoid(new Point3(3, 1, -2), new Point3(6, 2, 1), fineness);
        for (var i = 0; i < 50; i++)
        {
            var plane = WaterPlane.Of(new Attitude(-2 + (3 * (random.NextDouble() - 0.5)), 20 * (random.NextDouble() - 0.5), 360 * random.NextDouble()));
            var (volume, moment) = OneByOne(plane, body);
            var found = Immersion.Below(plane, body);
            Assert.Equal(volume, found.Volume, 1e-11);
            Assert.Equal(moment.XM, found.Moment.XM, 1e-10);
            Assert.Equal(moment.YM, found.Moment.YM, 1e-10);
            Assert.Equal(moment.ZM, found.Moment.ZM, 1e-10);
        }
    }

    // Planes through corners, edges and faces of a box: nothing is counted twice and nothing is lost.
    [Theory]
    [InlineData(0, 0)]
    [InlineData(0.5, 4)]
    [InlineData(1, 8)]
    [InlineData(1.5, 8)]
    public void Below_PlaneInAFace_TakesTheFaceToOneSide(double draught, double volume)
    {
        var found = Immersion.Below(WaterPlane.Of(Attitude.Upright(draught)), Solids.Box(new Point3(0, 0, 0), new Point3(4, 2, 1)));
        Assert.Equal(volume, found.Volume, 1e-13);
        Assert.Equal(draught is 0.5 or 1 ? 8 : 0, found.Area, 1e-13);
    }

    [Fact]
    public void Nodes_OfAMesh_HoldEveryTriangleOnce()
    {
        var mesh = Solids.Ellipsoid(default, new Point3(6, 2, 1), 25);
        var corners = new List<Point3>();
        foreach (ref readonly var node in mesh.Tree.Nodes)
        {
            corners.AddRange(mesh.Tree.CornersOf(node));
        }

        Assert.Equal(
            mesh.Triangles.Select(triangle => (mesh.Corners[triangle.A], mesh.Corners[triangle.B], mesh.Corners[triangle.C])).ToHashSet(),
            corners.Chunk(3).Select(three => (three[0], three[1], three[2])).ToHashSet());
        Assert.Equal(3 * mesh.Triangles.Length, corners.Count);
    }

    private static (double Volume, Point3 Moment) OneByOne(WaterPlane plane, TriangleMesh mesh)
    {
        var foot = plane.Draught * plane.Up;
        var (volume, moment) = (0.0, default(Point3));
        foreach (var triangle in mesh.Triangles)
        {
            Point3[] whole = [mesh.Corners[triangle.A] - foot, mesh.Corners[triangle.B] - foot, mesh.Corners[triangle.C] - foot];
            var wet = new List<Point3>();
            for (var i = 0; i < 3; i++)
            {
                var (from, to) = (whole[i], whole[(i + 1) % 3]);
                var (high, next) = (plane.Up.Dot(from), plane.Up.Dot(to));
                if (high < 0)
                {
                    wet.Add(from);
                }

                if (high < 0 != next < 0)
                {
                    wet.Add(from + (high / (high - next) * (to - from)));
                }
            }

            for (var i = 2; i < wet.Count; i++)
            {
                var part = wet[0].Dot(wet[i - 1].Cross(wet[i])) / 6;
                volume += part;
                moment += 0.25 * part * (wet[0] + wet[i - 1] + wet[i]);
            }
        }

        return (volume, moment + (volume * foot));
    }
}
