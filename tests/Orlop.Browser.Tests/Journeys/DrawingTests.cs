using Microsoft.Playwright;
using Orlop.Browser.Tests.Harness;
using static Microsoft.Playwright.Assertions;

namespace Orlop.Browser.Tests.Journeys;

/// <summary>The drawings are the way in: what is clicked opens, what is dragged moves.</summary>
public sealed class DrawingTests(ChromiumFixture chromium) : PageTest(chromium)
{
    [Fact]
    public async Task AClick_OpensTheSheet_InTheDiagramAndOnTheBoat()
    {
        BoatWindow window = await OpenAsync(await LookAtDemoAsync(), "/electrics?view=diagram");
        await Expect(window.Page.Locator(".picture:not(.unmeasured)")).ToHaveCountAsync(1);
        await window.Page.Locator("g.thing[data-id=main-isolator] text").First.ClickAsync();
        await Expect(window.Sheet.Locator("#sheet-title")).ToHaveTextAsync("Main isolator");
        await Expect(window.Page.Locator("g.thing[data-id=main-isolator].selected").First).ToBeVisibleAsync();
        await window.Page.GetByText("How it is made dead").ClickAsync();
        await Expect(window.Page.GetByRole(AriaRole.Heading, new() { Name = "Prove it dead" })).ToBeVisibleAsync();

        // What was chosen at the right is not hidden by the sheet that opens there.
        await window.GoAsync("/electrics?view=diagram");
        await Expect(window.Page.Locator(".picture:not(.unmeasured)")).ToHaveCountAsync(1);
        await window.Page.Locator("g.thing[data-id=radio-fuse] text").First.ClickAsync();
        await Expect(window.Sheet.Locator("#sheet-title")).ToHaveTextAsync("Fuse, radio");
        await Expect(window.Page.Locator("g.thing[data-id=radio-fuse] text").First).ToBeInViewportAsync(new() { Ratio = 1 });

        await window.TurnToAsync("Boat");
        await Expect(window.Page.Locator(".picture:not(.unmeasured) g.view.plan")).ToHaveCountAsync(1);
        await window.Page.Locator("g.view.plan g.thing[data-id=tool-chests] rect").First.ClickAsync();
        await Expect(window.Sheet.Locator("#sheet-title")).ToHaveTextAsync("Tool chests");
        await window.CloseSheetAsync();
        await Expect(window.Sheet).ToHaveCountAsync(0);
        await Expect(window.Page.GetByRole(AriaRole.Complementary, new() { Name = "Findings" })).ToBeVisibleAsync();
    }

    [Fact]
    public async Task Zoom_OfADiagramThatWasScrolled_KeepsTheMiddleOfWhatIsSeen()
    {
        BoatWindow window = await OpenAsync(await LookAtDemoAsync(), "/electrics?view=diagram&thing=main-fuse");
        ILocator picture = window.Page.Locator(".picture:not(.unmeasured)"), zoom = window.Page.GetByRole(AriaRole.Group, new() { Name = "Zoom", Exact = true });
        await Expect(picture).ToHaveCountAsync(1);
        await zoom.GetByRole(AriaRole.Button, new() { Name = "Zoom in" }).ClickAsync();
        await picture.EvaluateAsync("picture => { picture.scrollLeft = 0.8 * (picture.scrollWidth - picture.clientWidth); picture.scrollTop = 0.2 * (picture.scrollHeight - picture.clientHeight); }");
        await window.Page.WaitForTimeoutAsync(200);
        double[] before = await MiddleAsync(picture);
        string percent = await zoom.Locator(".percent").InnerTextAsync();
        await zoom.GetByRole(AriaRole.Button, new() { Name = "Zoom in" }).ClickAsync();
        await Expect(zoom.Locator(".percent")).Not.ToHaveTextAsync(percent);
        await window.Page.WaitForTimeoutAsync(200);
        double[] after = await MiddleAsync(picture);

        Assert.Equal(before[0], after[0], 0.01);
        Assert.Equal(before[1], after[1], 0.01);
    }

