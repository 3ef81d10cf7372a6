using Orlop.Boat.Chains;
using Orlop.Boat.Things;
using Orlop.Boat.Topology;
using Orlop.Boat.Values;
using Xunit;

namespace Orlop.Boat.Tests.Chains;

public sealed class ChainBuilderTests
{
    [Fact]
    public void NewCircuit_PumpOnBars_IsTracedFromBatteryAndBack()
    {
        BoatModel boat = ChainBoat.With(ChainBoat.Pump);
        Chain chain = Chain.Trace(boat, Wiring.Of(boat), boat.Find<Part>("wash-down-pump")!)!;

        Assert.True(chain.IsComplete);
        Assert.Equal("bank", chain.Source!.Id);
        Assert.Equal(["bank-plus", "wash-down-pump-link", "wash-down-pump-fuse", "wash-down-pump-feed"], chain.Out.Select(item => item.Thing.Id));
        Assert.Equal(["bank-minus", "wash-down-pump-feed"], chain.Back.Select(item => item.Thing.Id));
    }

    [Fact]
    public void NewCircuit_IsolatorAndPlug_StandInTheOrderOfAFinger()
    {
        BoatModel boat = ChainBoat.With(ChainBoat.Pump with { HasIsolator = true, HasPlug = true, LeadM = 2 });
        Chain chain = Chain.Trace(boat, Wiring.Of(boat), boat.Find<Part>("wash-down-pump")!)!;

        Assert.Equal(
            [typeof(Link), typeof(Link), typeof(Protection), typeof(Link), typeof(IsolatorSwitch), typeof(Cable), typeof(PlugAndSocket), typeof(Cable)],
            chain.Out.Select(item => item.Thing.GetType()));
        Assert.Equal([typeof(Link), typeof(Cable), typeof(PlugAndSocket), typeof(Cable)], chain.Back.Select(item => item.Thing.GetType()));
        Assert.Equal(2, boat.Find<Cable>("wash-down-pump-lead")!.LengthM!.Value);
    }

    [Theory]
    [InlineData(1.2)]
    [InlineData(null)]
    public void NewCircuit_FeedWire_StandsBeforeTheFirstDevice_AndItsLengthMayBeUnknown(double? lengthM)
    {
        BoatModel boat = ChainBoat.With(ChainBoat.Pump with { From = new Terminal("bank", "+"), HasIsolator = true, HasFeedWire = true, FeedM = lengthM is { } m ? m : null });
        Chain chain = Chain.Trace(boat, Wiring.Of(boat), boat.Find<Part>("wash-down-pump")!)!;

        Assert.Equal([typeof(Cable), typeof(Protection), typeof(Link), typeof(IsolatorSwitch), typeof(Cable)], chain.Out.Select(item => item.Thing.GetType()));
        Assert.Equal(lengthM, boat.Find<Cable>("wash-down-pump-feed-wire")!.LengthM?.Value);
    }

    [Fact]
    public void NewCircuit_FeedWire_RunsInTheSpaceOfWhatFeedsIt()
    {
        BoatModel boat = ChainBoat.Bare.WithThings(ChainBoat.Bare.Things.Select(thing => thing is Busbar { Id: "plus" } bar ? bar with { Space = "locker" } : thing)
            .Append(new Space { Id = "locker", Use = SpaceUse.Dry, From = new(0, -1, 0), To = new(1, 1, 1) }));
        CircuitPlan plan = ChainBoat.Pump with { HasFeedWire = true, FeedM = 0.15 };

        RunLeg leg = Assert.Single(ChainBoat.Applied(boat, ChainBuilder.NewCircuit(boat, plan)).Find<Cable>("wash-down-pump-feed-wire")!.Run);
        Assert.Equal(("locker", 0.15), (leg.Space, leg.LengthM));
        Assert.Empty(ChainBoat.With(plan).Find<Cable>("wash-down-pump-feed-wire")!.Run);
    }

    [Fact]
    public void NewCircuit_LongerWayBack_IsTheMinusCoresOwnLength()
    {
        Cable cable = ChainBoat.With(ChainBoat.Pump with { BackM = 5 }).Find<Cable>("wash-down-pump-feed")!;

        Assert.Equal(4.2, cable.LengthM!.Value);
        Assert.Null(cable.Cores[0].LengthM);
        Assert.Equal(5, cable.Cores[1].LengthM!.Value);
    }

    [Fact]
    public void NewCircuit_UnknownLength_StaysUnknown()
    {
        Cable cable = ChainBoat.With(ChainBoat.Pump with { OutM = null }).Find<Cable>("wash-down-pump-feed")!;

        Assert.Null(cable.LengthM);
    }

    [Fact]
    public void NewCircuit_SameNameTwice_GetsItsOwnIds()
    {
        BoatModel once = ChainBoat.With(ChainBoat.Pump);
        BoatModel twice = ChainBoat.Applied(once, ChainBuilder.NewCircuit(once, ChainBoat.Pump));

        Assert.NotNull(twice.Find<ElectricLoad>("wash-down-pump-2"));
        Assert.Equal(twice.Things.Count, twice.Things.Select(thing => thing.Id).Distinct().Count());
    }

    [Theory]
    [InlineData("<b>Ünïcode</b> pump!", "b-unicode-b-pump")]
    [InlineData("24 V lamp", "v-lamp")]
    [InlineData("   ", "thing")]
    [InlineData("--x--", "x")]
    public void ReadableId_AnyWords_IsSmallLettersDigitsAndHyphens(string words, string expected) =>
        Assert.Equal(expected, ReadableId.Of(words, _ => false));

    public static TheoryData<CircuitPlan, string> Incomplete => new()
    {
        { ChainBoat.Pump with { LoadName = " " }, "name" },
        { ChainBoat.Pump with { RunningW = null }, "draws" },
        { ChainBoat.Pump with { ProtectionA = null }, "rating" },
        { ChainBoat.Pump with { From = new Terminal("nothing", "bar") }, "nothing.bar" },
        { ChainBoat.Pump with { Return = new Terminal("minus", "post") }, "minus.post" },
        { ChainBoat.Pump with { Return = ChainBoat.Pump.From }, "return there too" },
    };

    [Theory]
    [MemberData(nameof(Incomplete), DisableDiscoveryEnumeration = true)]
    public void NewCircuit_PlanLacksSomething_SaysWhat(CircuitPlan plan, string said)
    {
        Assert.Contains(said, ChainBuilder.Complaint(ChainBoat.Bare, plan), StringComparison.Ordinal);
        Assert.Throws<ArgumentException>(() => ChainBuilder.NewCircuit(ChainBoat.Bare, plan));
    }

    [Theory]
    [InlineData(12)]
    [InlineData(24)]
    public void Templates_EachOne_MakesACircuit(double nominalV) => Assert.All(CircuitTemplate.For(nominalV), template =>
    {
        CircuitPlan plan = template.Plan with { From = ChainBoat.Pump.From, Return = ChainBoat.Pump.Return };
        IReadOnlyList<Edit> edits = ChainBuilder.NewCircuit(ChainBoat.Bare, plan);
        BoatModel boat = ChainBoat.Applied(ChainBoat.Bare, edits);
        ElectricLoad load = edits.Select(edit => edit.Becomes).OfType<ElectricLoad>().Single();
        Assert.True(Chain.Trace(boat, Wiring.Of(boat), load)!.IsComplete);
        Assert.Equal(Knowledge.Guessed, load.RunningW!.Known);
    });
}
