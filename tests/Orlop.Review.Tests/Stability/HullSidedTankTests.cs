using Orlop.Boat.Things;
using Orlop.Boat.Values;
using Orlop.Hull.Floating;
using Orlop.Review.Findings;
using Orlop.Review.Stability;
using Xunit;
using Tank = Orlop.Boat.Things.Tank;

namespace Orlop.Review.Tests.Stability;

/// <summary>A box hull of 10 × 4 × 2 m: a tank drawn 1 m beyond her side and below her bottom holds only what is inside.</summary>
public sealed class HullSidedTankTests
{
    // From y -3 to -1 and z -1 to 1, of which y -2 to -1 and z 0 to 1 are inside: 2 × 1 × 1 m, half full of fresh water 1000 kg.
    private static readonly Tank Side = new() { Id = "side", Name = "Side tank", From = new Place(4, -3, -1), To = new Place(6, -1, 1), IsHullSided = true, LiquidKgPerM3 = 1000, FillFraction = 0.5 };

    [Fact]
    public void Liquid_OfAHullSidedTank_IsWhatIsInside()
    {
        Hull.Floating.Tank tank = Assert.Single(StableBoats.Box(StableBoats.Bare(), Side).Loaded().Input!.Tanks);
        WeightRow row = Assert.Single(LiquidRows.Of(StableBoats.Box(StableBoats.Bare(), Side), [tank]));

        Assert.Equal(2, tank.Shape.SignedVolumeM3, 1e-9);
        Assert.Equal(1000, row.MassKg, 1e-6);
        Assert.Equal((-1.5, 0.25), (Math.Round(row.Place.YM, 6), Math.Round(row.Place.ZM, 6)));
    }

    [Fact]
    public void Liquid_OfABoxedTank_IsTheWholeBox() =>
        Assert.Equal(8, Assert.Single(StableBoats.Box(StableBoats.Bare(), Side with { IsHullSided = false }).Loaded().Input!.Tanks).Shape.SignedVolumeM3, 1e-9);

    // The same boat with the inside drawn as a plain box rights herself alike at every heel: the liquid runs in the cut shape.
    [Fact]
    public void Levers_OfAHullSidedTank_AreThoseOfItsInside()
    {
        Tank inside = Side with { IsHullSided = false, From = new Place(4, -2, 0), To = new Place(6, -1, 1) };
        RightingCurve cut = StableBoats.Box(StableBoats.Bare(), Side).Floating().Starboard, box = StableBoats.Box(StableBoats.Bare(), inside).Floating().Starboard;

        Assert.All(cut.Points.Zip(box.Points), pair => Assert.Equal(pair.Second.GzM, pair.First.GzM, 1e-7));
    }

    [Fact]
    public void Tank_WhollyOutsideTheHull_IsSaidAndNotLeftOutInSilence()
    {
        LoadedBoat loaded = StableBoats.Box(StableBoats.Bare(), Side with { From = new Place(4, -6, -1), To = new Place(6, -5, 1) }).Loaded();

        Assert.Empty(loaded.Input!.Tanks);
        Assert.Contains(new FindingInput("side", "from"), loaded.Missing);
    }

    // At an inclining test the slack tank took i·ρ/Δ of GM: 2·1³/12·1000/32 800 of the cut shape, not 2·2³/12 of the box.
    [Fact]
    public void InclinedBoat_TakesTheFreeSurfaceOfTheInside()
    {
        InclinationTest test = new()
        {
            Id = "inclined",
            Aboard = [new AboardItem("side", 1000, new Place(5, -1.5, 0.25))],
            Readings = [.. new double[] { 1, 2, -1, -2 }.Select((metres, i) => new InclinedReading($"r{i}", 500, metres, HeelDeg: metres))],
        };
        InclinationFound found = StableBoats.View(StableBoats.Box(StableBoats.Bare(), Side)).Read(test);

        Assert.Equal(1000 * 2.0 / 12 / found.Input.DisplacementKg, found.FreeSurfaceM, 1e-9);
    }

    [Fact]
    public void InclinedReading_WithNeitherPendulumNorAngle_IsRefusedByName()
    {
        InclinationTest test = new() { Id = "inclined", Aboard = [new AboardItem("side", 1000, new Place(5, -1.5, 0.25))], Readings = [new InclinedReading("first", 500, 1, DeflectionM: 0.1)] };

        Assert.Contains("first", Assert.Throws<ArgumentException>(() => StableBoats.View(StableBoats.Box(StableBoats.Bare(), Side)).Read(test)).Message, StringComparison.Ordinal);
    }
}
