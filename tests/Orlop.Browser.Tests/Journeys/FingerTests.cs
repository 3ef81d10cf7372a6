using System.Globalization;
using Microsoft.Playwright;
using Orlop.Browser.Tests.Harness;
using static Microsoft.Playwright.Assertions;

namespace Orlop.Browser.Tests.Journeys;

/// <summary>A drawing under a finger: it moves what is open, scrolls by anything else, and asks where it covers several things.</summary>
public sealed class FingerTests(ChromiumFixture chromium) : PageTest(chromium)
{
    private const string PxPerM = "view => { const svg = view.ownerSVGElement; return Number(view.dataset.pxPerM) * svg.getBoundingClientRect().width / svg.viewBox.baseVal.width }";

    [Fact]
    public async Task AFingerOnTheThingThatIsOpen_DragsIt_TheWaterFollows_AndThePageStays()
    {
        const double AcrossPx = -60, UpPx = 40;
        BoatWindow window = await OpenDrawingAsync("/?thing=tool-chests");
        IPage page = window.Page;
        ILocator view = page.Locator("g.view.profile"), gear = view.Locator("g.thing[data-id=tool-chests]").First, held = page.Locator(".hand-words"), water = view.Locator(".afloat .water-line");
        double pxPerM = await view.EvaluateAsync<double>(PxPerM);
        (float x, float y) = await MiddleAsync(gear);
        double scrolled = await page.EvaluateAsync<double>("scrollY");
        string floats = await page.Locator(".vitals").Last.InnerTextAsync(), waterAt = (await water.GetAttributeAsync("y1"))!;

        ICDPSession touch = await page.Context.NewCDPSessionAsync(page);
        await TouchAsync(touch, "touchStart", x, y);
        for (int step = 1; step <= 8; step++)
        {
            await TouchAsync(touch, "touchMove", x + (AcrossPx * step / 8), y - (UpPx * step / 8));
        }

        await Expect(held).ToContainTextAsync("Held here");
        await Expect(water).Not.ToHaveAttributeAsync("y1", waterAt);
        Assert.Equal(scrolled, await page.EvaluateAsync<double>("scrollY"));
        await TouchAsync(touch, "touchEnd");

        // In profile: right on the drawing is forward, up is up; places are kept to the centimetre. It stood at 8.5 m, 0.1 m to port, 1.1 m up.
        await Expect(page.Locator(".who")).ToContainTextAsync("revision 2");
        await Expect(held).ToBeHiddenAsync();
        Assert.Equal(8.5 + (AcrossPx / pxPerM), await MetresAsync(page, "xM"), 0.011);
        Assert.Equal(0.1, await MetresAsync(page, "yM"), 1e-9);
        Assert.Equal(1.1 + (UpPx / pxPerM), await MetresAsync(page, "zM"), 0.011);
        await Expect(page.Locator(".vitals").Last).Not.ToHaveTextAsync(floats, new() { UseInnerText = true });
    }

    [Fact]
    public async Task AFingerOnAnotherThing_ScrollsThePageAndMovesNothing()
    {
        BoatWindow window = await OpenDrawingAsync("/?thing=bank");
        (float x, float y) = await MiddleAsync(window.Page.Locator("g.view.profile g.thing[data-id=tool-chests]").First);
        double scrolled = await window.Page.EvaluateAsync<double>("scrollY");

        ICDPSession touch = await window.Page.Context.NewCDPSessionAsync(window.Page);
        await TouchAsync(touch, "touchStart", x, y);
        for (int step = 1; step <= 8; step++)
        {
            await TouchAsync(touch, "touchMove", x, y - (15 * step));
        }

        await TouchAsync(touch, "touchEnd");
        await window.Page.WaitForFunctionAsync("was => scrollY > was + 50", scrolled);
        await Expect(window.Page.Locator(".who")).ToContainTextAsync("revision 1");
        await Expect(window.Page.Locator("#sheet-title")).Not.ToHaveTextAsync("Tool chests");
    }

    // Two things smaller than a finger, their middles less than 12 px apart: neither can be meant alone.
    private const string TwoTogether = """
        view => {
          const things = [...view.querySelectorAll("g.thing")].map(thing => ({ thing, box: thing.getBoundingClientRect() })).filter(({ box }) => Math.min(box.width, box.height) > 3 && Math.max(box.width, box.height) < 30)
            .map(({ thing, box }) => ({ name: thing.getAttribute("aria-label"), x: box.x + box.width / 2, y: box.y + box.height / 2 }));
          for (const one of things) for (const other of things)
            if (one.name !== other.name && Math.hypot(one.x - other.x, one.y - other.y) < 12) return [one.name, other.name, String((one.x + other.x) / 2), String((one.y + other.y) / 2)];
          return null;
        }
        """;

