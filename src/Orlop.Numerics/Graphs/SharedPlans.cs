using System.Collections.Immutable;

namespace Orlop.Numerics.Graphs;

/// <summary>
/// Plans that are good but not proved: one trip after the other takes its path, each into what those before it leave of the rooms, told a share of every charge; then each in turn takes the path that
/// is best beside the others, until none finds a better one.
/// </summary>
internal sealed class SharedPlans(SharedTrips problem, TripPaths paths)
{
    private const int MostRounds = 12;
    private const double RoundOff = 1e-9;

    // The share of a charge that a trip is told at the start: all, its share, next to none.
    private static readonly double[] Starts = [1, 0.5, 0.2, 0];

    /// <summary>A plan from each start that finds one.</summary>
    public IEnumerable<ImmutableArray<int>[]> All() => Starts.Select(Started).OfType<ImmutableArray<int>?[]>().Select(Settled);

    private ImmutableArray<int>?[]? Started(double share)
    {
        ImmutableArray<int>?[] taken = new ImmutableArray<int>?[problem.Trips.Length];
        for (int trip = 0; trip < taken.Length; trip++)
        {
            if (paths.Find(trip, charge => share * problem.Charges[charge], FullFor(taken, trip)) is not { } path)
            {
                return null;
            }

            taken[trip] = path.Arcs;
        }

        return taken;
    }

    private ImmutableArray<int>[] Settled(ImmutableArray<int>?[] taken)
    {
        bool hasChanged = true;
        for (int round = 0; round < MostRounds && hasChanged; round++)
        {
            hasChanged = false;
            for (int trip = 0; trip < taken.Length; trip++)
            {
                int of = trip;
                HashSet<int> paid = [.. taken.Index().Where(other => other.Index != of).SelectMany(other => other.Item!.Value.SelectMany(arc => problem.Trips[other.Index].Arcs[arc].Charges))];
                if (paths.Find(trip, charge => paid.Contains(charge) ? 0 : problem.Charges[charge], FullFor(taken, trip)) is { } next)
                {
                    ImmutableArray<int>?[] tried = [.. taken];
                    tried[trip] = next.Arcs;
                    // Without this trip a room may hold less than with it, so the others are looked at again.
                    if (problem.WeightOf(Whole(tried)) < problem.WeightOf(Whole(taken)) - RoundOff && problem.InRooms(tried).All(room => problem.Fits(room.Key, room.Value)))
                    {
                        taken[trip] = next.Arcs;
                        hasChanged = true;
                    }
                }
            }
        }

        return Whole(taken);
    }

    private static ImmutableArray<int>[] Whole(ImmutableArray<int>?[] taken) => [.. taken.Select(path => path!.Value)];

    // Rooms that do not hold the trip beside those that have a path now.
    private Func<int, bool> FullFor(ImmutableArray<int>?[] taken, int trip)
    {
        ImmutableArray<int>?[] others = [.. taken];
        others[trip] = null;
        HashSet<int> full = [.. problem.InRooms(others).Where(room => !problem.Fits(room.Key, [.. room.Value.Append(trip).Order()])).Select(room => room.Key)];
        return full.Contains;
    }
}
