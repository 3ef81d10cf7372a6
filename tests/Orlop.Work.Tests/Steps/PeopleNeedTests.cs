using Orlop.Boat;
using Orlop.Boat.Alterations;
using Orlop.Boat.Things;
using Orlop.Boat.Values;
using Orlop.Work.Steps;
using Xunit;

namespace Orlop.Work.Tests.Steps;

public sealed class PeopleNeedTests
{
    // The chest weighs 40 kg, over the 25 kg of allowances.csv; of the old shelf nobody said what it weighs: it is asked for.
    [Fact]
    public void Lifts_OverTheLimit_NeedTwo_AndAMassThatIsNotGivenIsAskedFor()
    {
        Assert.Equal(["move:chest"], Boats.PumpPack.Steps.Where(step => step is { PeopleCount: 2, Kind: StepKind.Remove or StepKind.Fit }).Select(step => step.Key));
        Assert.Equal(1, Assert.Single(Boats.PumpPack.Steps, step => step.Key == "fit:pump").PeopleCount);
        // 25 kg are 55.1 lb.
        Assert.Contains(Assert.Single(Boats.PumpPack.Steps, step => step.Key == "remove:old-shelf").Cautions, caution => caution.Text.StartsWith("Mass of Old shelf not given: weigh it before it is lifted. If it is over 25 kg (55 lb), it is not a lift for one: tackle marked for it or a second person. Above 50 kg (110 lb) nobody lifts by hand", StringComparison.Ordinal));
    }

    [Fact]
    public void Head_NamesTheStepsByTheirNumbers()
    {
        PeopleNeed need = Boats.PumpPack.People;
        int[] numbers = [.. Boats.PumpPack.Steps.Index().Where(step => step.Item.PeopleCount > 1).Select(step => step.Index + 1)];
        Assert.Equal(Boats.PumpPack.Steps.Max(step => step.PeopleCount), need.MostCount);
        Assert.Equal(numbers, need.Steps.SelectMany(step => step.Numbers).Order());
        Assert.All(numbers, number => Assert.Matches($@"\b{number}\b", need.Words));
    }

    [Fact]
    public void Head_NothingHeavy_NamesNoSecondPerson()
    {
        WorkPack pack = Boats.Plan(Boats.Small, Boats.Pump with { Edits = [Boats.Pump.Edits.Single(edit => edit.Id == "pump-fuse")] });
        Assert.Equal(1, pack.People.MostCount);
        Assert.StartsWith("No step names a second person", pack.People.Words, StringComparison.Ordinal);
    }

    // Two lift 50 kg together and no more (allowances.csv; common practice, no source): 420 kg is no lift for any number of people. It was "tackle or a second person".
    [Theory]
    [InlineData(40, false)]
    [InlineData(50, false)]
    [InlineData(50.5, true)]
    [InlineData(420, true)]
    public void WhatNoNumberOfPeopleLifts_IsLiftedWithMarkedGearOnly(double massKg, bool isByGear)
    {
        Gear winch = new() { Id = "winch", Name = "Heavy winch", MassKg = massKg, Place = new Place(1, 0, 0), Space = "locker" };
        WorkPack pack = Boats.Plan(Boats.Small, Boats.Pump with { Edits = [BoatEdits.Add(winch)] });
        WorkStep[] lifts = [.. pack.Steps.Where(step => step.Key is "fit:winch" or "weigh:all")];

        Assert.Equal(2, lifts.Length);
        Assert.All(lifts, step =>
        {
            Assert.Equal((2, isByGear), (step.PeopleCount, step.IsByGear));
            Assert.Contains(step.Cautions, caution => caution.Text.Contains("a second person", StringComparison.Ordinal) != isByGear || step.Kind == StepKind.Weigh);
            Assert.Equal(isByGear || step.Kind == StepKind.Weigh, step.Cautions.Any(caution => caution.Text.Contains("Above 50 kg (110 lb) nobody lifts by hand, however many they are: lifting gear marked for the load only", StringComparison.Ordinal)));
        });
        Assert.Equal(isByGear ? lifts.Select(step => pack.Steps.IndexOf(step) + 1).Order() : [], pack.People.ByGear);
        Assert.Equal(isByGear, pack.People.Words.Contains("nobody lifts by hand: lifting gear marked for the load only, no number of people instead", StringComparison.Ordinal));
        Assert.Equal(isByGear, pack.Bring.Any(item => item.Key == "safety:lifting-gear" && item.What.ToString().Contains("Heavy winch", StringComparison.Ordinal)));
    }

    // What is taken off is held by a second person, what turns has one at its switch; the pack of a pump alone asks for neither.
    [Fact]
    public void WhatTheWordsAskFor_IsCounted()
    {
        ElectricLoad fan = new() { Id = "fan", Name = "Fan", Behaviour = LoadBehaviour.Power, NominalV = 12, RunningW = 60, Uses = [new("at-anchor", 0.2)], Space = "engine", MassKg = 1 };
        BoatModel behind = Boats.Small.WithThings(Boats.Small.Things.Select(thing => thing is Way { Id: "tray" } tray ? tray with { Opened = "lining" } : thing));
        Alteration work = new() { Id = "fan-work", Edits = [BoatEdits.Add(fan), BoatEdits.Add(Boats.Pair("fan-cable", "plus.bar", "fan", 2.5, 3))] };
        WorkPack pack = Boats.Plan(behind, work);
        WorkStep[] asked = [.. pack.Steps.Where(step => step.Details.Select(detail => detail.ToString()).Concat(step.Cautions.Select(caution => caution.Text)).Any(words => words.Contains("held by a second person", StringComparison.Ordinal) || words.Contains("one person at its switch", StringComparison.Ordinal)))];
        Assert.Equal(["open:lining", "commission:at-anchor"], asked.Select(step => step.Key));
        Assert.All(asked, step => Assert.Equal(2, step.PeopleCount));
        Assert.Equal(asked.Select(step => pack.Steps.IndexOf(step) + 1), Assert.Single(pack.People.Steps, each => each.Count == 2).Numbers);
        Assert.Equal(1, Assert.Single(Boats.PumpPack.Steps, step => step.Key == "commission:at-anchor").PeopleCount);
    }

    // Nobody said what the old shelf weighs: it may ask for one more, and the head says so.
    [Fact]
    public void Head_NamesWhatHasNoMass()
    {
        WorkPack pack = Boats.Plan(Boats.Small, Boats.Pump with { Edits = [BoatEdits.Remove(Boats.Small.Find("old-shelf")!)] });
        int number = pack.Steps.Index().Single(step => step.Item.Key == "remove:old-shelf").Index + 1;
        Assert.Contains($"What is lifted at step {number} has no mass in the file", pack.People.Words, StringComparison.Ordinal);
    }

    // Two who measure, and whoever the list of the condition has aboard.
    [Fact]
    public void Freeboards_NeedTwoBesideThoseAboard()
    {
        WorkPack pack = DemoBoat.Pack("sampling-winch-second");
        WorkStep read = Assert.Single(pack.Steps, step => step.Key == "freeboards:after");
        int aboard = pack.AsAltered.All<Deadweight>().Where(deadweight => deadweight.Use == DeadweightUse.People).SelectMany(deadweight => deadweight.Aboard).Where(count => count.Condition == pack.Weights.Condition!.Id).Sum(count => count.PieceCount);
        Assert.Equal(2 + aboard, read.PeopleCount);
    }
}
