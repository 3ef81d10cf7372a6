using Orlop.Boat;
using Orlop.Boat.Alterations;
using Orlop.Boat.Things;
using Orlop.Boat.Values;
using Orlop.Work.Steps;
using Xunit;

namespace Orlop.Work.Tests.Steps;

/// <summary>Lifting gear that the work fits is tried with a quarter, half, all and 1.25 times what it is to lift (common practice, no source).</summary>
public sealed class TrialLiftTests
{
    private const string Key = "trial-lift:davit";

    // A load of 80 kg: 20, 40, 80 and 100 kg by hand.
    [Fact]
    public void Davit_IsTriedInFourLoads_BeforeItIsUsed()
    {
        WorkPack pack = Plan("Davit", Hung("load", 80, 1));
        WorkStep lift = pack.Steps.Single(step => step.Key == Key);
        Assert.EndsWith("a quarter of what it is to lift, 20 Kg; half, 40 Kg; all, 80 Kg; last 1.25 times as much, 100 Kg.", lift.Text.ToString(), StringComparison.Ordinal);
        Assert.Equal((80.0, 100.0), (lift.WriteDown!.Accepts[0].Least, lift.WriteDown.Accepts[0].Most));
        Assert.Contains(lift.Cautions, caution => caution.Kind == CautionKind.Lifting);
        Assert.Contains(lift.Details, detail => detail.ToString().Contains("a surveyor or local rules for lifting gear", StringComparison.Ordinal));
        Assert.Equal((null, 2), (lift.Tick, lift.PeopleCount));
        Assert.Empty(lift.Builds);
        Assert.True(pack.Steps.IndexOf(lift) > pack.Steps.IndexOf(pack.Steps.Single(step => step.Key == "fit:davit")));
        Assert.Contains(pack.Bring, item => item.What.ToString().StartsWith("Weights for the trial lift, weighed, in pieces: 100 Kg", StringComparison.Ordinal));
    }

    [Theory]
    [InlineData("100", TestStanding.Passed)]
    [InlineData("40", TestStanding.Outside)]
    [InlineData("0.2 t", TestStanding.Outside)]
    public void WhatItHeld_IsHeldAgainstTheLoad(string note, TestStanding standing) => Assert.Equal(standing, StepTest.Of(Lift("Davit", Hung("load", 80, 1)), note)!.Standing);

    [Fact]
    public void LoadNotTold_LiftsNothing_AndPassesNothing()
    {
        foreach (WorkStep lift in new[] { Lift("Davit"), Lift("Davit", Hung("load", 80, 9)), Lift("Davit", Hung("load", 80, 1), Hung("other", 20, 1)), Lift("Davit", Hung("load", null, 1)) })
        {
            Assert.Contains("nothing is lifted until it is", lift.Text.ToString(), StringComparison.Ordinal);
            Assert.Equal(TestStanding.NotTold, StepTest.Of(lift, "100")!.Standing);
        }
    }

    [Theory]
    [InlineData("Lifting eye", true)]
    [InlineData("Hook for the dinghy", true)]
    [InlineData("Gallows, 60 × 60 × 4", true)]
    [InlineData("Bench", false)]
    [InlineData("Boat hook", false)]
    [InlineData("Davit for the boat", true)]
    [InlineData("Lashing eyes", false)]
    [InlineData("Eyeglasses", false)]
    public void WhatLifts_IsKnownByItsName(string name, bool lifts) => Assert.Equal(lifts, Plan(name).Steps.Any(step => step.Key == Key));

    [Fact]
    public void RecordedAsBuilt_DoesNotTickIt()
    {
        BoatModel boat = Boats.Small;
        Alteration work = Work("Davit");
        WorkStep lift = Boats.Plan(boat.WithThings([.. boat.Things, work.Edits[0].Becomes!]), work with { Edits = [work.Edits[0] with { BuiltOn = Boats.Day }] }).Steps.Single(step => step.Key == Key);
        Assert.False(lift.IsDoneOn(Boats.Day));
    }

    // She lists too far with the sampler on the hook: the trial waits, and says how she lies with the last load too, further than with what she is to lift.
    [Fact]
    public void WhereLiftingFails_TheTrialWaits_AndTheLastLoadHasItsOwnHeel()
    {
        WorkStep lift = DemoBoat.Pack("sampling-winch").Steps.First(step => step.Key.StartsWith("trial-lift:", StringComparison.Ordinal));
        Assert.StartsWith("Not yet, as what stands below fails.", lift.Text.ToString(), StringComparison.Ordinal);
        string[] details = [.. lift.Details.Select(detail => detail.ToString())];
        Assert.Contains("Lift nothing of this mass before what fails is settled.", details);
        double[] heels = [.. lift.Details.Where(detail => detail.ToString().Contains("she is expected to heel", StringComparison.Ordinal)).Select(detail => detail.Parts.Select(part => part.Amount).Last(amount => amount?.Suffix == "Deg")!.Value)];
        Assert.Equal(2, heels.Length);
        Assert.InRange(heels[1], heels[0] * 1.1, heels[0] * 1.5);
    }

    private static WorkStep Lift(string name, params Deadweight[] hung) => Plan(name, hung).Steps.Single(step => step.Key == Key);

    private static WorkPack Plan(string name, params Deadweight[] hung) => Boats.Plan(Boats.Small.WithThings([.. Boats.Small.Things, .. hung]), Work(name));

    private static Alteration Work(string name) => new() { Id = "work", Edits = [BoatEdits.Add(new Gear { Id = "davit", Name = name, MassKg = 12, Place = new Place(1, 1, 2), Space = "locker" })] };

    private static Deadweight Hung(string id, double? massKg, double xM) => new() { Id = id, Name = id, Use = DeadweightUse.Hung, MassKg = massKg is { } kg ? new Quantity(kg, Knowledge.Measured) : null, Place = new Place(xM, 1.5, 3), Aboard = [new DeadweightCount("at-anchor", 1)] };
}
