using Orlop.Boat.Alterations;
using Orlop.Boat.Things;

namespace Orlop.Store.Tests;

public sealed class BoatHistoryTests : TemporaryFolder
{
    [Fact]
    public void UndoRedo_ToBothEnds_WalkTheWholeHistoryAlsoAfterRestart()
    {
        using (BoatStore store = BoatStore.Create(BoatPath, Boats.Small))
        {
            store.Keep(Boats.AddChest("a"));
            store.Keep(Boats.AddChest("b"));
        }

        using (BoatStore store = BoatStore.Open(BoatPath))
        {
            Assert.Equal(StepOutcome.NothingFurther, store.Redo(3).Outcome);
            Assert.Equal(2, store.Undo(3).Head.Number);
            Assert.Null(store.Head.Boat.Find("b"));
        }

        using (BoatStore store = BoatStore.Open(BoatPath))
        {
            Assert.Equal(2, store.Head.Number);
            Assert.Equal(Boats.Small, store.Undo(2).Head.Boat);
            Assert.Equal(new StepResult(StepOutcome.NothingFurther, store.Head), store.Undo(1));
        }

        using (BoatStore store = BoatStore.Open(BoatPath))
        {
            store.Redo(1);
            Assert.NotNull(store.Redo(2).Head.Boat.Find("b"));
            Assert.Equal(3, store.Head.Number);
        }
    }

    [Fact]
    public void EditAfterUndo_BeginsABranch_AndTheOldOneCanBeGoneBackTo()
    {
        using BoatStore store = BoatStore.Create(BoatPath, Boats.Small);
        store.Keep(Boats.AddChest("a"), "a");
        store.Keep(Boats.AddChest("b"), "b");
        store.Undo(3);
        store.Undo(2);
        store.Keep(Boats.AddChest("c"), "c");

        Assert.Equal(
            [(4, 1, 4, HistoryPlace.Head), (3, 2, 1, HistoryPlace.Aside), (2, 1, 1, HistoryPlace.Aside), (1, null, 1, HistoryPlace.Behind)],
            Lines(store));

        Assert.Equal(StepOutcome.Moved, store.GoTo(4, 2).Outcome);
        Assert.NotNull(store.Head.Boat.Find("a"));
        Assert.Null(store.Head.Boat.Find("c"));
        Assert.Equal(
            [(4, 1, 4, HistoryPlace.Aside), (3, 2, 1, HistoryPlace.Ahead), (2, 1, 1, HistoryPlace.Head), (1, null, 1, HistoryPlace.Behind)],
            Lines(store));
    }

    [Fact]
    public void Redo_AtAFork_FollowsTheBranchLastLeft()
    {
        using BoatStore store = BoatStore.Create(BoatPath, Boats.Small);
        store.Keep(Boats.AddChest("a"));
        store.Keep(Boats.AddChest("b"));
        store.GoTo(3, 1);
        store.Keep(Boats.AddChest("c"));

        store.Undo(4);
        Assert.Equal(4, store.Redo(1).Head.Number);
        store.GoTo(4, 3);
        store.Undo(3);
        store.Undo(2);
        Assert.Equal(2, store.Redo(1).Head.Number);
        Assert.Equal(3, store.Redo(2).Head.Number);
        store.GoTo(3, 4);
        store.GoTo(4, 1);
        Assert.Equal(4, store.Redo(1).Head.Number);
    }

    [Fact]
    public void Step_HeadMovedMeanwhile_DoesNothingAndShowsTheHead()
    {
        using BoatStore store = BoatStore.Create(BoatPath, Boats.Small);
        Revision head = store.Keep(Boats.AddChest("a"));

        StepResult stale = new(StepOutcome.HeadHadMoved, head);
        Assert.Equal(stale, store.Undo(1));
        Assert.Equal(stale, store.Redo(1));
        Assert.Equal(stale, store.GoTo(1, 1));
        Assert.Throws<ArgumentOutOfRangeException>(() => store.GoTo(2, 3));
        Assert.Equal(head, store.Head);
    }

    [Fact]
    public void Page_LongHistory_ComesNewestFirstInPages()
    {
        using BoatStore store = BoatStore.Create(BoatPath, Boats.Small);
        for (int i = 2; i <= 23; i++)
        {
            store.Keep(Boats.AddChest($"chest-{i}"), $"edit {i}");
        }

        List<HistoryEntry> all = [];
        long before = long.MaxValue;
        while (store.History.Page(before, 10) is { Count: > 0 } page)
        {
            all.AddRange(page);
            before = page[^1].Number;
        }

        Assert.Equal(Enumerable.Range(1, 23).Reverse().Select(number => (long)number), all.Select(entry => entry.Number));
        Assert.Equal("edit 23", all[0].Summary);
        Assert.Throws<ArgumentOutOfRangeException>(() => store.History.Page(count: 0));
    }

    [Fact]
    public void ReadAndEditsOf_AnyRevision_GiveItsBoatAndWhatItChanged()
    {
        using BoatStore store = BoatStore.Create(BoatPath, Boats.Small);
        Edit edit = Boats.Weigh(store.Head.Boat, "chest", 55);
        Revision kept = store.Keep(edit);
        store.Undo(2);

        Assert.Equal(kept, store.History.Read(2));
        Assert.Equal([edit], store.History.EditsOf(2));
        Assert.Empty(store.History.EditsOf(1));
        Assert.Throws<ArgumentOutOfRangeException>(() => store.History.Read(3));
    }

    [Fact]
    public void Undo_RemovedThing_ReturnsToItsPositionInTheList()
    {
        using BoatStore store = BoatStore.Create(BoatPath, Boats.Small);
        store.Keep(Boats.AddChest("last"));
        store.Keep(BoatEdits.Remove(store.Head.Boat.Find("chest")!));

        store.Undo(3);

        Assert.Equal(["particulars", "forepeak", "chest", "last"], store.Head.Boat.Things.Select(thing => thing.Id));
    }

    private static IEnumerable<(long Number, long? Parent, long Branch, HistoryPlace Place)> Lines(BoatStore store) =>
        store.History.Page().Select(entry => (entry.Number, entry.Parent, entry.Branch, entry.Place));
}
