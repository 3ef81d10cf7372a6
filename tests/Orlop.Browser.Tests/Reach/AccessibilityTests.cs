using Deque.AxeCore.Commons;
using Deque.AxeCore.Playwright;
using Microsoft.Playwright;
using Orlop.Browser.Tests.Harness;
using static Microsoft.Playwright.Assertions;

namespace Orlop.Browser.Tests.Reach;

/// <summary>Every page and its main states, scanned at both sizes.</summary>
public sealed class AccessibilityTests(ChromiumFixture chromium) : PageTest(chromium)
{
    // A finding open, a form open, a draft open, a new circuit, the diagram, each part of the record, a page that is not there.
    private static readonly string[] States =
    [
        "/", "/?thing=solar-fuse", "/?thing=bank", "/electrics?circuit=stern-light", "/electrics?circuit=stern-light&thing=stern-light-cable", "/electrics?new=circuit", "/electrics?view=ways&cable=stern-light-cable&with=drying-feed",
        "/electrics?view=diagram&thing=main-fuse", "/weights?condition=at-anchor", "/weights?part=ledger&thing=tool-chests", "/weights?part=hull", "/weights/hull", "/weights?part=tests", "/alterations?alteration=drying-locker", "/record?alteration=drying-locker&part=steps",
        "/record?alteration=drying-locker&part=readings", "/record?alteration=drying-locker&part=photographs", "/record?part=history", "/not-found",
    ];

    [Fact]
    public async Task EveryPage_AtTheTable_HasNoViolation() => await ScanAsync(Screens.Desk, States);

    [Fact]
    public async Task EveryPage_OnAPhone_HasNoViolation() => await ScanAsync(Screens.Phone, PhoneStates);

    [Fact]
    public async Task AnOpenDraft_AtBothSizes_HasNoViolation()
    {
        ServedBoat boat = await ServeDemoAsync();
        BoatWindow phone = await OpenAsync(boat, "/", Screens.Phone), table = await OpenAsync(boat);
        await phone.Page.GetByLabel("Edits go into").SelectOptionAsync("sampling-winch");
        List<string> violations = [];
        foreach (BoatWindow window in new[] { phone, table })
        {
            string size = window == phone ? "on a phone" : "at the table";
            await Expect(window.ReviewState).ToContainTextAsync("With “Sampling winch”");
            await OpenFirstAsync(window);
            violations.AddRange(await ViolationsAsync(window, $"the boat with a draft open, {size}"));
            await window.GoAsync("/alterations?alteration=sampling-winch");
            await SettledAsync(window);
            violations.AddRange(await ViolationsAsync(window, $"a draft, {size}"));
        }

        Assert.Empty(violations);
    }

    // Where the small size lays things out otherwise.
    private static readonly string[] PhoneStates =
    [
        "/", "/?thing=bank", "/electrics?circuit=stern-light", "/electrics?new=circuit", "/electrics?view=ways&cable=stern-light-cable", "/weights", "/weights?part=ledger", "/weights/hull", "/weights?part=tests", "/record?alteration=drying-locker&part=steps",
        "/record?alteration=drying-locker&part=readings", "/record?alteration=drying-locker&part=photographs",
    ];

    // The two drawings hold hundreds of parts and are the same at both sizes: each is scanned once, at the table.
    private static readonly string[] Drawings = ["/", "/electrics?view=diagram&thing=main-fuse"];
    private static readonly AxeRunContext WithoutDrawing = new() { Exclude = [new AxeSelector(".picture svg")] };
    // Not asked of the drawings here, but of their palette and their names in the drawings' own tests: contrast of hundreds of texts over
    // hundreds of shapes takes minutes to work out, and a part's drawn text is wrapped into several texts.
    private static readonly AxeRunOptions OfDrawings = new()
    {
        ResultTypes = [ResultType.Violations],
        Rules = new Dictionary<string, RuleOptions> { ["color-contrast"] = new() { Enabled = false }, ["label-content-name-mismatch"] = new() { Enabled = false } },
    };

    private static readonly AxeRunOptions OnlyViolations = new() { ResultTypes = [ResultType.Violations] };

    private async Task ScanAsync(ViewportSize size, string[] states)
    {
        BoatWindow window = await OpenAsync(await LookAtDemoAsync(), "/", size);
        List<string> violations = [];
        await window.ReviewedAsync();
        foreach (string state in states)
        {
            await window.GoAsync(state);
            await SettledAsync(window);
            await OpenFirstAsync(window);
            violations.AddRange(await ViolationsAsync(window, state, size.Width == Screens.Desk.Width && Drawings.Contains(state)));
        }

        Assert.Empty(violations);
    }

    private static async Task SettledAsync(BoatWindow window) =>
        await Expect(window.Main).Not.ToContainTextAsync("being worked out");

    private static async Task OpenFirstAsync(BoatWindow window)
    {
        foreach (string state in new[] { ".finding", "details.add", "details.list", "details.folded", ".edit details" })
        {
            ILocator closed = window.Main.Locator($"{state}:not([open]) > summary").First;
            if (await closed.IsVisibleAsync())
            {
                await closed.ClickAsync();
                await Expect(window.Main.Locator($"{state}[open]").First).ToBeVisibleAsync();
            }
        }
    }

    private static async Task<IEnumerable<string>> ViolationsAsync(BoatWindow window, string state, bool isWhole = false)
    {
        AxeResult result = isWhole ? await window.Page.RunAxe(OfDrawings) : await window.Page.RunAxe(WithoutDrawing, OnlyViolations);
        return result.Violations.SelectMany(violation => violation.Nodes.Take(3).Select(node => $"{state}: {violation.Id}: {violation.Help}: {node.Html}"));
    }
}
