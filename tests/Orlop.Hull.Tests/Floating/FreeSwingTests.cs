using Orlop.Hull.Floating;
using Orlop.Hull.Measuring;
using Orlop.Hull.Surfaces;
using Xunit;

namespace Orlop.Hull.Tests.Floating;

public sealed class FreeSwingTests
{
    private static readonly WeightSlopes Fixed = new(0, 0, 0, 0);

    // A round hull rights herself with GZ = 0.3 sin φ, the same to both sides: she swings as far as she came from.
    [Theory]
    [InlineData(5)]
    [InlineData(40)]
    [InlineData(-75)]
    public void From_SymmetricBoat_SwingsAsFarBack(double fromDeg)
    {
        var swing = Swing(Log(new Point3(5, 0, 0.7)), fromDeg, Fixed);
        Assert.Equal(Math.Abs(fromDeg), swing.HeelDeg!.Value, 1e-4);
    }

    // G off the centre line by t to starboard adds t cos φ: 0.3 (1 - cos a) - t sin a to starboard is 0.3 (1 - cos b) + t sin b to port.
    [Fact]
    public void From_ListedBoat_KeepsTheEnergy()
    {
        double from = 30 * Math.PI / 180, t = 0.03;
        var swing = Swing(Log(new Point3(5, -t, 0.7)), 30, Fixed);
        var end = swing.HeelDeg!.Value * Math.PI / 180;
        Assert.Equal((0.3 * (1 - Math.Cos(from))) - (t * Math.Sin(from)), (0.3 * (1 - Math.Cos(end))) + (t * Math.Sin(end)), 2e-6);
    }

    [Fact]
    public void From_SlopesWithTheWeight_AgreeWithDifferences()
    {
        var slopes = Swing(Log(new Point3(5, -0.02, 0.7)), 25, new WeightSlopes(0, 0, 0, 40)).Slopes;
        double Higher(double step) => Swing(Log(new Point3(5, -0.02, 0.7 + step)), 25 + (40 * step), Fixed).HeelDeg!.Value;
        double Aside(double step) => Swing(Log(new Point3(5, -0.02 + step, 0.7)), 25, Fixed).HeelDeg!.Value;
        Assert.Equal((Higher(0.001) - Higher(-0.001)) / 0.002, slopes.PerKgM, 0.05);
        Assert.Equal((Aside(0.001) - Aside(-0.001)) / 0.002, slopes.PerTcgM, 0.1);
    }

    [Fact]
    public void From_NothingStopsHer_HasNoEnd() => Assert.Null(Swing(Log(new Point3(5, 0.25, 0.7)), 80, Fixed).HeelDeg);

    private static FreeSwing Swing(FloatingInput boat, double fromDeg, WeightSlopes fromSlopes) => FreeSwing.From(To(boat, -Math.Sign(fromDeg) * 90), To(boat, fromDeg), fromDeg, fromSlopes);

    private static RightingCurve To(FloatingInput boat, double toDeg) => RightingCurve.Calculate(new RightingInput { Boat = boat, ToDeg = toDeg, StepDeg = 5 });

    private static FloatingInput Log(Point3 centre)
    {
        var hull = Solids.Cylinder(0, 10, 0, 1, 1, 1440);
        return new FloatingInput { Subject = "log", Buoyancy = [hull], MassKg = 1000 * 0.4 * hull.SignedVolumeM3, CentreOfGravity = centre, WaterKgPerM3 = 1000 };
    }
}
