using Orlop.Boat.Things;
using Orlop.Review.Findings;

namespace Orlop.Work.Bring;

/// <summary>
/// The clips of all cables on one line, taken from stock cable by cable, the thickest first: a clip whose name states a size holds cables of at most that thickness, one that states none is looked at.
/// </summary>
internal static class ClipLine
{
    private static readonly Sentence Size = Sentence.Of($"Of a size that holds the cable: look.");

    public static BringItem Of(Clipped[] clipped, IReadOnlyList<StockItem> stock)
    {
        (StockItem Item, double? SizeMm)[] clips = [.. stock.Where(item => item.PieceCount > 0 && StockWords.Is(item.Title, "clip")).Select(item => (Item: item, SizeMm: StatedLength.MillimetresIn(item.Title))).OrderBy(clip => clip.SizeMm ?? double.MaxValue)];
        int[] left = [.. clips.Select(clip => clip.Item.PieceCount!.Value)];
        int toBuy = 0, count = clipped.Sum(cable => cable.Count);
        List<Sentence> notCounted = [];
        foreach (Clipped cable in clipped.OrderByDescending(cable => cable.Cable.OuterDiameterMm?.Value ?? double.MaxValue))
        {
            int wanted = cable.Count;
            for (int i = 0; i < clips.Length && wanted > 0; i++)
            {
                if (Holds(clips[i].SizeMm, cable.Cable))
                {
                    int taken = Math.Min(wanted, left[i]);
                    (left[i], wanted) = (left[i] - taken, wanted - taken);
                }
            }

            toBuy += wanted;
            notCounted.AddRange(wanted == 0 ? [] : clips.Where(clip => !Holds(clip.SizeMm, cable.Cable)).Select(clip => NotCounted(clip.Item, cable.Cable)));
        }

        return new BringItem
        {
            Key = "clips",
            Kind = BringKind.Fastening,
            What = Sentence.Of($"Cable clips"),
            Needed = PieceNeed.Pieces(count),
            ToBuy = PieceNeed.Pieces(toBuy),
            State = toBuy == 0 ? StockState.InStock : toBuy < count ? StockState.Partly : StockState.ToBuy,
            Takes = [.. clips.Index().Where(clip => left[clip.Index] < clip.Item.Item.PieceCount).Select(clip => Take(clip.Item.Item, left[clip.Index]))],
            Remarks = [.. clipped.Select(cable => cable.Words), .. clipped.Any(cable => cable.IsAssumed) ? [Clipped.Assumption] : Array.Empty<Sentence>(), .. notCounted, Size],
            For = [.. clipped.Select(cable => cable.Cable.Id)],
        };
    }

    // Whether a clip of a stated size holds a cable whose thickness nobody has told cannot be said: it is not counted.
    private static bool Holds(double? sizeMm, Cable cable) => sizeMm is null || cable.OuterDiameterMm?.Value <= sizeMm;

    private static StockTake Take(StockItem item, int left) => new(item.Id, item.Title, PieceNeed.Pieces(item.PieceCount!.Value - left), item.Where);

    private static Sentence NotCounted(StockItem item, Cable cable) => cable.OuterDiameterMm is { } thick
        ? Sentence.Of($"Not counted: {item.Title}; {cable.Title} is {new Amount(thick.Value, "Mm")} thick.")
        : Sentence.Of($"Not counted: {item.Title}; how thick {cable.Title} is, is not given: measure it.");
}
