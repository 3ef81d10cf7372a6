using System.Globalization;
using Bunit;
using Microsoft.AspNetCore.Components;
using Microsoft.Extensions.DependencyInjection;
using Orlop.App.Pages;
using Orlop.App.Parts;
using Orlop.App.Sessions;
using Orlop.App.Shell;
using Orlop.Boat.Alterations;
using Orlop.Boat.Things;
using Orlop.Presentation.Quantities;
using Orlop.Work;
using Orlop.Work.Steps;
using Xunit;

namespace Orlop.App.Tests.Parts;

public sealed class RecordTests : WorkUnderWay
{
    [Fact]
    public async Task StepsPanel_Tick_IsKeptWithTodaysDate()
    {
        await Demo.WhenReviewed();
        int before = Locker.Ticks.Count;
        IRenderedComponent<StepsPanel> panel = Steps();
        int step = Pack().Steps.ToList().FindIndex(one => one.Kind == StepKind.Isolate && one.WriteDown is null && !one.IsDoneOn(Session.Today)) + 1;
        await panel.SetAsync($"#step-{step} input", true);

        Assert.Equal(before + 1, Locker.Ticks.Count);
        Assert.Equal(Session.Today, Locker.Ticks[^1].On);
    }

    [Fact]
    public async Task StepsPanel_DoneStep_IsFoldedToItsLine_AndShownWhenAsked()
    {
        IRenderedComponent<StepsPanel> panel = Steps();
        int done = Pack().Steps.ToList().FindIndex(step => step.IsDoneOn(Session.Today) && step.Details.Length > 0) + 1, next = Pack().Steps.ToList().FindIndex(step => !step.IsDoneOn(Session.Today)) + 1;
        string detail = Orlop.Presentation.Words.SentenceText.Of(Pack().Steps[done - 1].Details[0], DisplayUnits.Metric, CultureInfo.GetCultureInfo("en"));
        Assert.DoesNotContain(detail, panel.Find($"#step-{done}").TextContent, StringComparison.Ordinal);
        Assert.Equal($"record?alteration=drying-locker&part=steps#step-{next}", panel.FindAll(".actions a").First(link => link.TextContent == $"Next open step: {next}").GetAttribute("href"));

        await panel.PressAsync($"#step-{done} .line > button");
        Assert.Contains(detail, panel.Find($"#step-{done}").TextContent, StringComparison.Ordinal);
    }

    [Fact]
    public async Task StepsPanel_RecordAsBuilt_SaysWhatWasRecordedAndWhatIsNext()
    {
        string title = (Locker.Edits.First(edit => edit.BuiltOn is null).Becomes ?? Locker.Edits.First(edit => edit.BuiltOn is null).Was)!.Title;
        IRenderedComponent<StepsPanel> panel = Steps();
        Assert.Empty(panel.FindAll("#recorded"));
        foreach (int index in Enumerable.Range(0, panel.FindAll(".built input").Count))
        {
            await panel.InvokeAsync(() => panel.FindAll(".built input")[index].Change(index == 0));
        }

        await panel.PressAsync(".built > button");
        await panel.PressAsync(".built .ask button");
        Assert.StartsWith($"Recorded as built today: {title}. Next:", panel.Find("#recorded").TextContent.Trim(), StringComparison.Ordinal);
        Assert.NotNull(panel.Find("#recorded").Closest("[role=status]"));
        Assert.StartsWith("record?alteration=drying-locker&part=steps#step-", panel.Find("#recorded a").GetAttribute("href"), StringComparison.Ordinal);
    }

    /// <summary>Who comes back to the page by its name alone finds the work that was open there in this window.</summary>
    [Fact]
    public void RecordPage_WithoutAnAlteration_OpensTheWorkThatWasLastOpen()
    {
        PageHead head = new();
        head.OpenWork("sampling-winch-second");
        IRenderedComponent<RecordPage> page = Page.Render<RecordPage>(parameters => parameters.AddCascadingValue(Reader()).AddCascadingValue(head));

        Assert.Equal("sampling-winch-second", page.Find(".pagebar select").GetAttribute("value"));
    }

