using Orlop.Hull.Floating;
using Orlop.Hull.Hydrostatics;
using Orlop.Hull.Surfaces;
using Xunit;

namespace Orlop.Hull.Tests.Floating;

public sealed class TankTests
{
    private static readonly TriangleMesh Shape = Solids.Box(new Point3(4, -1, 0.2), new Point3(6, 1, 1.2));

    // Free surface of a rectangle: ρ·l·b³/12 over displacement (Derrett), whatever the amount.
    [Theory]
    [InlineData(0.2)]
    [InlineData(0.5)]
    [InlineData(0.9)]
    public void Gm_PartlyFilledTank_LosesItsFreeSurface(double fillFraction)
    {
        var boat = Boats.Barge(4, 2, 0.8, 1.2);
        var withTank = boat with { Tanks = [Tank(fillFraction)] };
        var frozen = boat.With(new WeightItem("ice", 860 * 4 * fillFraction, new Point3(5, 0, 0.2 + (0.5 * fillFraction))));
        var (liquid, solid) = (Equilibrium.Solve(withTank).Position!, Equilibrium.Solve(frozen).Position!);
        Assert.Equal(solid.Attitude.DraughtM, liquid.Attitude.DraughtM, 1e-10);
        Assert.Equal(860 * 2 * 8 / 12.0 / frozen.MassKg, solid.MetacentricHeightM - liquid.MetacentricHeightM, 1e-9);
        Assert.Equal(860 * 2 * 8 / 12.0 / frozen.MassKg, liquid.FreeSurfaceLossM, 1e-12);
        Assert.Equal(liquid.MetacentricHeightM, liquid.MetacentricRadiusM - liquid.GravityOverBuoyancyM - liquid.FreeSurfaceLossM, 1e-12);
    }

    [Theory]
    [InlineData(0)]
    [InlineData(1)]
    public void Gm_EmptyOrPressedTank_LosesNothing(double fillFraction)
    {
        var boat = Boats.Barge(4, 2, 0.8, 1.2);
        var frozen = boat.With(new WeightItem("ice", 860 * 4 * fillFraction, new Point3(5, 0, 0.7)));
        Assert.Equal(Equilibrium.Solve(frozen).Position!.MetacentricHeightM, Equilibrium.Solve(boat with { Tanks = [Tank(fillFraction)] }).Position!.MetacentricHeightM, 1e-9);
    }

    // At 90° a half-full box tank's liquid lies in its lower half: G moves b/4 to the side and back to mid height.
    [Fact]
    public void Gz_HalfFullTankAtNinetyDegrees_LiquidLiesOnTheTanksSide()
    {
        var boat = Boats.Barge(4, 2, 0.8, 1.2);
        var curve = RightingCurve.Calculate(new RightingInput { Boat = boat with { Tanks = [Tank(0.5)] }, ToDeg = 90, StepDeg = 5 });
        var moved = boat.With(new WeightItem("ice", 860 * 2, new Point3(5, -0.5, 0.7)));
        var still = RightingCurve.Calculate(new RightingInput { Boat = moved, ToDeg = 90, StepDeg = 5 });
        Assert.Equal(still.At(90)!.GzM, curve.At(90)!.GzM, 1e-9);
    }

    [Fact]
    public void Gz_LiquidOfARoundTank_ActsAtTheTanksAxis()
    {
        // A lying round tank's liquid always acts at its axis, like a round hull's buoyancy. A 720-sided polygon stands for the circle.
        var tank = new Tank { Id = "fuel", Shape = Solids.Cylinder(4, 6, 0.3, 0.9, 0.5, 720), FillFraction = 0.4, LiquidKgPerM3 = 860 };
        var boat = Boats.Barge(4, 2, 0.8, 1.2);
        var mass = 860 * 0.4 * tank.Shape.SignedVolumeM3;
        var liquid = RightingCurve.Calculate(new RightingInput { Boat = boat with { Tanks = [tank] }, StepDeg = 10 });
        var onAxis = RightingCurve.Calculate(new RightingInput { Boat = boat.With(new WeightItem("on the axis", mass, new Point3(5, 0.3, 0.9))), StepDeg = 10 });
        Assert.All(liquid.Points.Zip(onAxis.Points), pair => Assert.Equal(pair.Second.GzM, pair.First.GzM, 1e-6));
    }

    [Fact]
    public void Find_RandomDirections_KeepTheVolume()
    {
        var random = new Random(5);
        for (var i = 0; i < 300; i++)
        {
            var shape = Shapes.RandomBody.Create(random);
            var whole = shape.SignedVolumeM3;
            var volume = whole * random.NextDouble();
            var directions = WaterPlane.OfRadians(0, random.NextDouble() - 0.5, Math.Tau * random.NextDouble());
            Assert.Equal(volume, LiquidLevel.Find(directions, shape, volume, whole).Below.Volume, 1e-11 * whole);
        }
    }

    [Theory]
    [InlineData(-0.01)]
    [InlineData(1.01)]
    [InlineData(double.NaN)]
    public void Solve_ImpossibleFill_IsRefused(double fillFraction) =>
        Assert.StartsWith("fuel: tank.FillFraction", Assert.Throws<ArgumentOutOfRangeException>(() => Equilibrium.Solve(Boats.Barge(4, 2, 0.8, 1.2) with { Tanks = [Tank(fillFraction)] })).Message, StringComparison.Ordinal);

    private static Tank Tank(double fillFraction) => new() { Id = "fuel", Shape = Shape, FillFraction = fillFraction, LiquidKgPerM3 = 860 };
}
