using Microsoft.Playwright;
using Orlop.Browser.Tests.Harness;
using static Microsoft.Playwright.Assertions;

namespace Orlop.Browser.Tests.Keeping;

/// <summary>Whatever a thing is called, it is text; and the first page is small.</summary>
public sealed class HostileTextTests(ChromiumFixture chromium) : PageTest(chromium)
{
    private const long MostFirstLoadBytes = 300_000;
    private static readonly string Hostile = "<script>window.hit=1</script><img src=x onerror='window.hit=1'>\"'&amp; " + new string('W', 300);

    [Fact]
    public async Task AHostileName_IsShownAsText_OnEveryPageAndDrawing()
    {
        BoatWindow window = await OpenAsync(await ServeDemoAsync(), "/?thing=sample-crates");
        foreach (string thing in new[] { "sample-crates", "solar-fuse", "stern-light", "drying-fan", "particulars" })
        {
            await window.GoAsync($"/?thing={thing}");
            await window.TypeAsync("Name", Hostile, Hostile);
        }

        // The last is kept before the page is left.
        await Expect(window.Page.Locator(".who")).ToContainTextAsync("revision 6");

        foreach (string path in new[]
                 {
                     "/", "/?thing=solar-fuse", "/electrics?circuit=stern-light", "/electrics?view=diagram", "/electrics?new=circuit", "/alterations?alteration=drying-locker",
                     "/record?alteration=drying-locker&part=steps", "/record?alteration=drying-locker&part=readings", "/record?part=photographs", "/record?part=history",
                 })
        {
            await window.GoAsync(path);
            await Expect(window.Main).Not.ToContainTextAsync("being worked out");
            await Expect(window.Page.Locator("body")).ToContainTextAsync("<script>window.hit=1</script>");
            await AssertNothingRanAsync(window.Page, path);
        }

        await window.Page.GotoAsync(new Uri(new Uri(window.Page.Url), "/packs/drying-locker").ToString());
        await Expect(window.Page.Locator("body")).ToContainTextAsync("<script>window.hit=1</script>");
        await AssertNothingRanAsync(window.Page, "the work pack");
    }

    [Fact]
    public async Task TheFirstLoad_IsUnder300Kilobytes()
    {
        BoatWindow window = await OpenAsync(await LookAtDemoAsync(), "/not-found");
        ICDPSession browser = await window.Page.Context.NewCDPSessionAsync(window.Page);
        await browser.SendAsync("Network.enable");
        await browser.SendAsync("Network.setCacheDisabled", new() { ["cacheDisabled"] = true });
        long bytes = 0;
        int count = 0;
        browser.Event("Network.loadingFinished").OnEvent += (_, finished) =>
        {
            Interlocked.Add(ref bytes, (long)finished!.Value.GetProperty("encodedDataLength").GetDouble());
            Interlocked.Increment(ref count);
        };
        await window.GoAsync("/");
        await window.ReviewedAsync();
        Assert.InRange(Interlocked.Read(ref bytes), 20_000, MostFirstLoadBytes);
        Assert.True(count >= 4, $"Only {count} answers were counted: page, style, script and drawing code are four.");
    }

    private static async Task AssertNothingRanAsync(IPage page, string where)
    {
        Assert.True(await page.EvaluateAsync<bool>("window.hit === undefined"), $"A name ran as a script on {where}.");
        Assert.Equal(0, await page.Locator("img[src=x]").CountAsync());
    }
}
