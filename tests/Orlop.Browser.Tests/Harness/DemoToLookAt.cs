using Orlop.Store;

namespace Orlop.Browser.Tests.Harness;

/// <summary>The demo boat, served once for all tests that only look at her: her first review is then worked out once.</summary>
public sealed class DemoToLookAt : IAsyncDisposable
{
    private readonly Lazy<Task<ServedBoat>> _served = new(() => ServedBoat.OfExampleAsync(ServedBoat.Demo));

    /// <summary>The boat; served from the first time it is asked for.</summary>
    public Task<ServedBoat> ServedAsync() => _served.Value;

    public async ValueTask DisposeAsync()
    {
        if (!_served.IsValueCreated)
        {
            return;
        }

        using ServedBoat boat = await _served.Value;
        using BoatStore store = BoatStore.Open(boat.Store);
        Assert.True(store.History.Page().Count == 1, "A test that says that it only looks at the demo boat changed her.");
    }
}