    /// <summary>What is open now goes before what was worked on before.</summary>
    [Fact]
    public void RecordPage_WithoutAnAlteration_OpensTheOneThatIsOpen()
    {
        PageHead head = new();
        head.OpenWork("drying-locker");
        Session.OpenDraft("sampling-winch-second");
        IRenderedComponent<RecordPage> page = Page.Render<RecordPage>(parameters => parameters.AddCascadingValue(Reader()).AddCascadingValue(head));

        Assert.Equal("sampling-winch-second", page.Find(".pagebar select").GetAttribute("value"));
    }

    /// <summary>What is open and has nothing to do with hands leaves the page to the work under way.</summary>
    [Fact]
    public void RecordPage_OpenDraftWithoutSteps_OpensTheWorkUnderWay()
    {
        Session.EditAsBuilt("New draft", ThingChange.Add(new Alteration { Id = "empty", Name = "Empty" }));
        Session.OpenDraft("empty");
        IRenderedComponent<RecordPage> page = Page.Render<RecordPage>(parameters => parameters.AddCascadingValue(Reader()).AddCascadingValue(new PageHead()));

        Assert.Equal("empty", Session.Now.Draft?.Id);
        Assert.Equal("drying-locker", page.Find(".pagebar select").GetAttribute("value"));
    }

    [Fact]
    public void AlterationsAndRecord_AlterationThatIsNotThere_SaySoAndShowNoOther()
    {
        Session.OpenDraft("sampling-winch-second");
        NavigationManager navigation = Page.Services.GetRequiredService<NavigationManager>();
        navigation.NavigateTo("alterations?alteration=nope");
        IRenderedComponent<AlterationsPage> alterations = Page.Render<AlterationsPage>(parameters => parameters.AddCascadingValue(Reader()).AddCascadingValue(new PageHead()));
        Assert.StartsWith("There is no alteration 'nope' in the boat.", alterations.Find(".chain-side [role=status]").TextContent, StringComparison.Ordinal);
        Assert.Empty(alterations.FindComponents<AlterationPanel>());

        navigation.NavigateTo("record?alteration=nope");
        IRenderedComponent<RecordPage> record = Page.Render<RecordPage>(parameters => parameters.AddCascadingValue(Reader()).AddCascadingValue(new PageHead()));
        Assert.StartsWith("There is no alteration 'nope' in the boat.", record.Find(".record [role=status]").TextContent, StringComparison.Ordinal);
        Assert.Empty(record.FindComponents<StepsPanel>());
    }

    [Fact]
    public async Task StepsPanel_TickPastOpenIsolation_AsksOnceAndTicksOnlyWhenTheOwnerSaysSo()
    {
        int before = Locker.Ticks.Count;
        IRenderedComponent<StepsPanel> panel = Steps();
        int step = Pack().Steps.ToList().FindIndex(one => one.Kind is not (StepKind.Weigh or StepKind.Isolate or StepKind.ProveDead) && !one.IsDoneOn(Session.Today)) + 1;
        await panel.SetAsync($"#step-{step} input", true);

        Assert.Equal(before, Locker.Ticks.Count);
        Assert.Matches("^Steps? 2.* not ticked today", panel.Find($"#step-{step} .ask p").TextContent);
        await panel.PressNamedAsync($"#step-{step} .ask button", "No");
        Assert.Empty(panel.FindAll(".ask"));
        Assert.Equal(before, Locker.Ticks.Count);

        await panel.SetAsync($"#step-{step} input", true);
        await panel.PressAsync($"#step-{step} .ask button");
        Assert.Equal(before + 1, Locker.Ticks.Count);
    }

    [Fact]
    public void OpenSteps_ProofPastAnOpenIsolation_IsAskedAboutAndIsolationIsNot()
    {
        WorkStep isolate = Step("isolate:a", StepKind.Isolate), prove = Step("prove-dead:a", StepKind.ProveDead), again = Step("prove-dead:b", StepKind.ProveDead);

        Assert.Equal("Step 1 before this one, to make the work dead, is not ticked today. Tick this one all the same?", OpenSteps.BeforeTick([isolate, prove, again], prove, Session.Today));
        Assert.Null(OpenSteps.BeforeTick([isolate, prove, again], isolate, Session.Today));
        // What is opened in an order is asked about in it: a fuse is pulled once its load is off.
        WorkStep pull = Step("isolate:b", StepKind.Isolate);
        Assert.Equal("Step 1 before this one, to make the work dead, is not ticked today. Tick this one all the same?", OpenSteps.BeforeTick([isolate, pull, prove], pull, Session.Today));
        // One proof does not wait for another.
        Assert.Null(OpenSteps.BeforeTick([isolate with { Tick = new StepTick(isolate.Key, Session.Today) }, prove, again], again, Session.Today));
        Assert.NotNull(OpenSteps.BeforeTick([isolate with { Tick = new StepTick(isolate.Key, Session.Today.AddDays(-1)) }, prove, again], again, Session.Today));
    }

