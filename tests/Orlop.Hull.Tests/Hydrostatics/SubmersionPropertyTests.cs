using Orlop.Hull.Hydrostatics;
using Orlop.Hull.Surfaces;
using Orlop.Hull.Tests.Shapes;
using Xunit;

namespace Orlop.Hull.Tests.Hydrostatics;

public sealed class SubmersionPropertyTests
{
    [Fact]
    public void Calculate_RandomBodiesAtRandomAttitudes_AgreeWithSectionQuadrature()
    {
        var random = new Random(3);
        for (var i = 0; i < 300; i++)
        {
            var (mesh, attitude) = (RandomBody.Create(random), RandomAttitude(random));
            var part = Submersion.Calculate(mesh, attitude);
            var other = SectionQuadrature.Integrate(mesh, attitude);
            Assert.Equal(other[0], part.VolumeM3, 1e-9);
            Assert.Equal(other[4], part.WaterplaneAreaM2, 1e-9);
            if (part.CentreOfBuoyancy is { } buoyancy && part.VolumeM3 > 0.01)
            {
                var turned = SectionQuadrature.Turned(buoyancy, attitude);
                AssertClose(new Point3(other[1], other[2], other[3]), part.VolumeM3 * turned);
            }

            if (part.CentreOfFlotation is { } flotation && part.WaterplaneAreaM2 > 0.01)
            {
                var turned = SectionQuadrature.Turned(flotation, attitude);
                AssertClose(new Point3(other[5], other[6], 0), part.WaterplaneAreaM2 * turned);
                Assert.Equal(other[7] - (other[5] * other[5] / other[4]), part.LongitudinalSecondMomentM4, 1e-7);
                Assert.Equal(other[8] - (other[6] * other[6] / other[4]), part.TransverseSecondMomentM4, 1e-7);
                Assert.Equal(other[9] - (other[5] * other[6] / other[4]), part.ProductMomentM4, 1e-7);
            }
        }
    }

    [Fact]
    public void Calculate_PlaneThroughCornersEdgesAndFaces_LeavesNoGap()
    {
        var box = Solids.Box(new Point3(0, -2, 0), new Point3(10, 2, 2));
        Assert.Equal(0, Submersion.Calculate(box, Attitude.Upright(0)).VolumeM3);
        Assert.Equal(80, Submersion.Calculate(box, Attitude.Upright(2)).VolumeM3, 1e-12);
        Assert.Equal(40, Submersion.Calculate(box, Attitude.Upright(2)).WaterplaneAreaM2, 1e-12);
        // Through two opposite long edges: half the box.
        var heelDeg = Math.Atan2(2, 4) * 180 / Math.PI;
        var half = Submersion.Calculate(box, new Attitude(Math.Cos(heelDeg * Math.PI / 180), 0, heelDeg));
        Assert.Equal(40, half.VolumeM3, 1e-11);
        Assert.Equal(10 * Math.Sqrt(20), half.WaterplaneAreaM2, 1e-11);
    }

    [Fact]
    public void Calculate_PlaneThroughACornerOfARandomBody_AgreesWithThePlanesBeside()
    {
        var random = new Random(4);
        for (var i = 0; i < 200; i++)
        {
            var mesh = RandomBody.Create(random, rings: 4);
            var attitude = RandomAttitude(random);
            var through = attitude with { DraughtM = attitude.DraughtM + attitude.HeightAboveWaterM(mesh.Corners[random.Next(mesh.Corners.Length)]) };
            double Volume(double step) => Submersion.Calculate(mesh, through with { DraughtM = through.DraughtM + step }).VolumeM3;
            Assert.Equal(0.5 * (Volume(-1e-7) + Volume(1e-7)), Volume(0), 1e-9);
        }
    }

    // stability.md 2.2, check 3: dV/dd = A by differences.
    [Fact]
    public void Calculate_SmallSinkage_ChangesVolumeByTheWaterplane()
    {
        var random = new Random(5);
        for (var i = 0; i < 100; i++)
        {
            var (mesh, attitude) = (RandomBody.Create(random), RandomAttitude(random));
            const double Step = 1e-5;
            var (below, at, above) = (At(-Step), At(0), At(Step));
            Assert.Equal((above.VolumeM3 - below.VolumeM3) / (2 * Step), at.WaterplaneAreaM2, 1e-5);

            ImmersedPart At(double step) => Submersion.Calculate(mesh, attitude with { DraughtM = attitude.DraughtM + step });
        }
    }

    [Fact]
    public void Calculate_BodyAndAxesTurnedTogether_ChangesNothing()
    {
        var random = new Random(6);
        for (var i = 0; i < 100; i++)
        {
            var (mesh, attitude) = (RandomBody.Create(random), RandomAttitude(random));
            var part = Submersion.Calculate(mesh, attitude);
            var turned = Submersion.Calculate(mesh.Moved(corner => SectionQuadrature.Turned(corner, attitude)), Attitude.Upright(0));
            Assert.Equal(part.VolumeM3, turned.VolumeM3, 1e-10);
            Assert.Equal(part.WettedAreaM2, turned.WettedAreaM2, 1e-10);
            Assert.Equal(part.TransverseSecondMomentM4, turned.TransverseSecondMomentM4, 1e-9);
            Assert.Equal(part.LongitudinalSecondMomentM4, turned.LongitudinalSecondMomentM4, 1e-8);
        }
    }

    [Fact]
    public void Calculate_WetAndDryPart_MakeTheWhole()
    {
        var random = new Random(7);
        for (var i = 0; i < 100; i++)
        {
            var (mesh, attitude) = (RandomBody.Create(random), RandomAttitude(random));
            // Seen bottom up, what was dry is wet.
            var other = new Attitude(-attitude.DraughtM, -attitude.TrimDeg, attitude.HeelDeg > 0 ? attitude.HeelDeg - 180 : attitude.HeelDeg + 180);
            var (wet, dry) = (Submersion.Calculate(mesh, attitude), Submersion.Calculate(mesh, other));
            Assert.Equal(mesh.SignedVolumeM3, wet.VolumeM3 + dry.VolumeM3, 1e-10);
            Assert.Equal(wet.WaterplaneAreaM2, dry.WaterplaneAreaM2, 1e-10);
        }
    }

    [Theory]
    [InlineData(double.NaN, 0, 0)]
    [InlineData(0, double.NaN, 0)]
    [InlineData(0, 90.1, 0)]
    [InlineData(0, 0, -180.1)]
    [InlineData(0, 0, double.PositiveInfinity)]
    public void Calculate_ImpossibleAttitude_IsRefused(double draughtM, double trimDeg, double heelDeg) =>
        Assert.Throws<ArgumentOutOfRangeException>(() => Submersion.Calculate(Solids.Box(default, new Point3(1, 1, 1)), new Attitude(draughtM, trimDeg, heelDeg)));

    private static Attitude RandomAttitude(Random random) =>
        new((3 * random.NextDouble()) - 1, 60 * (random.NextDouble() - 0.5), 360 * (random.NextDouble() - 0.5));

    private static void AssertClose(Point3 expected, Point3 actual) => Assert.True((expected - actual).LengthM < 1e-8, $"expected {expected}, found {actual}");
}
