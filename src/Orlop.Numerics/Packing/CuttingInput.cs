using System.Collections.Immutable;

namespace Orlop.Numerics.Packing;

/// <summary>Pieces to be cut from lengths in stock.</summary>
public sealed record CuttingInput
{
    /// <summary>Lengths in stock, each at least 0.</summary>
    public required ImmutableArray<double> Stocks { get; init; }

    /// <summary>Lengths to cut, each above 0.</summary>
    public required ImmutableArray<double> Pieces { get; init; }

    /// <summary>Lost at each cut between two pieces.</summary>
    public double CutLoss { get; init; }

    /// <summary>A remainder as long as this is kept and is no waste; infinite where every remainder is.</summary>
    public double UsefulLength { get; init; } = double.PositiveInfinity;

    /// <summary>How badly a piece goes with a stock, 0 where it goes well; null where it may not be cut from it. By piece and stock.</summary>
    public Func<int, int, int?> Misfit { get; init; } = static (_, _) => 0;

    /// <summary>How many places the search for a better plan may look at.</summary>
    public int MostSteps { get; init; } = 200_000;
}

/// <summary>What is compared of plans, first what is not cut at all, then misfits, waste, and the length of the stocks that are cut into: the less the better.</summary>
/// <param name="Unplaced">Length of the pieces that no stock is left for.</param>
/// <param name="Misfit">Misfits together.</param>
/// <param name="Waste">Remainders too short to keep, of the stocks that are cut into.</param>
/// <param name="Opened">Length of the stocks that are cut into.</param>
public readonly record struct CuttingScore(double Unplaced, int Misfit, double Waste, double Opened) : IComparable<CuttingScore>
{
    private const double Slack = 1e-9;

    public int CompareTo(CuttingScore other) =>
        Math.Abs(Unplaced - other.Unplaced) > Slack ? Unplaced.CompareTo(other.Unplaced)
        : Misfit != other.Misfit ? Misfit.CompareTo(other.Misfit)
        : Math.Abs(Waste - other.Waste) > Slack ? Waste.CompareTo(other.Waste)
        : Math.Abs(Opened - other.Opened) > Slack ? Opened.CompareTo(other.Opened) : 0;

    public static bool operator <(CuttingScore left, CuttingScore right) => left.CompareTo(right) < 0;

    public static bool operator >(CuttingScore left, CuttingScore right) => left.CompareTo(right) > 0;

    public static bool operator <=(CuttingScore left, CuttingScore right) => left.CompareTo(right) <= 0;

    public static bool operator >=(CuttingScore left, CuttingScore right) => left.CompareTo(right) >= 0;
}

/// <summary>Which piece is cut from which stock.</summary>
/// <param name="StockOf">For each piece the stock it is cut from; null where none is left.</param>
/// <param name="Score">What it leaves and wastes.</param>
/// <param name="IsProven">No other plan is better; otherwise the search ended before it could tell.</param>
public sealed record CuttingPlan(ImmutableArray<int?> StockOf, CuttingScore Score, bool IsProven);