    [Fact]
    public async Task AFingerOverSeveralThings_IsAskedWhichItMeans_AndEscapeLeavesIt()
    {
        BoatWindow window = await OpenDrawingAsync("/");
        ILocator view = window.Page.Locator("g.view.profile"), which = window.Page.GetByRole(AriaRole.Group, new() { Name = "Several things lie here" });
        await view.EvaluateAsync("view => view.scrollIntoView({ block: 'center' })");
        string[] two = await view.EvaluateAsync<string[]>(TwoTogether);
        float x = float.Parse(two[2], CultureInfo.InvariantCulture), y = float.Parse(two[3], CultureInfo.InvariantCulture);

        await window.Page.Touchscreen.TapAsync(x, y);
        await Expect(which).ToBeFocusedAsync();
        await Expect(which.GetByRole(AriaRole.Button, new() { Name = two[0], Exact = true })).ToBeVisibleAsync();
        await Expect(which.GetByRole(AriaRole.Button, new() { Name = two[1], Exact = true })).ToBeVisibleAsync();
        await window.Page.Keyboard.PressAsync("Escape");
        await Expect(which).ToHaveCountAsync(0);
        await Expect(window.Page.Locator("#sheet-title")).ToHaveCountAsync(0);

        await window.Page.Touchscreen.TapAsync(x, y);
        await which.GetByRole(AriaRole.Button, new() { Name = two[1], Exact = true }).TapAsync();
        await Expect(window.Page.Locator("#sheet-title")).ToBeVisibleAsync();
        await Expect(which).ToHaveCountAsync(0);
    }

    // A finger's touch without its click, as on a busy machine where the click comes late: the list would stand under it and take it.
    private const string TouchWithoutClick = """
        (view, [x, y]) => {
          const under = document.elementFromPoint(x, y), at = { bubbles: true, pointerType: "touch", isPrimary: true, pointerId: 7, button: 0, clientX: x, clientY: y };
          under.dispatchEvent(new PointerEvent("pointerdown", at));
          under.dispatchEvent(new PointerEvent("pointerup", at));
        }
        """;

    [Fact]
    public async Task AFingersTouch_AsksNotBeforeItsClick()
    {
        BoatWindow window = await OpenDrawingAsync("/");
        ILocator view = window.Page.Locator("g.view.profile"), which = window.Page.GetByRole(AriaRole.Group, new() { Name = "Several things lie here" });
        await view.EvaluateAsync("view => view.scrollIntoView({ block: 'center' })");
        string[] two = await view.EvaluateAsync<string[]>(TwoTogether);
        float x = float.Parse(two[2], CultureInfo.InvariantCulture), y = float.Parse(two[3], CultureInfo.InvariantCulture);
        await view.EvaluateAsync(TouchWithoutClick, new double[] { x, y });
        await window.Page.WaitForTimeoutAsync(500);
        await Expect(which).ToHaveCountAsync(0);
        await view.EvaluateAsync("(view, [x, y]) => document.elementFromPoint(x, y).dispatchEvent(new MouseEvent('click', { bubbles: true, clientX: x, clientY: y }))", new double[] { x, y });
        await Expect(which).ToBeFocusedAsync();
    }

    private async Task<BoatWindow> OpenDrawingAsync(string path)
    {
        BoatWindow window = await OpenAsync(await ServeDemoAsync(), path, Screens.Phone);
        await Expect(window.Page.Locator(".picture:not(.unmeasured)")).ToHaveCountAsync(1);
        await Expect(window.Page.Locator(".vitals").Filter(new() { HasText = "being worked out" })).ToHaveCountAsync(0);
        return window;
    }

    // Its middle, once it stands in the middle of the window.
    private static async Task<(float X, float Y)> MiddleAsync(ILocator thing)
    {
        // The page brings an open sheet into view once, a moment after it has come.
        await thing.Page.WaitForTimeoutAsync(400);
        await thing.EvaluateAsync("thing => thing.scrollIntoView({ block: 'center' })");
        LocatorBoundingBoxResult box = (await thing.Locator("rect, path, polygon").First.BoundingBoxAsync())!;
        return (box.X + (box.Width / 2), box.Y + (box.Height / 2));
    }

    private static Task TouchAsync(ICDPSession session, string type, params double[] at) => session.SendAsync("Input.dispatchTouchEvent", new Dictionary<string, object>
    {
        ["type"] = type,
        ["touchPoints"] = at.Length == 0 ? Array.Empty<object>() : [new Dictionary<string, object> { ["x"] = at[0], ["y"] = at[1] }],
    });

    private static async Task<double> MetresAsync(IPage page, string field)
    {
        string text = await page.Locator($"#field-tool-chests-place-{field}").InputValueAsync();
        return text.EndsWith(" mm", StringComparison.Ordinal) ? double.Parse(text[..^3], CultureInfo.InvariantCulture) / 1000 : double.Parse(text[..^2], CultureInfo.InvariantCulture);
    }
}
