using Orlop.Boat.Things;

namespace Orlop.Store.Tests;

/// <summary>Files that earlier versions wrote, one for each layout, still open with all they hold.</summary>
public sealed class StoredVersionsTests : TemporaryFolder
{
    [Fact]
    public void Open_LayoutOne_HoldsItsHistoryAndPhotograph()
    {
        File.Copy(Path.Combine(AppContext.BaseDirectory, "v1.orlop"), BoatPath);

        using BoatStore store = BoatStore.Open(BoatPath);

        Assert.Equal(
            [
                (5, 3, "weigh the chest again", HistoryPlace.Ahead),
                (4, 2, "add a box", HistoryPlace.Aside),
                (3, 2, "put a box in the forepeak", HistoryPlace.Head),
                (2, 1, "weigh the chest", HistoryPlace.Behind),
                (1, null, "as bought", HistoryPlace.Behind),
            ],
            store.History.Page().Select(entry => (entry.Number, entry.Parent, entry.Summary, entry.Place)));
        Assert.Equal(new DateTimeOffset(2026, 5, 3, 12, 0, 0, TimeSpan.Zero), store.Head.At);
        Assert.Equal(55, store.Head.Boat.MassKg("chest"));
        Assert.Equal("forepeak", store.Head.Boat.Find<Gear>("box")!.Space);
        Assert.Equal(60, store.Redo(3).Head.Boat.MassKg("chest"));
        Assert.Equal("image/png", Assert.Single(store.Attachments.List()).MediaType);
        Assert.Empty(store.Verify());
        store.Keep(Boats.AddChest("another"));
    }
}
