using AngleSharp.Dom;
using Bunit;
using Orlop.App.Parts;
using Orlop.Boat.Chains;
using Orlop.Boat.Things;
using Orlop.Presentation.Quantities;
using Orlop.Presentation.Views;
using Xunit;

namespace Orlop.App.Tests.Parts;

/// <summary>What is there twice, or pressed twice, or with a touch that was not meant.</summary>
public sealed class TwiceTests : WorkUnderWay
{
    private CircuitPlan Icebox => new()
    {
        LoadName = "Icebox",
        NominalV = 24,
        RunningW = 40,
        OnIn = ["at-anchor"],
        From = CircuitDraft.Feeds(Session.Now.AsBuilt)[0],
        Return = CircuitDraft.Returns(Session.Now.AsBuilt)[0],
        Protection = ProtectionMeans.Breaker,
        ProtectionA = 6,
        AreaMm2 = 2.5,
    };

    [Fact]
    public void TwoThingsOfOneName_ThatLackTheSame_AreDrawnAndDrawnAgain()
    {
        // The first is asked for what all wait for; the others wait for the like of each other.
        Array.ForEach([1, 2, 3], _ => Make());
        FindingsView view = View();
        IRenderedComponent<FindingsList> list = Page.Render<FindingsList>(parameters => parameters
            .AddCascadingValue(Reader()).Add(one => one.View, view).Add(one => one.ThingHref, (thing, field) => $"/{thing}/{field}"));
        string[] waiting = Waiting(list);
        Assert.NotEqual(waiting.Length, waiting.Distinct(StringComparer.Ordinal).Count());

        Make();
        list.Render(parameters => parameters.Add(one => one.View, View()));
        Assert.NotEqual(waiting, Waiting(list));
    }

    [Fact]
    public async Task CircuitMadeByAQuickHand_IsMadeOnce()
    {
        IRenderedComponent<NewCircuitForm> form = Page.Render<NewCircuitForm>(parameters => parameters.AddCascadingValue(Reader()));
        foreach ((string box, string text) in new[] { ("c-name", "Icebox"), ("c-draws", "40 W"), ("c-voltage", "24 V"), ("c-area", "2.5 mm²"), ("c-rating", "6 A"), ("c-from", $"{CircuitDraft.Feeds(Session.Now.AsBuilt)[0]}"), ("c-return", $"{CircuitDraft.Returns(Session.Now.AsBuilt)[0]}") })
        {
            await form.SetAsync($"#{box}", text);
        }

        form.FindAll("label.check").Single(label => label.TextContent.Contains("none of them yet", StringComparison.Ordinal)).QuerySelector("input")!.Change(true);
        IElement made = form.Find("form");
        made.Submit();
        made.Submit();
        Assert.Single(Session.Now.AsBuilt.All<ElectricLoad>(), load => load.Title == "Icebox");
    }

    [Fact]
    public async Task Abandon_IsAskedFirst()
    {
        Alteration draft = Session.Now.AsBuilt.Find<Alteration>("sampling-winch")!;
        IRenderedComponent<AlterationPanel> panel = Page.Render<AlterationPanel>(parameters => parameters.AddCascadingValue(Reader()).Add(one => one.Alteration, draft));
        await panel.PressNamedAsync("button", "Abandon");
        Assert.Equal(AlterationStatus.Draft, Session.Now.AsBuilt.Find<Alteration>("sampling-winch")!.Status);
        Assert.Contains("Abandon “Sampling winch”?", panel.Find(".ask").TextContent, StringComparison.Ordinal);

        await panel.PressNamedAsync("button", "Abandon it");
        Assert.Equal(AlterationStatus.Dropped, Session.Now.AsBuilt.Find<Alteration>("sampling-winch")!.Status);
    }

    [Fact]
    public async Task DraftWithANameThatIsTaken_IsNotBegun()
    {
        IRenderedComponent<NewAlteration> begin = Page.Render<NewAlteration>(parameters => parameters.AddCascadingValue(Reader()));
        int before = Session.Now.AsBuilt.All<Alteration>().Count();
        await begin.SetAsync("#new-alteration", "sampling Winch");
        begin.Find("form").Submit();

        Assert.Contains("there is an alteration of that name", begin.Markup, StringComparison.Ordinal);
        Assert.Equal(before, Session.Now.AsBuilt.All<Alteration>().Count());
    }

    [Fact]
    public void WorkUnderWay_SaysHowManyOfItsStepsAreOpen()
    {
        IRenderedComponent<AlterationPanel> panel = Page.Render<AlterationPanel>(parameters => parameters.AddCascadingValue(Reader()).Add(one => one.Alteration, Locker));
        var pack = Pack();
        int open = pack.Steps.Count(step => !step.IsDoneOn(Session.Today));
        panel.WaitForAssertion(() => Assert.Contains($"{open} of {pack.Steps.Length} steps of its work pack are not done.", panel.Markup, StringComparison.Ordinal), TimeSpan.FromSeconds(60));
    }

    private static string[] Waiting(IRenderedComponent<FindingsList> list) => [.. list.FindAll("details.waiting > summary").Select(summary => summary.TextContent)];

    private void Make() => Session.Commit("Icebox", ChainBuilder.NewCircuit(Session.Now.AsBuilt, Icebox));

    private FindingsView View() => new(Session.Engine.Review(Session.Now.AsBuilt, Xunit.TestContext.Current.CancellationToken), Session.Engine.Checks, DisplayUnits.Metric, Reader().Culture);
}
