using Orlop.Boat;
using Orlop.Boat.Things;
using Orlop.Boat.Topology;
using Orlop.Presentation.Views;
using Orlop.Review;
using Xunit;

namespace Orlop.Presentation.Tests.Views;

/// <summary>The chain begins at what feeds its load in the condition shown: the demo's kettle by a change-over, from shore or inverter.</summary>
public sealed class ChainInConditionTests
{
    private static readonly BoatModel Demo = DemoBoat.Read();

    [Theory]
    [InlineData("on-shore-power", "shore-inlet", "shore-breaker")]
    [InlineData("at-anchor", "inverter", "inverter-output")]
    public void Kettle_IsFedAsTheChangeoverStands(string condition, string source, string behind)
    {
        ChainView view = Of("kettle", condition);

        Assert.Equal(source, view.Chain.Source!.Id);
        Assert.Equal(source, view.Items[0].Thing.Id);
        Assert.Contains(view.Items, item => item.Thing.Id == behind);
        Assert.Single(view.Items, item => item.Thing is ShoreInlet or Inverter);
        Assert.All(view.Items, item => Assert.NotNull(item.RunningV));
    }

    // Ohm's law: nothing on the way raises a voltage, and each thing loses the current times its own small resistance, without a cliff at the change-over.
    [Theory]
    [InlineData("on-shore-power")]
    [InlineData("at-anchor")]
    public void Kettle_VoltageFallsFromThingToThing_WithoutACliff(string condition)
    {
        double[] volts = [.. Of("kettle", condition).Items.Select(item => item.RunningV!.Value)];

        Assert.All(volts.Zip(volts.Skip(1)), pair => Assert.InRange(pair.First - pair.Second, -1e-6, 2));
    }

    [Fact]
    public void Kettle_OnShore_TellsTheFaultThatTheShoreDrives()
    {
        Assert.True(Of("kettle", "on-shore-power").OnShore?.FaultA > 100);
        Assert.Null(Of("kettle", "at-anchor").OnShore);
    }

    // Its own switch is open and nothing else changes: the chain stands as with it closed.
    [Fact]
    public void OpenSwitchOfItsOwn_LeavesTheChainAsTheChangeoverLeadsIt()
    {
        BoatModel boat = Demo.Change<IsolatorSwitch>(Demo.All<IsolatorSwitch>().First().Id, isolator => isolator with { OpenIn = [.. Demo.All<Condition>().Select(condition => condition.Id)] });
        Wiring wiring = Wiring.Of(boat);

        Assert.All(boat.All<ElectricLoad>().Where(load => Chain.Trace(boat, wiring, load) is { IsComplete: true }), load => Assert.True(Chain.In(boat, wiring, load, "on-shore-power")!.IsComplete, load.Id));
        Assert.Equal("shore-inlet", Chain.In(boat, wiring, boat.Find<Part>("kettle")!, "on-shore-power")!.Source!.Id);
    }

    private static ChainView Of(string takerId, string conditionId) =>
        ChainView.Of(Chain.Trace(Demo, Wiring.Of(Demo), Demo.Find<Part>(takerId)!)!, Demo, Demo, null, conditionId, new Memo());
}
