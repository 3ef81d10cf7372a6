using System.Collections.Immutable;
using Orlop.Boat.Things;
using Orlop.Boat.Topology;
using Orlop.Boat.Values;
using Orlop.Numerics.Packing;
using Orlop.Presentation.Words;
using Orlop.Review.Findings;
using Orlop.Review.Mending;
using Orlop.Review.Ways;
using Orlop.Work.Scope;
using Orlop.Work.Tables;

namespace Orlop.Work.Bring;

/// <summary>
/// What to cut for the cables that are not built yet, and from which reel or offcut: as much as there is of what is known to be what was reviewed, each core from a reel whose
/// colour goes with it where that can be, and so that the least is thrown away; a reel that need not be cut into is left whole.
/// </summary>
internal static class CutList
{
    public static CutPlan Of(PackScope scope)
    {
        RouteRules rules = RouteRules.Of(scope.AsBuilt);
        CableCut[] cuts = [.. scope.Of(ChangeKind.Cable).Where(change => !change.IsBuilt).SelectMany(change => Cuts((Cable)change.Thing, rules)).OrderByDescending(cut => cut.CutM ?? double.MaxValue)];
        ImmutableArray<(StockItem Item, StockedCable Known)> stock = StockOf(scope);
        Dictionary<string, StockItem> takes = new(StringComparer.Ordinal);
        bool isLeast = true;
        foreach (CableCut[] alike in BySize([.. cuts.Where(cut => cut.CutM is not null)]))
        {
            (StockItem Item, StockedCable Known)[] reels = [.. stock.Where(reel => alike.Any(cut => IsOf(cut, reel.Known)))];
            CuttingPlan plan = CuttingStock.Plan(new CuttingInput
            {
                Stocks = [.. reels.Select(reel => reel.Item.LengthM!.Value)],
                Pieces = [.. alike.Select(cut => cut.CutM!.Value)],
                UsefulLength = Allowances.UsefulOffcutM,
                Misfit = (piece, reel) => IsOf(alike[piece], reels[reel].Known) ? CoreColour.Misfit(alike[piece].CoreId, CoreColour.Of(reels[reel].Item)) : null,
            });
            isLeast &= plan.IsProven;
            foreach ((int piece, int? reel) in plan.StockOf.Index().Where(pair => pair.Item is not null))
            {
                takes[alike[piece].Key] = reels[reel!.Value].Item;
            }
        }

        return new CutPlan([.. cuts.Select(cut => From(takes.GetValueOrDefault(cut.Key), cut))], [.. Reels(cuts, takes)], isLeast);
    }

    private static IEnumerable<ReelPlan> Reels(CableCut[] cuts, Dictionary<string, StockItem> takes) =>
        cuts.Where(cut => takes.ContainsKey(cut.Key)).GroupBy(cut => takes[cut.Key].Id).Select(reel =>
        {
            StockItem item = takes[reel.First().Key];
            ReelPlan plan = new(item.Id, item.Title, item.Where, item.LengthM!.Value, [.. reel.Select(cut => (cut.Key, cut.CutM!.Value))], IsKept: false);
            return plan with { IsKept = plan.LeftM >= Allowances.UsefulOffcutM };
        });

    // Sizes that are the same conductor share their reels.
    private static List<CableCut[]> BySize(IReadOnlyList<CableCut> cuts)
    {
        List<List<CableCut>> groups = [];
        foreach (CableCut cut in cuts)
        {
            List<CableCut>? alike = groups.Find(group => WantedCable.IsSameSize(group[0].AreaMm2, cut.AreaMm2));
            if (alike is null)
            {
                groups.Add(alike = []);
            }

            alike.Add(cut);
        }

        return [.. groups.Select(group => group.ToArray())];
    }

    /// <summary>The cable that lies ready, with what is known of it.</summary>
    public static ImmutableArray<(StockItem Item, StockedCable Known)> StockOf(PackScope scope)
    {
        Catalogue catalogue = Catalogue.Of(scope.AsBuilt);
        return [.. scope.AsBuilt.All<StockItem>().Where(item => item is { Use: StockUse.Cable, LengthM: not null }).Select(item => (item, StockedCable.Of(item, catalogue)))];
    }

    private static bool IsOf(CableCut cut, StockedCable known) => cut.Wanted.Held(known).Fit == StockFit.Same;

    private static CableCut From(StockItem? reel, CableCut cut)
    {
        if (reel is null)
        {
            return cut;
        }

        string? colour = CoreColour.Of(reel), mark = CoreColour.MarkFor(cut.CoreId, colour);
        return cut with
        {
            StockId = reel.Id,
            MarkAs = mark,
            Colour = mark is not null ? Sentence.Of($"{cut.Title} is cut from {colour}: mark both ends {mark} (common practice, no source).")
                : CoreColour.Misfit(cut.CoreId, colour) == 1 ? Sentence.Of($"Look at the colour: plus is never black unmarked.") : null,
        };
    }

    private static IEnumerable<CableCut> Cuts(Cable cable, RouteRules rules)
    {
        if (cable.IsSheathed || cable.Cores.Count <= 1)
        {
            return [Cut(cable.Id, cable.Title, cable, rules, Math.Max(1, cable.Cores.Count), [.. cable.Cores.Select(core => core.LengthM ?? cable.LengthM).DefaultIfEmpty(cable.LengthM)]) with { CoreId = cable.Cores.Count == 1 ? cable.Cores[0].Id : null }];
        }

        return cable.Cores.Select(core => Cut(ElementIds.Core(cable, core), $"{cable.Title}, {PartWords.CoreName(core.Id)}", cable, rules, 1, [core.LengthM ?? cable.LengthM]) with { CoreId = core.Id });
    }

    private static CableCut Cut(string key, string title, Cable cable, RouteRules rules, int coreCount, Quantity?[] lengths)
    {
        double alongRunM = cable.Run.Sum(leg => leg.LengthM);
        double? givenM = lengths.Any(length => length is null) ? null : lengths.Max(length => length!.Value);
        double? runM = givenM is null && cable.Run.Count == 0 ? null : Math.Max(givenM ?? 0, alongRunM);
        double deviationM = lengths.Max(length => length?.PlusMinus ?? 0), unsureM = CutAllowance.UnsureM(deviationM);
        CutAllowance allowance = Allowances.Cut(rules);
        double allowanceM = allowance.AllowanceM(deviationM);
        Sentence? remark = runM is null
            ? Sentence.Of($"Neither a length nor a run is given: measure on board before cutting.")
            : CableLengths.Apart(cable) is { } apart ? Sentence.Of($"Its length is {new Amount(apart.LengthM, "M")}, the stretches of its run add up to {new Amount(apart.RunM, "M")}: cut by the longer of the two. Measure on board which is right.")
            : unsureM > 0 ? Sentence.Of($"Length not measured to better than {new Amount(unsureM, "M")}: measure on board before cutting.") : null;
        return new CableCut(key, title, cable.Id, WantedCable.Of(cable, coreCount), runM, allowanceM, runM is null ? null : allowance.CutM(runM.Value, deviationM), null, remark);
    }
}
