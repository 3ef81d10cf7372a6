using Microsoft.Playwright;
using Orlop.Browser.Tests.Harness;
using static Microsoft.Playwright.Assertions;

namespace Orlop.Browser.Tests.Reach;

/// <summary>On the boat: a phone of 390 × 844, gloves.</summary>
public sealed class PhoneTests(ChromiumFixture chromium) : PageTest(chromium)
{
    private const double LeastTargetPx = 48;

    [Fact]
    public async Task NoPage_ScrollsSideways()
    {
        BoatWindow window = await OpenAsync(await ServeDemoAsync(), "/", Screens.Phone);
        await window.ReviewedAsync();
        foreach (string path in new[]
                 {
                     "/", "/?thing=bank", "/?thing=drying-feed", "/electrics", "/electrics?circuit=stern-light&thing=stern-light-cable", "/electrics?new=circuit", "/electrics?view=diagram",
                     "/alterations?alteration=sampling-winch", "/record?part=steps", "/record?part=readings", "/record?part=photographs", "/record?part=history",
                 })
        {
            await window.GoAsync(path);
            await Expect(window.Main).Not.ToContainTextAsync("being worked out");
            Assert.True(await window.SidewaysAsync() == 0, $"{path} is {await window.SidewaysAsync()} px wider than the phone.");
        }
    }

    [Fact]
    public async Task TheRecord_IsTickedAndReadingsAreTyped_WithTargetsOf48Px()
    {
        BoatWindow window = await OpenAsync(await ServeDemoAsync(), "/record?alteration=drying-locker&part=steps", Screens.Phone);
        ILocator open = window.Main.Locator("li.step:not(.done) label.tick");
        await Expect(open.First).ToBeVisibleAsync();
        await AssertTargetsAsync(window, "label.tick, .record button:not(.plain), .pagebar .button");
        int left = await open.CountAsync();
        await open.First.TapAsync();
        await Expect(open).ToHaveCountAsync(left - 1);

        await window.Main.GetByRole(AriaRole.Link, new() { Name = "Readings" }).TapAsync();
        ILocator reading = window.Main.Locator(".reading input").First;
        await Expect(reading).ToBeVisibleAsync();
        await AssertTargetsAsync(window, ".reading input");
        await reading.TapAsync();
        await BoatWindow.TypeAsync(reading, "26.8");
        await Expect(reading).ToHaveValueAsync("26.8");
        await Expect(window.Main.Locator(".reading").First.Locator(".stand")).ToBeVisibleAsync();

        await window.Main.GetByRole(AriaRole.Link, new() { Name = "Photographs" }).TapAsync();
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
