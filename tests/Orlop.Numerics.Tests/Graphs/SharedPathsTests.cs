using System.Collections.Immutable;
using Orlop.Numerics.Graphs;
using Xunit;

namespace Orlop.Numerics.Tests.Graphs;

/// <summary>Paths that share what is paid once, against trying every set of paths, and against the Steiner tree that they are where nothing else is paid.</summary>
public sealed class SharedPathsTests
{
    private const int NodeCount = 6;
    private const int ChargeCount = 4;

    [Theory]
    [InlineData(int.MaxValue)]
    [InlineData(1)]
    public void Find_SmallRandomTrips_WeighWhatTheBestOfAllSetsOfPathsDoes(int mostInARoom)
    {
        int shared = 0, sought = 0;
        for (int seed = 0; seed < 60; seed++)
        {
            SharedTrips trips = Random(new Random(seed), mostInARoom);
            double best = LeastByTrying(trips);
            SharedPaths? found = Found(trips);

            Assert.Equal(double.IsInfinity(best), found is null);
            if (found is not null)
            {
                Assert.True(found.IsProved, $"seed {seed}");
                Assert.Equal(best, found.Weight, 1e-9);
                Assert.Equal(found.Weight, trips.WeightOf(found.Paths), 1e-9);
                Assert.All(found.Paths, (path, trip) => AssertLeads(trips.Trips[trip], path));
                sought++;
                shared += Apart(trips) > best + 1e-9 ? 1 : 0;
            }
        }

        Assert.True(sought > 30 && shared > 10, $"{sought} have paths, {shared} of them share");
    }

    [Fact]
    public void Find_StoppedEarly_SaysABoundThatIsBelowTheBest_AndIsNeverBelowTheLongerSearch()
    {
        int early = 0;
        for (int seed = 0; seed < 40; seed++)
        {
            SharedTrips trips = Random(new Random(seed), int.MaxValue);
            if (Found(trips) is { } whole)
            {
                SharedPaths stopped = Found(trips, 1)!;
                Assert.True(stopped.Least <= whole.Weight + 1e-9 && stopped.Weight >= whole.Weight - 1e-9, $"seed {seed}");
                Assert.True(whole.Weight <= (stopped.Least * (1 + stopped.MostAboveFraction)) + 1e-9 || double.IsInfinity(stopped.MostAboveFraction));
                early += stopped.IsProved ? 0 : 1;
            }
        }

        Assert.True(early > 3, "none was stopped early");
    }

    /// <summary>Trips from one node to others, of which each edge is paid once and nothing else is: the Steiner tree of Dreyfus and Wagner (1971).</summary>
    [Fact]
    public void Find_NothingButCharges_WeighsWhatTheSteinerTreeDoes()
    {
        for (int seed = 0; seed < 25; seed++)
        {
            Random random = new(seed);
            Arc[] edges = [.. Enumerable.Range(0, 12).Select(_ => new Arc(random.Next(7), random.Next(7), Math.Round(9 * random.NextDouble(), 2))).Where(edge => edge.From != edge.To)];
            int[] terminals = [.. Enumerable.Range(0, 7).OrderBy(_ => random.Next()).Take(2 + (seed % 3))];
            SharedTrips trips = new([.. terminals[1..].Select(to => new SharedTrip(7, terminals[0], to, BothWays(edges)))], [.. edges.Select(edge => edge.Weight)], (_, _) => true);

            SharedPaths? found = Found(trips);
            Assert.Equal(SteinerTree.Of(WeightedGraph.BothWays(7, edges), terminals)?.Weight, found?.Weight, Tolerant);
            Assert.True(found?.IsProved ?? true);
        }
    }

    /// <summary>A room that holds one or three, but not two: what three may do, no search of fewer shows, and it is not said to be proved that two cannot do better.</summary>
    [Fact]
    public void Find_RoomThatHoldsThreeButNotTwo_IsNotSaidToBeProved()
    {
        ImmutableArray<SharedArc> arcs = [new(0, 1, 1, [], 0), new(0, 1, 5, [])];
        SharedPaths found = Found(new SharedTrips([.. Enumerable.Range(0, 3).Select(_ => new SharedTrip(2, 0, 1, arcs))], [], (_, inIt) => inIt.Count != 2))!;
        Assert.True(found.Weight >= 3 && found.Least <= 3 + 1e-9);
        Assert.Equal(found.Weight <= 3 + 1e-9, found.IsProved);
    }

