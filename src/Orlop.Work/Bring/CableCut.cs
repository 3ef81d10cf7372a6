using Orlop.Review.Findings;
using Orlop.Review.Mending;

namespace Orlop.Work.Bring;

/// <summary>One length to cut: a sheathed cable, or one core of a cable of single conductors.</summary>
/// <param name="Key">The cable, or the core as <c>cable.core</c>.</param>
/// <param name="Title">What people call it.</param>
/// <param name="CableId">The cable it becomes.</param>
/// <param name="Wanted">What was reviewed: cross-section, cores, insulation, stranding.</param>
/// <param name="RunM">From terminal to terminal, in metres; null when neither a length nor a run is given.</param>
/// <param name="AllowanceM">For tails, making off and a service loop, and for what the length is not known to, in metres.</param>
/// <param name="CutM">To be cut, rounded up to the next 0.1 m; null when the run is not known.</param>
/// <param name="StockId">The reel it is cut from; null when none that is known to be of it is long enough.</param>
/// <param name="Remark">Why it cannot be said, or what to check.</param>
public sealed record CableCut(
    string Key, string Title, string CableId, WantedCable Wanted, double? RunM, double AllowanceM, double? CutM, string? StockId, Sentence? Remark)
{
    /// <summary>Cross-section of each core in mm².</summary>
    public double AreaMm2 => Wanted.AreaMm2;

    /// <summary>Cores in it.</summary>
    public int CoreCount => Wanted.CoreCount;

    /// <summary>The one core that it becomes; null for a cable of several in one piece.</summary>
    public string? CoreId { get; init; }

    /// <summary>Colour with which both ends are marked, because the reel's is another: "red"; null where none is needed or the reel's is not known.</summary>
    public string? MarkAs { get; init; }

    /// <summary>What to do or look for because of the insulation's colour; null where the reel's fits.</summary>
    public Sentence? Colour { get; init; }
}
