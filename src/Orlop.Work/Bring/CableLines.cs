using System.Collections.Immutable;
using System.Globalization;
using Orlop.Boat.Things;
using Orlop.Review.Findings;
using Orlop.Work.Scope;

namespace Orlop.Work.Bring;

/// <summary>Cable to bring, the cuts of one size and kind on one line.</summary>
internal static class CableLines
{
    public static IEnumerable<BringItem> Of(PackScope scope, ImmutableArray<CableCut> cuts)
    {
        foreach (var kind in cuts.GroupBy(cut => KindOf((Cable)scope.Whole.Find(cut.CableId)!, cut)).OrderBy(kind => kind.Key.AreaMm2))
        {
            double neededM = kind.Sum(cut => cut.CutM ?? 0), uncoveredM = kind.Where(cut => cut.StockId is null).Sum(cut => cut.CutM ?? 0);
            bool isKnown = kind.All(cut => cut.CutM is not null);
            ImmutableArray<Sentence> remarks =
            [
                Sentence.Of($"The stock list knows size and length only: read cores, insulation and colour on the cable itself."),
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

    private sealed record CableKind(double AreaMm2, StrandClass Strands, int CoreCount, double? InsulationC);

    private static CableKind KindOf(Cable cable, CableCut cut) => new(cut.AreaMm2, cable.Strands, cut.CoreCount, cable.InsulationC?.Value);

    private static Sentence What(CableKind kind)
    {
        string cores = kind.CoreCount switch { 1 => "Single", 2 => "Twin", _ => string.Create(CultureInfo.InvariantCulture, $"{kind.CoreCount}-core") };
        string strands = kind.Strands switch
        {
            StrandClass.Flexible5 => "flexible (class 5)",
            StrandClass.FlexibleTinned5 => "flexible, tinned (class 5)",
            StrandClass.Stranded2 => "stranded (class 2)",
            _ => "stranded, tinned (class 2)",
        };
        return kind.InsulationC is { } insulation
            ? Sentence.Of($"{cores} {new Amount(kind.AreaMm2, "Mm2")}, {strands}, insulation {new Amount(insulation, "C")}")
            : Sentence.Of($"{cores} {new Amount(kind.AreaMm2, "Mm2")}, {strands}, insulation not given");
    }
}