    private static Task<double[]> MiddleAsync(ILocator picture) => picture.EvaluateAsync<double[]>(
        "picture => [(picture.scrollLeft + picture.clientWidth / 2) / picture.scrollWidth, (picture.scrollTop + picture.clientHeight / 2) / picture.scrollHeight]");

    [Fact]
    public async Task Zoom_ByButtonAndByKey_DrawsTheBoatLarger_WithLettersOfTheSameSizeAndMoreNames()
    {
        BoatWindow window = await OpenAsync(await LookAtDemoAsync());
        ILocator picture = window.Page.Locator(".picture"), svg = picture.Locator("svg"), zoom = window.Page.GetByRole(AriaRole.Group, new() { Name = "Zoom", Exact = true });
        await Expect(window.Page.Locator(".picture:not(.unmeasured)")).ToHaveCountAsync(1);
        // What comes in late draws her anew; the keys are for a drawing that stands.
        await window.ReviewedAsync();
        await Expect(window.Page.Locator(".vitals").Filter(new() { HasText = "being worked out" })).ToHaveCountAsync(0);
        double fits = await WidthAsync(svg);
        int names = await svg.Locator("text[data-names]").CountAsync();
        Assert.Equal(await picture.EvaluateAsync<double>("picture => picture.clientWidth"), fits, 1.0);

        await zoom.GetByRole(AriaRole.Button, new() { Name = "Zoom in" }).ClickAsync();
        await Expect(zoom).ToContainTextAsync("150 %");
        Assert.Equal(1.5 * fits, await WidthAsync(svg), 2.0);
        await Expect(zoom).ToContainTextAsync("scroll in it");

        await picture.FocusAsync();
        await window.Page.Keyboard.PressAsync("+");
        await Expect(zoom).ToContainTextAsync("200 %");
        Assert.Equal("12", await svg.Locator("text[data-names]").First.GetAttributeAsync("font-size"));
        Assert.True(await svg.Locator("text[data-names]").CountAsync() > names);

        ILocator thing = svg.Locator("g.view.profile g.thing[data-id=tool-chests]");
        await thing.FocusAsync();
        await window.Page.Keyboard.PressAsync("-");
        await Expect(zoom).ToContainTextAsync("150 %");
        await Expect(thing).ToBeFocusedAsync();
        await window.Page.Keyboard.PressAsync("0");
        await Expect(zoom).ToContainTextAsync("100 %");
        Assert.Equal(fits, await WidthAsync(svg), 1.0);
    }

    [Fact]
    public async Task TheDiagram_AtTheTable_CanBeSeenWhole_AndOnAPhoneReadsDownwards()
    {
        ServedBoat boat = await LookAtDemoAsync();
        BoatWindow table = await OpenAsync(boat, "/electrics?view=diagram");
        ILocator picture = table.Page.Locator(".picture:not(.unmeasured)");
        await Expect(picture).ToHaveCountAsync(1);
        await Expect(table.Page.Locator(".zoom")).ToContainTextAsync("scroll in it");
        await table.Page.GetByRole(AriaRole.Button, new() { Name = "Fit" }).ClickAsync();
        await Expect(table.Page.Locator(".zoom")).Not.ToContainTextAsync("scroll in it");
        Assert.True(await picture.EvaluateAsync<bool>("picture => picture.scrollWidth <= picture.clientWidth + 1"));

        BoatWindow phone = await OpenAsync(boat, "/electrics?view=diagram", Screens.Phone);
        ILocator svg = phone.Page.Locator(".picture:not(.unmeasured) svg");
        await Expect(svg).ToHaveCountAsync(1);
        Assert.True(await WidthAsync(svg) <= Screens.Phone.Width);
        double[] tops = await svg.EvaluateAsync<double[]>("svg => ['bank', 'main-fuse', 'main-isolator'].map(id => svg.querySelector(`g.thing[data-id=${id}] text`).getBoundingClientRect().top)");
        Assert.Equal(tops.Order(), tops);
        await phone.GoAsync("/electrics?view=diagram&thing=main-fuse");
        await Expect(phone.Page.Locator("a.skip[href='#side']")).ToHaveTextAsync("Skip the diagram");
    }

