using Bunit;
using Orlop.App.Parts;
using Orlop.Boat.Things;
using Orlop.Work;
using Orlop.Work.Steps;
using Xunit;

namespace Orlop.App.Tests.Parts;

/// <summary>What is typed in a step of the pack: judged, kept, asked about.</summary>
public sealed class StepReadingTests : WorkUnderWay
{
    /// <summary>What a proof read is kept with its tick; 12.6 V proves nothing dead, whatever the box says.</summary>
    [Fact]
    public async Task StepsPanel_ProofsReading_IsKeptWithItsTick_AndALiveOneIsAskedAbout()
    {
        IRenderedComponent<StepsPanel> panel = Steps();
        int proof = Pack().Steps.ToList().FindIndex(step => step is { Kind: StepKind.ProveDead, WriteDown.Accepts.Length: 1 }) + 1;
        await panel.SetAsync($"#noted-{proof}", "12,6 V");
        Assert.StartsWith("12.6 V is more than 0.5 V: this is not dead.", panel.Find($"#step-{proof} .refusal").TextContent, StringComparison.Ordinal);
        await panel.SetAsync($"#step-{proof} input", true);
        Assert.StartsWith("12.6 V is more than 0.5 V", panel.Find($"#step-{proof} .ask p").TextContent, StringComparison.Ordinal);

        await panel.SetAsync($"#noted-{proof}", "0.1 V; 300 mV");
        Assert.Empty(panel.FindAll($"#step-{proof} .refusal"));
        await panel.PressAsync($"#step-{proof} .ask button");
        Assert.Equal("0.1 V; 300 mV", Locker.Ticks.Single(tick => tick.Step == Pack().Steps[proof - 1].Key).Remark);
    }

    /// <summary>What is typed and not ticked is in the boat when the page is left; the tick takes it along, and unticked it stands beside the step again.</summary>
    [Fact]
    public async Task StepsPanel_ReadingOfAStepThatIsNotTicked_IsThereWhenThePageIsComeBackTo()
    {
        int proof = Pack().Steps.ToList().FindIndex(step => step is { Kind: StepKind.ProveDead, WriteDown.Accepts.Length: 1 }) + 1;
        string key = Pack().Steps[proof - 1].Key;
        IRenderedComponent<StepsPanel> left = Steps();
        await left.SetAsync($"#noted-{proof}", "0.02; 0.0");
        left.Dispose();
        IRenderedComponent<StepsPanel> panel = Steps();

        Assert.Equal("0.02; 0.0", panel.Find($"#noted-{proof}").GetAttribute("value"));
        Assert.Equal(new StepRemark(key, Session.Today, "0.02; 0.0"), Locker.StepRemarks.Single(remark => remark.Step == key));
        Assert.DoesNotContain(Locker.Ticks, tick => tick.Step == key && tick.On == Session.Today);
    }

    /// <summary>A proof of three points has a field for each: what one reads proves nothing of the others, ticked or not.</summary>
    [Fact]
    public async Task StepsPanel_ProofOfThreePoints_StaysOpenUntilEachIsTyped()
    {
        WorkPack pack = WorkPacks.Plan(Session.Now.AsBuilt, Session.Now.AsBuilt.Find<Alteration>("sampling-winch")!, Xunit.TestContext.Current.CancellationToken);
        IRenderedComponent<StepsPanel> panel = Steps(pack);
        int proof = pack.Steps.ToList().FindIndex(step => step is { Kind: StepKind.ProveDead, WriteDown.Accepts.Length: 3 }) + 1;
        await panel.SetAsync($"#noted-{proof}-1", "0");
        Assert.Contains("1 of 3 read", panel.Find($"#step-{proof} .tested").TextContent, StringComparison.Ordinal);
        Assert.Empty(panel.FindAll($"#step-{proof} .refusal"));

        await panel.SetAsync($"#step-{proof} input", true);
        Assert.StartsWith("2 of 3 readings are not typed: ", panel.Find($"#step-{proof} .ask p").TextContent, StringComparison.Ordinal);
        await panel.PressAsync($"#step-{proof} .ask button");
        Assert.DoesNotContain("done", panel.Find($"#step-{proof}").ClassList);
        Assert.Contains("1 with a test that did not pass", panel.Find("h2").TextContent, StringComparison.Ordinal);

        await panel.SetAsync($"#noted-{proof}-3", "0.1");
        Assert.Contains("2 of 3 read", panel.Find($"#step-{proof} .tested").TextContent, StringComparison.Ordinal);
        await panel.SetAsync($"#noted-{proof}-2", "0.2");
        Assert.Contains("done", panel.Find($"#step-{proof}").ClassList);
        Assert.Equal("0; 0.2; 0.1", Session.Now.AsBuilt.Find<Alteration>("sampling-winch")!.Ticks.Single(tick => tick.Step == pack.Steps[proof - 1].Key).Remark);
    }

