using Orlop.Boat;
using Orlop.Boat.Topology;
using Orlop.Electrics.Isolation;
using Orlop.Review.Isolation;
using Xunit;

namespace Orlop.Review.Tests.Isolation;

/// <summary>Minus off first, on last (common practice, no source).</summary>
public sealed class MinusLeadsTests
{
    private static readonly BoatModel Boat = SmallBoat.OneLamp();

    // Nothing but the lead on the plus post parts the main fuse from the battery.
    [Fact]
    public void PlusLeadLifted_MinusOfThatBatteryComesFirst()
    {
        IsolationResult plan = IsolationPlans.Plan(Boat, "fuse")!;
        Assert.Equal(OpeningMeans.LiftBatteryLead, plan.Openings[^1].Means);
        Assert.Equal(["bank"], MinusLeads.Of(Boat, Wiring.Of(Boat), plan).Select(bank => bank.Id));
        Assert.Equal(plan.Openings.Length - 1, MinusLeads.PlaceBefore(plan.Openings));
        Assert.Equal(1, MinusLeads.PlaceAfter([.. ClosingOrder.Of(plan)]));
    }

    // The post itself stays live whatever is opened: it is worked on with its minus off.
    [Fact]
    public void WorkOnThePlusPost_MinusOfThatBatteryComesOff()
    {
        IsolationResult plan = IsolationPlans.Plan(Boat, "bank")!;
        Assert.Contains(plan.CannotBeMadeDead, node => node.Node == "bank.+");
        Assert.Equal(["bank"], MinusLeads.Of(Boat, Wiring.Of(Boat), plan).Select(bank => bank.Id));
    }

    // With the minus off the controller would be left without its battery while the panels give.
    [Fact]
    public void SolarOnThatBattery_ItsPanelsAreCoveredFirst()
    {
        BoatModel boat = ExampleBoats.Read("sandgrouse");
        IsolationResult plan = IsolationPlans.Plan(boat, "main-fuse")!;
        Assert.NotEmpty(MinusLeads.Of(boat, Wiring.Of(boat), plan));
        Assert.NotEmpty(PanelsToCover.Of(boat, Wiring.Of(boat), plan, MinusLeads.Of(boat, Wiring.Of(boat), plan)));
    }

    [Fact]
    public void NoLeadLifted_None()
    {
        IsolationResult plan = IsolationPlans.Plan(Boat, "lamp")!;
        Assert.DoesNotContain(plan.Openings, opening => opening.Means == OpeningMeans.LiftBatteryLead);
        Assert.Empty(MinusLeads.Of(Boat, Wiring.Of(Boat), plan));
    }
}
