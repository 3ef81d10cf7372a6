using Microsoft.Playwright;
using Orlop.Browser.Tests.Harness;
using static Microsoft.Playwright.Assertions;

namespace Orlop.Browser.Tests.Reach;

/// <summary>On the boat: a phone of 390 × 844, gloves.</summary>
public sealed class PhoneTests(ChromiumFixture chromium) : PageTest(chromium)
{
    private const double LeastTargetPx = 48;

    // The boat as built and each part of each page, with long names and with little to show.
    private static readonly string[] Paths =
    [
        "/", "/?thing=bank", "/?thing=drying-feed", "/electrics", "/electrics?circuit=stern-light&thing=stern-light-cable", "/electrics?new=circuit", "/electrics?view=diagram",
        "/weights", "/weights?part=ledger&condition=at-anchor", "/weights?part=ledger&thing=tool-chests", "/weights?part=hull", "/weights/hull", "/weights?part=tests",
        "/alterations?alteration=sampling-winch", "/alterations?alteration=sampling-winch-second", "/record?alteration=sampling-winch-second&part=steps", "/record?alteration=drying-locker&part=steps",
        "/record?alteration=drying-locker&part=readings", "/record?part=photographs", "/record?part=history", "/not-found",
    ];

    // What is touched: not a link in running words, a box that its label around it works, nor what stands in a drawing.
    private const string SmallTargets = $$"""
        () => [...document.querySelectorAll("button, .button, select, textarea, summary, .circuits a, .foot a, .untold a, .missing-list a, td a, th a, input:not(.upload input), label:has(> input[type=checkbox])")]
          .filter(target => target.getBoundingClientRect().width > 0 && target.getBoundingClientRect().height < {{LeastOtherTargetPx}} && !target.closest("svg, .message, .layers input, label > input"))
          .map(target => `${target.tagName} ${target.className} ${Math.round(target.getBoundingClientRect().height)} px: ${target.textContent.trim().slice(0, 30)}`)
        """;

    private const string LeastOtherTargetPx = "40";

    [Fact]
    public async Task NoPage_IsWiderThanThePhone_AndEveryTargetIsAtLeast40PxHigh()
    {
        BoatWindow window = await OpenAsync(await LookAtDemoAsync(), "/", Screens.Phone);
        await window.ReviewedAsync();
        List<string> wrong = [];
        foreach (string path in Paths)
        {
            await window.GoAsync(path);
            await Expect(window.Main).Not.ToContainTextAsync("being worked out");
            wrong.AddRange((await window.Page.EvaluateAsync<string[]>(SmallTargets)).Select(target => $"{path}: {target}"));
            foreach (int width in new[] { Screens.Phone.Width, Screens.SmallPhoneWidth })
            {
                await window.Page.SetViewportSizeAsync(width, Screens.Phone.Height);
                int page = await window.Page.EvaluateAsync<int>("document.scrollingElement.scrollWidth");
                if (page > width)
                {
                    wrong.Add($"{path} is {page} px wide on a phone of {width}.");
                }
            }

            await window.Page.SetViewportSizeAsync(Screens.Phone.Width, Screens.Phone.Height);
        }

        Assert.Empty(wrong);
    }

    [Fact]
    public async Task ACircuitThatIsTapped_ComesIntoView()
    {
        BoatWindow window = await OpenAsync(await LookAtDemoAsync(), "/electrics?circuit=stern-light", Screens.Phone);
        ILocator title = window.Page.Locator("#chain-title");
        await Expect(title).Not.ToBeInViewportAsync();
        await window.Page.GetByRole(AriaRole.Navigation, new() { Name = "Circuits" }).GetByRole(AriaRole.Link, new() { Name = "Horn" }).TapAsync();
        await Expect(title).ToHaveTextAsync("Horn");
        await Expect(title).ToBeInViewportAsync();
    }

    [Fact]
    public async Task AThingTappedFarDownInAChain_OpensWithItsSheetsFirstLinesInView()
    {
        BoatWindow window = await OpenAsync(await LookAtDemoAsync(), "/electrics?circuit=stern-light", Screens.Phone);
        await window.Main.Locator(".chain .link").Last.TapAsync();
        await Expect(window.Page.Locator("#sheet-title")).ToBeInViewportAsync();
        await Expect(window.Page.GetByText("How it is made dead")).ToBeInViewportAsync();
    }

