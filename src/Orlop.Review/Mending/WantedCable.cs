using System.Globalization;
using Orlop.Boat.Things;
using Orlop.Review.Findings;

namespace Orlop.Review.Mending;

/// <summary>Whether what lies in stock is what was reviewed.</summary>
public enum StockFit
{
    /// <summary>It is known to be another.</summary>
    Other,

    /// <summary>Nothing known of it speaks against it, but not all is known, or its insulation bears more than was reviewed.</summary>
    MayDo,

    /// <summary>It is known to be it.</summary>
    Same,
}

/// <summary>
/// The cable that was reviewed, to be held against stock: cross-section, cores, insulation and stranding decide its ampacity, its loss and what it may be laid beside. The one rule of
/// what is taken from stock, for mending and for the work pack.
/// </summary>
/// <param name="AreaMm2">Cross-section of each core in mm², above 0.</param>
/// <param name="CoreCount">Cores in one piece, from 1.</param>
/// <param name="InsulationC">Temperature its insulation is rated for in °C; null where the cable does not say, and nothing was reviewed with it.</param>
/// <param name="Strands">How its conductors are stranded.</param>
public sealed record WantedCable(double AreaMm2, int CoreCount, double? InsulationC, StrandClass Strands)
{
    // Sizes that are the same conductor, by its rounding.
    private const double SameSizeFraction = 0.02;
    private const double SameC = 0.5;

    /// <summary>A cable, or one piece of it.</summary>
    /// <param name="coreCount">Cores in the piece.</param>
    public static WantedCable Of(Cable cable, int coreCount) => new(cable.AreaMm2.Value, coreCount, cable.InsulationC?.Value, cable.Strands);

    /// <summary>The two sizes are the same conductor, within 2 %.</summary>
    public static bool IsSameSize(double areaMm2, double otherMm2) => Math.Abs(areaMm2 - otherMm2) <= SameSizeFraction * areaMm2;

    /// <summary>How stranded, in words: "flexible, tinned (class 5)".</summary>
    public static string WordsOf(StrandClass strands) => strands switch
    {
        StrandClass.Flexible5 => "flexible (class 5)",
        StrandClass.FlexibleTinned5 => "flexible, tinned (class 5)",
        StrandClass.Stranded2 => "stranded (class 2)",
        _ => "stranded, tinned (class 2)",
    };

    /// <summary>How many cores, in a word: "Twin".</summary>
    public static string WordOf(int coreCount) => coreCount switch { 1 => "Single", 2 => "Twin", _ => string.Create(CultureInfo.InvariantCulture, $"{coreCount}-core") };

    /// <summary>Whether a stock item is it, and what is not known or is another; nothing for another cross-section.</summary>
    public (StockFit Fit, Sentence? Why) Held(StockedCable stocked)
    {
        if (stocked.AreaMm2 is not { } area || !IsSameSize(AreaMm2, area))
        {
            return (StockFit.Other, null);
        }

        (StockFit Fit, Sentence Why)[] against =
        [
            .. stocked.CoreCount is not { } cores ? [(StockFit.MayDo, Sentence.Of($"cores not given"))]
                : cores == CoreCount ? Array.Empty<(StockFit, Sentence)>() : [(StockFit.Other, Sentence.Of($"{WordOf(cores).ToLowerInvariant()}, where {WordOf(CoreCount).ToLowerInvariant()} was reviewed"))],
            .. OfInsulation(stocked.InsulationC),
            .. stocked.Strands is not { } strands ? [(StockFit.MayDo, Sentence.Of($"stranding not given"))]
                : strands == Strands ? Array.Empty<(StockFit, Sentence)>() : [(StockFit.Other, Sentence.Of($"{WordsOf(strands)}, where {WordsOf(Strands)} was reviewed"))],
        ];
        return against.Length == 0 ? (StockFit.Same, null) : (against.Min(each => each.Fit), against.Select(each => each.Why).Aggregate((all, next) => Sentence.Of($"{all}; {next}")));
    }

    private (StockFit Fit, Sentence Why)[] OfInsulation(double? insulationC) => (InsulationC, insulationC) switch
    {
        (null, _) => [],
        (_, null) => [(StockFit.MayDo, Sentence.Of($"insulation not given"))],
        ({ } wanted, { } had) when Math.Abs(wanted - had) <= SameC => [],
        ({ } wanted, { } had) => [(had > wanted ? StockFit.MayDo : StockFit.Other, Sentence.Of($"insulated for {new Amount(had, "C")}, where {new Amount(wanted, "C")} was reviewed"))],
    };
}

/// <summary>What is known of a cable in stock: as the item says, or else as the catalogue part does that it is one of.</summary>
/// <param name="AreaMm2">Cross-section of each core in mm².</param>
/// <param name="CoreCount">Cores in it.</param>
/// <param name="InsulationC">Temperature its insulation is rated for in °C.</param>
/// <param name="Strands">How its conductors are stranded.</param>
public sealed record StockedCable(double? AreaMm2, int? CoreCount, double? InsulationC, StrandClass? Strands)
{
    /// <summary>A stock item.</summary>
    public static StockedCable Of(StockItem item, Catalogue catalogue)
    {
        ArgumentNullException.ThrowIfNull(item);
        ArgumentNullException.ThrowIfNull(catalogue);
        CataloguePart? part = item.Catalogue is { } id && catalogue.Find(id) is { Use: CatalogueUse.Cable } found ? found : null;
        return new(item.AreaMm2?.Value ?? part?.AreaMm2?.Value, item.CoreCount ?? part?.CoreCount, item.InsulationC?.Value ?? part?.InsulationC?.Value, item.Strands ?? part?.Strands);
    }
}
