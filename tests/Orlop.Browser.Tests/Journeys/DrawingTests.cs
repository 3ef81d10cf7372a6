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
        BoatWindow window = await OpenAsync(await ServeDemoAsync(), "/electrics?view=diagram");
        await window.Page.Locator("g.thing[data-id=main-isolator] text").First.ClickAsync();
        await Expect(window.Sheet.Locator("#sheet-title")).ToHaveTextAsync("Main isolator");
        await Expect(window.Page.Locator("g.thing[data-id=main-isolator].selected").First).ToBeVisibleAsync();
        await window.Page.GetByText("How it is made dead").ClickAsync();
        await Expect(window.Page.GetByRole(AriaRole.Heading, new() { Name = "Prove it dead" })).ToBeVisibleAsync();

        await window.TurnToAsync("Boat");
        await window.Page.Locator("g.view.plan g.thing[data-id=tool-chests] rect").First.ClickAsync();
        await Expect(window.Sheet.Locator("#sheet-title")).ToHaveTextAsync("Tool chests");
    }

    [Fact]
    public async Task ADrag_MovesAPieceOfGear_AsOneEditThatCanBeUndone()
    {
        const double AcrossPx = 60, UpPx = 15;
        BoatWindow window = await OpenAsync(await ServeDemoAsync(), "/?thing=tool-chests");
        ILocator x = window.Page.Locator("#field-tool-chests-place-xM"), y = window.Page.Locator("#field-tool-chests-place-yM"), z = window.Page.Locator("#field-tool-chests-place-zM");
        double xM = await MetresAsync(x), yM = await MetresAsync(y), zM = await MetresAsync(z);
        Assert.Equal((8.5, 0.1, 1.1), (xM, yM, zM));
        string was = await x.InputValueAsync();
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

    private static async Task<double> MetresAsync(ILocator box)
    {
        string text = await box.InputValueAsync();
        return text.EndsWith(" mm", StringComparison.Ordinal)
            ? double.Parse(text[..^3], System.Globalization.CultureInfo.InvariantCulture) / 1000
            : double.Parse(text[..^2], System.Globalization.CultureInfo.InvariantCulture);
    }
}