    [Fact]
    public async Task AnAlterationThatIsTapped_ComesIntoView_AndUndoStaysInReach()
    {
        BoatWindow window = await OpenAsync(await LookAtDemoAsync(), "/alterations?alteration=sampling-winch", Screens.Phone);
        ILocator accept = window.Main.GetByRole(AriaRole.Button, new() { Name = "Accept" });
        await window.Page.GetByRole(AriaRole.Navigation, new() { Name = "Alterations" }).GetByRole(AriaRole.Link, new() { Name = "Sampling winch, second draft" }).TapAsync();
        await Expect(window.Page.Locator("#chain-title")).ToHaveTextAsync("Sampling winch, second draft");
        await Expect(accept).ToBeInViewportAsync();
        await Expect(window.Page.GetByRole(AriaRole.Button, new() { Name = "Undo" })).ToBeInViewportAsync();
    }

    [Fact]
    public async Task ASheetOpenedFarDownInAChain_Closes_ToTheLinkItWasOpenedFrom()
    {
        BoatWindow window = await OpenAsync(await LookAtDemoAsync(), "/electrics?circuit=stern-light", Screens.Phone);
        ILocator link = window.Main.Locator(".chain .link").Last;
        await link.ScrollIntoViewIfNeededAsync();
        double top = (await link.BoundingBoxAsync())!.Y;
        await link.TapAsync();
        await Expect(window.Page.Locator("#sheet-title")).ToBeInViewportAsync();
        await window.Sheet.GetByRole(AriaRole.Link, new() { Name = "Close", Exact = true }).TapAsync();

        await Expect(link).ToBeFocusedAsync();
        await Expect(link).ToBeInViewportAsync();
        Assert.Equal(top, (await link.BoundingBoxAsync())!.Y, 2.0);
    }

    [Fact]
    public async Task AStepTickedOutOfOrder_AsksInTheWindow_WithItsAnswersInReach()
    {
        BoatWindow window = await OpenAsync(await ServeDemoAsync(), "/record?alteration=drying-locker&part=steps", Screens.Phone);
        ILocator step = window.Main.Locator("li.step:not(.done)").Filter(new() { HasText = "Write down" }).Last, box = step.Locator("input[type=checkbox]");
        await Expect(step).ToBeVisibleAsync();
        // The box stands just above the foot of the window.
        await box.EvaluateAsync("box => scrollBy(0, box.getBoundingClientRect().bottom - (document.querySelector('nav.foot').getBoundingClientRect().top - 8))");
        await box.TapAsync();

        ILocator answer = step.GetByRole(AriaRole.Button, new() { Name = "No, leave it" });
        await Expect(step.Locator(".ask")).ToBeFocusedAsync();
        LocatorBoundingBoxResult stands = (await answer.BoundingBoxAsync())!, foot = (await window.Page.Locator("nav.foot").BoundingBoxAsync())!;
        Assert.InRange(stands.Y + stands.Height, 0, foot.Y);
        await answer.TapAsync();
        await Expect(box).ToBeFocusedAsync();
    }

    [Theory]
    [InlineData("/electrics", 6)]
    [InlineData("/weights", 5)]
    public async Task Tabs_StandInFullRowsOfEvenCells(string path, int count)
    {
        BoatWindow window = await OpenAsync(await LookAtDemoAsync(), path, Screens.Phone);
        ILocator tabs = window.Main.Locator(".pagebar .tabs");
        double[][] cells = await tabs.EvaluateAsync<double[][]>("tabs => [...tabs.children].map(tab => tab.getBoundingClientRect()).map(cell => [cell.top, cell.width])");
        double width = (await tabs.BoundingBoxAsync())!.Width;
        Assert.Equal(count, cells.Length);
        Assert.All(cells.GroupBy(cell => cell[0]), row => Assert.All(row, cell => Assert.Equal(width / row.Count(), cell[1], 1.5)));
    }

    [Fact]
    public async Task AProposal_StandsAsRowsOfNamedValues_EachAsWideAsItNeeds()
    {
        BoatWindow window = await OpenAsync(await ServeDemoAsync(), "/", Screens.Phone);
        await window.ReviewedAsync();
        ILocator breaking = window.Main.Locator("details.finding").Filter(new() { HasText = "Fuse of the solar controller can break" });
        await breaking.Locator("summary").TapAsync();
        await breaking.GetByRole(AriaRole.Button, new() { Name = "How could this be mended?" }).TapAsync();
        ILocator row = breaking.Locator(".proposal tbody tr").First;
        await Expect(row).ToBeVisibleAsync(new() { Timeout = 120_000 });

        Assert.Equal(["From", "Price", "Adds"], await row.EvaluateAsync<string[]>("row => [...row.cells].slice(1).map(cell => getComputedStyle(cell, '::before').content.replaceAll('\"', ''))"));
        double width = (await row.BoundingBoxAsync())!.Width;
        // A browser lays out in sixty-fourths of a pixel.
        Assert.All(await row.EvaluateAsync<double[]>("row => [...row.cells].slice(0, 2).map(cell => cell.getBoundingClientRect().width)"), cell => Assert.Equal(width, cell, 2.0 / 64));
    }

