using Orlop.Hull.Floating;
using Orlop.Hull.Surfaces;
using Orlop.Hull.Tests.Shapes;
using Xunit;

namespace Orlop.Reference.Tests.Hull;

/// <summary>Righting levers of two box barges (exact clipped rectangle) and of a Wigley hull with topsides (numerical integration), and what stability.md 1.1 reads from them.</summary>
public sealed class RightingReferenceTests
{
    private static IReadOnlyList<ReferenceRow> BargeRows => ReferenceCsv.Load("hull-box-barge-gz.csv", expectedRows: 38);

    public static TheoryData<string, double> BargeHeels => [.. BargeRows.Select(row => (row.Text("case"), row.Number("heel_deg")))];

    [Theory, MemberData(nameof(BargeHeels))]
    public void Gz_BoxBargeThroughDeckAndBottom_AgreesToNineDecimals(string name, double heelDeg)
    {
        var row = BargeRows.Single(row => row.Text("case") == name && row.Number("heel_deg") == heelDeg);
        foreach (var isTrimFree in new[] { true, false })
        {
            var toStarboard = Barges.Curve(name, 180, isTrimFree).At(heelDeg)!;
            var toPort = Barges.Curve(name, -180, isTrimFree).At(-heelDeg)!;
            row.Agrees(row.Number("gz_m"), toStarboard.GzM, 1e-9);
            row.Agrees(row.Number("gz_m"), -toPort.GzM, 1e-9);
            row.Agrees(row.Number("kn_m"), toStarboard.GzM + (row.Number("kg_m") * Math.Sin(heelDeg * Math.PI / 180)), 1e-9);
        }
    }

    // stability.md 1.1, table of cases A and B: printed to 6, 4 and 6 decimals.
    [Theory]
    [InlineData("A", 0.8666666667, 0.52526506, 36.5277, 78.549453)]
    [InlineData("B", 0.4756410256, 0.24682038, 35.7362, 70.466225)]
    public void Features_BoxBarge_Agree(string name, double gmM, double greatestM, double greatestDeg, double vanishingDeg)
    {
        var curve = Barges.Curve(name, 180);
        var features = curve.Features;
        Assert.Equal(gmM, curve.InitialGmM!.Value, 1e-10);
        Assert.Equal(greatestM, features.GreatestGzM!.Value, 6e-9);
        Assert.Equal(greatestDeg, features.GreatestGzDeg!.Value, 1e-4);
        Assert.Equal(vanishingDeg, features.VanishingDeg!.Value, 1e-6);
        Assert.Equal(0, features.LollDeg);
    }

    // stability.md 1.1: closed form to the first event, polygon beyond; ten decimals.
    [Theory]
    [InlineData("A", 15, 0.0305326228)]
    [InlineData("A", 30, 0.1294194311)]
    [InlineData("A", 40, 0.2196515429)]
    [InlineData("B", 15, 0.0168234886)]
    [InlineData("B", 30, 0.0689932005)]
    [InlineData("B", 40, 0.1116817678)]
    public void Area_BoxBarge_Agrees(string name, double toDeg, double areaMRad) =>
        Assert.Equal(areaMRad, Barges.Curve(name, 180).AreaMRad(0, toDeg)!.Value, 1e-9);

    // Printed for an exact surface to 2e-5 m: two meshes, extrapolated by their second order. Fore and aft alike, so free and held trim agree.
    [Fact]
    public void Gz_WigleyWithTopsides_AgreesWithQuadrature()
    {
        foreach (var isTrimFree in new[] { true, false })
        {
            var (coarse, fine) = (Wigley(64, isTrimFree), Wigley(128, isTrimFree));
            foreach (var row in ReferenceCsv.Load("hull-wigley-gz.csv", expectedRows: 12))
            {
                var heelDeg = row.Number("heel_deg");
                var (gzCoarse, gzFine) = (coarse.At(heelDeg)!.GzM, fine.At(heelDeg)!.GzM);
                row.Agrees(row.Number("gz_m"), gzFine + ((gzFine - gzCoarse) / 3), 2e-5);
            }
        }
    }

    private static RightingCurve Wigley(int steps, bool isTrimFree) => RightingCurve.Calculate(new RightingInput
    {
        Boat = new FloatingInput
        {
            Subject = "wigley",
            Buoyancy = [FunctionHull.Wigley(12, 3.6, 0.9, 1.8, steps, steps / 2)],
            MassKg = 1025 * 17.28,
            CentreOfGravity = new Point3(0, 0, 1.3),
            WaterKgPerM3 = 1025,
        },
        ToDeg = 60,
        StepDeg = 5,
        IsTrimFree = isTrimFree,
    });
}
