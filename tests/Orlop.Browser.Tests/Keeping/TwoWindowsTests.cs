using Microsoft.Playwright;
using Orlop.Browser.Tests.Harness;
using static Microsoft.Playwright.Assertions;

namespace Orlop.Browser.Tests.Keeping;

/// <summary>Two people at the same boat: neither overwrites the other unseen.</summary>
public sealed class TwoWindowsTests(ChromiumFixture chromium) : PageTest(chromium)
{
    [Fact]
    public async Task AnEdit_IsSeenInTheOtherWindow_AndAClashShowsBothVersions()
    {
        ServedBoat boat = await ServeDemoAsync();
        BoatWindow one = await OpenAsync(boat, "/?thing=horn-breaker");
        BoatWindow other = await OpenAsync(boat, "/?thing=horn-breaker");
        ILocator mine = one.Sheet.GetByLabel("Rated current"), theirs = other.Sheet.GetByLabel("Rated current");

        await one.TypeAsync("Rated current", "7 A", "7 A");
        await Expect(theirs).ToHaveValueAsync("7 A");

        // The other begins to type; meanwhile the first keeps another value.
        await theirs.FocusAsync();
        await theirs.PressSequentiallyAsync("0");
        await one.TypeAsync("Rated current", "8 A", "8 A");
        await Expect(other.Page.Locator(".who")).ToContainTextAsync("revision 3");
        await theirs.FillAsync("9 A");
        await theirs.BlurAsync();
        ILocator told = other.Sheet.Locator(".conflict");
        await Expect(told).ToContainTextAsync("There now: 8 A");
        await Expect(told).ToContainTextAsync("Yours: 9 A");
        await Expect(mine).ToHaveValueAsync("8 A");

        await told.GetByRole(AriaRole.Button, new() { Name = "Keep mine" }).ClickAsync();
        await Expect(mine).ToHaveValueAsync("9 A");
        await Expect(theirs).ToHaveValueAsync("9 A");
        await Expect(told).ToHaveCountAsync(0);
    }
}
