using System.Globalization;
using Bunit;
using Microsoft.Extensions.DependencyInjection;
using Orlop.App.Parts;
using Orlop.App.Sessions;
using Orlop.App.Shell;
using Orlop.App.Tests.Sessions;
using Orlop.Boat.Format;
using Orlop.Boat.Things;
using Orlop.Presentation.Quantities;
using Orlop.Presentation.Views;
using Xunit;

namespace Orlop.App.Tests.Parts;

public sealed class ComponentTests : IDisposable
{
    private static readonly CultureInfo Culture = CultureInfo.GetCultureInfo("en");

    private readonly BunitContext _page = new();
    private readonly OpenedBoat _demo = new(BoatJson.Read(File.ReadAllText(Repository.At("examples", "sandgrouse.json"))).Boat!);

    public ComponentTests()
    {
        _page.JSInterop.Mode = JSRuntimeMode.Loose;
        _page.Services.AddSingleton(_demo.Session);
    }

    private BoatSession Session => _demo.Session;

    [Fact]
    public void ThingForm_BadNumber_SaysSoBesideTheFieldAndKeepsTheText()
    {
        IRenderedComponent<ThingForm> form = Form("main-fuse");
        form.Find("#field-main-fuse-ratedA").Change("lots");

        Assert.Equal("lots", form.Find("#field-main-fuse-ratedA").GetAttribute("value"));
        Assert.Equal("true", form.Find("#field-main-fuse-ratedA").GetAttribute("aria-invalid"));
        Assert.Contains("lots", form.Find("#field-main-fuse-ratedA-note").TextContent, StringComparison.Ordinal);
        Assert.StartsWith("Not kept. ", form.Find("#field-main-fuse-ratedA-note").TextContent, StringComparison.Ordinal);
        Assert.Equal(250, Session.Now.Shown.Find<Protection>("main-fuse")!.RatedA.Value);
    }

    [Fact]
    public void ThingForm_Rules_AreBoxesToTick()
    {
        IRenderedComponent<ThingForm> form = Form("stability-basis");
        Assert.Contains("MGN 280", form.Find("#field-stability-basis-rules").TextContent, StringComparison.Ordinal);
        form.Find("#field-stability-basis-rules-open-boat").Change(true);
        form.Find("#field-stability-basis-rules-general-intact").Change(false);

        Assert.Equal([StabilityRule.SmallCraft, StabilityRule.OpenBoat], Session.Now.AsBuilt.Find<StabilityBasis>("stability-basis")!.Rules);
    }

    // A finding that misses one of the owner's limits leads to it: it is chosen already, and its value is asked for in its unit.
    [Fact]
    public void ThingForm_LimitThatIsAskedFor_IsChosenFromTheList()
    {
        PracticeChoice practice = Session.Now.AsBuilt.Find<PracticeChoice>("practice")!;
        Session.Edit("none", new ThingChange(practice, practice with { Own = [.. practice.Own.Where(own => own.Limit != "most-lifting-heel-deg")] }));
        IRenderedComponent<ThingForm> form = Form("practice", "own/most-lifting-heel-deg");

        Assert.Equal("most-lifting-heel-deg", form.Find("select#field-practice-own-new-limit").GetAttribute("value"));
        Assert.Contains("Greatest heel while lifting (°)", form.Find("select#field-practice-own-new-limit").TextContent, StringComparison.Ordinal);
        Assert.Contains("12°", form.Find("#field-practice-own-new-value-note").TextContent, StringComparison.Ordinal);
        form.Find("#field-practice-own-new-value").Change("7°");
        form.Find("#field-practice-own-new-reason").Change("Mine");
        form.FindAll("#field-practice-own button").Single(button => button.TextContent == "Add").Click();
        Assert.Equal(7, Session.Now.AsBuilt.Find<PracticeChoice>("practice")!.Own.Single(own => own.Limit == "most-lifting-heel-deg").Value);
    }

    [Fact]
    public void ThingForm_Particulars_AreNotOfferedForRemoval() =>
        Assert.DoesNotContain(Form("particulars").FindAll("button"), button => button.TextContent.StartsWith("Remove ", StringComparison.Ordinal));

    [Fact]
    public void ThingForm_EmptyName_IsRefusedAndTheNameStays()
    {
        IRenderedComponent<ThingForm> form = Form("main-fuse");
        form.Find("#field-main-fuse-name").Change(" ");

        Assert.Contains("cannot be left empty", form.Find("#field-main-fuse-name-note").TextContent, StringComparison.Ordinal);
        Assert.Equal("Main fuse", Session.Now.AsBuilt.Find("main-fuse")!.Name);
    }