    [Theory]
    [InlineData(0)]
    [InlineData(2)]
    public async Task ADrag_MovesAPieceOfGear_AsOneEditThatCanBeUndone(int timesZoomed)
    {
        const double AcrossPx = 60, UpPx = 15;
        BoatWindow window = await OpenAsync(await ServeDemoAsync(), "/?thing=tool-chests");
        ILocator x = window.Page.Locator("#field-tool-chests-place-xM"), y = window.Page.Locator("#field-tool-chests-place-yM"), z = window.Page.Locator("#field-tool-chests-place-zM");
        double xM = await MetresAsync(x), yM = await MetresAsync(y), zM = await MetresAsync(z);
        Assert.Equal((8.5, 0.1, 1.1), (xM, yM, zM));
        string was = await x.InputValueAsync();
        await Expect(window.Page.Locator(".picture:not(.unmeasured)")).ToHaveCountAsync(1);
        await Expect(window.Page.Locator(".vitals").Filter(new() { HasText = "being worked out" })).ToHaveCountAsync(0);
        for (int zoomed = 0; zoomed < timesZoomed; zoomed++)
        {
            string before = await window.Page.Locator(".percent").InnerTextAsync();
            await window.Page.GetByRole(AriaRole.Button, new() { Name = "Zoom in" }).ClickAsync();
            await Expect(window.Page.Locator(".percent")).Not.ToHaveTextAsync(before);
        }

        ILocator view = window.Page.Locator("g.view.plan"), gear = view.Locator("g.thing[data-id=tool-chests]").First;
        double pxPerM = await view.EvaluateAsync<double>("view => { const svg = view.ownerSVGElement; return Number(view.dataset.pxPerM) * svg.getBoundingClientRect().width / svg.viewBox.baseVal.width }");

        await gear.ScrollIntoViewIfNeededAsync();
        LocatorBoundingBoxResult box = (await gear.Locator("rect, path, polygon").First.BoundingBoxAsync())!;
        float fromX = box.X + (box.Width / 2), fromY = box.Y + (box.Height / 2);
        await window.Page.Mouse.MoveAsync(fromX, fromY);
        await window.Page.Mouse.DownAsync();
        await window.Page.Mouse.MoveAsync(fromX + 20, fromY - 5);
        await window.Page.Mouse.MoveAsync(fromX + (float)AcrossPx, fromY - (float)UpPx, new() { Steps = 4 });
        await window.Page.Mouse.UpAsync();

        // In plan: right on the drawing is forward, up is to port; the height stays. Places are kept to the centimetre.
        await Expect(window.Page.Locator(".who")).ToContainTextAsync("revision 2");
        await Expect(x).Not.ToHaveValueAsync(was);
        Assert.Equal(xM + (AcrossPx / pxPerM), await MetresAsync(x), 0.011);
        Assert.Equal(yM + (UpPx / pxPerM), await MetresAsync(y), 0.011);
        Assert.Equal(zM, await MetresAsync(z), 1e-9);

        await window.Page.GetByRole(AriaRole.Banner).GetByRole(AriaRole.Button, new() { Name = "Undo" }).ClickAsync();
        await Expect(window.Page.Locator(".who")).ToContainTextAsync("revision 1");
        await Expect(x).ToHaveValueAsync(was);
        Assert.Equal((xM, yM, zM), (await MetresAsync(x), await MetresAsync(y), await MetresAsync(z)));
    }

