using Orlop.Boat.Chains;
using Orlop.Boat.Things;
using Orlop.Boat.Topology;
using Xunit;

namespace Orlop.Boat.Tests.Chains;

public sealed class ChainEditingTests
{
    private static readonly IsolatorSwitch Isolator = new() { Id = "isolator" };
    private readonly BoatModel _boat = ChainBoat.With(ChainBoat.Pump);

    [Theory]
    [InlineData(-1)]
    [InlineData(0)]
    [InlineData(1)]
    [InlineData(2)]
    [InlineData(3)]
    public void Insert_AnyPlace_DeviceIsOnTheWayAndCircuitClosed(int behind)
    {
        ChainEdit edit = ChainEditing.Insert(_boat, ChainOf(_boat), behind, Isolator);
        BoatModel boat = ChainBoat.Applied(_boat, edit.Edits);
        Chain chain = ChainOf(boat);

        Assert.Null(edit.Refusal);
        Assert.True(chain.IsComplete);
        Assert.Contains(chain.Out, item => item.Thing.Id == "isolator");
        Assert.Equal(ChainOf(_boat).Out.Length + 2, chain.Out.Length);
        string[] before = [.. ChainOf(_boat).Out.Select(item => item.Thing.Id)];
        Assert.Equal(before, chain.Out.Select(item => item.Thing.Id).Where(before.Contains));
    }

    [Theory]
    [InlineData(-1)]
    [InlineData(1)]
    [InlineData(3)]
    public void Remove_WhatWasPutIn_GivesTheChainBack(int behind)
    {
        BoatModel with = ChainBoat.Applied(_boat, ChainEditing.Insert(_boat, ChainOf(_boat), behind, Isolator).Edits);
        ChainEdit edit = ChainEditing.Remove(with, Wiring.Of(with), ChainOf(with), "isolator");

        Assert.Null(edit.Refusal);
        Assert.Equal(_boat, ChainBoat.Applied(with, edit.Edits));
    }

    [Fact]
    public void Remove_TheFuse_LeavesTheFeedOnTheBar()
    {
        ChainEdit edit = ChainEditing.Remove(_boat, Wiring.Of(_boat), ChainOf(_boat), "wash-down-pump-fuse");
        BoatModel boat = ChainBoat.Applied(_boat, edit.Edits);

        Assert.Equal(["bank-plus", "wash-down-pump-feed"], ChainOf(boat).Out.Select(item => item.Thing.Id));
    }

    [Fact]
    public void Remove_BetweenTwoCables_IsRefusedWithTheReason()
    {
        BoatModel boat = ChainBoat.With(ChainBoat.Pump with { HasPlug = true });
        ChainEdit edit = ChainEditing.Remove(boat, Wiring.Of(boat), ChainOf(boat), "wash-down-pump-plug");

        Assert.Empty(edit.Edits);
        Assert.Contains("two cables would meet", edit.Refusal, StringComparison.Ordinal);
    }

    [Fact]
    public void Remove_SomethingElseIsConnected_NamesIt()
    {
        Busbar spare = new() { Id = "spare" };
        Link branch = new() { Id = "branch", From = new("wash-down-pump-fuse", "out"), To = new("spare", "bar") };
        BoatModel boat = _boat.WithThings([.. _boat.Things, spare, branch]);
        ChainEdit edit = ChainEditing.Remove(boat, Wiring.Of(boat), ChainOf(boat), "wash-down-pump-fuse");

        Assert.Contains("branch", edit.Refusal, StringComparison.Ordinal);
    }

    [Fact]
    public void Insert_TwoPoleDevice_IsRefused() =>
        Assert.NotNull(ChainEditing.Insert(_boat, ChainOf(_boat), 0, Isolator with { IsTwoPole = true }).Refusal);

    private static Chain ChainOf(BoatModel boat) => Chain.Trace(boat, Wiring.Of(boat), boat.Find<Part>("wash-down-pump")!)!;
}
