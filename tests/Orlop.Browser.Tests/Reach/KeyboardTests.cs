using Microsoft.Playwright;
using Orlop.Browser.Tests.Harness;
using static Microsoft.Playwright.Assertions;

namespace Orlop.Browser.Tests.Reach;

/// <summary>Everything by keys alone.</summary>
public sealed class KeyboardTests(ChromiumFixture chromium) : PageTest(chromium)
{
    // Far more stops than any page has before what is looked for: a trap would be found by it.
    private const int MostTabs = 200;

    /// <summary>The title of a sheet takes the focus when the page has come so far; where a field of the sheet is typed in by then, what is typed is not torn away.</summary>
    [Fact]
    public async Task ATitleThatComesLate_LeavesTheFocusToAFieldThatIsTypedIn()
    {
        const string TakeFocus = "async title => (await import('/orlop.js')).takeFocus(title)";
        BoatWindow window = await OpenAsync(await LookAtDemoAsync(), "/?thing=horn-breaker");
        ILocator title = window.Page.Locator("#sheet-title"), field = window.Sheet.GetByLabel("Rated current");
        await Expect(title).ToBeFocusedAsync();
        await field.FocusAsync();
        await title.EvaluateAsync(TakeFocus);
        await Expect(field).ToBeFocusedAsync();

        await field.BlurAsync();
        await title.EvaluateAsync(TakeFocus);
        await Expect(title).ToBeFocusedAsync();
    }

    /// <summary>Who follows a link in a finding's working to a sheet comes back to that link, in view, with the finding still open.</summary>
    [Fact]
    public async Task ASheetOpenedFromAWorking_Closes_ToThatLinkInTheFindingStillOpen()
    {
        BoatWindow window = await OpenAsync(await LookAtDemoAsync());
        await window.ReviewedAsync();
        ILocator finding = window.Page.Locator("section.group details.finding:not(.waiting)").Last;
        await finding.Locator("> summary").ClickAsync();
        ILocator link = finding.Locator(".working .inputs a").First;
        await link.ScrollIntoViewIfNeededAsync();
        double top = (await link.BoundingBoxAsync())!.Y;
        await link.ClickAsync();
        await Expect(window.Page.Locator("#sheet-title")).ToBeVisibleAsync();
        await window.Sheet.GetByRole(AriaRole.Link, new() { Name = "Close", Exact = true }).ClickAsync();

        await Expect(link).ToBeFocusedAsync();
        await Expect(finding).ToHaveAttributeAsync("open", "");
        Assert.Equal(top, (await link.BoundingBoxAsync())!.Y, 2.0);
        await finding.Locator("> summary").ClickAsync();
        await Expect(finding.Locator(".working")).ToHaveCountAsync(0);
    }

    [Fact]
    public async Task AListThatIsGoneTo_IsOpenWithTheFocusInItsFirstField()
    {
        BoatWindow window = await OpenAsync(await LookAtDemoAsync(), "/?thing=bank-minus&field=run");
        ILocator run = window.Page.Locator("details#field-bank-minus-run");
        await Expect(run).ToHaveAttributeAsync("open", "");
        await Expect(run.Locator("input, select").First).ToBeFocusedAsync();
    }

    [Fact]
    public async Task ByKeysAlone_APageIsTurnedAFindingOpenedAndAFieldTyped()
    {
        BoatWindow window = await OpenAsync(await ServeDemoAsync());
        IPage page = window.Page;
        await window.ReviewedAsync();

        await TabToAsync(page, page.GetByRole(AriaRole.Link, new() { Name = "Skip to the page" }), "Shift+Tab");
        await Expect(page.Locator("a.skip[href='#main']")).ToBeInViewportAsync();
        await page.Keyboard.PressAsync("Enter");
        await Expect(window.Main).ToBeFocusedAsync();
        await TabToAsync(page, page.GetByRole(AriaRole.Link, new() { Name = "Skip the drawing" }));
        await page.Keyboard.PressAsync("Enter");
        await Expect(page.Locator("#side")).ToBeFocusedAsync();

        ILocator finding = window.Group("Fails, unknown or tight").First;
        await TabToAsync(page, finding.Locator("summary"));
        await AssertFocusShownAsync(page);
        await page.Keyboard.PressAsync("Enter");
        await Expect(finding.Locator(".working")).ToBeVisibleAsync();
        await TabToAsync(page, finding.Locator(".working a").First);
        await page.Keyboard.PressAsync("Enter");
        await Expect(window.Sheet).ToBeVisibleAsync();

        ILocator name = window.Sheet.GetByLabel("Name", new() { Exact = true });
        await Expect(window.Sheet.Locator(":focus")).ToHaveCountAsync(1);
        await TabToAsync(page, name, "Shift+Tab");
        await AssertFocusShownAsync(page);
        await page.Keyboard.PressAsync("Control+a");
        await page.Keyboard.TypeAsync("By keys alone");
        await page.Keyboard.PressAsync("Tab");
        await Expect(window.Sheet.Locator("#sheet-title")).ToHaveTextAsync("By keys alone");

        await window.GoAsync("/");
        await Expect(page.Locator("h1")).ToBeFocusedAsync();
        await TabToAsync(page, page.Locator("nav.head").GetByRole(AriaRole.Link, new() { Name = "Electrics" }), "Shift+Tab");
        await AssertFocusShownAsync(page);
        await page.Keyboard.PressAsync("Enter");
        await Expect(page).ToHaveTitleAsync("Electrics");
        await TabToAsync(page, page.GetByRole(AriaRole.Link, new() { Name = "One-line diagram" }));
        await page.Keyboard.PressAsync("Enter");
        ILocator part = page.Locator("g.thing[data-id=main-fuse]").First;
        await Expect(part).ToBeVisibleAsync();
        await TabToAsync(page, part);
        await page.Keyboard.PressAsync("Enter");
        await Expect(window.Sheet.Locator("#sheet-title")).ToHaveTextAsync("Main fuse");
        await Expect(window.Sheet.Locator("#sheet-title")).ToBeFocusedAsync();
    }

    private static async Task TabToAsync(IPage page, ILocator target, string key = "Tab")
    {
        for (int i = 0; i < MostTabs; i++)
        {
            await page.Keyboard.PressAsync(key);
            if (await target.EvaluateAsync<bool>("element => element === document.activeElement"))
            {
                return;
            }
        }

        Assert.Fail($"{MostTabs} tabs do not reach {target}.");
    }

    private static async Task AssertFocusShownAsync(IPage page)
    {
        string outline = await page.EvaluateAsync<string>("getComputedStyle(document.activeElement).outlineStyle + ' ' + parseFloat(getComputedStyle(document.activeElement).outlineWidth)");
        Assert.Equal("solid 3", outline);
    }
}
