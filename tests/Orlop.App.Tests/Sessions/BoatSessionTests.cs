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
    public void LastEditIsBuilt_EditsGoIntoTheBoatAsBuilt_AndTheFinishedAlterationStays()
    {
        Build();
        Alteration built = Session.Now.AsBuilt.Find<Alteration>("draft")!;
        Assert.True(Session.Edit("weigh it", new ThingChange(_opened.Chest, _opened.Chest with { MassKg = 47 })).IsKept);

        Assert.Equal(AlterationStatus.Built, built.Status);
        Assert.Null(Session.Now.Draft);
        Assert.Equal(47, Session.Now.AsBuilt.Find<Gear>("chest")!.MassKg!.Value);
        Assert.Equal(built, Session.Now.AsBuilt.Find<Alteration>("draft"));
    }

    [Fact]
    public void RecordingIsUndoneAndDoneAgain_EditsGoWhereTheAlterationStands()
    {
        Build();
        Session.Undo();
        Assert.Equal("draft", Session.Now.Draft?.Id);
        Session.Redo();
        Assert.Null(Session.Now.Draft);
    }

    [Fact]
    public void DraftIsDropped_EditsGoIntoTheBoatAsBuilt()
    {
        Session.OpenDraft("draft");
        Session.EditAsBuilt("abandon", new ThingChange(Session.Now.Draft, Session.Now.Draft! with { Status = AlterationStatus.Dropped }));
        Session.Edit("weigh it", new ThingChange(_opened.Chest, _opened.Chest with { MassKg = 44 }));

        Assert.Null(Session.Now.Draft);
        Assert.Equal(44, Session.Now.AsBuilt.Find<Gear>("chest")!.MassKg!.Value);
    }

    [Fact]
    public void OpenDraft_OfWhatIsBuilt_OpensNothing_AlsoWhenThatIsUndone()
    {
        Build();
        Session.OpenDraft("draft");
        Assert.Null(Session.Now.Draft);
        Session.Undo();
        Assert.Null(Session.Now.Draft);
    }

    [Fact]
    public async Task OtherProcess_RecordsItAsBuilt_EditsNoLongerGoIntoIt()
    {
        Session.OpenDraft("draft");
        Session.Edit("weigh it", new ThingChange(_opened.Chest, _opened.Chest with { MassKg = 44 }));
        using BoatStore other = _opened.OpenAgain();
        other.Commit(other.Head.Number, AlteredBoat.Build(other.Head.Boat, other.Head.Boat.Find<Alteration>("draft")!, ["chest"], Session.Today), "elsewhere");
        for (int i = 0; i < 200 && Session.Now.Draft is not null; i++)
        {
            await Task.Delay(25, TestContext.Current.CancellationToken);
        }

        Assert.Null(Session.Now.Draft);
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

    // One edit in the open draft, and that recorded as built.
    private void Build()
    {
        Session.OpenDraft("draft");
        Session.Edit("weigh it", new ThingChange(_opened.Chest, _opened.Chest with { MassKg = 44 }));
        Assert.True(Session.Commit("built", AlteredBoat.Build(Session.Now.AsBuilt, Session.Now.Draft!, ["chest"], Session.Today)).IsKept);
    }

    public void Dispose() => _opened.Dispose();
}