    /// <summary>What makes something live is asked about as what makes it dead is: fitted, run, made off, connected, tested and plugged in before it.</summary>
    [Fact]
    public void OpenSteps_SwitchingOnPastOpenWork_NamesWhatIsOpen()
    {
        WorkStep weigh = Step("weigh:a", StepKind.Weigh), isolate = Step("isolate:a", StepKind.Isolate), fit = Step("fit:a", StepKind.Fit), connect = Step("connect:a", StepKind.Connect),
            test = Step("test:open", StepKind.Test), mate = Step("switch-on:plug", StepKind.Energise), close = Step("restore:a", StepKind.Energise), read = Step("commission:a", StepKind.Commission), over = Step("hand-over:record", StepKind.HandOver);
        WorkStep[] steps = [weigh, isolate, fit, connect, test, mate, close, read, over];
        string? Asked(WorkStep step, params string[] done) => OpenSteps.BeforeTick([.. steps.Select(one => done.Contains(one.Key) ? one with { Tick = new StepTick(one.Key, Session.Today) } : one)], step, Session.Today);

        Assert.Equal("Steps 3, 4, 5 and 6 before this one are not ticked (fit, connect, test before switching on, plug in and close), and this one makes things live. Tick this one all the same?", Asked(close));
        Assert.Equal("Step 5 before this one is not ticked (test before switching on), and this one makes things live. Tick this one all the same?", Asked(mate, "fit:a", "connect:a"));
        Assert.Equal("Step 4 before this one is not ticked (connect). Tick this one all the same?", Asked(read, "fit:a", "test:open"));
        Assert.Equal("Steps 1 and 8 before this one are not ticked (weigh ashore, measure). Tick this one all the same?", Asked(over, "fit:a", "connect:a", "test:open"));
        Assert.Null(Asked(close, "fit:a", "connect:a", "test:open", "switch-on:plug"));
        Assert.Null(OpenSteps.BeforeTick([fit with { BuiltOn = Session.Today }, close], close, Session.Today));

        // A lead that goes onto a battery's post makes live as a switch does; one that goes elsewhere waits for what makes dead alone.
        WorkStep free = Step("test:insulation", StepKind.TestFree), post = Step("connect:b", StepKind.Connect) with { IsOntoLive = true };
        Assert.Equal("Steps 1, 2 and 3 before this one are not ticked (fit, test while the ends are free, connect), and this one makes things live. Tick this one all the same?", OpenSteps.BeforeTick([fit, free, connect, post], post, Session.Today));
        Assert.Null(OpenSteps.BeforeTick([fit, free, connect], connect, Session.Today));
    }

    [Fact]
    public async Task StepsPanel_ReadingOutsideItsBand_IsAskedAboutAtTheLastStepAndBeforeItIsRecorded()
    {
        await Demo.WhenReviewed();
        IRenderedComponent<StepsPanel> panel = Steps();
        int last = Pack().Steps.Length;
        await panel.SetAsync($"#step-{last} input", true);
        Assert.StartsWith("A reading is outside what it should be. Minus side, fan heater to bar, commissioning at the berth: 0.597", panel.Find($"#step-{last} .ask p").TextContent.Replace('\u00a0', ' '), StringComparison.Ordinal);

        await panel.InvokeAsync(() => panel.Find(".built input").Change(true));
        await panel.PressAsync(".built button");
        Assert.StartsWith("A reading is outside what it should be.", panel.Find(".built .ask p").TextContent, StringComparison.Ordinal);
        Assert.EndsWith("Record it as built all the same?", panel.Find(".built .ask p").TextContent, StringComparison.Ordinal);
    }

