using Orlop.Boat;
using Orlop.Boat.Alterations;
using Orlop.Boat.Things;

namespace Orlop.Store.Tests;

public sealed class BoatStoreTests : TemporaryFolder
{
    private static readonly DateTimeOffset Noon = new(2026, 5, 3, 12, 0, 0, TimeSpan.Zero);

    [Fact]
    public void Create_ThenOpen_GivesTheSameBoat()
    {
        BoatStore.Create(BoatPath, Boats.Small, "as bought", new FixedTime(Noon)).Dispose();

        using BoatStore store = BoatStore.Open(BoatPath);

        Assert.Equal(new Revision(1, null, 1, Noon, "as bought", Boats.Small), store.Head);
    }

    [Fact]
    public void Create_NameTaken_LeavesTheFile()
    {
        File.WriteAllText(BoatPath, "a letter");

        StoreException failure = Assert.Throws<StoreException>(() => BoatStore.Create(BoatPath, Boats.Small));

        Assert.Equal(StoreFailure.AlreadyThere, failure.Failure);
        Assert.Equal("a letter", File.ReadAllText(BoatPath));
        Assert.Single(Directory.GetFiles(Folder));
    }

    [Fact]
    public void Create_BoatWithProblems_NamesThemAndMakesNoFile()
    {
        BoatModel boat = Boats.Small.WithThings([.. Boats.Small.Things, Boats.Chest("second", -5)]);

        StoreException failure = Assert.Throws<StoreException>(() => BoatStore.Create(BoatPath, boat));

        Assert.Equal(StoreFailure.NotValid, failure.Failure);
        Assert.Contains("second", Assert.Single(failure.Problems).Path, StringComparison.Ordinal);
        Assert.Empty(Directory.GetFiles(Folder));
    }

    [Fact]
    public void Create_FolderMissing_SaysSo()
    {
        StoreException failure = Assert.Throws<StoreException>(() => BoatStore.Create(At("nowhere/boat.orlop"), Boats.Small));

        Assert.Contains(failure.Failure, (StoreFailure[])[StoreFailure.NotThere, StoreFailure.NoAccess]);
    }

    [Fact]
    public void Commit_Edit_IsTheHeadAndSurvivesReopening()
    {
        Revision kept;
        using (BoatStore store = BoatStore.Create(BoatPath, Boats.Small))
        {
            kept = store.Keep(Boats.Weigh(store.Head.Boat, "chest", 55), "weigh the chest");
            Assert.Same(kept, store.Head);
        }

        using BoatStore again = BoatStore.Open(BoatPath);

        Assert.Equal(kept, again.Head);
        Assert.Equal((2L, (long?)1L, "weigh the chest"), (kept.Number, kept.Parent, kept.Summary));
        Assert.Equal(55, again.Head.Boat.MassKg("chest"));
    }

    [Fact]
    public void Commit_ThingNotAsSeen_ShowsTheClashAndKeepsNothing()
    {
        using BoatStore store = BoatStore.Create(BoatPath, Boats.Small);
        Edit late = Boats.Weigh(store.Head.Boat, "chest", 70);
        Revision head = store.Keep(Boats.Weigh(store.Head.Boat, "chest", 55));

        Conflict conflict = Assert.IsType<Conflict>(store.Commit(1, [Boats.AddChest("other"), late], "too late"));

        Assert.Equal(new Clash("chest", Boats.Chest("chest", 40), Boats.Chest("chest", 55), Boats.Chest("chest", 70)), Assert.Single(conflict.Clashes));
        Assert.Equal(head, store.Head);
        Assert.Equal(2, store.History.Page().Count);
    }

    [Fact]
    public void Commit_HeadMovedButThingsUntouched_GoesOnTopAndSaysSo()
    {
        using BoatStore store = BoatStore.Create(BoatPath, Boats.Small);
        store.Keep(Boats.AddChest("other"));

        Committed committed = Assert.IsType<Committed>(store.Commit(1, [Boats.Weigh(Boats.Small, "chest", 70)], "weigh"));

        Assert.True(committed.IsOnNewerHead);
        Assert.NotNull(committed.Head.Boat.Find("other"));
        Assert.Equal(70, committed.Head.Boat.MassKg("chest"));
        Assert.False(Assert.IsType<Committed>(store.Commit(3, [Boats.AddChest("third")], "add")).IsOnNewerHead);
    }

