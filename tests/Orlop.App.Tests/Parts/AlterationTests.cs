using System.Globalization;
using Bunit;
using Orlop.App.Pages;
using Orlop.App.Parts;
using Orlop.App.Sessions;
using Orlop.App.Shell;
using Orlop.Boat.Things;
using Orlop.Work;
using Xunit;

namespace Orlop.App.Tests.Parts;

/// <summary>An alteration on its page: accepted when asked, its edits, its clashes.</summary>
public sealed class AlterationTests : WorkUnderWay
{
    [Fact]
    public async Task AlterationPanel_NewTrouble_IsAcceptedOnlyOnceAsked()
    {
        Alteration draft = Session.Now.AsBuilt.Find<Alteration>("sampling-winch")!;
        IRenderedComponent<AlterationPanel> panel = Page.Render<AlterationPanel>(parameters => parameters.AddCascadingValue(Reader()).Add(one => one.Alteration, draft));
        panel.WaitForState(() => panel.Markup.Contains("new troubles", StringComparison.Ordinal), TimeSpan.FromSeconds(60));
        Assert.Contains("new troubles, which fail", panel.Markup, StringComparison.Ordinal);
        await panel.PressNamedAsync("button", "Accept with");
        Assert.Equal(AlterationStatus.Draft, Session.Now.AsBuilt.Find<Alteration>("sampling-winch")!.Status);

        await panel.PressAsync(".ask button");
        Alteration accepted = Session.Now.AsBuilt.Find<Alteration>("sampling-winch")!;
        Assert.Equal((AlterationStatus.Accepted, (DateOnly?)Session.Today), (accepted.Status, accepted.AcceptedOn));
        panel.Render(parameters => parameters.Add(one => one.Alteration, accepted));
        Assert.StartsWith($"accepted on {Session.Today.ToString("d MMM yyyy", CultureInfo.GetCultureInfo("en"))}", panel.Find(".status").TextContent, StringComparison.Ordinal);

        await panel.PressNamedAsync("button", "Back to a draft");
        Assert.Null(Session.Now.AsBuilt.Find<Alteration>("sampling-winch")!.AcceptedOn);
    }

    [Fact]
    public void AlterationPanel_WhatIsTakenAsSaid_IsToldSo_AndNoStepIsAboutIt()
    {
        Alteration winch = Session.Now.AsBuilt.Find<Alteration>("sampling-winch")!;
        IRenderedComponent<AlterationPanel> panel = Page.Render<AlterationPanel>(parameters => parameters.AddCascadingValue(Reader()).Add(one => one.Alteration, winch));

        Assert.Equal(["hung-sampler"], panel.FindAll(".edit").Where(edit => edit.TextContent.Contains("taken as said", StringComparison.Ordinal)).Select(edit => edit.QuerySelector("a")!.GetAttribute("href")!.Split('=')[1]));
        Assert.DoesNotContain(WorkPacks.Plan(Session.Now.AsBuilt, winch, Xunit.TestContext.Current.CancellationToken).Steps, step => step.Builds.Contains("hung-sampler"));
    }

    [Fact]
    public async Task AlterationsPage_WhatIsAccepted_StaysInView_AndTheHeaderSaysSo()
    {
        PageHead head = new();
        IRenderedComponent<AlterationsPage> page = Page.Render<AlterationsPage>(parameters => parameters.AddCascadingValue(Reader()).AddCascadingValue(head));
        string shown = page.Find("#chain-title").TextContent;
        await page.PressNamedAsync("button", "Accept with");
        await page.PressAsync(".ask button");

        Assert.Equal(shown, page.Find("#chain-title").TextContent);
        Assert.Equal($"“{shown}” is now: accepted.", head.Told!.Text);
    }

    [Fact]
    public void AlterationPanel_EditedDraft_IsNotAcceptedBeforeItsReviewIsThere()
    {
        Alteration draft = Session.Now.AsBuilt.Find<Alteration>("sampling-winch")!, fewer = draft with { Edits = [draft.Edits[0]] };
        IRenderedComponent<AlterationPanel> panel = Page.Render<AlterationPanel>(parameters => parameters.AddCascadingValue(Reader()).Add(one => one.Alteration, draft));
        Assert.False(Accept().HasAttribute("disabled"));

        Demo.Background.Hold();
        panel.Render(parameters => parameters.Add(one => one.Alteration, fewer));
        Assert.True(Accept().HasAttribute("disabled"));
        Assert.Equal("true", panel.Find(".of-review.old").GetAttribute("aria-busy"));

        Demo.Background.LetGo();
        panel.WaitForState(() => !Accept().HasAttribute("disabled"), TimeSpan.FromSeconds(60));
        Assert.Empty(panel.FindAll(".of-review.old"));

        AngleSharp.Dom.IElement Accept() => panel.FindAll("button").First(button => button.TextContent.StartsWith("Accept", StringComparison.Ordinal));
    }

