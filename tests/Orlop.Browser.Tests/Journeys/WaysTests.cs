using Microsoft.Playwright;
using Orlop.Browser.Tests.Harness;
using static Microsoft.Playwright.Assertions;

namespace Orlop.Browser.Tests.Journeys;

/// <summary>A cable whose length nobody knows finds its way: three are compared, one is taken, and taken back.</summary>
public sealed class WaysTests(ChromiumFixture chromium) : PageTest(chromium)
{
    [Fact]
    public async Task FromTheCablesSheet_AWayIsFound_Taken_AndUndone()
    {
        BoatWindow window = await OpenAsync(await ServeDemoAsync(), "/?thing=anchor-light-cable");
        await window.Sheet.GetByRole(AriaRole.Link, new() { Name = "Find a way for this cable" }).ClickAsync();
        await Expect(window.Page.GetByRole(AriaRole.Heading, new() { Name = "Ways for a cable" })).ToBeVisibleAsync();
        ILocator rows = window.Page.Locator(".routes table.stacked").First.Locator("tbody tr");
        await Expect(rows.First).ToContainTextAsync("Gland through the roof");
        await Expect(rows.First).ToContainTextAsync("4.78 m");
        Assert.Equal(await rows.CountAsync() * 2, await window.Page.Locator("#route-drawing .route").CountAsync());

        ILocator now = window.Main.GetByText("It runs now:");
        await Expect(now).ToContainTextAsync("4.6 m");
        await window.Page.GetByRole(AriaRole.Button, new() { Name = "Take way 1" }).ClickAsync();
        await Expect(now).ToContainTextAsync("Gland through the roof");
        await Expect(now).ToContainTextAsync("4.28 m");

        // What was done is told at the foot of the window, wherever the page stands, with its way back.
        ILocator told = window.Page.Locator(".message p");
        await Expect(told).ToContainTextAsync("Anchor light, cable runs along");
        await Expect(told).ToBeInViewportAsync(new() { Ratio = 1 });
        await told.GetByRole(AriaRole.Button, new() { Name = "Undo that" }).ClickAsync();
        await Expect(now).ToContainTextAsync("4.6 m");
        await Expect(told).Not.ToContainTextAsync("Anchor light, cable runs along");
    }

    [Fact]
    public async Task TwoCables_ArePlannedTogether_AndOnAPhoneNothingIsCutOff()
    {
        BoatWindow phone = await OpenAsync(await LookAtDemoAsync(), "/electrics?view=ways&cable=stern-light-cable", Screens.Phone);
        await phone.Page.GetByLabel("Together with").SelectOptionAsync("drying-feed");
        await Expect(phone.Page.GetByRole(AriaRole.Heading, new() { Name = "Planned together" })).ToBeVisibleAsync();
        await Expect(phone.Page.GetByRole(AriaRole.Button, new() { Name = "Take these ways" })).ToBeVisibleAsync();
        await Expect(phone.Page.GetByRole(AriaRole.Heading, new() { Name = "At the compass" })).ToBeVisibleAsync();
        Assert.True(await phone.Page.EvaluateAsync<bool>("document.documentElement.scrollWidth <= document.documentElement.clientWidth"));
    }
}
