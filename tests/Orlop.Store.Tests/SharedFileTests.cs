using Orlop.Boat.Alterations;

namespace Orlop.Store.Tests;

/// <summary>One file, several stores and several processes.</summary>
public sealed class SharedFileTests : TemporaryFolder
{
    [Fact]
    public void HasMovedAndRefresh_OtherStoreCommitted_TellTheSecond()
    {
        using BoatStore first = BoatStore.Create(BoatPath, Boats.Small);
        using BoatStore second = BoatStore.Open(BoatPath);
        List<Revision> told = [];
        second.Changed += told.Add;
        Assert.False(second.HasMoved());

        Revision head = first.Keep(Boats.Weigh(Boats.Small, "chest", 55));

        Assert.True(second.HasMoved());
        Assert.Equal(1, second.Head.Number);
        Assert.Equal(head, second.Refresh());
        Assert.False(second.HasMoved());
        Assert.Equal([head], told);
    }

    [Fact]
    public void Commit_OtherStoreChangedTheThing_SecondIsShownTheDifference()
    {
        using BoatStore first = BoatStore.Create(BoatPath, Boats.Small);
        using BoatStore second = BoatStore.Open(BoatPath);
        Revision head = first.Keep(Boats.Weigh(Boats.Small, "chest", 55));

        Conflict conflict = Assert.IsType<Conflict>(second.Commit(1, [Boats.Weigh(Boats.Small, "chest", 70)], "weigh"));

        Assert.Equal(new Clash("chest", Boats.Chest("chest", 40), Boats.Chest("chest", 55), Boats.Chest("chest", 70)), Assert.Single(conflict.Clashes));
        Assert.Equal(head, conflict.Head);
        Assert.Equal(head, second.Head);
    }

    [Fact]
    public void Commit_OtherStoreChangedAnotherThing_BothEditsAreKept()
    {
        using BoatStore first = BoatStore.Create(BoatPath, Boats.Small);
        using BoatStore second = BoatStore.Open(BoatPath);
        first.Keep(Boats.AddChest("other"));

        Committed committed = Assert.IsType<Committed>(second.Commit(1, [Boats.Weigh(Boats.Small, "chest", 70)], "weigh"));

        Assert.True(committed.IsOnNewerHead);
        Assert.NotNull(first.Refresh().Boat.Find("other"));
        Assert.Equal(70, first.Head.Boat.MassKg("chest"));
    }

    [Fact]
    public void Undo_OtherStoreCommitted_DoesNotTakeItsEditBack()
    {
        using BoatStore first = BoatStore.Create(BoatPath, Boats.Small);
        using BoatStore second = BoatStore.Open(BoatPath);
        Revision head = first.Keep(Boats.AddChest("other"));

        Assert.Equal(new StepResult(StepOutcome.HeadHadMoved, head), second.Undo(1));
    }

    [Fact]
    public void Commit_ThingTakenByOtherStore_IsRefusedForTheReference()
    {
        using BoatStore first = BoatStore.Create(BoatPath, Boats.Small);
        using BoatStore second = BoatStore.Open(BoatPath);
        first.Commit(1, [BoatEdits.Remove(Boats.Small.Find("chest")!), BoatEdits.Remove(Boats.Small.Find("forepeak")!)], "empty the bow");

        Refused refused = Assert.IsType<Refused>(second.Commit(1, [Boats.AddChest("other")], "add to the forepeak"));

        Assert.Contains("other", Assert.Single(refused.Problems).Path, StringComparison.Ordinal);
    }

    [Fact]
    public void Commit_ManyThreadsOnOneStore_LosesNothing()
    {
        using BoatStore store = BoatStore.Create(BoatPath, Boats.Small);

        Parallel.For(0, 40, i => Assert.IsType<Committed>(store.Commit(1, [Boats.AddChest($"chest-{i}")], "add")));

        Assert.Equal(41, store.Head.Number);
        Assert.All(Enumerable.Range(0, 40), i => Assert.NotNull(store.Head.Boat.Find($"chest-{i}")));
    }

    [Fact]
    public void Commit_TwoProcessesOnOneThing_LosesNothing()
    {
        const int count = 100;
        BoatStore.Create(BoatPath, Boats.Small).Dispose();

        using WriterProcess one = new(BoatPath, count), other = new(BoatPath, count);
        List<(long Number, double MassKg)> acknowledged = [.. one.Finish(), .. other.Finish()];

        using BoatStore store = BoatStore.Open(BoatPath);
        Assert.Equal(40 + (2 * count), store.Head.Boat.MassKg("chest"));
        Assert.Equal(Enumerable.Range(2, 2 * count).Select(number => (long)number), acknowledged.Select(line => line.Number).Order());
        Assert.All(acknowledged, line => Assert.Equal(line.MassKg, store.History.Read(line.Number).Boat.MassKg("chest")));
        Assert.Empty(store.Verify());
    }
}
