using System.Globalization;
using Bunit;
using Microsoft.Extensions.DependencyInjection;
using Orlop.App.Sessions;
using Orlop.App.Shell;
using Orlop.App.Tests.Sessions;
using Orlop.Boat.Format;
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