    /// <summary>A reading that is outside marks its own field and no other: a good reading is not called wrong, and one that is still to be typed is no alarm before the tick.</summary>
    [Fact]
    public async Task StepsPanel_OneReadingOfThreeOutside_MarksItsOwnFieldAlone()
    {
        WorkPack pack = WorkPacks.Plan(Session.Now.AsBuilt, Session.Now.AsBuilt.Find<Alteration>("sampling-winch")!, Xunit.TestContext.Current.CancellationToken);
        IRenderedComponent<StepsPanel> panel = Steps(pack);
        int proof = pack.Steps.ToList().FindIndex(step => step is { Kind: StepKind.ProveDead, WriteDown.Accepts.Length: 3 }) + 1;
        string?[] Marked() => [.. Enumerable.Range(1, 3).Select(at => panel.Find($"#noted-{proof}-{at}").GetAttribute("aria-invalid"))];
        await panel.SetAsync($"#noted-{proof}-1", "0.1");
        await panel.SetAsync($"#noted-{proof}-2", "25.4");
        Assert.Equal([null, "true", null], Marked());

        await panel.SetAsync($"#step-{proof} input", true);
        await panel.PressAsync($"#step-{proof} .ask button");
        Assert.Equal([null, "true", "true"], Marked());
        await panel.SetAsync($"#noted-{proof}-2", "0.2");
        Assert.Equal([null, null, "true"], Marked());
    }

    /// <summary>A proof ticked with nothing typed is none.</summary>
    [Fact]
    public async Task StepsPanel_ProofTickedWithNothingTyped_IsAskedAboutAndStaysOpen()
    {
        IRenderedComponent<StepsPanel> panel = Steps();
        int proof = Pack().Steps.ToList().FindIndex(step => step is { Kind: StepKind.ProveDead, WriteDown.Accepts.Length: > 0 }) + 1;
        await panel.SetAsync($"#step-{proof} input", true);
        Assert.StartsWith("No reading is typed, and ", panel.Find($"#step-{proof} .ask p").TextContent, StringComparison.Ordinal);
        await panel.PressAsync($"#step-{proof} .ask button");
        Assert.DoesNotContain("done", panel.Find($"#step-{proof}").ClassList);
    }

    /// <summary>A step that cannot be done says why: the words are kept without a tick, and paper prints them.</summary>
    [Fact]
    public async Task StepsPanel_StepThatIsLeftOut_KeepsWhy_AndPaperSaysIt()
    {
        IRenderedComponent<StepsPanel> panel = Steps();
        int number = Pack().Steps.ToList().FindIndex(step => step is { WriteDown: null, Tick: null, IsForOneDay: false, BuiltOn: null }) + 1;
        string key = Pack().Steps[number - 1].Key;
        Assert.Empty(panel.FindAll($"#remark-{number}"));
        await panel.PressNamedAsync($"#step-{number} button", "Remark");
        await panel.SetAsync($"#remark-{number}", "left out because the locker is full");

        Assert.Equal(new StepRemark(key, Session.Today, "left out because the locker is full"), Locker.StepRemarks.Single(remark => remark.Step == key));
        Assert.DoesNotContain("done", panel.Find($"#step-{number}").ClassList);
        Assert.Contains("left out because the locker is full; time, initials", System.Net.WebUtility.HtmlDecode(Orlop.Work.Paper.WorkPackHtml.Render(Pack(), new(Session.Today))), StringComparison.Ordinal);
    }

