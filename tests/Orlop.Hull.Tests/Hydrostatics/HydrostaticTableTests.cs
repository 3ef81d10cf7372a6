using Orlop.Hull.Floating;
using Orlop.Hull.Hydrostatics;
using Orlop.Hull.Surfaces;
using Xunit;

namespace Orlop.Hull.Tests.Hydrostatics;

public sealed class HydrostaticTableTests
{
    private static readonly TriangleMesh Box = Solids.Box(new Point3(0, -2, 0), new Point3(10, 2, 2));

    // stability.md 1.1, closed form of the box.
    [Theory]
    [InlineData(0.8, 32_800, 0.4, 1.6666666666667, 2.0666666666667, 10.4166666666667)]
    [InlineData(1.3, 53_300, 0.65, 1.0256410256410, 1.6756410256410, 6.4102564102564)]
    public void Calculate_Box_IsTheClosedForm(double draughtM, double displacementKg, double kbM, double bmM, double kmM, double longitudinalBmM)
    {
        var row = Assert.Single(Table(draughtM).Rows);
        Assert.Equal(displacementKg, row.DisplacementKg, 1e-8);
        Assert.Equal(5, row.LcbM, 1e-12);
        Assert.Equal(5, row.LcfM, 1e-12);
        Assert.Equal(kbM, row.KbM, 1e-12);
        Assert.Equal(bmM, row.BmM, 1e-12);
        Assert.Equal(kmM, row.KmM, 1e-12);
        Assert.Equal(longitudinalBmM, row.LongitudinalBmM, 1e-12);
        Assert.Equal(410, row.ImmersionKgPerCm, 1e-10);
        Assert.Equal(displacementKg * longitudinalBmM / 1000, row.TrimmingKgMPerCm, 1e-8);
        Assert.Equal(1, row.BlockCoefficient, 1e-12);
        Assert.Equal(1, row.WaterplaneCoefficient, 1e-12);
        Assert.Equal(40 + (28 * draughtM), row.WettedAreaM2, 1e-11);
    }

    [Fact]
    public void Calculate_DryOrUnder_IsLeftOutAndNamed()
    {
        var table = Table(2.5, 1, -0.5);
        Assert.Equal(1, Assert.Single(table.Rows).DraughtM);
        Assert.Equal([-0.5, 2.5], table.LeftOutM);
    }

    [Theory]
    [InlineData(double.NaN)]
    [InlineData(double.NegativeInfinity)]
    [InlineData(2000)]
    public void Calculate_ImpossibleDraught_IsRefused(double draughtM) => Assert.Throws<ArgumentOutOfRangeException>(() => Table(draughtM));

    [Fact]
    public void CrossCurves_Box_AreGzPlusKgSine()
    {
        var curves = CrossCurves.Calculate("box", Box, 1025, 1.2, [32_800, 53_300, 90_000], [-30, 0, 10, 30]);
        Assert.Equal(0.4913010971 + (1.2 * 0.5), curves[0].Points[3].KnM!.Value, 1e-9);
        Assert.Equal(-curves[0].Points[3].KnM!.Value, curves[0].Points[0].KnM!.Value, 1e-10);
        Assert.Equal(0, curves[0].Points[1].KnM!.Value, 1e-12);
        Assert.Equal(0.2406761808 + (1.2 * 0.5), curves[1].Points[3].KnM!.Value, 1e-9);
        Assert.All(curves[2].Points, point => Assert.Null(point.KnM));
    }

    private static HydrostaticTable Table(params double[] draughtsM) =>
        HydrostaticTable.Calculate(new HydrostaticInput { Subject = "box", Hull = Box, DraughtsM = [.. draughtsM], WaterKgPerM3 = 1025, TrimLengthM = 10 });
}
