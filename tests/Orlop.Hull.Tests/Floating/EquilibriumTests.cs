using Orlop.Hull.Floating;
using Orlop.Hull.Hydrostatics;
using Orlop.Hull.Surfaces;
using Xunit;

namespace Orlop.Hull.Tests.Floating;

public sealed class EquilibriumTests
{
    [Fact]
    public void Solve_Box_LiesUprightAtItsDraught()
    {
        var result = Equilibrium.Solve(Boats.Barge(4, 2, 0.8, 1.2));
        var position = Floats(result);
        Assert.Equal(0.8, position.Attitude.DraughtM, 1e-10);
        Assert.Equal(0, position.Attitude.HeelDeg, 1e-8);
        Assert.Equal(0, position.Attitude.TrimDeg, 1e-8);
        Assert.True(position.IsStable);
        Assert.False(position.IsLoll);
        // stability.md 1.1: GM and GML of case A.
        Assert.Equal(0.8666666667, position.MetacentricHeightM, 1e-9);
        Assert.Equal(9.6166666667, position.LongitudinalMetacentricHeightM, 1e-9);
    }

    [Fact]
    public void Solve_RandomLoads_MassIsDisplacedMassAndCentresArePlumb()
    {
        var random = new Random(11);
        for (var i = 0; i < 100; i++)
        {
            var boat = Boats.RandomLoad(random);
            var result = Equilibrium.Solve(boat);
            var position = result.Position ?? throw new InvalidOperationException($"{i}: {result.Message}");
            Assert.Equal(boat.MassKg, 1000 * position.DisplacedM3, 1e-6 * boat.MassKg);
            var up = Up(position.Attitude);
            var lever = position.CentreOfGravity - position.CentreOfBuoyancy;
            var height = (lever.XM * up.XM) + (lever.YM * up.YM) + (lever.ZM * up.ZM);
            Assert.True((lever - (height * up)).LengthM < 1e-8, $"{i}: B and G are not plumb");
            Assert.True(position.IsStable);
            Assert.Equal(position.MetacentricHeightM, position.MetacentricRadiusM - position.GravityOverBuoyancyM - position.FreeSurfaceLossM, 1e-7);
            Assert.Equal(5, result.Working().Length);
            var part = Submersion.Calculate(boat.Buoyancy[0], position.Attitude);
            Assert.Equal(position.DisplacedM3, part.VolumeM3, 1e-9);
        }
    }

    [Fact]
    public void Solve_FromAnyStart_EndsInABalance()
    {
        var random = new Random(12);
        for (var i = 0; i < 60; i++)
        {
            var start = new Attitude(0, 40 * (random.NextDouble() - 0.5), 360 * (random.NextDouble() - 0.5));
            var result = Equilibrium.Solve(Boats.Working, start);
            Assert.True(result.Status is FloatingStatus.Floats or FloatingStatus.Capsizes, result.Message);
            Assert.True(result.ResidualRatio < 1e-8 && result.Position!.IsStable);
        }
    }

    [Fact]
    public void Solve_SmallShiftOfWeight_HeelsByTheTangentRule()
    {
        // tan(heel) = w·d/(W·GM), for a small shift. Derrett, and stability.md 2.1.
        var boat = Boats.Barge(4, 2, 0.8, 1.2);
        var heeled = Floats(Equilibrium.Solve(boat with { CentreOfGravity = new Point3(5, -0.001, 1.2) }));
        Assert.Equal(Math.Atan(0.001 / 0.8666666667) * 180 / Math.PI, heeled.Attitude.HeelDeg, 1e-6);
    }

    // stability.md 1.1: case A's lever at 30° balances a shift y with y·cos(30°) = GZ.
    [Fact]
    public void Solve_LargeShiftOfWeight_HeelsWhereTheLeverBalances()
    {
        var boat = Boats.Barge(4, 2, 0.8, 1.2);
        var shift = 0.4913010971 / Math.Cos(Math.PI / 6);
        var heeled = Floats(Equilibrium.Solve(boat with { CentreOfGravity = new Point3(5, -shift, 1.2) }));
        Assert.Equal(30, heeled.Attitude.HeelDeg, 1e-6);
    }