    [Fact]
    public void ThingForm_Gates_AreChosenFromThoseThatAreKnown()
    {
        IRenderedComponent<ThingForm> form = Form("main-fuse");
        Assert.Contains(form.FindAll("select#field-main-fuse-gates option"), option => option.TextContent == "Strip fuse SF51 (ISO 8820-5)");
        form.Find("#field-main-fuse-gates").Change("strip-sf51");

        Assert.Equal("strip-sf51", Session.Now.AsBuilt.Find<Protection>("main-fuse")!.Gates);
    }

    [Fact]
    public void ThingForm_PartOfAnotherDraft_SaysWhichAndOpensIt()
    {
        IRenderedComponent<ThingForm> form = Form("winch-lead");
        Assert.Contains("is not in the boat as built, which is shown", form.Find(".next").TextContent, StringComparison.Ordinal);
        Assert.Equal(["Open “Sampling winch”", "Open “Sampling winch, second draft”"], form.FindAll(".next button").Select(button => button.TextContent));

        form.Find(".next button").Click();
        Assert.Equal("sampling-winch", Session.Now.Draft!.Id);
        form.WaitForAssertion(() => Assert.NotEmpty(form.FindAll("#field-winch-lead-areaMm2")));
    }

    [Fact]
    public void ThingForm_NowhereAtAll_SaysSo() => Assert.Contains("nor in any draft", Form("no-such-thing").Markup, StringComparison.Ordinal);

    [Fact]
    public void ThingForm_GoodNumber_IsKept()
    {
        Form("main-fuse").Find("#field-main-fuse-ratedA").Change("200 A");

        Assert.Equal(200, Session.Now.AsBuilt.Find<Protection>("main-fuse")!.RatedA.Value);
    }

    [Fact]
    public void ThingForm_ChangedElsewhereWhileTheBoxIsHeld_KeepsWhatWasSeenUntilItIsLeft()
    {
        IRenderedComponent<ThingForm> form = Form("main-fuse");
        form.Find("#field-main-fuse-ratedA").Focus();
        Protection seen = Session.Now.Shown.Find<Protection>("main-fuse")!;
        Session.Edit("elsewhere", new ThingChange(seen, seen with { RatedA = 225 }));
        form.Render();

        Assert.Equal("250 A", Shown());
        form.Find("#field-main-fuse-ratedA").Blur();
        Assert.Equal("225 A", Shown());

        string? Shown() => form.Find("#field-main-fuse-ratedA").GetAttribute("value")?.Replace('\u00A0', ' ');
    }

    [Fact]
    public void ThingForm_ChangedElsewhereMeanwhile_ShowsBothAndKeepsWhatIsChosen()
    {
        IRenderedComponent<ThingForm> form = Form("main-fuse");
        form.Find("#field-main-fuse-ratedA").Focus();
        Protection seen = Session.Now.Shown.Find<Protection>("main-fuse")!;
        Session.Edit("elsewhere", new ThingChange(seen, seen with { RatedA = 225 }));
        form.Find("#field-main-fuse-ratedA").Change("200 A");

        Assert.Contains("225\u00A0A", form.Find(".conflict").TextContent, StringComparison.Ordinal);
        Assert.Contains("200\u00A0A", form.Find(".conflict").TextContent, StringComparison.Ordinal);
        Assert.Equal(225, Session.Now.Shown.Find<Protection>("main-fuse")!.RatedA.Value);

        form.Find(".conflict button").Click();
        Assert.Equal(200, Session.Now.Shown.Find<Protection>("main-fuse")!.RatedA.Value);
    }

    [Fact]
    public void ThingForm_ThingInUse_CannotBeRemovedAndSaysWhy()
    {
        IRenderedComponent<ThingForm> form = Form("main-plus");
        form.FindAll("button")[^1].Click();

        Assert.StartsWith("Main plus bar cannot be removed while it is in use by ", form.Find(".refusal[role=alert]").TextContent, StringComparison.Ordinal);
        Assert.DoesNotContain("things[", form.Markup, StringComparison.Ordinal);
        Assert.NotNull(Session.Now.Shown.Find("main-plus"));
    }