    [Fact]
    public void StepsPanel_StepThatIsRead_SaysWhereItIsTypedIn()
    {
        IRenderedComponent<StepsPanel> panel = Steps();

        Assert.All(panel.FindAll(".step .write"), write => Assert.NotNull(write.Closest(".step")!.QuerySelector(".where a")));
        Assert.Contains(panel.FindAll(".where a"), link => link.GetAttribute("href") == "record?alteration=drying-locker&part=readings");
    }

    [Fact]
    public void StepsPanel_RecordedAsBuilt_IsShownAsRecordedAndNotAsTicked()
    {
        Alteration locker = Locker;
        Session.Commit("built", AlteredBoat.Build(Session.Now.AsBuilt, locker, [.. locker.Edits.Where(edit => edit.BuiltOn is null).Select(edit => edit.Id)], Session.Today));
        Session.EditAsBuilt("ticks away", new ThingChange(Locker, Locker with { Ticks = [] }));
        IRenderedComponent<StepsPanel> panel = Steps();

        Assert.Empty(panel.FindAll(".step.done"));
        Assert.Contains(": 0 of ", panel.Find("h2").TextContent, StringComparison.Ordinal);
        Assert.Equal(Pack().Steps.Count(step => step.BuiltOn is not null), panel.FindAll(".step em").Count(told => told.TextContent.StartsWith("recorded as built", StringComparison.Ordinal)));
    }

    /// <summary>The mass of what the alteration changes is typed into the alteration, not into the thing that is there now.</summary>
    [Fact]
    public async Task StepsPanel_Weigh_OpensTheSheetWithinTheAlteration()
    {
        WorkPack pack = WorkPacks.Plan(Session.Now.AsBuilt, Session.Now.AsBuilt.Find<Alteration>("sampling-winch-second")!, Xunit.TestContext.Current.CancellationToken);
        IRenderedComponent<StepsPanel> panel = Steps(pack);
        Assert.Null(Session.Now.Draft);
        await panel.PressNamedAsync(".where a", "Water sampler");

        Assert.Equal("sampling-winch-second", Session.Now.Draft?.Id);
        Assert.Equal(130, Session.Now.Shown.Find<Deadweight>("hung-sampler")!.MassKg!.Value);
        Assert.EndsWith("/?thing=hung-sampler&field=massKg", Page.Services.GetRequiredService<Microsoft.AspNetCore.Components.NavigationManager>().Uri, StringComparison.Ordinal);
    }

    /// <summary>The survey after the work is taken in the condition that its step names, whatever was last chosen in the window.</summary>
    [Fact]
    public void StepsPanel_Freeboards_LeadToASurveyInTheConditionOfTheStep()
    {
        WorkPack pack = WorkPacks.Plan(Session.Now.AsBuilt, Session.Now.AsBuilt.Find<Alteration>("sampling-winch-second")!, Xunit.TestContext.Current.CancellationToken);

        Assert.Contains("Commissioning at the berth", pack.Steps.Single(step => step.Key == "freeboards:after").Details[0].ToString(), StringComparison.Ordinal);
        Assert.Contains(Steps(pack).FindAll(".where a"), link => link.GetAttribute("href") == "weights?part=tests&condition=commissioning");
    }

    /// <summary>Freeboards ticked before a survey is typed in: it is asked plainly, and the step stays open.</summary>
    [Fact]
    public async Task StepsPanel_Freeboards_TickedWithoutASurvey_AreAskedFor()
    {
        WorkPack pack = WorkPacks.Plan(Session.Now.AsBuilt, Session.Now.AsBuilt.Find<Alteration>("sampling-winch-second")!, Xunit.TestContext.Current.CancellationToken);
        int number = pack.Steps.ToList().FindIndex(step => step.Key == "freeboards:after") + 1;
        IRenderedComponent<StepsPanel> panel = Steps(pack);
        Assert.Empty(panel.FindAll($"#step-{number} .tested"));
        await panel.InvokeAsync(() => panel.Find($"#step-{number} input[type=checkbox]").Change(true));

        Assert.StartsWith("No freeboard survey is typed in that was made on the day of the work or later", panel.Find($"#step-{number} .ask p").TextContent, StringComparison.Ordinal);
        Assert.Contains("It stays open, ticked or not.", panel.Find($"#step-{number} .ask p").TextContent, StringComparison.Ordinal);
    }

