using System.Text.RegularExpressions;
using Microsoft.Playwright;
using Orlop.Browser.Tests.Harness;
using static Microsoft.Playwright.Assertions;

namespace Orlop.Browser.Tests.Journeys;

/// <summary>A failing finding asks how it could be mended, and the owner decides.</summary>
public sealed class MendingTests(ChromiumFixture chromium) : PageTest(chromium)
{
    [Fact]
    public async Task AFailingFinding_IsMendedByAProposal_InADraftOfItsOwn_AndUndone()
    {
        BoatWindow window = await OpenAsync(await ServeDemoAsync());
        ILocator breaking = window.Main.Locator("details.finding").Filter(new() { HasText = "Fuse of the solar controller can break" });
        await breaking.Locator("summary").ClickAsync();
        await Expect(breaking).ToContainTextAsync("Nothing is put into any draft until you say so.");
        await breaking.GetByRole(AriaRole.Button, new() { Name = "How could this be mended?" }).ClickAsync();

        ILocator proposal = breaking.GetByRole(AriaRole.Group, new() { NameRegex = new Regex("^Proposal") }).First;
        await Expect(proposal).ToContainTextAsync("to buy", new() { Timeout = 120_000 });
        await Expect(proposal).ToContainTextAsync("With it:");
        await proposal.GetByRole(AriaRole.Button, new() { Name = "Try it as a new draft" }).ClickAsync();

        await Expect(window.Main.Locator("#chain-title")).ToHaveTextAsync("As built, mended");
        await Expect(window.Main.Locator(".status")).ToHaveTextAsync("draft, open for edits");
        await Expect(window.Main).ToContainTextAsync("hold.");
        await Expect(window.Main.Locator("details.finding").Filter(new() { HasText = "Fuse of the solar controller can break 1000 A" })).ToHaveCountAsync(0);

        await window.Page.GetByRole(AriaRole.Banner).GetByRole(AriaRole.Button, new() { Name = "Undo" }).ClickAsync();
        await Expect(window.Main).Not.ToContainTextAsync("As built, mended");
    }
}
