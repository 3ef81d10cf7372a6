namespace Orlop.Review.Mending;

/// <summary>How far a search is.</summary>
/// <param name="ReviewedCount">Sets reviewed.</param>
/// <param name="MostCount">The most that are reviewed.</param>
/// <param name="HasFound">A good set is found already; a lesser one is looked for.</param>
public sealed record MendProgress(int ReviewedCount, int MostCount, bool HasFound);