    [Fact]
    public void PhotographPanel_SaysWhereAPhotographGoes()
    {
        IRenderedComponent<PhotographPanel> panel = Page.Render<PhotographPanel>(parameters => parameters.AddCascadingValue(Reader()).Add(one => one.Alteration, Locker));

        Assert.Contains(PhotographPanel.Keeps[1..], panel.Find("p").TextContent, StringComparison.Ordinal);
        string[] names = [.. panel.FindAll("#photo-of option").Select(option => option.TextContent)];
        Assert.Equal(names.Length, names.Distinct().Count());
    }

    private static WorkStep Step(string key, StepKind kind) => new() { Key = key, Kind = kind, Text = Orlop.Review.Findings.Sentence.Of($"{key}") };

    [Fact]
    public async Task StepsPanel_RecordAsBuilt_ChangesTheBoatAsBuilt()
    {
        Edit edit = Locker.Edits.First(edit => edit.BuiltOn is null && edit.Becomes is not null);
        IRenderedComponent<StepsPanel> panel = Steps();
        for (int i = 0; i < panel.FindAll(".built input").Count; i++)
        {
            panel.FindAll(".built input")[i].Change(true);
        }

        await panel.PressAsync(".built button");
        Assert.Null(Session.Now.AsBuilt.Find<Alteration>(Locker.Id)!.Edits.First(one => one.Id == edit.Id).BuiltOn);
        Assert.Matches("Steps? [0-9]+(, [0-9]+)*( and [0-9]+( more)?)? of what you record (is|are) not ticked", panel.Find(".built .ask p").TextContent);
        await panel.PressAsync(".built .ask button");
        Assert.Equal(edit.Becomes, Session.Now.AsBuilt.Find(edit.Id));
        Assert.Equal(AlterationStatus.Built, Locker.Status);
    }

    [Fact]
    public void StepsPanel_StepThatIsRead_SaysWhatToWriteDown() =>
        Assert.Equal(["Write down each reading, in kg.", "Write down all 3 readings, each at its point: the step stays open until each is read.", "Write down each reading, in V.", "Write down: the highest, in Ω.", "Write down each reading, in m."], Steps().FindAll(".step .write").Select(write => write.TextContent).Where(text => text.Contains("each", StringComparison.Ordinal) || text.Contains("highest", StringComparison.Ordinal)).Distinct());

    [Fact]
    public void StepsPanel_SameCaution_IsSaidOnceAndThenByItsStep()
    {
        IRenderedComponent<StepsPanel> panel = Steps();

        AngleSharp.Dom.IElement said = Assert.Single(panel.FindAll(".step"), step => step.QuerySelectorAll(".caution").Any(box => box.TextContent.Contains("Before drilling", StringComparison.Ordinal)));
        Assert.Single(panel.FindAll(".caution"), box => box.TextContent.Contains("Before drilling", StringComparison.Ordinal));
        Assert.Equal($"Drilling and lining burns: as in {said.Id!.Replace('-', ' ')}.", panel.Find(".step .again").TextContent);
        Assert.NotEmpty(panel.FindAll(".step.folded"));
        Assert.DoesNotContain(panel.FindAll(".step.folded"), step => step.TextContent.Contains("Before drilling", StringComparison.Ordinal));
    }

    [Fact]
    public void ReadingsPanel_PartNotBuiltYet_SaysSoAndTakesNothing()
    {
        WorkPack pack = WorkPacks.Plan(Session.Now.AsBuilt, Session.Now.AsBuilt.Find<Alteration>("sampling-winch-second")!, Xunit.TestContext.Current.CancellationToken);
        IRenderedComponent<ReadingsPanel> panel = Page.Render<ReadingsPanel>(parameters => parameters.AddCascadingValue(Reader()).Add(one => one.Pack, pack));
        AngleSharp.Dom.IElement row = panel.FindAll(".reading").First(row => row.TextContent.Contains("Voltage at Winch", StringComparison.Ordinal));

        Assert.Contains("Winch is not recorded as built yet", row.TextContent, StringComparison.Ordinal);
        Assert.True(row.QuerySelector("input")!.HasAttribute("disabled"));
        Assert.Equal("record?alteration=sampling-winch-second&part=steps#built", row.QuerySelector("a")!.GetAttribute("href"));
        Assert.False(panel.Find(".reading input").HasAttribute("disabled"));
    }
}
