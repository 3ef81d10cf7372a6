using Orlop.Hull.Hydrostatics;
using Orlop.Hull.Surfaces;
using Orlop.Hull.Tests.Floating;
using Orlop.Hull.Tests.Shapes;
using Xunit;

namespace Orlop.Hull.Tests.Surfaces;

public sealed class BoxCutTests
{
    private static readonly TriangleMesh Box = Solids.Box(new Point3(0, -2, 0), new Point3(10, 2, 2));

    // Closed form: the box between the greater of the low corners and the lesser of the high ones. The last three share faces and edges with the hull.
    [Theory]
    [InlineData(1, -1, 0.5, 3, 1, 1.5, 4)]
    [InlineData(-1, -3, -1, 3, 1, 1, 9)]
    [InlineData(8, 1, 1, 14, 5, 9, 2)]
    [InlineData(0, -2, 0, 5, 2, 2, 40)]
    [InlineData(0, -2, 0, 10, 2, 2, 80)]
    [InlineData(2, -9, 0, 3, 9, 1, 4)]
    public void Calculate_BoxInBox_IsTheOverlap(double x1, double y1, double z1, double x2, double y2, double z2, double volumeM3)
    {
        var cut = BoxCut.Calculate("tank", Box, new Point3(x1, y1, z1), new Point3(x2, y2, z2));
        Assert.Empty(cut.Body!.Problems);
        Assert.Equal(volumeM3, cut.VolumeM3, 1e-12 * volumeM3);
        Assert.Equal(volumeM3 / ((x2 - x1) * (y2 - y1) * (z2 - z1)), cut.InsideFraction, 1e-12);
        Point3 low = new(Math.Max(x1, 0), Math.Max(y1, -2), Math.Max(z1, 0)), high = new(Math.Min(x2, 10), Math.Min(y2, 2), Math.Min(z2, 2));
        Assert.Equal((low, high), (cut.Body.Lowest, cut.Body.Highest));
    }

    // Closed form: a V of 45° cut level at 0.3 and 1.1 and upright at y 0.2: ∫(z - 0.2)dz = (1.1² - 0.3²)/2 - 0.2·0.8 = 0.40 m².
    [Fact]
    public void Calculate_PrismHull_IsTheSectionBesideTheSkin()
    {
        var hull = Solids.Prism(0, 10, [(0, 0), (2, 2), (-2, 2)]);
        var cut = BoxCut.Calculate("tank", hull, new Point3(2, 0.2, 0.3), new Point3(5, 4, 1.1));
        Assert.Empty(cut.Body!.Problems);
        Assert.Equal(BoxCutStatus.Cut, cut.Status);
        Assert.Equal(3 * 0.4, cut.VolumeM3, 1e-13);
        // Centroid up: ∫z(z - 0.2)dz/0.4 = ((1.1³ - 0.3³)/3 - 0.1(1.1² - 0.3²))/0.4.
        var part = Submersion.Calculate(cut.Body, Attitude.Upright(5));
        Assert.Equal(((((1.1 * 1.1 * 1.1) - 0.027) / 3) - (0.1 * (1.21 - 0.09))) / 0.4, part.CentreOfBuoyancy!.Value.ZM, 1e-12);
        Assert.Equal(3.5, part.CentreOfBuoyancy.Value.XM, 1e-12);
    }

    // Circular segment below z: R²(a - sin a·cos a), a = acos((R - h)/R); 2880 sides are short of the whole circle by 2.5e-6 m².
    [Theory]
    [InlineData(0.2)]
    [InlineData(1.0)]
    [InlineData(1.7)]
    public void Calculate_Cylinder_IsTheCircularSegment(double depthM)
    {
        var hull = Solids.Cylinder(0, 8, 0, 1, 1, 2880);
        var cut = BoxCut.Calculate("tank", hull, new Point3(1, -3, -1), new Point3(3, 3, depthM));
        Assert.Empty(cut.Body!.Problems);
        var angle = Math.Acos(1 - depthM);
        Assert.Equal(2 * (angle - (Math.Sin(angle) * Math.Cos(angle))), cut.VolumeM3, 5e-6);
    }

    [Fact]
    public void Calculate_WhollyInside_IsTheBox()
    {
        var cut = BoxCut.Calculate("locker", Boats.Hull, new Point3(4, -0.5, 1), new Point3(5, 0.5, 1.4));
        Assert.Equal(BoxCutStatus.Inside, cut.Status);
        Assert.Equal(12, cut.Body!.Triangles.Length);
        Assert.Equal(0.4, cut.VolumeM3, 1e-12);
        Assert.Equal(1, cut.InsideFraction);
    }