    [Fact]
    public void Solve_SidewaysPull_HeelsWhereTheLeverBalances()
    {
        var boat = Boats.Barge(4, 2, 0.8, 1.2);
        // Lever at 20° from hull-box-barge-gz.csv; the pull acts 5 m above where the water meets it.
        var force = 0.3341748657 * boat.MassKg * 9.80665 / (5 * Math.Cos(20 * Math.PI / 180));
        var pulled = Floats(Equilibrium.Solve(boat with { Pulls = [new SidewaysPull("tow", force, new Point3(5, 0, 5.4), new Point3(5, 0, 0.4))] }));
        Assert.Equal(20, pulled.Attitude.HeelDeg, 1e-6);
        var other = Floats(Equilibrium.Solve(boat with { Pulls = [new SidewaysPull("tow", -force, new Point3(5, 0, 5.4), new Point3(5, 0, 0.4))] }));
        Assert.Equal(-20, other.Attitude.HeelDeg, 1e-6);
    }

    // Wall-sided: tan(loll) = sqrt(-2 GM/BM). Cases A3 and A5 of stability-worked-examples.csv by the same rule.
    [Fact]
    public void Solve_NegativeGm_LiesAtTheAngleOfLoll()
    {
        var boat = Boats.Barge(4, 2, 0.8, 2.0666666666666667 + 0.1);
        var position = Floats(Equilibrium.Solve(boat));
        Assert.Equal(Math.Atan(Math.Sqrt(0.2 / 1.6666666666666667)) * 180 / Math.PI, position.Attitude.HeelDeg, 1e-6);
        Assert.True(position.IsLoll);
        Assert.True(position.IsStable);
    }

    [Fact]
    public void Solve_TopHeavyBarge_Capsizes()
    {
        var result = Equilibrium.Solve(Boats.Barge(4, 2, 1.6, 3.5));
        Assert.Equal(FloatingStatus.Capsizes, result.Status);
        Assert.True(Math.Abs(result.Position!.Attitude.HeelDeg) > 90);
        Assert.Equal(0, result.CapsizedSide);
        Assert.Contains("capsizes to one side or the other", result.Message, StringComparison.Ordinal);
    }

    // G off the centre line to port (y above 0) heels her to port, and so over to port.
    [Theory]
    [InlineData(0.3, -1, "capsizes to port")]
    [InlineData(-0.3, 1, "capsizes to starboard")]
    public void Solve_TopHeavyBargeWithGOffItsMiddle_CapsizesToThatSide(double y, int side, string said)
    {
        var boat = Boats.Barge(4, 2, 1.6, 3.5);
        var result = Equilibrium.Solve(boat with { CentreOfGravity = boat.CentreOfGravity with { YM = y } });
        Assert.Equal(FloatingStatus.Capsizes, result.Status);
        Assert.Equal(side, result.CapsizedSide);
        Assert.Contains(said, result.Message, StringComparison.Ordinal);
        Assert.DoesNotContain("heel -", result.Message, StringComparison.Ordinal);
    }

    [Fact]
    public void Solve_BoatThatFloats_CapsizesToNoSide() => Assert.Null(Equilibrium.Solve(Boats.Barge(4, 2, 0.8, 1.2)).CapsizedSide);

    [Fact]
    public void Solve_TooHeavy_DoesNotFloat()
    {
        var result = Equilibrium.Solve(Boats.Barge(4, 2, 0.8, 1.2) with { MassKg = 82_001 });
        Assert.Equal(FloatingStatus.DoesNotFloat, result.Status);
        Assert.Null(result.Position);
        Assert.Contains("82000 kg", result.Message, StringComparison.Ordinal);
    }

    [Fact]
    public void Solve_FloodedTooFar_Sinks()
    {
        var boat = Boats.Barge(4, 2, 1.5, 1.2);
        var flooded = boat with { Flooded = [new FloodedSpace("hold", Solids.Box(new Point3(2, -2, 0), new Point3(8, 2, 2)), 0.95)] };
        Assert.Equal(FloatingStatus.Sinks, Equilibrium.Solve(flooded).Status);
    }

