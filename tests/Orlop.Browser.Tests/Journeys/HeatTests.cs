using System.Text.RegularExpressions;
using Deque.AxeCore.Commons;
using Deque.AxeCore.Playwright;
using Microsoft.Playwright;
using Orlop.Browser.Tests.Harness;
using static Microsoft.Playwright.Assertions;

namespace Orlop.Browser.Tests.Journeys;

/// <summary>How warm lockers and bundled cables get, on the page and on paper.</summary>
public sealed partial class HeatTests(ChromiumFixture chromium) : PageTest(chromium)
{
    private const string AtAnchor = "/electrics?view=heat&condition=at-anchor";

    [Fact]
    public async Task HotLocker_IsToldWithItsCurveAndTheOpeningsThatWouldDo_AndIsCoolUnderWay()
    {
        BoatWindow window = await OpenAsync(await LookAtDemoAsync(), "/electrics");
        await window.Page.GetByRole(AriaRole.Link, new() { Name = "Heat", Exact = true }).ClickAsync();
        await Expect(window.Page.GetByRole(AriaRole.Heading, new() { Name = "Heat of spaces and cables" })).ToBeVisibleAsync();
        await window.Page.Locator("section.heat select").SelectOptionAsync("at-anchor");
        await Expect(window.Page).ToHaveURLAsync(AtAnchorAddress());
        await Expect(window.Main).ToContainTextAsync(NeedsOpenings());
        await Expect(window.Page.Locator("#heat-inverter-locker")).ToBeVisibleAsync();

        await window.Page.Locator("section.heat select").SelectOptionAsync("under-way");
        await Expect(window.Main).Not.ToContainTextAsync(NeedsOpenings());
        await Expect(window.Main).ToContainTextAsync("without any opening");
    }

    [Fact]
    public async Task Bundles_TellTableAndNetworkSideBySide_AndLeadToTheirSheets()
    {
        BoatWindow window = await OpenAsync(await LookAtDemoAsync(), AtAnchor);
        ILocator row = window.Page.GetByRole(AriaRole.Row).Filter(new() { Has = window.Page.GetByRole(AriaRole.Rowheader, new() { NameRegex = PortLining() }) });
        await Expect(row.Locator("td[data-label='By the table']")).ToContainTextAsync("A");
        await Expect(row.Locator("td[data-label='By the network']")).ToContainTextAsync("°C");
        await window.Page.GetByRole(AriaRole.Link, new() { Name = "Inverter locker", Exact = true }).ClickAsync();
        await Expect(window.Sheet.Locator("#sheet-title")).ToHaveTextAsync("Inverter locker");
    }

    [Fact]
    public async Task Paper_HasTheSamePage()
    {
        BoatWindow window = await OpenAsync(await LookAtDemoAsync(), AtAnchor);
        await window.Page.GotoAsync(new Uri(new Uri(window.Page.Url), "/electrical?condition=at-anchor").ToString());
        await Expect(window.Page.Locator("#heat h2")).ToHaveTextAsync("Heat of spaces and cables");
        await Expect(window.Page.Locator("#heat svg").First).ToBeVisibleAsync();
    }

    [Theory]
    [InlineData(true)]
    [InlineData(false)]
    public async Task AtBothSizes_HasNoViolation_AndNothingSticksOut(bool isPhone)
    {
        BoatWindow window = await OpenAsync(await LookAtDemoAsync(), AtAnchor, isPhone ? Screens.Phone : Screens.Desk);
        await Expect(window.Page.Locator("#heat-title")).ToBeVisibleAsync();
        Assert.True(await window.Page.EvaluateAsync<bool>("document.documentElement.scrollWidth <= document.documentElement.clientWidth + 1"));
        AxeResult result = await window.Page.RunAxe(new AxeRunOptions { ResultTypes = [ResultType.Violations] });
        Assert.Empty(result.Violations.Select(violation => $"{violation.Id}: {violation.Nodes[0].Html}"));
    }

    [GeneratedRegex("view=heat&condition=at-anchor$")]
    private static partial Regex AtAnchorAddress();

    [GeneratedRegex("Openings that keep it at 40\\s°C")]
    private static partial Regex NeedsOpenings();

    [GeneratedRegex("^Port side lining")]
    private static partial Regex PortLining();
}
