using Orlop.App.Sessions;
using Orlop.Boat.Alterations;
using Orlop.Boat.Things;
using Orlop.Store;
using Xunit;

namespace Orlop.App.Tests.Sessions;

public sealed class BoatSessionTests : IDisposable
{
    private readonly OpenedBoat _opened = new(OpenedBoat.Small, TaskScheduler.Default);

    private BoatSession Session => _opened.Session;

    [Fact]
    public void Edit_NoDraftOpen_ChangesTheBoatAsBuilt()
    {
        EditResult result = Session.Edit("weigh it", new ThingChange(_opened.Chest, _opened.Chest with { MassKg = 44 }));

        Assert.True(result.IsKept);
        Assert.Equal(44, Session.Now.AsBuilt.Find<Gear>("chest")!.MassKg!.Value);
    }

    [Fact]
    public void UndoAndRedo_SayWhatWasTakenBackAndDoneAgain()
    {
        Session.OpenDraft("draft");
        Session.Edit("weigh it", new ThingChange(_opened.Chest, _opened.Chest with { MassKg = 44 }));
        string draft = Session.Now.Draft!.Title;

        Assert.Equal($"Undone: {draft}: weigh it.", Assert.IsType<EditKept>(Session.Undo()).What);
        Assert.Equal($"Done again: {draft}: weigh it.", Assert.IsType<EditKept>(Session.Redo()).What);
        Assert.Null(Assert.IsType<EditKept>(Session.Edit("again", new ThingChange(_opened.Chest, _opened.Chest with { MassKg = 45 }))).What);
    }

    [Fact]
    public void Edit_DraftOpen_GoesIntoTheDraftOnly()
    {
        Session.OpenDraft("draft");
        EditResult result = Session.Edit("weigh it", new ThingChange(_opened.Chest, _opened.Chest with { MassKg = 44 }));

        Assert.True(result.IsKept);
        Assert.Equal(40, Session.Now.AsBuilt.Find<Gear>("chest")!.MassKg!.Value);
        Assert.Equal(44, _opened.Chest.MassKg!.Value);
        Assert.Single(Session.Now.Draft!.Edits);
    }

    [Fact]
    public void Edit_TwoWindowsSawTheSame_SecondIsAClashWithBothVersions()
    {
        Gear seen = _opened.Chest;
        Session.Edit("one", new ThingChange(seen, seen with { MassKg = 44 }));
        EditResult second = Session.Edit("two", new ThingChange(seen, seen with { MassKg = 47 }));

        Clash clash = Assert.Single(Assert.IsType<EditClashed>(second).Clashes);
        Assert.Equal((44, 47), (((Gear)clash.Found!).MassKg!.Value, ((Gear)clash.Wanted!).MassKg!.Value));
        Assert.Equal(44, _opened.Chest.MassKg!.Value);
    }

    [Fact]
    public void Edit_TwoWindowsInOneDraft_SecondIsAClash()
    {
        Session.OpenDraft("draft");
        Gear seen = _opened.Chest;
        Session.Edit("one", new ThingChange(seen, seen with { MassKg = 44 }));

        Assert.IsType<EditClashed>(Session.Edit("two", new ThingChange(seen, seen with { MassKg = 47 })));
    }

    [Fact]
    public void Edit_BreaksARule_IsRefusedWithTheReason()
    {
        EditResult result = Session.Edit("too heavy", new ThingChange(_opened.Chest, _opened.Chest with { MassKg = -1 }));

        Assert.Contains("chest", Assert.IsType<EditRefused>(result).Message, StringComparison.Ordinal);
        Assert.Equal(40, _opened.Chest.MassKg!.Value);
    }

    [Fact]
    public void UndoAndRedo_StepThroughTheHistory()
    {
        Session.Edit("weigh it", new ThingChange(_opened.Chest, _opened.Chest with { MassKg = 44 }));

        Assert.True(Session.Undo().IsKept);
        Assert.Equal(40, _opened.Chest.MassKg!.Value);
        Assert.True(Session.Redo().IsKept);
        Assert.Equal(44, _opened.Chest.MassKg!.Value);
        Assert.IsType<EditRefused>(Session.Redo());
    }

    [Fact]
    public async Task OtherProcess_Commits_IsNoticed()
    {
        using BoatStore other = _opened.OpenAgain();
        Gear seen = other.Head.Boat.Find<Gear>("chest")!;
        other.Commit(other.Head.Number, [BoatEdits.Replace(seen, seen with { MassKg = 51 })], "elsewhere");
        for (int i = 0; i < 200 && Session.Now.Head.Number == 1; i++)
        {
            await Task.Delay(25, TestContext.Current.CancellationToken);
        }

        Assert.Equal(51, _opened.Chest.MassKg!.Value);
    }

    [Fact]
    public async Task Review_AfterAnEdit_IsOfTheNewestBoat()
    {
        Session.OpenDraft("draft");
        Session.Edit("weigh it", new ThingChange(_opened.Chest, _opened.Chest with { MassKg = 44 }));
        BoatSnapshot now = await _opened.WhenReviewed();

        Assert.Equal("draft", now.Review!.AlterationId);
        Assert.Equal(now.Shown, now.Review.AsAltered);
    }

    public void Dispose() => _opened.Dispose();
}