    /// <summary>What is marked as left out looks so, with its reason, and is passed over as next; it is not done, and paper says it.</summary>
    [Fact]
    public async Task StepsPanel_StepMarkedAsLeftOut_IsStruckWithItsReason_AndIsNotDone()
    {
        IRenderedComponent<StepsPanel> panel = Steps();
        int number = Pack().Steps.ToList().FindIndex(step => step is { WriteDown: null, Tick: null, IsForOneDay: false, BuiltOn: null }) + 1;
        await panel.PressNamedAsync($"#step-{number} button", "Remark");
        Assert.Empty(panel.FindAll($"#leave-{number}"));
        await panel.SetAsync($"#remark-{number}", "the locker is full");
        Assert.DoesNotContain("leftout", panel.Find($"#step-{number}").ClassList);
        await panel.SetAsync($"#leave-{number}", true);

        Assert.Contains("leftout", panel.Find($"#step-{number}").ClassList);
        Assert.DoesNotContain("done", panel.Find($"#step-{number}").ClassList);
        Assert.EndsWith(": the locker is full", panel.Find($"#step-{number} .why").TextContent, StringComparison.Ordinal);
        Assert.Contains(", 1 left out", panel.Find("h2").TextContent, StringComparison.Ordinal);
        string paper = System.Net.WebUtility.HtmlDecode(Orlop.Work.Paper.WorkPackHtml.Render(Pack(), new(Session.Today)));
        Assert.Matches($"class=\"step out[^>]*id=\"step-{number}\"", paper);
        Assert.Matches("left out [0-9-]+: the locker is full", paper);

        await panel.SetAsync($"#leave-{number}", false);
        Assert.DoesNotContain("leftout", panel.Find($"#step-{number}").ClassList);
    }

    /// <summary>A question stands at the box that was ticked, before all that is typed in the step, and takes the focus, so that the window shows it.</summary>
    [Fact]
    public async Task StepsPanel_Question_StandsBehindItsBoxAndTakesTheFocus_AndTheAnswerGivesItBack()
    {
        IRenderedComponent<StepsPanel> panel = Steps();
        int step = Pack().Steps.ToList().FindIndex(one => one.Kind is not (StepKind.Weigh or StepKind.Isolate or StepKind.ProveDead) && !one.IsDoneOn(Session.Today)) + 1;
        await panel.SetAsync($"#step-{step} input", true);

        Assert.Contains("ask", panel.Find($"#step-{step} .line").NextElementSibling!.ClassList);
        Page.JSInterop.VerifyFocusAsyncInvoke(1);
        await panel.PressNamedAsync($"#step-{step} .ask button", "No");
        Page.JSInterop.VerifyFocusAsyncInvoke(2);
    }

