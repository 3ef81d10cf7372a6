using Orlop.Hull.Hydrostatics;
using Orlop.Hull.Surfaces;
using Xunit;

namespace Orlop.Hull.Tests.Surfaces;

public sealed class StartingFormTests
{
    public static TheoryData<StartingShape> Shapes => [.. Enum.GetValues<StartingShape>()];

    [Theory, MemberData(nameof(Shapes))]
    public void Build_EveryShape_IsClosedAndHasItsSize(StartingShape shape)
    {
        var built = HullSurface.Build(StartingForm.Create("start", shape, 12, 4, 2));
        Assert.Empty(built.Problems);
        var mesh = built.Surface!;
        Assert.Empty(mesh.Problems);
        Assert.Equal(12, mesh.Highest.XM - mesh.Lowest.XM, 1e-9);
        Assert.InRange(mesh.Highest.YM, 2 - 1e-9, 2.005);
        Assert.Equal(-mesh.Lowest.YM, mesh.Highest.YM);
        Assert.InRange(mesh.Lowest.ZM, -0.01, 1e-9);
    }

    [Theory, MemberData(nameof(Shapes))]
    public void Build_EveryShape_IsTheSameToBothSides(StartingShape shape)
    {
        var mesh = HullSurface.Build(StartingForm.Create("start", shape, 12, 4, 2)).Surface!;
        var port = Submersion.Calculate(mesh, new Attitude(0.8, 1, -25));
        var starboard = Submersion.Calculate(mesh, new Attitude(0.8, 1, 25));
        Assert.Equal(port.VolumeM3, starboard.VolumeM3, 1e-10);
        Assert.Equal(-port.CentreOfBuoyancy!.Value.YM, starboard.CentreOfBuoyancy!.Value.YM, 1e-10);
    }

    [Fact]
    public void Build_Box_HasTheBoxesVolume()
    {
        var mesh = HullSurface.Build(StartingForm.Create("box", StartingShape.Box, 10, 4, 2)).Surface!;
        Assert.Equal(80, mesh.SignedVolumeM3, 1e-12);
        Assert.Equal(32, Submersion.Calculate(mesh, Attitude.Upright(0.8)).VolumeM3, 1e-12);
    }

    // Box of 73 % of the length and two prisms: depth at the rake's outer end is 0.4 of the depth.
    [Fact]
    public void Build_Barge_HasThePrismsVolume()
    {
        var mesh = HullSurface.Build(StartingForm.Create("barge", StartingShape.Barge, 10, 4, 2)).Surface!;
        Assert.Equal((7.3 * 4 * 2) + (2.7 * 4 * 2 * 0.7), mesh.SignedVolumeM3, 1e-12);
    }

    [Theory]
    [InlineData(double.NaN)]
    [InlineData(0)]
    [InlineData(-1)]
    [InlineData(101)]
    [InlineData(double.PositiveInfinity)]
    public void Create_ImpossibleLength_IsRefused(double lengthM)
    {
        var refusal = Assert.Throws<ArgumentOutOfRangeException>(() => StartingForm.Create("hull", StartingShape.Box, lengthM, 4, 2));
        Assert.Contains("hull: lengthM", refusal.Message, StringComparison.Ordinal);
    }

    [Fact]
    public void Build_ChineForm_KeepsTheChineSharp()
    {
        var form = StartingForm.Create("chine", StartingShape.SingleChine, 12, 4, 2);
        var mesh = HullSurface.Build(form).Surface!;
        foreach (var chine in form.Sections.SelectMany(section => section.Points).Where(point => point.Line == "chine"))
        {
            Assert.Contains(mesh.Corners, corner => (corner - new Point3(chine.XM, chine.HalfBreadthM, chine.HeightM)).LengthM < 1e-12);
        }
    }
}
