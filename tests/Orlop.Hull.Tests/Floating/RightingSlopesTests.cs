using Orlop.Hull.Floating;
using Orlop.Hull.Measuring;
using Orlop.Hull.Surfaces;
using Xunit;

namespace Orlop.Hull.Tests.Floating;

public sealed class RightingSlopesTests
{
    // The exact slopes against central differences of boats that weigh a little more or lie a little elsewhere; slack tank and flooded space among them.
    [Theory]
    [InlineData(true)]
    [InlineData(false)]
    public void Points_AnyHeel_SlopesAgreeWithDifferences(bool isTrimFree)
    {
        var boat = Boats.Barge(4, 2, 0.8, 1.2) with
        {
            CentreOfGravity = new Point3(5.2, 0.05, 1.2),
            Tanks = [new Tank { Id = "water", Shape = Solids.Box(new Point3(1, -1, 0.2), new Point3(3, 1, 0.9)), FillFraction = 0.5, LiquidKgPerM3 = 1000 }],
            Flooded = [new FloodedSpace("locker", Solids.Box(new Point3(8, 0.2, 0), new Point3(9, 1.5, 1)), 0.8)],
        };
        var input = new RightingInput { Boat = boat, ToDeg = -70, StepDeg = 5, IsTrimFree = isTrimFree };
        var curve = RightingCurve.Calculate(input);
        var differences = new[]
        {
            Differences(input, step => boat with { MassKg = boat.MassKg + step }, 5),
            Differences(input, step => boat with { CentreOfGravity = boat.CentreOfGravity + new Point3(step, 0, 0) }, 0.001),
            Differences(input, step => boat with { CentreOfGravity = boat.CentreOfGravity + new Point3(0, step, 0) }, 0.001),
            Differences(input, step => boat with { CentreOfGravity = boat.CentreOfGravity + new Point3(0, 0, step) }, 0.001),
        };
        Assert.Equal(15, curve.Points.Length);
        for (var i = 0; i < curve.Points.Length; i++)
        {
            Agree(differences.Select(all => all[i].Gz), curve.Points[i].GzSlopes);
            Agree(differences.Select(all => all[i].Rise), curve.Points[i].RiseSlopes);
        }
    }

    // dGZ/dKG = -sin φ and dA/dKG = -(1 - cos φ) for a boat that keeps her trim: stability.md 1.3, GZ = KN - KG sin φ.
    [Theory]
    [InlineData(10)]
    [InlineData(35)]
    [InlineData(-60)]
    public void LevelBoat_HigherG_LosesTheSine(double heelDeg)
    {
        var curve = RightingCurve.Calculate(new RightingInput { Boat = Boats.Barge(4, 2, 0.8, 1.2), ToDeg = Math.Sign(heelDeg) * 90 });
        var heel = heelDeg * Math.PI / 180;
        Assert.Equal(-Math.Sin(heel), curve.At(heelDeg)!.GzSlopes.PerKgM, 1e-9);
        Assert.Equal(-(1 - Math.Cos(heel)), curve.AreaSlopes(0, heelDeg)!.Value.PerKgM, 1e-9);
        Assert.Equal(Math.Cos(heel), curve.At(heelDeg)!.GzSlopes.PerTcgM, 1e-9);
    }

    private static (double Gz, double Rise)[] Differences(RightingInput input, Func<double, FloatingInput> boat, double step)
    {
        var (more, less) = (RightingCurve.Calculate(input with { Boat = boat(step) }), RightingCurve.Calculate(input with { Boat = boat(-step) }));
        return [.. more.Points.Zip(less.Points, (a, b) => ((a.GzM - b.GzM) / (2 * step), (a.RiseM - b.RiseM) / (2 * step)))];
    }

    private static void Agree(IEnumerable<double> differences, WeightSlopes slopes)
    {
        double[] found = [slopes.PerMassKg, slopes.PerLcgM, slopes.PerTcgM, slopes.PerKgM];
        Assert.All(differences.Zip(found).Select((pair, i) => (pair.First, pair.Second, Scale: i == 0 ? 1e-4 : 1)),
            pair => Assert.Equal(pair.First / pair.Scale, pair.Second / pair.Scale, 2e-4));
    }
}