    [Fact]
    public async Task AlterationPanel_NewUnknown_IsAcceptedOnlyOnceAsked()
    {
        Alteration untold = new() { Id = "lamp", Name = "A lamp", Edits = [new Edit { Id = "new-lamp", Becomes = new ElectricLoad { Id = "new-lamp", Name = "New lamp", Behaviour = LoadBehaviour.Power, NominalV = 24, Uses = [new LoadUse(Session.Now.AsBuilt.All<Condition>().First().Id, 1)] } }] };
        Session.EditAsBuilt("draft", ThingChange.Add(untold));
        IRenderedComponent<AlterationPanel> panel = Page.Render<AlterationPanel>(parameters => parameters.AddCascadingValue(Reader()).Add(one => one.Alteration, untold));
        panel.WaitForState(() => panel.Markup.Contains("that cannot be told…", StringComparison.Ordinal), TimeSpan.FromSeconds(60));
        await panel.PressNamedAsync("button", "Accept with");

        Assert.Contains("that cannot be told", panel.Find(".ask").TextContent, StringComparison.Ordinal);
        Assert.Equal(AlterationStatus.Draft, Session.Now.AsBuilt.Find<Alteration>("lamp")!.Status);
    }

    [Fact]
    public void ReadingsPanel_Typed_IsJudgedAndKept()
    {
        WorkPack pack = Pack();
        IRenderedComponent<ReadingsPanel> panel = Page.Render<ReadingsPanel>(parameters => parameters.AddCascadingValue(Reader()).Add(one => one.Pack, pack));
        panel.WaitForState(() => panel.FindAll(".stand").Count > 0, TimeSpan.FromSeconds(60));
        panel.WaitForState(() => !panel.Markup.Contains("being worked out", StringComparison.Ordinal), TimeSpan.FromSeconds(60));
        int before = Session.Now.AsBuilt.All<Reading>().Count();
        panel.InvokeAsync(() => panel.FindAll(".meter input").First(box => string.IsNullOrEmpty(box.GetAttribute("value"))).Change("wet"));
        panel.WaitForAssertion(() => Assert.Contains("wet", panel.Find(".reading .refusal").TextContent, StringComparison.Ordinal), TimeSpan.FromSeconds(10));
        Assert.Equal(before, Session.Now.AsBuilt.All<Reading>().Count());

        panel.InvokeAsync(() => panel.FindAll(".meter input").First(box => box.GetAttribute("value") == "wet").Change("1.5"));
        panel.WaitForAssertion(() => Assert.Equal(before + 1, Session.Now.AsBuilt.All<Reading>().Count()), TimeSpan.FromSeconds(10));
        Reading kept = Session.Now.AsBuilt.All<Reading>().Last();
        Assert.Equal(1.5, (kept.VoltageV ?? kept.CurrentA)!.Value);
        Assert.Equal(Session.Today, kept.On);
    }

    [Fact]
    public void AlterationPanel_Edits_AreEachALinkToTheirSheet()
    {
        Alteration draft = Session.Now.AsBuilt.Find<Alteration>("sampling-winch")!;
        IRenderedComponent<AlterationPanel> panel = Page.Render<AlterationPanel>(parameters => parameters.AddCascadingValue(Reader()).Add(one => one.Alteration, draft));
        Assert.Equal(draft.Edits.Select(edit => $"/?thing={edit.Id}"), panel.FindAll(".edit > a").Select(link => link.GetAttribute("href")));
    }

    [Fact]
    public async Task AlterationPanel_BoatHasMovedOn_ShowsTheClashAndSettlesIt()
    {
        Alteration draft = Session.Now.AsBuilt.Find<Alteration>("sampling-winch")!;
        Edit edit = draft.Edits.First(edit => edit.Was is Part && edit.Becomes is not null);
        Part was = (Part)edit.Was!;
        Session.EditAsBuilt("moved on", new ThingChange(was, was with { Name = "Seen since" }));
        IRenderedComponent<AlterationPanel> panel = Page.Render<AlterationPanel>(parameters => parameters.AddCascadingValue(Reader()).Add(one => one.Alteration, draft));

        Assert.Contains("Seen since", panel.Find(".conflict").TextContent, StringComparison.Ordinal);
        await panel.PressNamedAsync(".conflict button", "Keep both changes");
        Part becomes = (Part)Session.Now.AsBuilt.Find<Alteration>("sampling-winch")!.Edits.First(one => one.Id == edit.Id).Becomes!;
        Assert.Equal(("Seen since", ((Part)edit.Becomes!).Place), (becomes.Name, becomes.Place));
    }
}
