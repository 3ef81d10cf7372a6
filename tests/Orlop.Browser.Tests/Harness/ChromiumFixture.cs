using Microsoft.Playwright;
using Orlop.Browser.Tests.Harness;
using Orlop.Work.Paper;

[assembly: AssemblyFixture(typeof(ChromiumFixture))]

namespace Orlop.Browser.Tests.Harness;

/// <summary>One browser for the whole run, none where none is installed; and one demo boat for all tests that only look at her.</summary>
public sealed class ChromiumFixture : IAsyncLifetime
{
    // Set where the browser stands elsewhere.
    private const string PlaceVariable = "ORLOP_TEST_BROWSER";

    private static readonly string[] Quiet =
    [
        "--no-sandbox", "--disable-gpu", "--disable-quic", "--no-first-run", "--disable-background-networking", "--disable-component-update", "--disable-sync",
    ];

    private IPlaywright? _playwright;

    /// <summary>The browser; null where none is installed.</summary>
    public IBrowser? Browser { get; private set; }

    /// <summary>The demo boat for tests that neither change her nor open a draft.</summary>
    public DemoToLookAt Demo { get; } = new();

    public async ValueTask InitializeAsync()
    {
        if ((Environment.GetEnvironmentVariable(PlaceVariable) ?? PdfPrinter.FindBrowser()) is not { } place)
        {
            return;
        }

        _playwright = await Playwright.CreateAsync();
        Browser = await _playwright.Chromium.LaunchAsync(new() { ExecutablePath = place, Args = Quiet });
        Assertions.SetDefaultExpectTimeout(Waiting.MostMs);
    }

    public async ValueTask DisposeAsync()
    {
        if (Browser is not null)
        {
            await Browser.DisposeAsync();
        }

        _playwright?.Dispose();
        await Demo.DisposeAsync();
    }
}
