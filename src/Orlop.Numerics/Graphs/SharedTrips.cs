using System.Collections.Immutable;

namespace Orlop.Numerics.Graphs;

/// <summary>A piece of a trip, passable one way.</summary>
/// <param name="From">Node it leaves, from 0.</param>
/// <param name="To">Node it reaches.</param>
/// <param name="Weight">What each trip pays that passes it: finite, at least 0.</param>
/// <param name="Charges">What is paid once for all trips, however many pass: indices of charges.</param>
/// <param name="Room">The room it is in; null for none. A room may hold some trips and not others.</param>
public sealed record SharedArc(int From, int To, double Weight, ImmutableArray<int> Charges, int? Room = null);

/// <summary>A trip from one node to another.</summary>
/// <param name="NodeCount">How many nodes its graph has, numbered from 0.</param>
/// <param name="From">Where it begins.</param>
/// <param name="To">Where it ends.</param>
/// <param name="Arcs">The pieces it may take.</param>
public sealed record SharedTrip(int NodeCount, int From, int To, ImmutableArray<SharedArc> Arcs);

/// <summary>Several trips that share what is paid once.</summary>
/// <param name="Trips">The trips, at most <see cref="MostTripCount"/>.</param>
/// <param name="Charges">What each charge weighs, once: finite, at least 0.</param>
/// <param name="Fits">Whether a room holds these trips together.</param>
public sealed record SharedTrips(ImmutableArray<SharedTrip> Trips, ImmutableArray<double> Charges, Func<int, IReadOnlyList<int>, bool> Fits)
{
    /// <summary>Most trips that are planned together.</summary>
    public const int MostTripCount = 24;

    /// <summary>What paths weigh together: each its own pieces, and each charge that any of them meets once.</summary>
    public double WeightOf(IReadOnlyList<ImmutableArray<int>> paths)
    {
        ArgumentNullException.ThrowIfNull(paths);
        IEnumerable<SharedArc> all = Trips.Zip(paths).SelectMany(pair => pair.Second.Select(arc => pair.First.Arcs[arc]));
        return all.Sum(arc => arc.Weight) + all.SelectMany(arc => arc.Charges).Distinct().Sum(charge => Charges[charge]);
    }

    /// <summary>The trips in each room, for paths.</summary>
    internal Dictionary<int, List<int>> InRooms(IReadOnlyList<ImmutableArray<int>?> paths)
    {
        Dictionary<int, List<int>> inRooms = [];
        for (int trip = 0; trip < paths.Count; trip++)
        {
            foreach (int room in (paths[trip] ?? []).Select(arc => Trips[trip].Arcs[arc].Room).OfType<int>().Distinct())
            {
                (inRooms.TryGetValue(room, out List<int>? trips) ? trips : inRooms[room] = []).Add(trip);
            }
        }

        return inRooms;
    }
}
