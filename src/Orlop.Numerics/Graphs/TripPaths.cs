namespace Orlop.Numerics.Graphs;

/// <summary>Shortest paths of trips, with charges at any price and rooms closed.</summary>
internal sealed class TripPaths
{
    private readonly SharedTrips _problem;
    private readonly double[][] _shares;
    private readonly HashSet<int>[] _rooms;

    public TripPaths(SharedTrips problem)
    {
        _problem = problem;
        _rooms = [.. problem.Trips.Select(trip => trip.Arcs.Select(arc => arc.Room).OfType<int>().ToHashSet())];
        int[][] passes = [.. problem.Trips.Select(PassesOf)];
        _shares = [.. passes.Select(of => of.Select((count, charge) => count == 0 ? 0 : problem.Charges[charge] / count / passes.Count(other => other[charge] > 0)).ToArray())];
    }

    /// <summary>How many paths were sought.</summary>
    public int SearchCount { get; private set; }

    /// <summary>What a trip pays of a charge each time it meets it, so that all trips together never pay more than it costs, whatever their paths.</summary>
    public double ShareOf(int trip, int charge) => _shares[trip][charge];

    /// <summary>A trip may pass the room.</summary>
    public bool Enters(int trip, int room) => _rooms[trip].Contains(room);

    /// <summary>The shortest path; null where there is none.</summary>
    /// <param name="trip">The trip.</param>
    /// <param name="priceOf">What meeting a charge costs; infinite where it must not be met.</param>
    /// <param name="isClosed">Whether a room must not be entered.</param>
    public GraphPath? Find(int trip, Func<int, double> priceOf, Func<int, bool> isClosed)
    {
        SearchCount++;
        SharedTrip of = _problem.Trips[trip];
        HashSet<int> closed = [];
        Arc[] arcs = new Arc[of.Arcs.Length];
        for (int k = 0; k < arcs.Length; k++)
        {
            SharedArc arc = of.Arcs[k];
            double weight = arc.Weight + arc.Charges.Sum(priceOf);
            bool isOpen = double.IsFinite(weight) && !(arc.Room is { } room && isClosed(room));
            arcs[k] = new Arc(arc.From, arc.To, isOpen ? weight : 0);
            if (!isOpen)
            {
                closed.Add(k);
            }
        }

        return ShortestPaths.Find(new WeightedGraph(of.NodeCount, arcs), of.From, of.To, [], closed);
    }

    // How often at most a path that passes no node twice can meet each charge: it enters a node once, and takes a pair of nodes one way alone.
    private int[] PassesOf(SharedTrip trip) =>
    [
        .. _problem.Charges.Select((_, charge) =>
        {
            SharedArc[] bearing = [.. trip.Arcs.Where(arc => arc.Charges.Contains(charge))];
            return Math.Min(bearing.Select(arc => arc.To).Distinct().Count(), bearing.Select(arc => (Math.Min(arc.From, arc.To), Math.Max(arc.From, arc.To))).Distinct().Count());
        }),
    ];
}
