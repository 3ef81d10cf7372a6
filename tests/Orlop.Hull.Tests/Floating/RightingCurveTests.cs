using Orlop.Hull.Floating;
using Orlop.Hull.Surfaces;
using Xunit;

namespace Orlop.Hull.Tests.Floating;

public sealed class RightingCurveTests
{
    private static readonly FloatingInput WithLiquids = Boats.Working with
    {
        Tanks =
        [
            new Tank { Id = "port fuel", Shape = Solids.Box(new Point3(2, 0.4, 0.6), new Point3(4, 1.2, 1.2)), FillFraction = 0.6, LiquidKgPerM3 = 850 },
            new Tank { Id = "starboard fuel", Shape = Solids.Box(new Point3(2, -1.2, 0.6), new Point3(4, -0.4, 1.2)), FillFraction = 0.6, LiquidKgPerM3 = 850 },
        ],
    };

    [Fact]
    public void Calculate_SymmetricBoat_IsOdd()
    {
        var (starboard, port) = (Curve(WithLiquids, 180), Curve(WithLiquids, -180));
        Assert.Equal(181, starboard.Points.Length);
        Assert.All(starboard.Points.Zip(port.Points), pair =>
        {
            Assert.Equal(pair.First.HeelDeg, -pair.Second.HeelDeg);
            Assert.Equal(pair.First.GzM, -pair.Second.GzM, 1e-9);
        });
    }

    [Fact]
    public void Calculate_RandomBody_AreaIsTheRiseOfGOverB()
    {
        var random = new Random(21);
        for (var i = 0; i < 8; i++)
        {
            var curve = RightingCurve.Calculate(new RightingInput { Boat = Boats.RandomLoad(random), ToDeg = 60, StepDeg = 0.25 });
            Assert.True(curve.Status == FloatingStatus.Floats, curve.Message + curve.Points[^1]);
            // Boole's rule over the levers themselves, in half-degree steps, against the energy.
            double Lever(double heelDeg) => curve.At(heelDeg)!.GzM;
            var sum = 0.0;
            for (var heel = 0; heel < 60; heel += 2)
            {
                sum += Math.PI / 180 / 2 * 2 / 45 * ((7 * Lever(heel)) + (32 * Lever(heel + 0.5)) + (12 * Lever(heel + 1)) + (32 * Lever(heel + 1.5)) + (7 * Lever(heel + 2)));
            }

            Assert.Equal(sum, curve.AreaMRad(0, 60)!.Value, 2e-6);
        }
    }

    [Fact]
    public void Calculate_LeversWithLiquids_AreTheSlopeOfTheEnergy()
    {
        var curve = Curve(WithLiquids, 180);
        foreach (var heelDeg in new[] { 7.5, 33.3, 71, 118, 163 })
        {
            const double StepDeg = 0.01;
            var slope = (curve.At(heelDeg + StepDeg)!.RiseM - curve.At(heelDeg - StepDeg)!.RiseM) / (2 * StepDeg * Math.PI / 180);
            var point = curve.At(heelDeg)!;
            Assert.Equal(slope, point.GzM * Math.Cos(point.Attitude.TrimDeg * Math.PI / 180), 1e-6);
        }
    }

    // stability.md 2.2, check 4.
    [Fact]
    public void Calculate_SlopeAtZero_IsGm()
    {
        var curve = RightingCurve.Calculate(new RightingInput { Boat = WithLiquids, ToDeg = 5, StepDeg = 0.1 });
        var slope = curve.Points[1].GzM / (0.1 * Math.PI / 180);
        Assert.Equal(curve.InitialGmM!.Value * Math.Cos(curve.Points[0].Attitude.TrimDeg * Math.PI / 180), slope, 2e-4);
        Assert.Equal(Equilibrium.Solve(WithLiquids).Position!.MetacentricHeightM, curve.InitialGmM!.Value, 1e-9);
    }

