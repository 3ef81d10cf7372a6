using Orlop.Boat;
using Orlop.Boat.Things;
using Orlop.Boat.Topology;
using Orlop.Electrics.Isolation;
using Orlop.Review.Isolation;
using Xunit;

namespace Orlop.Review.Tests.Isolation;

/// <summary>Sources that are stopped whole, panels that are covered and what stays fed, on the demo boat's wiring.</summary>
public class StoppedSourcesTests
{
    private static readonly BoatModel Demo = ExampleBoats.Read("sandgrouse");

    [Fact]
    public void Plan_LoadThatShoreReaches_TakesTheShoreLeadOutBeforeADeviceIsTouched()
    {
        IsolationResult plan = IsolationPlans.Plan(Demo, "kettle")!;
        Assert.Equal("shore-inlet", plan.Openings[0].Id);
        Assert.Contains("ashore first", plan.Openings[0].StopHow, StringComparison.Ordinal);
        Assert.Contains("changeover", plan.Openings.Select(opening => opening.Id));
        Assert.DoesNotContain(plan.StaysLive, live => live.SourceId == "shore-inlet");
        // A point that only the shore lead feeds reads nothing once it is out: no meter can be tried there.
        Assert.Equal("changeover.b", plan.TryMeterAtNode);
    }

    [Fact]
    public void Plan_LoadThatShoreDoesNotReach_LeavesTheShoreLeadIn() =>
        Assert.DoesNotContain(IsolationPlans.Plan(Demo, "cabin-lights")!.Openings, opening => opening.Id == "shore-inlet");

    [Fact]
    public void Plan_EngineStoppedForOneCharger_IsStoppedForAll()
    {
        IsolationResult plan = IsolationPlans.Plan(Demo, "main-plus")!;
        Assert.Single(plan.Openings, opening => opening.Id is "dc-charger" or "engine-generator");
        Assert.DoesNotContain(plan.StaysLive, live => live.SourceId is "dc-charger" or "engine-generator");
    }

    [Theory]
    [InlineData("main-plus", true)]
    [InlineData("main-isolator", true)]
    [InlineData("solar", true)]
    [InlineData("bank", true)]
    [InlineData("starter-battery", false)]
    [InlineData("cabin-lights", false)]
    [InlineData("kettle", false)]
    public void PanelsToCover_OnlyWhereTheyLoseTheirBatteryOrKeepItLive(string id, bool isCovered) =>
        Assert.Equal(isCovered ? ["solar"] : [], Covered(Demo, IsolationPlans.Plan(Demo, id)!).Select(charger => charger.Id));

    [Fact]
    public void PanelsToCover_ControllerWithoutABatteryDrawn_IsCoveredForAnythingOnItsCircuit()
    {
        BoatModel cut = Demo.WithThings(Demo.Things.Where(thing => thing.Id is not ("main-isolator" or "dc-charger-fuse")));
        IsolationResult plan = IsolationPlans.Plan(cut, "cabin-lights")!;
        Assert.Equal(["panel-switch"], plan.Openings.Select(opening => opening.Id));
        Assert.Equal(["solar"], Covered(cut, plan).Select(charger => charger.Id));
    }

    [Fact]
    public void ClosingOrder_StoppedSources_ComeAfterTheLastDevice()
    {
        IsolationResult plan = IsolationPlans.Plan(Demo, "main-plus")!;
        Assert.Equal(["main-isolator", "solar-fuse", "dc-charger"], ClosingOrder.Of(plan).Select(opening => opening.Id));
    }

    [Fact]
    public void StillFed_PastTheMainIsolator_NamesStudsConvertersAndPumps()
    {
        IsolationResult plan = IsolationPlans.Plan(Demo, "main-plus")!;
        Assert.Equal(
            ["live-stud", "twelve-plus", "converter", "bilge-pump"],
            StillFed.By(Demo, plan.StaysLive.Single(live => live.SourceId == "bank")).Select(part => part.Id).Take(4));
    }

    [Fact]
    public void StillFed_Each_NamesNoPartTwice() =>
        Assert.Distinct(StillFed.Each(Demo, IsolationPlans.Plan(Demo, "kettle")!).SelectMany(source => source.Fed).Select(part => part.Id));

    private static IEnumerable<Charger> Covered(BoatModel boat, IsolationResult plan) => PanelsToCover.Of(boat, Wiring.Of(boat), plan, MinusLeads.Of(boat, Wiring.Of(boat), plan));
}
