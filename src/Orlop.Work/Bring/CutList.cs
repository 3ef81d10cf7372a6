using System.Collections.Immutable;
using Orlop.Boat.Things;
using Orlop.Boat.Topology;
using Orlop.Boat.Values;
using Orlop.Presentation.Words;
using Orlop.Review.Findings;
using Orlop.Review.Mending;
using Orlop.Work.Scope;
using Orlop.Work.Tables;

namespace Orlop.Work.Bring;

/// <summary>
/// What to cut for the cables that are not built yet, and from which reel: the longest piece first, each from the shortest reel of its size
/// that still holds it (best fit decreasing), a reel whose colour goes with the core before any other.
/// </summary>
internal static class CutList
{
    public static ImmutableArray<CableCut> Of(PackScope scope)
    {
        Dictionary<string, double> leftM = scope.AsBuilt.All<StockItem>()
            .Where(item => item is { Use: StockUse.Cable, LengthM: not null, AreaMm2: not null })
            .ToDictionary(item => item.Id, item => item.LengthM!.Value, StringComparer.Ordinal);
        IEnumerable<CableCut> cuts = scope.Of(ChangeKind.Cable).Where(change => !change.IsBuilt).SelectMany(change => Cuts((Cable)change.Thing))
            .OrderByDescending(cut => cut.CutM ?? double.MaxValue);
        return [.. cuts.Select(cut => cut.CutM is { } lengthM ? From(Take(scope, leftM, cut, lengthM), cut) : cut)];
    }

    /// <summary>The two sizes are the same conductor, within 2 %.</summary>
    public static bool IsSameSize(double areaMm2, double otherMm2) => Math.Abs(areaMm2 - otherMm2) <= 0.02 * areaMm2;

    private static StockItem? Take(PackScope scope, Dictionary<string, double> leftM, CableCut cut, double lengthM)
    {
        StockItem? reel = scope.AsBuilt.All<StockItem>()
            .Where(item => leftM.TryGetValue(item.Id, out double left) && left >= lengthM && IsSameSize(cut.AreaMm2, item.AreaMm2!.Value))
            .OrderBy(item => CoreColour.Misfit(cut.CoreId, CoreColour.Of(item))).ThenBy(item => leftM[item.Id]).ThenBy(item => item.Id, StringComparer.Ordinal).FirstOrDefault();
        if (reel is not null)
        {
            leftM[reel.Id] -= lengthM;
        }

        return reel;
    }

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

    private static IEnumerable<CableCut> Cuts(Cable cable)
    {
        if (cable.IsSheathed || cable.Cores.Count <= 1)
        {
            return [Cut(cable.Id, cable.Title, cable, Math.Max(1, cable.Cores.Count), [.. cable.Cores.Select(core => core.LengthM ?? cable.LengthM).DefaultIfEmpty(cable.LengthM)]) with { CoreId = cable.Cores.Count == 1 ? cable.Cores[0].Id : null }];
        }

        return cable.Cores.Select(core => Cut(ElementIds.Core(cable, core), $"{cable.Title}, {PartWords.CoreName(core.Id)}", cable, 1, [core.LengthM ?? cable.LengthM]) with { CoreId = core.Id });
    }

    private static CableCut Cut(string key, string title, Cable cable, int coreCount, Quantity?[] lengths)
    {
        double alongRunM = cable.Run.Sum(leg => leg.LengthM);
        double? givenM = lengths.Any(length => length is null) ? null : lengths.Max(length => length!.Value);
        double? runM = givenM is null && cable.Run.Count == 0 ? null : Math.Max(givenM ?? 0, alongRunM);
        double deviationM = lengths.Max(length => length?.PlusMinus ?? 0), unsureM = CutAllowance.UnsureM(deviationM), allowanceM = Allowances.Cut.AllowanceM(deviationM);
        Sentence? remark = runM is null
            ? Sentence.Of($"Neither a length nor a run is given: measure on board before cutting.")
            : unsureM > 0 ? Sentence.Of($"Length not measured to better than {new Amount(unsureM, "M")}: measure on board before cutting.") : null;
        return new CableCut(key, title, cable.Id, cable.AreaMm2.Value, coreCount, runM, allowanceM, runM is null ? null : Allowances.Cut.CutM(runM.Value, deviationM), null, remark);
    }
}
