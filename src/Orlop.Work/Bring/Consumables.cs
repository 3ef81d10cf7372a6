using System.Collections.Immutable;
using Orlop.Boat.Things;
using Orlop.Review.Findings;
using Orlop.Work.Ends;
using Orlop.Work.Labels;
using Orlop.Work.Scope;
using Orlop.Work.Tables;

namespace Orlop.Work.Bring;

/// <summary>Labels, supports, heat-shrink and ties. The stock list does not say what such an item is, so only labels are matched.</summary>
internal static class Consumables
{
    public static IEnumerable<BringItem> Of(PackScope scope, ImmutableArray<CableCut> cuts, ImmutableArray<CableEnd> ends, IReadOnlyList<StockItem> stock)
    {
        HashSet<string> open = [.. scope.Changes.Where(change => !change.IsBuilt).Select(change => change.Id)];
        int labels = WorkLabels.Of(scope).Count(label => open.Contains(Boat.Topology.ElementIds.ThingOf(label.Key)));
        if (labels > 0)
        {
            yield return new PieceNeed("label", BringKind.Label, Sentence.Of($"Labels, one at each cable end and device"), labels, [], item => item.Use == StockUse.Label).Match(stock);
        }

        double runM = cuts.GroupBy(cut => cut.CableId).Sum(cable => cable.Max(cut => cut.RunM ?? 0));
        if (runM > 0)
        {
            int clips = (int)Math.Ceiling(runM / Allowances.ClipSpacingM) + cuts.Select(cut => cut.CableId).Distinct(StringComparer.Ordinal).Count();
            yield return Look("clips", BringKind.Fastening, Sentence.Of($"Cable clips with screws, one every {new Amount(Allowances.ClipSpacingM, "M")}"), PieceNeed.Pieces(clips), stock, StockUse.Fastening);
            yield return Look("ties", BringKind.Consumable, Sentence.Of($"Cable ties"), PieceNeed.Pieces((int)Math.Ceiling(runM * Allowances.TiesPerMetreCount)), stock, StockUse.Consumable);
        }

        int crimps = ends.Count(end => end.Pull is not null);
        if (crimps > 0)
        {
            yield return Look("heat-shrink", BringKind.Consumable, Sentence.Of($"Heat-shrink with glue, {new Amount(Allowances.SleeveM, "M")} over each of {crimps} crimps"),
                new Amount(CutList.RoundedUpM(crimps * Allowances.SleeveM), "M"), stock, StockUse.Consumable);
        }
    }

    private static BringItem Look(string key, BringKind kind, Sentence what, Amount needed, IEnumerable<StockItem> stock, StockUse use) => new()
    {
        Key = key,
        Kind = kind,
        What = what,
        Needed = needed,
        State = StockState.Look,
        Takes = [.. stock.Where(item => item.Use == use).Select(item => new StockTake(item.Id, item.Title, null, item.Where))],
        Remarks = [Sentence.Of($"The stock list does not say which of these it is: look.")],
    };
}
