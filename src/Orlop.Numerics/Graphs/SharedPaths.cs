using System.Collections.Immutable;

namespace Orlop.Numerics.Graphs;

/// <summary>Paths for several trips that together weigh the least, charges counted once.</summary>
/// <param name="Paths">For each trip the indices of its arcs, in order.</param>
/// <param name="Weight">What they weigh together.</param>
/// <param name="Least">No paths weigh less together than this.</param>
/// <param name="SearchCount">How many shortest paths were sought.</param>
/// <remarks>
/// With one start for all trips and nothing but charges this is the Steiner tree of a graph: <see cref="SteinerTree"/>. In general it is planned by branch and bound (Land and Doig 1960, from memory):
/// a charge is paid, or barred, or open; while it is open each trip that meets it pays its share of it, which is never more than it costs.
/// </remarks>
public sealed record SharedPaths(ImmutableArray<ImmutableArray<int>> Paths, double Weight, double Least, int SearchCount)
{
    /// <summary>The most shortest paths that are sought where nothing else is said. A limit by number, not by the clock, so that the answer is the same every time.</summary>
    public const int MostSearchCount = 20_000;

    // A difference that is round-off.
    private const double RoundOff = 1e-9;

    /// <summary>No other paths weigh less.</summary>
    public bool IsProved => Weight - Least <= RoundOff * Math.Max(1, Weight);

    /// <summary>How far above the least they may be at most, as a share of the least; infinite where nothing is known of it.</summary>
    public double MostAboveFraction => IsProved ? 0 : Least > 0 ? (Weight - Least) / Least : double.PositiveInfinity;

    /// <summary>The best paths; null where a trip has none, or no room for all was found.</summary>
    /// <param name="trips">The trips.</param>
    /// <param name="mostSearchCount">The most shortest paths that are sought; the first plan is made whatever it takes.</param>
    /// <param name="token">Ends the search with nothing.</param>
    public static SharedPaths? Find(SharedTrips trips, int mostSearchCount = MostSearchCount, CancellationToken token = default)
    {
        ArgumentNullException.ThrowIfNull(trips);
        return trips.Trips.Length is 0 or > SharedTrips.MostTripCount
            ? throw new ArgumentOutOfRangeException(nameof(trips), trips.Trips.Length, $"Shared paths: 1 to {SharedTrips.MostTripCount} trips.")
            : new SharedPathSearch(trips, mostSearchCount, token).Find();
    }
}