    [Fact]
    public void Commit_ResultDoesNotPass_IsRefusedWithTheProblems()
    {
        using BoatStore store = BoatStore.Create(BoatPath, Boats.Small);

        Refused refused = Assert.IsType<Refused>(store.Commit(1, [BoatEdits.Remove(store.Head.Boat.Find("forepeak")!)], "take the forepeak out"));

        Assert.Contains("chest", Assert.Single(refused.Problems).Path, StringComparison.Ordinal);
        Assert.Equal(1, store.Head.Number);
    }

    [Fact]
    public void Commit_NotFinite_IsRefused()
    {
        using BoatStore store = BoatStore.Create(BoatPath, Boats.Small);

        Assert.IsType<Refused>(store.Commit(1, [Boats.AddChest("other", double.NaN)], "NaN"));
        Assert.IsType<Refused>(store.Commit(1, [Boats.AddChest("other", double.PositiveInfinity)], "infinite"));
    }

    /// <summary>Half a surrogate pair is text to .NET but cannot be written as UTF-8.</summary>
    [Fact]
    public void Commit_TextThatCannotBeWritten_IsRefused()
    {
        using BoatStore store = BoatStore.Create(BoatPath, Boats.Small);
        Edit edit = BoatEdits.Add(Boats.Chest("other", 1) with { Name = "half a pair \ud800" });

        Assert.IsType<Refused>(store.Commit(1, [edit], "add"));
        Assert.Equal(1, store.Head.Number);
    }

    [Fact]
    public void Commit_ArgumentsImpossible_AreRefusedWithTheirName()
    {
        using BoatStore store = BoatStore.Create(BoatPath, Boats.Small);
        Edit edit = Boats.AddChest("other");

        Assert.Equal("edits", Assert.Throws<ArgumentException>(() => store.Commit(1, [], "nothing")).ParamName);
        Assert.Equal("summary", Assert.Throws<ArgumentException>(() => store.Commit(1, [edit], " ")).ParamName);
        Assert.Equal("edits", Assert.Throws<ArgumentException>(() => store.Commit(1, [edit with { Id = "another" }], "ids")).ParamName);
        Assert.Throws<ArgumentOutOfRangeException>(() => store.Commit(2, [edit], "unseen"));
        Assert.Throws<ArgumentOutOfRangeException>(() => store.Commit(0, [edit], "unseen"));
        Assert.Equal(1, store.Head.Number);
    }

    [Fact]
    public void Changed_OnCommitUndoAndRedo_TellsTheHead()
    {
        using BoatStore store = BoatStore.Create(BoatPath, Boats.Small);
        List<long> told = [];
        store.Changed += revision => told.Add(revision.Number);

        store.Keep(Boats.AddChest("other"));
        store.Commit(1, [Boats.AddChest("other")], "clash");
        store.Undo(2);
        store.Undo(1);
        store.Redo(1);

        Assert.Equal([2, 1, 2], told);
    }

    [Fact]
    public void ExportJson_ThenCreateFromJson_GivesTheSameBoat()
    {
        using BoatStore store = BoatStore.Create(BoatPath, Boats.Small);
        store.Keep(Boats.AddChest("other", 3.25));

        store.ExportJson(At("boat.json"));
        using BoatStore copy = BoatStore.CreateFromJson(At("copy.orlop"), File.ReadAllText(At("boat.json")));

        Assert.Equal(store.Head.Boat, copy.Head.Boat);
        Assert.Equal(StoreFailure.AlreadyThere, Assert.Throws<StoreException>(() => store.ExportJson(At("boat.json"))).Failure);
        Assert.Equal(StoreFailure.NotValid, Assert.Throws<StoreException>(() => BoatStore.CreateFromJson(At("bad.orlop"), "{")).Failure);
        Assert.False(File.Exists(At("bad.orlop")));
    }

    [Fact]
    public void BackupTo_HoldsEveryRevisionAndStandsAlone()
    {
        using BoatStore store = BoatStore.Create(BoatPath, Boats.Small);
        store.Keep(Boats.AddChest("other"));
        store.Undo(2);

        store.BackupTo(At("backup.orlop"));

        Assert.False(Path.Exists(At("backup.orlop-wal")));
        using BoatStore backup = BoatStore.Open(At("backup.orlop"));
        Assert.Equal(store.Head, backup.Head);
        Assert.Equal(store.History.Page(), backup.History.Page());
        Assert.Equal(StoreFailure.AlreadyThere, Assert.Throws<StoreException>(() => store.BackupTo(At("backup.orlop"))).Failure);
    }

    private sealed class FixedTime(DateTimeOffset now) : TimeProvider
    {
        public override DateTimeOffset GetUtcNow() => now;
    }
}
