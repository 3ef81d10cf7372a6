using System.Collections.Immutable;
using Orlop.Boat;
using Orlop.Boat.Things;

namespace Orlop.Review.Mending;

/// <summary>What lies in stock of each catalogue part, and whether it is enough for a set of choices. A cable is of a part by what is known of it, as in the work pack; anything else by naming it.</summary>
internal sealed class StockShelf(BoatModel boat, Catalogue catalogue)
{
    private readonly ILookup<string, StockItem> _items = boat.All<StockItem>().Where(item => item.Catalogue is not null).ToLookup(item => item.Catalogue!, StringComparer.Ordinal);
    private readonly ImmutableArray<(StockItem Item, StockedCable Known)> _cables =
        [.. boat.All<StockItem>().Where(item => item is { Use: StockUse.Cable, LengthM: not null }).Select(item => (item, StockedCable.Of(item, catalogue)))];

    private readonly Dictionary<string, ImmutableArray<StockItem>> _of = new(StringComparer.Ordinal);

    /// <summary>The items that are of this part.</summary>
    public ImmutableArray<StockItem> Of(CataloguePart part) => _of.TryGetValue(part.Id, out ImmutableArray<StockItem> known) ? known : _of[part.Id] = [.. Found(part)];

    private IEnumerable<StockItem> Found(CataloguePart part) => part is { Use: CatalogueUse.Cable, AreaMm2: { } area, CoreCount: { } cores, InsulationC: { } insulation }
        ? _cables.Where(cable => new WantedCable(area.Value, cores, insulation.Value, part.Strands).Held(cable.Known).Fit == StockFit.Same).Select(cable => cable.Item)
        : _items[part.Id];

    /// <summary>There is enough for all of these choices of one part together: pieces by number, cable by cuts of which each comes whole from one reel.</summary>
    public bool Has(CataloguePart part, IReadOnlyList<MendOption> choices) => part.Use == CatalogueUse.Cable
        ? HasCuts(part, choices.SelectMany(choice => choice.CutsM))
        : Of(part).Sum(item => item.PieceCount ?? 0) >= choices.Sum(choice => choice.PieceCount);

    /// <summary>The slots that take more of one part than there is; empty where there is enough.</summary>
    public ImmutableArray<int> Overdrawn(ImmutableArray<MendSlot> slots, ImmutableArray<int> choice) =>
    [
        .. Enumerable.Range(0, slots.Length)
            .Where(slot => slots[slot].Options[choice[slot]].IsFromStock)
            .GroupBy(slot => KeyOf(slots[slot].Options[choice[slot]].Part!), StringComparer.Ordinal)
            .FirstOrDefault(takers => !Has(slots[takers.First()].Options[choice[takers.First()]].Part!, [.. takers.Select(slot => slots[slot].Options[choice[slot]])])) ?? Enumerable.Empty<int>(),
    ];

    // Two parts that are alike share their reels.
    private string KeyOf(CataloguePart part) => Of(part).Select(item => item.Id).FirstOrDefault(part.Id);

    // The longest first, each from the shortest reel that still holds it.
    private bool HasCuts(CataloguePart part, IEnumerable<double> cutsM)
    {
        List<double> reels = [.. Of(part).Select(item => item.LengthM?.Value ?? 0)];
        foreach (double cut in cutsM.OrderDescending())
        {
            int reel = Enumerable.Range(0, reels.Count).Where(at => reels[at] >= cut).OrderBy(at => reels[at]).FirstOrDefault(-1);
            if (reel < 0)
            {
                return false;
            }

            reels[reel] -= cut;
        }

        return true;
    }
}