    [Fact]
    public void ThingForm_RemoveAsBuilt_AsksOnceAndLeavesAWayBack()
    {
        PageHead head = new();
        IRenderedComponent<ThingForm> form = _page.Render<ThingForm>(parameters => parameters
            .AddCascadingValue(Reader()).AddCascadingValue(head).Add(one => one.ThingId, "tool-chests"));
        form.FindAll("button")[^1].Click();
        Assert.Contains("out of the boat as built?", form.Find(".ask").TextContent, StringComparison.Ordinal);
        Assert.NotNull(Session.Now.AsBuilt.Find("tool-chests"));

        form.Find(".ask button").Click();
        Assert.Null(Session.Now.AsBuilt.Find("tool-chests"));
        Assert.Equal((true, Session.Now.Head.Number), (head.Told!.CanUndo, head.Told.Revision));
        Session.Undo();
        Assert.NotNull(Session.Now.AsBuilt.Find("tool-chests"));
    }

    // A survey is of the boat as built: its corrections go there, whatever draft is open.
    [Theory]
    [InlineData("october-freeboards", "edits go into the boat as built")]
    [InlineData("tool-chests", "edits go into “Sampling winch”")]
    public void ThingForm_WithADraftOpen_SaysWhereItsEditsGo(string thing, string said)
    {
        Session.OpenDraft("sampling-winch");
        Assert.Equal(said, Form(thing).Find(".draft-note").TextContent);
    }

    [Fact]
    public void ThingForm_RemoveInADraft_IsDoneAtOnce()
    {
        Session.OpenDraft("sampling-winch");
        IRenderedComponent<ThingForm> form = Form("tool-chests");
        form.FindAll("button")[^1].Click();

        Assert.Null(Session.Now.Shown.Find("tool-chests"));
        Assert.NotNull(Session.Now.AsBuilt.Find("tool-chests"));
    }

    [Fact]
    public void ThingForm_HostileName_IsText()
    {
        Gear gear = Session.Now.Shown.All<Gear>().First();
        Session.Edit("rename", new ThingChange(gear, gear with { Name = "<script>alert(1)</script>" }));

        IRenderedComponent<ThingForm> form = Form(gear.Id);
        Assert.Empty(form.FindAll("script"));
        Assert.Equal("<script>alert(1)</script>", form.Find($"#field-{gear.Id}-name").GetAttribute("value"));
    }

    [Fact]
    public void ThingForm_FieldThatIsAnEmptyList_HasItsFormReady_AndACancelledOneStaysAway()
    {
        Cable cable = Session.Now.Shown.Find<Cable>("bank-minus")!;
        Session.Edit("no run", new ThingChange(cable, cable with { Run = [] }));
        Assert.Empty(Form("bank-minus").FindAll("#field-bank-minus-run-new-lengthM"));
        IRenderedComponent<ThingForm> form = Form("bank-minus", "run");
        Assert.NotEmpty(form.FindAll("#field-bank-minus-run #field-bank-minus-run-new-lengthM"));
        Assert.Equal("field-bank-minus-run", GoneTo());

        form.FindAll("#field-bank-minus-run button").Single(button => button.TextContent == "Cancel").Click();
        form.Render();
        Assert.Empty(form.FindAll("#field-bank-minus-run-new-lengthM"));
    }

    [Fact]
    public void ThingForm_FieldInsideACore_HasTheFormOfItsEndReady()
    {
        Cable cable = Session.Now.Shown.Find<Cable>("bank-minus")!;
        Session.Edit("end unknown", new ThingChange(cable, cable with { Cores = [cable.Cores[0] with { ToEnd = null }] }));
        IRenderedComponent<ThingForm> form = Form("bank-minus", $"cores/{cable.Cores[0].Id}/toEnd");

        Assert.NotEmpty(form.FindAll("select#field-bank-minus-cores-0-toEnd-means"));
        Assert.Empty(form.FindAll("#field-bank-minus-cores-new-id"));
        Assert.Equal("field-bank-minus-cores-0-toEnd", GoneTo());
    }

    [Fact]
    public async Task FindingsList_DrawnAgainInTheSameWindow_HasOpenWhatWasOpen()
    {
        FindingsView view = await Findings("sampling-winch");
        PageHead head = new();
        IRenderedComponent<FindingsList> first = List(view, head);
        first.Find("details.finding").Unfold();
        IRenderedComponent<FindingsList> again = List(view, head);

        Assert.True(again.Find("details.finding").HasAttribute("open"));
        Assert.Single(again.FindAll(".working"));
        // The browser tells once of what is drawn open; what comes after that is the hand.
        again.Find("details.finding").Unfold();
        Assert.Single(again.FindAll(".working"));
        again.Find("details.finding").Unfold();
        Assert.Empty(List(view, head).FindAll(".working"));
        Assert.Empty(List(view, new PageHead()).FindAll(".working"));
    }

