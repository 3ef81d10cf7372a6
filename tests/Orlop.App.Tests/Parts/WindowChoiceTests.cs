using System.Globalization;
using Bunit;
using Microsoft.Extensions.DependencyInjection;
using Orlop.App.Parts;
using Orlop.App.Sessions;
using Orlop.App.Shell;
using Orlop.App.Tests.Sessions;
using Orlop.Boat.Alterations;
using Orlop.Boat.Format;
using Orlop.Boat.Things;
using Orlop.Presentation.Quantities;
using Xunit;

namespace Orlop.App.Tests.Parts;

/// <summary>What was chosen in a window is chosen again when the window connects to a program that was started again.</summary>
public sealed class WindowChoiceTests : IDisposable
{
    private readonly BunitContext _page = new();
    private readonly BunitJSModuleInterop _script;
    private readonly OpenedBoat _demo = new(BoatJson.Read(File.ReadAllText(Repository.At("examples", "sandgrouse.json"))).Boat!);
    private readonly PageHead _head = new();

    public WindowChoiceTests()
    {
        _script = _page.JSInterop.SetupModule("/orlop.js");
        _script.Mode = JSRuntimeMode.Loose;
        _page.Services.AddSingleton(_demo.Session);
    }

    private BoatSession Session => _demo.Session;

    [Fact]
    public void RememberedDraftAndCondition_AreChosenAgain()
    {
        Connect("sampling-winch", "at-anchor");

        Assert.Equal(("sampling-winch", "at-anchor"), (Session.Now.Draft?.Id, _head.ConditionId));
    }

    [Theory]
    [InlineData("no-such-draft")]
    [InlineData("particulars")]
    [InlineData("")]
    [InlineData(null)]
    public void RememberedDraft_NoLongerThere_LeavesTheBoatAsBuilt(string? remembered)
    {
        Connect(remembered, remembered);

        Assert.Null(Session.Now.Draft);
        Assert.Null(_head.ConditionId);
    }

    [Fact]
    public void RememberedDraft_AnotherWindowHasClosedIt_StaysClosedAndIsForgotten()
    {
        Session.OpenDraft("sampling-winch");
        Session.OpenDraft(null);
        IRenderedComponent<BoatHeader> header = Connect("sampling-winch", null);

        Assert.Null(Session.Now.Draft);
        header.WaitForAssertion(() => Assert.Equal([("draft", null)], Written()));
    }

    [Fact]
    public void WhatIsChosen_IsRememberedOnce()
    {
        IRenderedComponent<BoatHeader> header = Connect(null, null);
        header.Find(".draft select").Change("sampling-winch");
        _head.ChooseCondition("at-anchor");
        header.WaitForAssertion(() => Assert.Equal([("condition", "at-anchor"), ("draft", "sampling-winch")], Written().Order()));

        header.Find(".draft select").Change("");
        header.WaitForAssertion(() => Assert.Equal(("draft", null), Written()[^1]));
        Assert.Equal(3, Written().Length);
    }

    [Fact]
    public void DraftIsRecordedAsBuilt_HeadAndFormsAgreeInEveryWindow()
    {
        Session.OpenDraft("drying-locker");
        IRenderedComponent<BoatHeader> one = Connect("drying-locker", null), other = Connect("drying-locker", null);
        IRenderedComponent<NewCircuitForm> form = _page.Render<NewCircuitForm>(parameters => parameters.AddCascadingValue(new Reader(DisplayUnits.Metric, CultureInfo.GetCultureInfo("en"), _ => { })));
        Assert.Equal("drying-locker", one.Find(".draft select").GetAttribute("value"));
        Assert.Contains("the draft “Drying locker”", form.Find("p").TextContent, StringComparison.Ordinal);
        Alteration locker = Session.Now.Draft!;
        Session.Commit("built", AlteredBoat.Build(Session.Now.AsBuilt, locker, [.. locker.Edits.Select(edit => edit.Id)], Session.Today));

        Assert.Equal(AlterationStatus.Built, Session.Now.AsBuilt.Find<Alteration>("drying-locker")!.Status);
        Assert.All([one, other], header => Assert.Equal("", header.Find(".draft select").GetAttribute("value")));
        Assert.All([one, other], header => Assert.DoesNotContain(header.FindAll(".draft option"), option => option.GetAttribute("value") == "drying-locker"));
        Assert.Contains("the boat as built", form.Find("p").TextContent, StringComparison.Ordinal);
        Assert.Equal(("draft", null), Written()[^1]);
    }

    public void Dispose()
    {
        _page.Dispose();
        _demo.Dispose();
    }

    private IRenderedComponent<BoatHeader> Connect(string? draft, string? condition)
    {
        _script.Setup<string?>("rememberedChoice", "draft").SetResult(draft);
        _script.Setup<string?>("rememberedChoice", "condition").SetResult(condition);
        return _page.Render<BoatHeader>(parameters => parameters
            .AddCascadingValue(new Reader(DisplayUnits.Metric, CultureInfo.GetCultureInfo("en"), _ => { })).AddCascadingValue(_head));
    }

    private (string? Choice, string? Id)[] Written() =>
        [.. _script.Invocations["rememberChoice"].Select(call => ((string?)call.Arguments[0], (string?)call.Arguments[1]))];
}
