using System.Collections.Immutable;

namespace Orlop.Numerics.Graphs;

/// <summary>Branch and bound over charges, and over which trips may enter a room.</summary>
internal sealed class SharedPathSearch(SharedTrips problem, int mostSearchCount, CancellationToken token)
{
    private const double RoundOff = 1e-9;

    // With more trips than this besides, a room is taken as one that might hold more, unseen.
    private const int MostTriedCount = 10;

    private enum Charge : byte { Open, Paid, Barred }

    /// <summary>A part of all plans: what is said of charges and rooms, the least paths at shares, and what no plan in it is below.</summary>
    private sealed record Box(ImmutableArray<Charge> Charges, ImmutableHashSet<(int Trip, int Room)> Closed, ImmutableArray<int>[] Paths, double Bound);

    private readonly PriorityQueue<Box, (double Bound, int Turn)> _open = new();
    private readonly TripPaths _paths = new(problem);
    private ImmutableArray<ImmutableArray<int>> _best;
    private double _bestWeight = double.PositiveInfinity;
    private int _turn;

    public SharedPaths? Find()
    {
        // Where more trips might fit where fewer do not, what is split off is not all that is left: no plan is known to be above this.
        double unsure = double.PositiveInfinity, bound = double.PositiveInfinity;
        foreach (ImmutableArray<int>[] plan in new SharedPlans(problem, _paths).All())
        {
            Keep(plan);
        }

        Push([.. problem.Charges.Select(_ => Charge.Open)], []);
        while (_open.TryDequeue(out Box? box, out _))
        {
            token.ThrowIfCancellationRequested();
            if (box.Bound >= _bestWeight - RoundOff || _paths.SearchCount >= mostSearchCount)
            {
                bound = box.Bound;
                break;
            }

            if (MostOpen(box) is { } charge)
            {
                Push(box.Charges.SetItem(charge, Charge.Paid), box.Closed);
                Push(box.Charges.SetItem(charge, Charge.Barred), box.Closed);
            }
            else if (TooFull(box.Paths) is var (room, trips))
            {
                unsure = MayHoldMore(box, room, trips) ? Math.Min(unsure, box.Bound) : unsure;
                foreach (int trip in trips)
                {
                    Push(box.Charges, box.Closed.Add((trip, room)));
                }
            }
        }

        return _best.IsDefault ? null : new SharedPaths(_best, _bestWeight, Math.Min(_bestWeight, Math.Min(unsure, bound)), _paths.SearchCount);
    }

    private void Push(ImmutableArray<Charge> charges, ImmutableHashSet<(int Trip, int Room)> closed)
    {
        double bound = Enumerable.Range(0, charges.Length).Where(charge => charges[charge] == Charge.Paid).Sum(charge => problem.Charges[charge]);
        ImmutableArray<int>[] paths = new ImmutableArray<int>[problem.Trips.Length];
        for (int trip = 0; trip < paths.Length; trip++)
        {
            int of = trip;
            if (_paths.Find(trip, charge => PriceIn(charges, of, charge), room => closed.Contains((of, room))) is not { } path)
            {
                return;
            }

            paths[trip] = path.Arcs;
            bound += path.Weight;
        }

        if (bound < _bestWeight - RoundOff)
        {
            Keep(paths);
            _open.Enqueue(new Box(charges, closed, paths, bound), (bound, _turn++));
        }
    }

    private double PriceIn(ImmutableArray<Charge> charges, int trip, int charge) => charges[charge] switch
    {
        Charge.Paid => 0,
        Charge.Barred => double.PositiveInfinity,
        _ => _paths.ShareOf(trip, charge),
    };

    private void Keep(ImmutableArray<int>[] paths)
    {
        double weight = problem.WeightOf(paths);
        if (weight < _bestWeight - RoundOff && TooFull(paths) is null)
        {
            (_best, _bestWeight) = ([.. paths], weight);
        }
    }

    // Of the open charges that the paths meet, the one of which the greatest part is not in the bound.
    private int? MostOpen(Box box)
    {
        var unpaid = box.Paths.Index()
            .SelectMany(trip => trip.Item.SelectMany(arc => problem.Trips[trip.Index].Arcs[arc].Charges.Where(charge => box.Charges[charge] == Charge.Open).Select(charge => (charge, Share: _paths.ShareOf(trip.Index, charge)))))
            .GroupBy(met => met.charge).Select(met => (Charge: met.Key, Unpaid: problem.Charges[met.Key] - met.Sum(part => part.Share)))
            .OrderByDescending(met => met.Unpaid).ThenBy(met => met.Charge).FirstOrDefault((Charge: -1, Unpaid: 0));
        return unpaid.Unpaid > RoundOff ? unpaid.Charge : null;
    }

    private (int Room, List<int> Trips)? TooFull(ImmutableArray<int>[] paths)
    {
        foreach ((int room, List<int> trips) in problem.InRooms([.. paths.Select(path => (ImmutableArray<int>?)path)]).OrderBy(room => room.Key))
        {
            if (!problem.Fits(room, trips))
            {
                return (room, trips);
            }
        }

        return null;
    }

    // A room may allow three what it does not allow two.
    private bool MayHoldMore(Box box, int room, List<int> trips)
    {
        int[] others = [.. Enumerable.Range(0, problem.Trips.Length).Where(trip => !trips.Contains(trip) && !box.Closed.Contains((trip, room)) && _paths.Enters(trip, room))];
        return others.Length > MostTriedCount || Enumerable.Range(1, (1 << others.Length) - 1).Any(set => problem.Fits(room, [.. trips.Concat(others.Where((_, at) => (set & (1 << at)) != 0)).Order()]));
    }
}
