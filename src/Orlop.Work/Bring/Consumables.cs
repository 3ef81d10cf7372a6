using System.Collections.Immutable;
using Orlop.Boat.Things;
using Orlop.Review.Findings;
using Orlop.Review.Mending;
using Orlop.Work.Ends;
using Orlop.Work.Labels;
using Orlop.Work.Tables;

namespace Orlop.Work.Bring;

/// <summary>Labels, heat-shrink and ties, held against stock by what its names say.</summary>
internal static class Consumables
{
    public static IEnumerable<BringItem> Of(ImmutableArray<WorkLabel> labels, ImmutableArray<CableCut> cuts, ImmutableArray<CableEnd> ends, IReadOnlyList<StockItem> stock)
    {
        int count = WorkLabels.CountToMake(labels);
        if (count > 0)
        {
            yield return new PieceNeed("label", BringKind.Label, Sentence.Of($"Labels, one at each cable end and device"), count, [], item => item.Use == StockUse.Label).Match(stock);
        }

        double runM = cuts.GroupBy(cut => cut.CableId).Sum(cable => cable.Max(cut => cut.RunM ?? 0));
        if (runM > 0)
        {
            yield return new PieceNeed("ties", BringKind.Consumable, Sentence.Of($"Cable ties"), (int)Math.Ceiling(runM * Allowances.TiesPerMetreCount), [], item => StockWords.Is(item.Title, "tie")).Match(stock);
        }

        int crimps = ends.Count(end => end.IsSleeved);
        if (crimps > 0)
        {
            yield return HeatShrink(crimps, [.. stock.Where(item => StockWords.Is(item.Title, "heat-shrink", "heatshrink", "shrink"))]);
        }
    }

    // Where an item states no length, whether it is enough cannot be told.
    private static BringItem HeatShrink(int crimps, ImmutableArray<StockItem> stock)
    {
        double neededM = CutAllowance.RoundedUpM(crimps * Allowances.SleeveM, Allowances.CutStepM);
        double? statedM = stock.Any(item => StatedLength.Of(item) is null) ? null : stock.Sum(item => StatedLength.Of(item)!.Value), leftM = statedM is { } has ? Math.Max(0, neededM - has) : null;
        return new BringItem
        {
            Key = "heat-shrink",
            Kind = BringKind.Consumable,
            What = Sentence.Of($"Heat-shrink with glue, {new Amount(Allowances.SleeveM, "M")} over each of {crimps} crimps"),
            Needed = new Amount(neededM, "M"),
            ToBuy = leftM is { } m ? new Amount(m, "M") : null,
            State = leftM switch { null => StockState.Look, 0 => StockState.InStock, _ when statedM > 0 => StockState.Partly, _ => StockState.ToBuy },
            Takes = [.. stock.Select(item => new StockTake(item.Id, item.Title, null, item.Where))],
            Remarks =
            [
                .. leftM is null ? [Sentence.Of($"Check its length before it is packed.")] : Array.Empty<Sentence>(),
                Sentence.Of($"Of a size that shrinks onto cable and barrel: look."),
            ],
        };
    }
}
