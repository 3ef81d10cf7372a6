using Orlop.Boat.Alterations;
using Orlop.Boat.Things;
using Xunit;

namespace Orlop.Boat.Tests.Alterations;

/// <summary>What nobody builds goes into the boat as built with what refers to it, and all of it with the last that is built.</summary>
public sealed class AssumptionsTests
{
    private static readonly DateOnly Day = new(2026, 11, 25);
    private static readonly Climate Home = new() { Id = "home", LatitudeDeg = 60 };
    private static readonly Condition Evening = new() { Id = "evening" };
    private static readonly ElectricLoad Lamp = new() { Id = "lamp", Behaviour = LoadBehaviour.Power, NominalV = 12, Uses = [new LoadUse("evening", 1)] };
    private static readonly Gear Chest = new() { Id = "chest" };

    private static readonly Alteration Mixed = new() { Id = "work", Status = AlterationStatus.Accepted, Edits = [BoatEdits.Add(Home), BoatEdits.Add(Evening), BoatEdits.Add(Lamp), BoatEdits.Add(Chest)] };

    [Fact]
    public void Build_WhatIsLeftOver_StaysOpenWithWhatIsNotBuilt() => Assert.Equal((AlterationStatus.UnderWay, "chest"), After(Mixed, "chest"));

    [Fact]
    public void Build_WhatRefersToIt_TakesItAlong() => Assert.Equal((AlterationStatus.UnderWay, "evening, lamp"), After(Mixed, "lamp"));

    [Fact]
    public void Build_TheLast_TakesAllOfIt() => Assert.Equal((AlterationStatus.Built, "chest, evening, home, lamp"), After(Mixed, "lamp", "chest"));

    [Fact]
    public void Build_WhereNothingElseIsInTheAlteration_AllGoesInAtOnce() =>
        Assert.Equal((AlterationStatus.Built, "evening, home"), After(Mixed with { Edits = [BoatEdits.Add(Home), BoatEdits.Add(Evening)] }, "home"));

    // A change that refers to nothing of it and a removal wait for the last.
    [Fact]
    public void Build_RemovalOfSuchAThing_WaitsForTheLast()
    {
        BoatModel boat = new() { Things = [Home, Chest] };
        Alteration work = new() { Id = "work", Edits = [BoatEdits.Remove(Home), BoatEdits.Replace(Chest, Chest with { MassKg = 40 }), BoatEdits.Add(Lamp with { Uses = [] })] };
        BoatModel first = Built(boat, work, "chest"), last = Built(first, first.Find<Alteration>("work")!, "lamp");
        Assert.NotNull(first.Find("home"));
        Assert.Null(last.Find("home"));
        Assert.Equal(AlterationStatus.Built, last.Find<Alteration>("work")!.Status);
    }

    [Theory]
    [InlineData("climate", true)]
    [InlineData("day-plan", true)]
    [InlineData("condition", true)]
    [InlineData("deadweight", true)]
    [InlineData("practice", true)]
    [InlineData("stability-basis", true)]
    [InlineData("way-preferences", true)]
    [InlineData("stock", true)]
    [InlineData("tool", true)]
    [InlineData("catalogue-part", true)]
    [InlineData("reading", true)]
    [InlineData("photograph", true)]
    [InlineData("inclining-test", true)]
    [InlineData("cable", false)]
    [InlineData("link", false)]
    [InlineData("load", false)]
    [InlineData("gear", false)]
    [InlineData("way", false)]
    [InlineData("compass", false)]
    [InlineData("tank", false)]
    [InlineData("opening", false)]
    [InlineData("space", false)]
    [InlineData("bare-boat", false)]
    public void IsOne_WhatHandsDoNotMake(string kind, bool isAssumed) => Assert.Equal(isAssumed, Assumptions.IsOne((Thing)System.Runtime.CompilerServices.RuntimeHelpers.GetUninitializedObject(ThingKinds.ByName[kind])));

    private static BoatModel Built(BoatModel boat, Alteration work, params string[] ids)
    {
        BoatModel drawn = boat.Find("work") is null ? boat.WithThings([.. boat.Things, work]) : boat;
        return BoatEdits.Apply(drawn, AlteredBoat.Build(drawn, work, ids, Day)).Boat;
    }

    private static (AlterationStatus Status, string BuiltIds) After(Alteration work, params string[] ids)
    {
        BoatModel boat = Built(new BoatModel(), work, ids);
        Assert.All(boat.Find<Alteration>("work")!.Edits, edit => Assert.Equal(edit.BuiltOn is not null, boat.Find(edit.Id) is not null));
        return (boat.Find<Alteration>("work")!.Status, string.Join(", ", boat.Things.Where(thing => thing is not Alteration).Select(thing => thing.Id).Order()));
    }
}