    [Fact]
    public async Task AHeldPieceOfGear_MovesTheWaterWithTheHand_AndBackWhereItIsNotLetGo()
    {
        BoatWindow window = await OpenAsync(await LookAtDemoAsync(), "/?thing=tool-chests");
        await Expect(window.Page.Locator(".picture:not(.unmeasured)")).ToHaveCountAsync(1);
        await Expect(window.Page.Locator(".vitals").Filter(new() { HasText = "being worked out" })).ToHaveCountAsync(0);
        ILocator water = window.Page.Locator("g.view.profile .afloat .water-line"), held = window.Page.Locator(".hand-words");
        double[] Ends(string[] ends) => [.. ends.Select(end => double.Parse(end, System.Globalization.CultureInfo.InvariantCulture))];
        async Task<double[]> HeightsAsync() => Ends(await water.EvaluateAsync<string[]>("line => [line.getAttribute('y1'), line.getAttribute('y2')]"));
        double[] before = await HeightsAsync();

        ILocator gear = window.Page.Locator("g.view.profile g.thing[data-id=tool-chests]").First;
        await gear.ScrollIntoViewIfNeededAsync();
        LocatorBoundingBoxResult box = (await gear.Locator("rect, path, polygon").First.BoundingBoxAsync())!;
        float fromX = box.X + (box.Width / 2), fromY = box.Y + (box.Height / 2);
        await window.Page.Mouse.MoveAsync(fromX, fromY);
        await window.Page.Mouse.DownAsync();
        await window.Page.Mouse.MoveAsync(fromX - 250, fromY, new() { Steps = 6 });
        await Expect(held).ToContainTextAsync("Held here");
        await Expect(held).ToContainTextAsync("GM");
        double[] moved = await HeightsAsync();

        // The weight goes aft: the water rises aft, on the left, and falls forward. The browser counts downwards.
        Assert.True(moved[0] < before[0] && moved[1] > before[1], $"from {string.Join(", ", before)} to {string.Join(", ", moved)}");

        await gear.DispatchEventAsync("pointercancel", new { pointerId = 1, bubbles = true });
        await Expect(held).ToBeHiddenAsync();
        Assert.Equal(before, await HeightsAsync());
        await Expect(window.Page.Locator(".who")).ToContainTextAsync("revision 1");
    }

    private static async Task<double> WidthAsync(ILocator svg) => await svg.EvaluateAsync<double>("svg => svg.getBoundingClientRect().width");

    private static async Task<double> MetresAsync(ILocator box)
    {
        string text = await box.InputValueAsync();
        return text.EndsWith(" mm", StringComparison.Ordinal)
            ? double.Parse(text[..^3], System.Globalization.CultureInfo.InvariantCulture) / 1000
            : double.Parse(text[..^2], System.Globalization.CultureInfo.InvariantCulture);
    }

    // The curve follows before the point is let go, and stands there once it is.
    [Fact]
    public async Task APointOfTheHull_WhileItIsDragged_TakesItsCurveAlong()
    {
        BoatWindow window = await OpenAsync(await ServeDemoAsync(), "/weights/hull");
        ILocator plan = window.Page.Locator(".picture:not(.unmeasured)").First, curve = plan.Locator("g.chosen polyline.station"), point = plan.Locator("g.thing[data-id='p0.2']");
        await plan.Locator("g.thing[data-id=s0]").First.WaitForAsync();
        string before = (await curve.First.GetAttributeAsync("points"))!;
        LocatorBoundingBoxResult box = (await point.First.BoundingBoxAsync())!;
        await window.Page.Mouse.MoveAsync(box.X + (box.Width / 2), box.Y + (box.Height / 2));
        await window.Page.Mouse.DownAsync();
        await window.Page.Mouse.MoveAsync(box.X + (box.Width / 2) + 30, box.Y + (box.Height / 2), new() { Steps = 5 });
        await Expect(curve.First).Not.ToHaveAttributeAsync("points", before);
        await Expect(plan.Locator("polyline.was")).ToHaveCountAsync(1);
        await window.Page.Mouse.UpAsync();
        await Expect(plan.Locator("polyline.was")).ToHaveCountAsync(0);
        await Expect(curve.First).Not.ToHaveAttributeAsync("points", before);
    }
}
