using Microsoft.Playwright;

namespace Orlop.Browser.Tests.Harness;

/// <summary>A test in a browser: it skips where there is none, and fails when a page did what no page may do.</summary>
public abstract class PageTest(ChromiumFixture chromium) : IAsyncLifetime
{
    private readonly Watch _watch = new();
    private readonly List<IAsyncDisposable> _contexts = [];
    private readonly List<ServedBoat> _boats = [];

    public ValueTask InitializeAsync()
    {
        Assert.SkipWhen(chromium.Browser is null, "No Chromium, Chrome or Edge is installed here.");
        return ValueTask.CompletedTask;
    }

    public async ValueTask DisposeAsync()
    {
        GC.SuppressFinalize(this);
        foreach (IAsyncDisposable context in _contexts)
        {
            await context.DisposeAsync();
        }

        _boats.ForEach(boat => boat.Dispose());
        Assert.Empty(_watch.Seen);
    }

    /// <summary>The demo boat for a test that changes her or opens a draft.</summary>
    private protected async Task<ServedBoat> ServeDemoAsync() => Kept(await ServedBoat.OfExampleAsync(ServedBoat.Demo));

    /// <summary>The demo boat, for a test that only looks: others look at the same time, and see which draft is open.</summary>
    private protected Task<ServedBoat> LookAtDemoAsync() => chromium.Demo.ServedAsync();

    private protected async Task<ServedBoat> ServeNewAsync(params string[] options) => Kept(await ServedBoat.OfNewAsync(options));

    /// <summary>A window of its own, with its own cookies.</summary>
    private protected async Task<BoatWindow> OpenAsync(ServedBoat boat, string path = "/", ViewportSize? size = null)
    {
        bool isPhone = size?.Width == Screens.Phone.Width;
        IBrowserContext context = await chromium.Browser!.NewContextAsync(new()
        {
            ViewportSize = size ?? Screens.Desk,
            HasTouch = isPhone,
            IsMobile = isPhone,
            ReducedMotion = ReducedMotion.Reduce,
            AcceptDownloads = true,
        });
        _contexts.Add(context);
        context.SetDefaultTimeout(Waiting.MostMs);
        _watch.Over(context);
        BoatWindow window = new(boat, await context.NewPageAsync());
        await window.GoAsync(path);
        return window;
    }

    private ServedBoat Kept(ServedBoat boat)
    {
        _boats.Add(boat);
        return boat;
    }
}