    private IRenderedComponent<FindingsList> List(FindingsView view, PageHead head) => _page.Render<FindingsList>(parameters => parameters
        .AddCascadingValue(Reader()).AddCascadingValue(head).Add(one => one.View, view).Add(one => one.ThingHref, (thing, field) => $"/{thing}/{field}"));

    // The box that the browser was last told to go to.
    private object? GoneTo() => _page.JSInterop.Invocations["goToField"][^1].Arguments[0];

    [Fact]
    public async Task FindingsList_DraftInTrouble_OpensToItsWorking()
    {
        FindingsView view = await Findings("sampling-winch");
        IRenderedComponent<FindingsList> list = _page.Render<FindingsList>(parameters => parameters
            .AddCascadingValue(Reader()).Add(one => one.View, view).Add(one => one.ThingHref, (thing, field) => $"/{thing}/{field}"));

        Assert.Contains("New trouble", list.Find("h2").TextContent, StringComparison.Ordinal);
        list.Find("details.finding").Unfold();
        Assert.NotEmpty(list.FindAll(".working"));
        Assert.NotEmpty(list.FindAll(".working a[href]"));
    }

    [Fact]
    public async Task ChainPanel_Winch_ShowsEveryItemWithVoltageAndItsTrouble()
    {
        FindingsView findings = await Findings("sampling-winch");
        CircuitsView circuits = CircuitsView.Of(Session.Now.Shown, Session.Now.AsBuilt, Session.Now.Review, DisplayUnits.Metric, Culture);
        ChainView view = ChainView.Of(circuits.ChainOf("winch")!, Session.Now.Shown, Session.Now.AsBuilt, findings, "lifting", Session.Engine.Memo);
        IRenderedComponent<ChainPanel> panel = _page.Render<ChainPanel>(parameters => parameters
            .AddCascadingValue(Reader()).Add(one => one.View, view).Add(one => one.Wiring, circuits.Wiring)
            .Add(one => one.ThingHref, (thing, _) => $"/{thing}").Add(one => one.ConditionHref, condition => condition));

        Assert.Equal(view.Items.Length, panel.FindAll(".chain > li").Count);
        Assert.Contains("V", panel.Find(".chain li:last-child .volts").TextContent, StringComparison.Ordinal);
        Assert.NotEmpty(panel.FindAll(".chain .fails .trouble"));
    }

    [Fact]
    public async Task ChainPanel_TypedFuse_IsPutIntoTheChain()
    {
        FindingsView findings = await Findings("sampling-winch");
        CircuitsView circuits = CircuitsView.Of(Session.Now.Shown, Session.Now.AsBuilt, Session.Now.Review, DisplayUnits.Metric, Culture);
        ChainView view = ChainView.Of(circuits.ChainOf("winch")!, Session.Now.Shown, Session.Now.AsBuilt, findings, null, Session.Engine.Memo);
        IRenderedComponent<ChainPanel> panel = _page.Render<ChainPanel>(parameters => parameters
            .AddCascadingValue(Reader()).Add(one => one.View, view).Add(one => one.Wiring, circuits.Wiring)
            .Add(one => one.ThingHref, (thing, _) => $"/{thing}").Add(one => one.ConditionHref, condition => condition));
        panel.Find(".insert button").Click();
        panel.Find(".insert input").Input("rope 4 m");
        panel.Find(".insert form").Submit();
        Assert.Contains("fuse 200 A", panel.Find(".insert .refusal").TextContent, StringComparison.Ordinal);

        panel.Find(".insert input").Input("fuse 200 A");
        panel.Find(".insert form").Submit();
        Assert.Equal(200, Session.Now.Draft!.Edits.Select(edit => edit.Becomes).OfType<Protection>().Single(device => device.Id == "winch-fuse-2").RatedA.Value);
    }

    public void Dispose()
    {
        _page.Dispose();
        _demo.Dispose();
    }

    private static Reader Reader() => new(DisplayUnits.Metric, Culture, _ => { });

    private IRenderedComponent<ThingForm> Form(string thing, string? field = null) =>
        _page.Render<ThingForm>(parameters => parameters.AddCascadingValue(Reader()).Add(form => form.ThingId, thing).Add(form => form.Field, field));

    private async Task<FindingsView> Findings(string draft)
    {
        Session.OpenDraft(draft);
        BoatSnapshot now = await _demo.WhenReviewed();
        return new FindingsView(now.Review!, Session.Engine.Checks, DisplayUnits.Metric, Culture);
    }
}
