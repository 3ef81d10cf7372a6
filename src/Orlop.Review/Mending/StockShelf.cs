using System.Collections.Immutable;
using Orlop.Boat;
using Orlop.Boat.Things;

namespace Orlop.Review.Mending;

/// <summary>What lies in stock of each catalogue part, and whether it is enough for a set of choices.</summary>
internal sealed class StockShelf(BoatModel boat)
{
    private readonly ILookup<string, StockItem> _items = boat.All<StockItem>().Where(item => item.Catalogue is not null).ToLookup(item => item.Catalogue!, StringComparer.Ordinal);

    /// <summary>The items that are of this part.</summary>
    public IEnumerable<StockItem> Of(CataloguePart part) => _items[part.Id];

    /// <summary>There is enough for all of these choices of one part together: pieces by number, cable by cuts of which each comes whole from one reel.</summary>
    public bool Has(CataloguePart part, IReadOnlyList<MendOption> choices) => part.Use == CatalogueUse.Cable
        ? HasCuts(part, choices.SelectMany(choice => choice.CutsM))
        : Of(part).Sum(item => item.PieceCount ?? 0) >= choices.Count;

    /// <summary>The slots that take more of one part than there is; empty where there is enough.</summary>
    public ImmutableArray<int> Overdrawn(ImmutableArray<MendSlot> slots, ImmutableArray<int> choice) =>
    [
        .. Enumerable.Range(0, slots.Length)
            .Where(slot => slots[slot].Options[choice[slot]].IsFromStock)
            .GroupBy(slot => slots[slot].Options[choice[slot]].Part!.Id, StringComparer.Ordinal)
            .FirstOrDefault(takers => !Has(slots[takers.First()].Options[choice[takers.First()]].Part!, [.. takers.Select(slot => slots[slot].Options[choice[slot]])])) ?? Enumerable.Empty<int>(),
    ];

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