    /// <summary>What read live is not proved dead by its tick: the mark stays, the next step asks, and so does recording as built.</summary>
    [Fact]
    public async Task StepsPanel_LivePointTickedAllTheSame_StaysOpenAndIsAskedAboutAfterwards()
    {
        IRenderedComponent<StepsPanel> panel = Steps();
        int proof = Pack().Steps.ToList().FindIndex(step => step is { Kind: StepKind.ProveDead, WriteDown.Accepts.Length: 1 }) + 1;
        int work = Pack().Steps.ToList().FindIndex(step => step.Kind is not (StepKind.Weigh or StepKind.Isolate or StepKind.ProveDead) && !step.IsDoneOn(Session.Today)) + 1;
        await panel.SetAsync($"#noted-{proof}", "12.6");
        await panel.SetAsync($"#step-{proof} input", true);
        await panel.PressAsync($"#step-{proof} .ask button");

        AngleSharp.Dom.IElement row = panel.Find($"#step-{proof}");
        Assert.DoesNotContain("done", row.ClassList);
        Assert.True(row.QuerySelector("input[type=checkbox]")!.HasAttribute("checked"));
        Assert.Contains("test not passed; ticked", row.TextContent, StringComparison.Ordinal);
        Assert.NotNull(row.QuerySelector(".tested svg.verdict.fails"));
        Assert.Contains("12.6 V: outside what is accepted", row.QuerySelector(".tested")!.TextContent, StringComparison.Ordinal);
        Assert.Contains("1 with a test that did not pass", panel.Find("h2").TextContent, StringComparison.Ordinal);
        await panel.SetAsync($"#step-{work} input", true);
        Assert.StartsWith($"The test of a step did not pass: {proof}, Prove dead: ", panel.Find($"#step-{work} .ask p").TextContent, StringComparison.Ordinal);
        Assert.Contains("read 12.6 V.", panel.Find($"#step-{work} .ask p").TextContent, StringComparison.Ordinal);

        await panel.InvokeAsync(() => panel.Find(".built input").Change(true));
        await panel.PressAsync(".built > button");
        Assert.Contains($"The test of a step did not pass: {proof}, Prove dead: ", panel.Find(".built .ask p").TextContent, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("test:continuity", "200 Ω", "200 Ω is more than 0.5 Ω: ")]
    [InlineData("test:insulation", "20", "20 kΩ is less than 100 kΩ: ")]
    [InlineData("test:continuity", "fine", "“fine” is no reading in Ω")]
    public async Task StepsPanel_TestOutsideItsLimit_IsAskedAboutBeforeItIsTicked(string key, string typed, string words)
    {
        WorkPack pack = WorkPacks.Plan(Session.Now.AsBuilt, Session.Now.AsBuilt.Find<Alteration>("sampling-winch-second")!, Xunit.TestContext.Current.CancellationToken);
        IRenderedComponent<StepsPanel> panel = Steps(pack);
        int test = pack.Steps.ToList().FindIndex(step => step.Key == key) + 1;
        await panel.SetAsync($"#noted-{test}", typed);
        await panel.SetAsync($"#step-{test} input", true);

        Assert.StartsWith(words, panel.Find($"#step-{test} .refusal").TextContent, StringComparison.Ordinal);
        Assert.StartsWith(words, panel.Find($"#step-{test} .ask p").TextContent, StringComparison.Ordinal);
    }

    /// <summary>A field that is never left, because the phone is locked or another page is gone to, keeps what was typed in it.</summary>
    [Fact]
    public async Task StepsPanel_FieldThatIsNotLeft_IsKeptAfterAMomentAndWhenThePageGoesAway()
    {
        int proof = Pack().Steps.ToList().FindIndex(step => step is { Kind: StepKind.ProveDead, WriteDown.Accepts.Length: 1 }) + 1;
        string key = Pack().Steps[proof - 1].Key;
        string? Kept() => Locker.StepRemarks.SingleOrDefault(remark => remark.Step == key)?.Remark;
        IRenderedComponent<StepsPanel> left = Steps();
        await left.InvokeAsync(() => left.Find($"#noted-{proof}").Input("0.0"));
        left.WaitForState(() => Kept() == "0.0", TimeSpan.FromSeconds(20));

        await left.InvokeAsync(() => left.Find($"#noted-{proof}").Input("0.02"));
        Assert.Equal("0.0", Kept());
        await Page.DisposeComponentsAsync();
        Assert.Equal("0.02", Kept());
    }
}