    // A midship space of a third of the length, of permeability 0.8: she sinks until the rest carries her, d·(1 - 0.8·0.3)·L·B = d₀·L·B.
    [Fact]
    public void Solve_FloodedAmidships_SinksBodily()
    {
        var boat = Boats.Barge(4, 2, 0.8, 1.0);
        var position = Floats(Equilibrium.Solve(boat with { Flooded = [new FloodedSpace("hold", Solids.Box(new Point3(3.5, -2, 0), new Point3(6.5, 2, 2)), 0.8)] }));
        var draught = 0.8 / (1 - (0.8 * 0.3));
        Assert.Equal(draught, position.Attitude.DraughtM, 1e-9);
        // KB at half draught, BM = lost-buoyancy waterplane over the unchanged volume.
        Assert.Equal((draught / 2) + (10 * 64 / 12.0 * (1 - (0.8 * 0.3)) / 32) - 1.0, position.MetacentricHeightM, 1e-8);
    }

    [Fact]
    public void Solve_WeightAddedAndTakenOff_IsBitForBitTheSame()
    {
        WeightItem[] items = [new("hull", 7000, new Point3(5.1, 0, 1.1)), new("engine", 900.3, new Point3(3.3, 0.01, 0.7)), new("winch", 113.7, new Point3(9.9, -0.4, 2.2))];
        var before = WeightSum.Calculate(items);
        var withMore = items.Prepend(new WeightItem("anvil", 71.1, new Point3(1.7, 1.3, 1.9))).ToList();
        Assert.NotEqual(before.MassKg, WeightSum.Calculate(withMore).MassKg);
        var after = WeightSum.Calculate(withMore.Where(item => item.Id != "anvil").Reverse());
        Assert.Equal(before, after);
        FloatingResult At(WeightSumResult sum) => Equilibrium.Solve(Boats.Working with { MassKg = sum.MassKg, CentreOfGravity = sum.Centre!.Value });
        Assert.Equal(At(before), At(after));
    }

    [Fact]
    public void Solve_HungWeight_ActsAtItsHook()
    {
        var boat = Boats.Barge(4, 2, 0.8, 1.0);
        var hung = boat.With(new WeightItem("load", 500, new Point3(5, -2.5, 4)));
        Assert.Equal(((32_800 * 1.0) + (500 * 4)) / 33_300, hung.CentreOfGravity.ZM, 1e-12);
        Assert.True(Floats(Equilibrium.Solve(hung)).Attitude.HeelDeg > 0);
    }

    [Theory]
    [InlineData(double.NaN)]
    [InlineData(0)]
    [InlineData(-5)]
    [InlineData(double.PositiveInfinity)]
    public void Solve_ImpossibleMass_IsRefused(double massKg) =>
        Assert.StartsWith("barge: MassKg", Assert.Throws<ArgumentOutOfRangeException>(() => Equilibrium.Solve(Boats.Barge(4, 2, 0.8, 1.2) with { MassKg = massKg })).Message, StringComparison.Ordinal);

    [Fact]
    public void Solve_ImpossiblePlaces_AreRefused()
    {
        var boat = Boats.Barge(4, 2, 0.8, 1.2);
        Assert.Throws<ArgumentOutOfRangeException>(() => Equilibrium.Solve(boat with { CentreOfGravity = new Point3(0, double.NaN, 0) }));
        Assert.Throws<ArgumentOutOfRangeException>(() => Equilibrium.Solve(boat with { WaterKgPerM3 = 1.025 }));
        Assert.Throws<ArgumentException>(() => Equilibrium.Solve(boat with { Buoyancy = [] }));
        Assert.Throws<ArgumentException>(() => WeightSum.Calculate([new WeightItem("a", 1, default), new WeightItem("a", 2, default)]));
        Assert.Throws<ArgumentOutOfRangeException>(() => WeightSum.Calculate([new WeightItem("a", double.NaN, default)]));
    }

    private static FloatingPosition Floats(FloatingResult result)
    {
        Assert.Equal(FloatingStatus.Floats, result.Status);
        return result.Position!;
    }

    private static Point3 Up(Attitude attitude)
    {
        var origin = attitude.HeightAboveWaterM(default);
        return new Point3(attitude.HeightAboveWaterM(new Point3(1, 0, 0)) - origin, attitude.HeightAboveWaterM(new Point3(0, 1, 0)) - origin, attitude.HeightAboveWaterM(new Point3(0, 0, 1)) - origin);
    }
}
