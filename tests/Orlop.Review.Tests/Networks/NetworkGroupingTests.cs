using System.Collections.Immutable;
using Orlop.Boat;
using Orlop.Boat.Things;
using Orlop.Boat.Topology;
using Orlop.Electrics.Networks;
using Orlop.Review.Networks;
using Orlop.Review.Practices;
using Xunit;

namespace Orlop.Review.Tests.Networks;

/// <summary>A network solved group by group is the network solved whole.</summary>
public sealed class NetworkGroupingTests
{
    private const double SameV = 1e-6;
    private const double SameA = 1e-6;

    [Theory]
    [InlineData(1)]
    [InlineData(2)]
    [InlineData(3)]
    [InlineData(4)]
    public void SeparateCircuits_SolvedByGroup_AreThoseSolvedWhole(int seed)
    {
        Random random = new(seed);
        int count = 2 + random.Next(4);
        Network whole = Shuffled(Enumerable.Range(0, count).Select(k => Circuit($"k{k}.", random)), random);
        Assert.Equal(count, NetworkGrouping.Of(whole).Split(whole).Length);
        SameWholeAsByGroup(whole);
    }

    [Fact]
    public void DemoBoat_EveryCondition_ByGroupIsTheWhole()
    {
        BoatModel boat = ExampleBoats.Read("sandgrouse");
        Wiring wiring = Wiring.Of(boat);
        foreach (Condition condition in boat.All<Condition>())
        {
            Network whole = new NetworkBuilder(boat, wiring, Practice.Of(boat.All<PracticeChoice>().First()), condition).Build(new NetworkCase(condition.Id, ChargeCase.Normal)).Network;
            SameWholeAsByGroup(whole);
        }
    }

    [Fact]
    public void Split_LosesAndDoublesNothing()
    {
        BoatModel boat = ExampleBoats.Read("sandgrouse");
        Condition condition = boat.All<Condition>().First();
        Network whole = new NetworkBuilder(boat, Wiring.Of(boat), null, condition).Build(new NetworkCase(condition.Id, ChargeCase.Full)).Network;
        ImmutableArray<Network> groups = NetworkGrouping.Of(whole).Split(whole);
        Assert.Equal(Ids(whole).Order(StringComparer.Ordinal), groups.SelectMany(Ids).Order(StringComparer.Ordinal));
    }

    private static void SameWholeAsByGroup(Network whole)
    {
        NetworkResult expected = NetworkSolver.Solve(whole, TestContext.Current.CancellationToken);
        Assert.Equal(SolveStatus.Converged, expected.Status);
        Dictionary<string, double> loadV = [], branchA = [], sourceA = [];
        foreach (Network group in NetworkGrouping.Of(whole).Split(whole))
        {
            NetworkResult result = NetworkSolver.Solve(group, TestContext.Current.CancellationToken);
            Assert.Equal(SolveStatus.Converged, result.Status);
            Add(loadV, result.Point!.LoadV);
            Add(branchA, result.Point.BranchA);
            Add(sourceA, result.Point.SourceA);
        }

        Same(expected.Point!.LoadV, loadV, SameV);
        Same(expected.Point.BranchA, branchA, SameA);
        Same(expected.Point.SourceA, sourceA, SameA);
    }

    private static void Add(Dictionary<string, double> all, IReadOnlyDictionary<string, double> some)
    {
        foreach ((string id, double value) in some)
        {
            all.Add(id, value);
        }
    }

    private static void Same(IReadOnlyDictionary<string, double> expected, Dictionary<string, double> found, double within)
    {
        Assert.Equal(expected.Keys.Order(StringComparer.Ordinal), found.Keys.Order(StringComparer.Ordinal));
        Assert.All(expected, pair => Assert.Equal(pair.Value, found[pair.Key], within));
    }

    private static IEnumerable<string> Ids(Network network) =>
    [
        .. network.Conductors.Select(item => item.Id), .. network.Contacts.Select(item => item.Id), .. network.Batteries.Select(item => item.Id),
        .. network.LimitedSources.Select(item => item.Id), .. network.Converters.Select(item => item.Id), .. network.Loads.Select(item => item.Id), .. network.BondedNodes,
    ];

    // A battery and a chain of cables, plus and minus, with a load at the end of each.
    private static Network Circuit(string at, Random random)
    {
        int count = 1 + random.Next(4);
        return new Network
        {
            Batteries = [new Battery($"{at}bank", $"{at}p0", $"{at}m0", 12 + random.NextDouble(), 0.01)],
            Conductors =
            [
                .. Enumerable.Range(1, count).SelectMany(k => new[]
                {
                    new Conductor($"{at}plus{k}", $"{at}p{k - 1}", $"{at}p{k}", 0.005 + (0.02 * random.NextDouble())),
                    new Conductor($"{at}minus{k}", $"{at}m{k - 1}", $"{at}m{k}", 0.005 + (0.02 * random.NextDouble())),
                }),
            ],
            Loads = [.. Enumerable.Range(1, count).Select(k => new Load($"{at}load{k}", $"{at}p{k}", $"{at}m{k}", (LoadKind)random.Next(3), 1 + (5 * random.NextDouble())))],
        };
    }

    private static Network Shuffled(IEnumerable<Network> circuits, Random random)
    {
        Network[] all = [.. circuits];
        ImmutableArray<T> Mixed<T>(Func<Network, ImmutableArray<T>> of)
        {
            T[] items = [.. all.SelectMany(circuit => of(circuit))];
            random.Shuffle(items);
            return [.. items];
        }

        return new Network
        {
            Batteries = Mixed(circuit => circuit.Batteries),
            Conductors = Mixed(circuit => circuit.Conductors),
            Loads = Mixed(circuit => circuit.Loads),
        };
    }
}
