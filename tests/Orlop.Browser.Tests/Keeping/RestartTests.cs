using Microsoft.Playwright;
using Orlop.Browser.Tests.Harness;
using static Microsoft.Playwright.Assertions;

namespace Orlop.Browser.Tests.Keeping;

/// <summary>Nothing is lost when the laptop's battery dies, and undo reaches back past that.</summary>
public sealed class RestartTests(ChromiumFixture chromium) : PageTest(chromium)
{
    [Fact]
    public async Task AnEdit_IsThereAfterTheProgramWasKilled_AndCanBeUndoneAndRedone()
    {
        ServedBoat boat = await ServeDemoAsync();
        BoatWindow before = await OpenAsync(boat, "/?thing=horn-breaker");
        string was = await before.Sheet.GetByLabel("Rated current").InputValueAsync();
        Assert.NotEqual("7 A", was);
        await before.TypeAsync("Rated current", "7 A", "7 A");
        await Expect(before.Page.Locator(".who")).ToContainTextAsync("revision 2");
        await before.Page.CloseAsync();

        await boat.KillAndStartAgainAsync();

        BoatWindow after = await OpenAsync(boat, "/?thing=horn-breaker");
        ILocator rating = after.Sheet.GetByLabel("Rated current");
        await Expect(rating).ToHaveValueAsync("7 A");
        ILocator head = after.Page.GetByRole(AriaRole.Banner);
        await head.GetByRole(AriaRole.Button, new() { Name = "Undo" }).ClickAsync();
        await Expect(rating).ToHaveValueAsync(was);
        await head.GetByRole(AriaRole.Button, new() { Name = "Redo" }).ClickAsync();
        await Expect(rating).ToHaveValueAsync("7 A");

        // The keys do the same; there is nothing before the first revision, and that is said.
        await after.Page.Locator("main").FocusAsync();
        await after.Page.Keyboard.PressAsync("Control+z");
        await Expect(rating).ToHaveValueAsync(was);
        await after.Page.Keyboard.PressAsync("Control+z");
        await Expect(after.Page.Locator(".message")).ToContainTextAsync("nothing further to undo");
        await after.Page.Keyboard.PressAsync("Control+Shift+Z");
        await Expect(rating).ToHaveValueAsync("7 A");
    }

    [Fact]
    public async Task TheDraftChosenInAWindow_IsChosenAgainAfterTheProgramWasKilled_AndStaysClosedOnceClosed()
    {
        ServedBoat boat = await ServeDemoAsync();
        BoatWindow window = await OpenAsync(boat, "/");
        ILocator draft = window.Page.GetByRole(AriaRole.Banner).Locator(".draft select");
        await draft.SelectOptionAsync("sampling-winch");
        await Expect(window.Page.Locator(".draft.on")).ToBeVisibleAsync();
        await window.ReviewedAsync();

        await RestartAsync();
        await Expect(draft).ToHaveValueAsync("sampling-winch");

        await draft.SelectOptionAsync("");
        await Expect(window.Page.Locator(".draft.on")).ToHaveCountAsync(0);
        // The page tells the browser to forget it once it is drawn.
        await window.Page.WaitForFunctionAsync("() => !sessionStorage.getItem('orlop-draft')");
        await RestartAsync();
        await window.ReviewedAsync();
        await Expect(draft).ToHaveValueAsync("");

        // The window is elsewhere meanwhile, so that it does not complain of the program that is gone.
        async Task RestartAsync()
        {
            await window.Page.GotoAsync("about:blank");
            await boat.KillAndStartAgainAsync();
            await window.GoAsync("/");
        }
    }
}
