using Orlop.Boat;
using Orlop.Boat.Things;
using Orlop.Electrics.Networks;
using Orlop.Review.Electrics;
using Xunit;

namespace Orlop.Review.Tests;

/// <summary>How much an edit solves anew.</summary>
public sealed class MemoCountTests
{
    // Two conditions, and a lamp that is on in the second only.
    private static readonly BoatModel Boat = SmallBoat.OneLamp()
        .With(new Condition { Id = "by-night", ChargeFraction = 0.7, LowestChargeFraction = 0.3 })
        .Change<ElectricLoad>("lamp", lamp => lamp with { Uses = [new LoadUse("in-use", 1), new LoadUse("by-night", 1)] })
        .With(SmallBoat.Lamp("lamp-2", 2) with { Uses = [new LoadUse("by-night", 1)] }, SmallBoat.LampCable("lamp-2-cable", "lamp-2"));

    [Fact]
    public void GearMoved_SolvesNoNetwork() => Assert.Equal(0, SolvedBy(Boat.With(new Gear { Id = "box" }), Boat.With(new Gear { Id = "box", Note = "moved" })));

    [Fact]
    public void NameChanged_SolvesNoNetwork() => Assert.Equal(0, SolvedBy(Boat, Boat.Change<ElectricLoad>("lamp", lamp => lamp with { Name = "Reading lamp" })));

    // Normal and lowest charge of the one condition that it is on in; a fault has no loads.
    [Fact]
    public void LoadOnInOneCondition_SolvesThatConditionsTwoCases() =>
        Assert.Equal(2, SolvedBy(Boat, Boat.Change<ElectricLoad>("lamp-2", lamp => lamp with { RunningA = 3 })));

    [Fact]
    public void LoadOnInBothConditions_SolvesTheFourCases() =>
        Assert.Equal(4, SolvedBy(Boat, Boat.Change<ElectricLoad>("lamp", lamp => lamp with { RunningA = 3 })));

    [Fact]
    public void EditUndone_SolvesNothing()
    {
        ReviewEngine engine = new([new ElectricsDiscipline()]);
        Review(engine, Boat);
        Review(engine, Boat.Change<ElectricLoad>("lamp", lamp => lamp with { RunningA = 3 }));
        long solved = Solved(engine);
        Review(engine, Boat);
        Assert.Equal(solved, Solved(engine));
    }

    private static long SolvedBy(BoatModel before, BoatModel after)
    {
        ReviewEngine engine = new([new ElectricsDiscipline()]);
        Review(engine, before);
        long solved = Solved(engine);
        Assert.True(solved > 0);
        Review(engine, after);
        return Solved(engine) - solved;
    }

    private static void Review(ReviewEngine engine, BoatModel boat) => engine.Review(boat, TestContext.Current.CancellationToken);

    private static long Solved(ReviewEngine engine) => engine.Memo.ComputedCountOf<NetworkResult>();
}