    [Theory]
    [InlineData("/packs/sampling-winch", "#loading td[data-head=GM]")]
    [InlineData("/stability", ".glance td[data-head=GM]")]
    public async Task TablesOfWeight_AreNamedValues_NoneOverAnother(string path, string cell)
    {
        BoatWindow window = await OpenAsync(await LookAtDemoAsync(), "/", Screens.Phone);
        await window.ReviewedAsync();
        await window.Page.GotoAsync(new Uri(new Uri(window.Page.Url), path).ToString());
        Assert.Contains("GM", await window.Page.Locator(cell).First.EvaluateAsync<string>("cell => getComputedStyle(cell, '::before').content"), StringComparison.Ordinal);
        string[] over = await window.Page.EvaluateAsync<string[]>("""
            () => [...document.querySelectorAll(".named tr")].flatMap(row => [...row.cells].filter(cell => cell.offsetWidth > 0 && cell.scrollWidth > cell.clientWidth + 1).map(cell => cell.textContent))
            """);
        Assert.Empty(over);
    }

    [Fact]
    public async Task AWorkPack_IsNoWiderThanThePhone_AndNoneOfItsWordsIsSmallerThan12Px()
    {
        BoatWindow window = await OpenAsync(await LookAtDemoAsync(), "/", Screens.Phone);
        await window.Page.GotoAsync(new Uri(new Uri(window.Page.Url), "/packs/sampling-winch-second").ToString());
        Assert.InRange(await window.Page.EvaluateAsync<int>("document.scrollingElement.scrollWidth"), 1, Screens.Phone.Width);
        string[] small = await window.Page.EvaluateAsync<string[]>("""
            () => [...document.querySelectorAll("main *:not(svg, svg *)")].filter(part => part.offsetWidth > 1 && !part.closest(".sheet") && [...part.childNodes].some(node => node.nodeType === 3 && node.data.trim()))
              .filter(part => parseFloat(getComputedStyle(part).fontSize) < 11.99).map(part => `${part.tagName} ${part.className}: ${part.textContent.slice(0, 30)}`)
            """);
        Assert.Empty(small);
    }

    [Fact]
    public async Task TheRecord_IsTickedAndReadingsAreTyped_WithTargetsOf48Px()
    {
        BoatWindow window = await OpenAsync(await ServeDemoAsync(), "/record?alteration=drying-locker&part=steps", Screens.Phone);
        ILocator open = window.Main.Locator("li.step:not(.done) label.tick");
        await Expect(open.First).ToBeVisibleAsync();
        await AssertTargetsAsync(window, "label.tick, .record button:not(.plain), .pagebar .button");
        int left = await open.CountAsync();
        // The first asks for masses in the sheets and stays open without; the next is ticked by the hand alone.
        await open.Nth(1).TapAsync();
        await Expect(open).ToHaveCountAsync(left - 1);

        await window.Main.GetByRole(AriaRole.Group, new() { Name = "Part of the record" }).GetByRole(AriaRole.Link, new() { Name = "Readings" }).TapAsync();
        ILocator reading = window.Main.Locator(".reading input").First;
        await Expect(reading).ToBeVisibleAsync();
        await AssertTargetsAsync(window, ".reading input");
        await reading.TapAsync();
        await BoatWindow.TypeAsync(reading, "26.8");
        await Expect(reading).ToHaveValueAsync("26.8");
        await Expect(window.Main.Locator(".reading").First.Locator(".stand")).ToBeVisibleAsync();

        await window.Main.GetByRole(AriaRole.Group, new() { Name = "Part of the record" }).GetByRole(AriaRole.Link, new() { Name = "Photographs" }).TapAsync();
        await window.Main.GetByLabel("Of", new() { Exact = true }).SelectOptionAsync("drying-feed");
        await Expect(window.Main.Locator("label.upload")).ToBeVisibleAsync();
        await AssertTargetsAsync(window, "label.upload");
        ILocator foot = window.Page.GetByRole(AriaRole.Navigation, new() { Name = "Pages, at the foot" });
        await AssertTargetsAsync(window, "nav.foot a");
        await foot.GetByRole(AriaRole.Link, new() { Name = "Electrics" }).TapAsync();
        await Expect(window.Page).ToHaveTitleAsync("Electrics");
    }

    private static async Task AssertTargetsAsync(BoatWindow window, string targets)
    {
        foreach (ILocator target in await window.Page.Locator(targets).AllAsync())
        {
            LocatorBoundingBoxResult? box = await target.BoundingBoxAsync();
            Assert.True(box is null || box.Height >= LeastTargetPx, $"{box?.Height} px high: {await target.InnerTextAsync()}");
        }
    }
}