    [Fact]
    public void Calculate_ShiftedAxes_ChangeNothing()
    {
        var step = new Point3(3.3, 0, -0.7);
        var boat = Boats.Working;
        var shifted = boat with { Buoyancy = [Boats.Hull.Shifted(step)], CentreOfGravity = boat.CentreOfGravity + step };
        Assert.All(Curve(boat, 180).Points.Zip(Curve(shifted, 180).Points), pair => Assert.Equal(pair.First.GzM, pair.Second.GzM, 1e-8));
    }

    // A round hull: metacentre on the axis, GZ = (R - KG) sin(heel) at every angle (stability.md 1.3). A 1440-sided polygon stands for the circle.
    [Fact]
    public void Calculate_RoundHull_IsASineToOneHundredAndEighty()
    {
        var hull = Solids.Cylinder(0, 10, 0, 1, 1, 1440);
        var boat = new FloatingInput { Subject = "log", Buoyancy = [hull], MassKg = 1000 * 0.4 * hull.SignedVolumeM3, CentreOfGravity = new Point3(5, 0, 0.7), WaterKgPerM3 = 1000 };
        Assert.All(Curve(boat, 180).Points, point => Assert.Equal(0.3 * Math.Sin(point.HeelDeg * Math.PI / 180), point.GzM, 1e-6));
    }

    [Fact]
    public void Read_Openings_NamesTheFirstUnder()
    {
        // Case A of the box barge floats at 0.8 m: an edge point at (y, z) of the wall-sided range is under at tan(heel) = (z - 0.8)/|y|.
        var curve = RightingCurve.Calculate(new RightingInput
        {
            Boat = Boats.Barge(4, 2, 0.8, 1.2),
            Openings = [new Opening("door", new Point3(5, -1.5, 1.7)), new Opening("vent", new Point3(5, -2, 1.4)), new Opening("other side", new Point3(5, 2, 1))],
        });
        var features = curve.Features;
        Assert.Equal("vent", features.DownfloodingOpening);
        Assert.Equal(Math.Atan(0.6 / 2) * 180 / Math.PI, features.DownfloodingDeg!.Value, 1e-6);
        Assert.Equal(features.DownfloodingDeg, features.RangeDeg);
    }

    [Fact]
    public void Read_NegativeGm_StartsAtTheLoll()
    {
        var curve = Curve(Boats.Barge(4, 2, 0.8, 2.1666666666666667), -180);
        var features = curve.Features;
        Assert.Equal(-Math.Atan(Math.Sqrt(0.2 / 1.6666666666666667)) * 180 / Math.PI, features.LollDeg!.Value, 1e-6);
        Assert.True(features.GreatestGzM > 0 && features.VanishingDeg < features.GreatestGzDeg && features.GreatestGzDeg < features.LollDeg);
    }

    [Fact]
    public void Calculate_TooHeavy_HasNoPointsAndSaysWhy()
    {
        var curve = Curve(Boats.Barge(4, 2, 0.8, 1.2) with { MassKg = 90_000 }, 180);
        Assert.Equal(FloatingStatus.DoesNotFloat, curve.Status);
        Assert.Empty(curve.Points);
        Assert.Null(curve.At(0));
        Assert.Null(curve.AreaMRad(0, 10));
        Assert.Null(curve.InitialGmM);
        var features = curve.Features;
        Assert.Null(features.GreatestGzM);
        Assert.Null(features.RangeDeg);
    }

    [Fact]
    public void At_BeyondTheCurveOrNotANumber_IsNull()
    {
        var curve = Curve(Boats.Barge(4, 2, 0.8, 1.2), 30);
        Assert.Null(curve.At(31));
        Assert.Null(curve.At(-1));
        Assert.Null(curve.At(double.NaN));
        Assert.Null(curve.AreaMRad(0, 31));
    }

    private static RightingCurve Curve(FloatingInput boat, double toDeg) => RightingCurve.Calculate(new RightingInput { Boat = boat, ToDeg = toDeg });
}
