using Microsoft.Playwright;
using Orlop.Browser.Tests.Harness;
using Orlop.Work.Paper;

[assembly: AssemblyFixture(typeof(ChromiumFixture))]

namespace Orlop.Browser.Tests.Harness;

/// <summary>One browser for the whole run; none where none is installed.</summary>
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
    }
}
