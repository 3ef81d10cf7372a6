using Orlop.Electrics.Networks;
using Xunit;

namespace Orlop.Electrics.Tests.Networks;

/// <summary>A network analysed once and solved with other values gives what a network analysed afresh gives, to the last bit.</summary>
public sealed class PreparedNetworkTests
{
    private static readonly RandomNetworkKind Everything = new() { IsHeated = true, HasLimitedSources = true, HasConverters = true, HasJoins = true };

    [Fact]
    public void With_OtherValues_IsBitForBitTheSameAsAfresh()
    {
        for (int seed = 1; seed <= 60; seed++)
        {
            Network network = RandomNetwork.Build(seed, 30, Everything), other = Changed(network, seed);

            NetworkResult again = PreparedNetwork.Of(network).With(other)!.Solve(TestContext.Current.CancellationToken);

            NetworkResult afresh = NetworkSolver.Solve(other, TestContext.Current.CancellationToken);
            Assert.Equal(afresh.Status, again.Status);
            Assert.Equal(afresh.Point is null, again.Point is null);
            if (afresh.Point is { } point)
            {
                Assert.Equal(ById(point.NodeV), ById(again.Point!.NodeV));
                Assert.Equal(ById(point.BranchA), ById(again.Point.BranchA));
                Assert.Equal(ById(point.ConductorC), ById(again.Point.ConductorC));
            }
        }
    }

    [Fact]
    public void Solve_AfterOneThatCannotBeServed_IsBitForBitWhatItWas()
    {
        Network network = RandomNetwork.Build(5, 30, Everything);
        PreparedNetwork prepared = PreparedNetwork.Of(network);
        NetworkResult first = prepared.Solve(TestContext.Current.CancellationToken);
        string load = network.Loads.First(item => item.Kind == LoadKind.Power).Id;

        Assert.Equal(SolveStatus.NoOperatingPoint, prepared.SolveWith(new Dictionary<string, double> { [load] = 1e9 }, TestContext.Current.CancellationToken).Status);

        NetworkResult again = prepared.Solve(TestContext.Current.CancellationToken);
        Assert.Equal(first.IterationCount, again.IterationCount);
        Assert.Equal(first.ResidualA, again.ResidualA);
        Assert.Equal(first.Point!.NodeV, again.Point!.NodeV);
    }

    [Fact]
    public void With_MoreThanValuesDiffering_IsRefused()
    {
        Network network = RandomNetwork.Build(7, 30, Everything);
        PreparedNetwork prepared = PreparedNetwork.Of(network);
        Contact joint = network.Contacts.First(contact => contact.ResistanceOhm > 0);
        Load load = network.Loads.First(item => item.Kind == LoadKind.Power);

        Assert.NotNull(prepared.With(network));
        foreach (Network other in new[]
        {
            network with { Conductors = network.Conductors.RemoveAt(0) },
            network with { Conductors = network.Conductors.SetItem(0, network.Conductors[0] with { Id = "another" }) },
            network with { Conductors = network.Conductors.SetItem(0, network.Conductors[0] with { A = network.Conductors[^1].A, B = network.Conductors[^1].B }) },
            network with { Contacts = network.Contacts.Replace(joint, joint with { ResistanceOhm = 0 }) },
            network with { Loads = network.Loads.Replace(load, load with { Kind = LoadKind.Current }) },
            network with { Batteries = network.Batteries.SetItem(0, network.Batteries[0] with { Plus = network.Batteries[0].Minus, Minus = network.Batteries[0].Plus }) },
            network with { BondedNodes = network.BondedNodes.Add(network.Batteries[0].Plus) },
        })
        {
            Assert.Null(prepared.With(other));
        }
    }

    [Theory]
    [InlineData(double.NaN)]
    [InlineData(-1)]
    [InlineData(0)]
    [InlineData(double.PositiveInfinity)]
    public void With_AValueOutOfItsRange_IsRefused(double resistanceOhm)
    {
        Network network = RandomNetwork.Build(7, 30);

        Assert.Null(PreparedNetwork.Of(network).With(network with { Conductors = network.Conductors.SetItem(0, network.Conductors[0] with { ResistanceAt20Ohm = resistanceOhm }) }));
    }

    private static IEnumerable<KeyValuePair<string, double>> ById(IReadOnlyDictionary<string, double> values) => values.OrderBy(pair => pair.Key, StringComparer.Ordinal);

    // Other resistances, voltages and amounts, and some conductors that no longer warm.
    private static Network Changed(Network network, int seed)
    {
        Random random = new(seed);
        double Factor() => 0.7 + (0.6 * random.NextDouble());
        return network with
        {
            Conductors = [.. network.Conductors.Select(item => item with { ResistanceAt20Ohm = item.ResistanceAt20Ohm * Factor(), Heating = random.Next(3) == 0 ? null : item.Heating })],
            Contacts = [.. network.Contacts.Select(item => item with { ResistanceOhm = item.ResistanceOhm * Factor() })],
            Batteries = [.. network.Batteries.Select(item => item with { OpenCircuitV = item.OpenCircuitV * Factor() })],
            Loads = [.. network.Loads.Select(item => item with { Amount = item.Amount * Factor() })],
        };
    }
}
