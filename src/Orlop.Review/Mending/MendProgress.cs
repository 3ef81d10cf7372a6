namespace Orlop.Review.Mending;

/// <summary>How far a search is.</summary>
/// <param name="ReviewedCount">Sets reviewed.</param>
/// <param name="MostCount">The most that are reviewed.</param>
/// <param name="HasFound">A good set is found already; a lesser one is looked for.</param>
public sealed record MendProgress(int ReviewedCount, int MostCount, bool HasFound)
{
    /// <summary>What is sought least of.</summary>
    public MendAim Aim { get; init; }

    /// <summary>What the best set so far costs, or adds in kg, by the aim: the one that is sought is no more. Null where none is found or it is not compared so.</summary>
    public double? Most { get; init; }

    /// <summary>What no good set is below, alike; it rises until it meets the most.</summary>
    public double? Least { get; init; }
}