    [Fact]
    public void Find_NoneOrTooManyTrips_IsRefused()
    {
        SharedTrip trip = new(2, 0, 1, [new SharedArc(0, 1, 1, [])]);
        Assert.Throws<ArgumentOutOfRangeException>(() => Found(new SharedTrips([], [], (_, _) => true)));
        Assert.Throws<ArgumentOutOfRangeException>(() => Found(new SharedTrips([.. Enumerable.Repeat(trip, SharedTrips.MostTripCount + 1)], [], (_, _) => true)));
    }

    private static SharedPaths? Found(SharedTrips trips, int mostSearchCount = SharedPaths.MostSearchCount) => SharedPaths.Find(trips, mostSearchCount, TestContext.Current.CancellationToken);

    private static bool Tolerant(double? one, double? other) => one is null == other is null && !(Math.Abs((one - other) ?? 0) > 1e-9);

    private static ImmutableArray<SharedArc> BothWays(Arc[] edges) =>
        [.. edges.SelectMany((edge, index) => new[] { new SharedArc(edge.From, edge.To, 0, [index]), new SharedArc(edge.To, edge.From, 0, [index]) })];

    private static SharedTrips Random(Random random, int mostInARoom)
    {
        ImmutableArray<SharedArc> arcs =
        [
            .. Enumerable.Range(0, 10).SelectMany(_ =>
            {
                (int a, int b, double weight) = (random.Next(NodeCount), random.Next(NodeCount), Math.Round(5 * random.NextDouble(), 2));
                int[] charges = [.. Enumerable.Range(0, ChargeCount).Where(_ => random.Next(4) == 0)];
                int? room = random.Next(3) == 0 ? random.Next(2) : null;
                return a == b ? [] : new[] { new SharedArc(a, b, weight, [.. charges], room), new SharedArc(b, a, weight, [.. charges], room) };
            }),
        ];
        return new SharedTrips(
            [.. Enumerable.Range(0, 2 + random.Next(2)).Select(_ => new SharedTrip(NodeCount, random.Next(3), 3 + random.Next(3), arcs))],
            [.. Enumerable.Range(0, ChargeCount).Select(_ => Math.Round(8 * random.NextDouble(), 2))],
            (_, inIt) => inIt.Count <= mostInARoom);
    }

    private static double Apart(SharedTrips trips) => trips.Trips.Sum(trip => PathsOf(trip).Min(path => path.Sum(arc => trip.Arcs[arc].Weight) + path.SelectMany(arc => trip.Arcs[arc].Charges).Distinct().Sum(charge => trips.Charges[charge])));

    // Every set of paths that pass no node twice.
    private static double LeastByTrying(SharedTrips trips)
    {
        IEnumerable<ImmutableArray<ImmutableArray<int>>> sets = trips.Trips.Aggregate(
            new[] { ImmutableArray<ImmutableArray<int>>.Empty }.AsEnumerable(), (all, trip) => all.SelectMany(set => PathsOf(trip).Select(path => set.Add(path))));
        return sets.Where(set => Fit(trips, set)).Select(set => trips.WeightOf(set)).DefaultIfEmpty(double.PositiveInfinity).Min();
    }

    private static bool Fit(SharedTrips trips, ImmutableArray<ImmutableArray<int>> set) => set
        .SelectMany((path, trip) => path.Select(arc => (Room: trips.Trips[trip].Arcs[arc].Room, Trip: trip))).Where(pair => pair.Room is not null).Distinct()
        .GroupBy(pair => pair.Room!.Value, pair => pair.Trip).All(room => trips.Fits(room.Key, [.. room.Order()]));

    private static ImmutableArray<int>[] PathsOf(SharedTrip trip)
    {
        List<ImmutableArray<int>> all = [];
        Go(trip.From, [], [trip.From]);
        return [.. all];

        void Go(int node, ImmutableArray<int> path, ImmutableHashSet<int> passed)
        {
            if (node == trip.To)
            {
                all.Add(path);
                return;
            }

            for (int arc = 0; arc < trip.Arcs.Length; arc++)
            {
                if (trip.Arcs[arc].From == node && !passed.Contains(trip.Arcs[arc].To))
                {
                    Go(trip.Arcs[arc].To, path.Add(arc), passed.Add(trip.Arcs[arc].To));
                }
            }
        }
    }

    private static void AssertLeads(SharedTrip trip, ImmutableArray<int> path)
    {
        int node = trip.From;
        foreach (int arc in path)
        {
            Assert.Equal(node, trip.Arcs[arc].From);
            node = trip.Arcs[arc].To;
        }

        Assert.Equal(trip.To, node);
    }
}