    [Theory]
    [InlineData(20, 22, 0, 1)]
    [InlineData(10, 12, 0, 1)]
    [InlineData(2, 3, -3, 0)]
    public void Calculate_OutsideOrOnlyTouching_IsEmptyAndSaysSo(double x1, double x2, double z1, double z2)
    {
        var cut = BoxCut.Calculate("tank", Box, new Point3(x1, 0, z1), new Point3(x2, 1, z2));
        Assert.Equal((BoxCutStatus.Outside, 0.0, 0.0), (cut.Status, cut.VolumeM3, cut.InsideFraction));
        Assert.Null(cut.Body);
        Assert.Contains("tank: from", cut.Message, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData(double.NaN, 1, "tank: low.XM = NaN m")]
    [InlineData(3, 2, "tank: length = -1 m")]
    [InlineData(3, 3, "tank: length = 0 m")]
    public void Calculate_ImpossibleBox_IsRefused(double x1, double x2, string message) =>
        Assert.Contains(message, Assert.Throws<ArgumentOutOfRangeException>(() => BoxCut.Calculate("tank", Box, new Point3(x1, 0, 0), new Point3(x2, 1, 1))).Message, StringComparison.Ordinal);

    [Fact]
    public void Calculate_OpenHull_IsRefused()
    {
        var open = new TriangleMesh(Box.Corners, Box.Triangles.RemoveAt(3));
        Assert.Contains("tank: hull: not a closed body", Assert.Throws<ArgumentException>(() => BoxCut.Calculate("tank", open, default, new Point3(1, 1, 1))).Message, StringComparison.Ordinal);
    }

    // Midpoint rule over x and z of the formula's half-breadth, clamped to the box; knows nothing of triangles.
    [Fact]
    public void Calculate_RandomBoxesInWigley_AgreeWithQuadrature()
    {
        var hull = FunctionHull.Wigley(12, 3.6, 0.9, 1.8, 240, 120);
        var random = new Random(41);
        for (var i = 0; i < 8; i++)
        {
            Point3 low = new((random.NextDouble() * 8) - 6, (random.NextDouble() * 3) - 1.8, random.NextDouble() - 0.1);
            var high = low + new Point3(1 + (random.NextDouble() * 3), 0.5 + random.NextDouble(), 0.3 + random.NextDouble());
            var cut = BoxCut.Calculate("tank", hull, low, high);
            Assert.True(cut.Body is null || cut.Body.Problems.IsEmpty);
            Assert.Equal(Quadrature(low, high), cut.VolumeM3, 3e-4);
        }
    }

    [Fact]
    public void Calculate_SplitBoxInDentedBodies_PartsMakeTheWhole()
    {
        var random = new Random(42);
        var triedCount = 0;
        for (var i = 0; i < 300; i++)
        {
            // On half of the bodies all corners lie on a grid that the planes lie on too.
            var isOnGrid = i % 2 == 0;
            var body = RandomBody.Create(random, 5);
            body = isOnGrid ? body.Moved(corner => new Point3(Grid(corner.XM), Grid(corner.YM), Grid(corner.ZM))) : body;
            if (!body.Problems.IsEmpty)
            {
                continue;
            }

            Point3 low = Place(random, body, isOnGrid), high = Place(random, body, isOnGrid) + new Point3(1.5, 0.75, 0.5);
            if (!(high.XM > low.XM + 0.25 && high.YM > low.YM && high.ZM > low.ZM))
            {
                continue;
            }

            triedCount++;
            var split = isOnGrid ? Grid(0.5 * (low.XM + high.XM)) : low.XM + (random.NextDouble() * (high.XM - low.XM));
            var whole = Sum(BoxCut.Calculate("whole", body, low, high));
            var after = Sum(BoxCut.Calculate("after", body, low, high with { XM = split }));
            var fore = Sum(BoxCut.Calculate("fore", body, low with { XM = split }, high));
            Assert.Equal(whole.VolumeM3, after.VolumeM3 + fore.VolumeM3, 1e-10);
            Assert.InRange((whole.Moment - (after.Moment + fore.Moment)).LengthM, 0, 1e-9);
        }

        Assert.InRange(triedCount, 60, 300);

        static double Grid(double at) => Math.Round(at * 4) / 4;

        static Point3 Place(Random random, TriangleMesh body, bool isOnGrid)
        {
            var size = body.Highest - body.Lowest;
            var place = body.Lowest + new Point3(random.NextDouble() * size.XM, random.NextDouble() * size.YM, random.NextDouble() * size.ZM);
            return isOnGrid ? new Point3(Grid(place.XM), Grid(place.YM), Grid(place.ZM)) : place;
        }
    }

    private static (double VolumeM3, Point3 Moment) Sum(BoxCutResult cut)
    {
        if (cut.Body is not { } body)
        {
            return (0, default);
        }

        Assert.Empty(body.Problems);
        var part = Submersion.Calculate(body, Attitude.Upright(100));
        Assert.Equal(cut.VolumeM3, part.VolumeM3, 1e-10);
        return (part.VolumeM3, part.VolumeM3 * part.CentreOfBuoyancy!.Value);
    }

    private static double Quadrature(Point3 low, Point3 high)
    {
        const int Steps = 600;
        low = new Point3(Math.Max(low.XM, -6), low.YM, Math.Max(low.ZM, 0));
        high = new Point3(Math.Min(high.XM, 6), high.YM, Math.Min(high.ZM, 1.8));
        var (stepX, stepZ) = ((high.XM - low.XM) / Steps, (high.ZM - low.ZM) / Steps);
        var sum = 0.0;
        for (var i = 0; i < Steps; i++)
        {
            for (var j = 0; j < Steps; j++)
            {
                var (x, z) = (low.XM + ((i + 0.5) * stepX), low.ZM + ((j + 0.5) * stepZ));
                var half = FunctionHull.WigleyHalfBreadthM(x, z, 12, 3.6, 0.9);
                sum += Math.Max(0, Math.Min(half, high.YM) - Math.Max(-half, low.YM));
            }
        }

        return sum * stepX * stepZ;
    }
}
