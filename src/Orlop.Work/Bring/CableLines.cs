using System.Collections.Immutable;
using System.Globalization;
using Orlop.Boat.Things;
using Orlop.Presentation.Words;
using Orlop.Review.Findings;
using Orlop.Review.Mending;
using Orlop.Work.Scope;

namespace Orlop.Work.Bring;

/// <summary>Cable to bring, the cuts of one size and kind on one line.</summary>
internal static class CableLines
{
    public static IEnumerable<BringItem> Of(PackScope scope, ImmutableArray<CableCut> cuts)
    {
        ImmutableArray<(StockItem Item, StockedCable Known)> stock = CutList.StockOf(scope);
        foreach (IGrouping<WantedCable, CableCut> kind in cuts.GroupBy(cut => cut.Wanted).OrderBy(kind => kind.Key.AreaMm2))
        {
            double neededM = kind.Sum(cut => cut.CutM ?? 0), uncoveredM = kind.Where(cut => cut.StockId is null).Sum(cut => cut.CutM ?? 0);
            bool isKnown = kind.All(cut => cut.CutM is not null);
            ImmutableArray<Sentence> remarks =
            [
                .. isKnown ? [Sentence.Of($"As cut, {CableLengthWords.Cut}; {new Amount(kind.Sum(cut => cut.RunM!.Value), "M")} {CableLengthWords.Laid}.")] : Array.Empty<Sentence>(),
                .. kind.Any(cut => cut.StockId is not null) ? new[] { Sentence.Of($"Taken by what the stock list says of it: read cores, insulation and colour on the cable itself.") } : [],
                .. kind.Any(cut => cut.StockId is null) ? NotTaken(kind.Key, stock) : [],
                .. kind.Select(cut => cut.Colour).OfType<Sentence>().Distinct(),
                .. kind.Any(cut => cut is { StockId: null, CoreId: "plus" or "minus" }) ? new[] { Sentence.Of($"Buy red for plus, black or yellow for minus (common practice, no source).") } : [],
            ];
            if (!isKnown)
            {
                remarks = remarks.Add(Sentence.Of($"{kind.Count(cut => cut.CutM is null)} of {kind.Count()} lengths are not known and not in the sum."));
            }

            yield return new BringItem
            {
                Key = string.Create(CultureInfo.InvariantCulture, $"cable:{kind.Key.AreaMm2}:{kind.Key.Strands}:{kind.Key.CoreCount}:{kind.Key.InsulationC}"),
                Kind = BringKind.Cable,
                What = What(kind.Key),
                Needed = isKnown ? new Amount(neededM, "M") : null,
                ToBuy = isKnown ? new Amount(uncoveredM, "M") : null,
                State = kind.All(cut => cut.StockId is not null) ? StockState.InStock : kind.Any(cut => cut.StockId is not null) ? StockState.Partly : StockState.ToBuy,
                Takes =
                [
                    .. kind.Where(cut => cut.StockId is not null).GroupBy(cut => cut.StockId!).Select(reel => scope.AsBuilt.Find<StockItem>(reel.Key) is { } item
                        ? new StockTake(item.Id, item.Title, new Amount(reel.Sum(cut => cut.CutM!.Value), "M"), item.Where)
                        : new StockTake(reel.Key, reel.Key, null, null)),
                ],
                Remarks = remarks,
                For = [.. kind.Select(cut => cut.CableId).Distinct(StringComparer.Ordinal)],
            };
        }
    }

    // What is of the size and is not counted on: it may do, or it is another.
    private static IEnumerable<Sentence> NotTaken(WantedCable wanted, ImmutableArray<(StockItem Item, StockedCable Known)> stock) =>
        from reel in stock
        let held = wanted.Held(reel.Known)
        where held.Why is not null
        orderby held.Fit descending
        let item = reel.Item
        select held.Fit == StockFit.MayDo
            ? Sentence.Of($"May do: {item.Title}, {new Amount(item.LengthM!.Value, "M")}, {item.Where ?? "place not given"} ({held.Why!}). Read it on the cable and say it in the stock list before it is counted on.")
            : Sentence.Of($"Not taken: {item.Title} ({held.Why!}).");

    private static Sentence What(WantedCable kind) => kind.InsulationC is { } insulation
        ? Sentence.Of($"{WantedCable.WordOf(kind.CoreCount)} {new Amount(kind.AreaMm2, "Mm2")}, {WantedCable.WordsOf(kind.Strands)}, insulation {new Amount(insulation, "C")}")
        : Sentence.Of($"{WantedCable.WordOf(kind.CoreCount)} {new Amount(kind.AreaMm2, "Mm2")}, {WantedCable.WordsOf(kind.Strands)}, insulation not given");
}
