using System.Collections.Immutable;

namespace Orlop.Work.Bring;

/// <summary>What is cut from one reel or offcut.</summary>
/// <param name="StockId">Its id.</param>
/// <param name="Title">What people call it.</param>
/// <param name="Where">Where it lies; null when nobody said.</param>
/// <param name="HadM">Its length before, in metres.</param>
/// <param name="Pieces">What is cut from it, the longest first: key of the cut and length in metres.</param>
/// <param name="IsKept">What is left is long enough to keep.</param>
public sealed record ReelPlan(string StockId, string Title, string? Where, double HadM, ImmutableArray<(string Key, double LengthM)> Pieces, bool IsKept)
{
    /// <summary>What is left of it, in metres.</summary>
    public double LeftM => Math.Round(HadM - Pieces.Sum(piece => piece.LengthM), 6);
}

/// <summary>What to cut, and from which reels and offcuts.</summary>
/// <param name="Cuts">The lengths to cut, longest first.</param>
/// <param name="Reels">The reels and offcuts that are cut into.</param>
/// <param name="IsLeastWaste">Of the reels that are known to be what was reviewed, no other way of cutting leaves less to buy, and none whose colours go as well throws less away; otherwise that was not looked at to the end.</param>
public sealed record CutPlan(ImmutableArray<CableCut> Cuts, ImmutableArray<ReelPlan> Reels, bool IsLeastWaste);
