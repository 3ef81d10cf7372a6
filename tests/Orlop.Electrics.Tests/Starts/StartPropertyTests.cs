using Orlop.Electrics.Networks;
using Orlop.Electrics.Starts;
using Orlop.Electrics.Tests.Networks;
using Xunit;

namespace Orlop.Electrics.Tests.Starts;

/// <summary>What must be so of every start in a single tree: matrices of metal have inverses without negative entries.</summary>
public sealed class StartPropertyTests
{
    private static readonly RandomNetworkKind Tree = new() { MeshFraction = 0, PointsPerBattery = 10_000 };

    [Fact]
    public void AThickerWayToTheMotor_NeverLowersItsDip() => EachTree((seed, network, input) =>
    {
        StartResult thin = StartStudy.Run(input, TestContext.Current.CancellationToken);
        StartResult thick = StartStudy.Run(input with { Network = Thicker(network, seed) }, TestContext.Current.CancellationToken);

        Assert.True(Lowest(thick, "motor") >= Lowest(thin, "motor") - 1e-9, $"seed {seed}");
        return thin.Status == SolveStatus.Converged;
    });

    [Fact]
    public void AHarderStart_NeverLiftsAnyLoad() => EachTree((seed, _, input) =>
    {
        StartResult soft = StartStudy.Run(input, TestContext.Current.CancellationToken);
        StartResult hard = StartStudy.Run(input with { Stores = [Motor(6, input.Stores[0].Plus, input.Stores[0].Minus)] }, TestContext.Current.CancellationToken);
        if (soft.Status != SolveStatus.Converged || hard.Status != SolveStatus.Converged)
        {
            return false;
        }

        Assert.All(input.Network.Loads, load => Assert.True(Lowest(hard, load.Id) <= Lowest(soft, load.Id) + 1e-9, $"seed {seed}, {load.Id}"));
        return true;
    });

    // The tree's conductors on the way from the battery to the motor's point, found by going back point by point.
    private static Network Thicker(Network network, int seed)
    {
        Random random = new(seed);
        string[] way = [.. network.Conductors.Where(_ => random.Next(3) == 0).Select(conductor => conductor.Id)];
        HashSet<string> toMotor = [];
        for (string node = "19"; node != "0";)
        {
            string point = node;
            Conductor minus = network.Conductors.Single(conductor => conductor.Id == $"c{point}-minus");
            toMotor.Add($"c{point}-minus");
            toMotor.Add($"c{point}-plus");
            node = minus.A[1..];
        }

        return network with { Conductors = [.. network.Conductors.Select(conductor => way.Contains(conductor.Id) && toMotor.Contains(conductor.Id) ? conductor with { ResistanceAt20Ohm = conductor.ResistanceAt20Ohm / 2 } : conductor)] };
    }

    private static double Lowest(StartResult start, string id) => start.VoltageOf(id) is { } volts ? volts.Min() : 0;

    private static StartingStore Motor(double startRatio, string plus, string minus) => StartingStore.Motor("motor", plus, minus, 24, 8, startRatio, 0.5);

    private static void EachTree(Func<int, Network, StartInput, bool> holds)
    {
        int count = 0;
        for (int seed = 1; seed <= 60; seed++)
        {
            Network network = RandomNetwork.Build(seed, 20, Tree);
            count += holds(seed, network, new StartInput { Network = network, Stores = [Motor(4, "p19", "n19")], HorizonS = 1 }) ? 1 : 0;
        }

        Assert.True(count >= 30, $"only {count} trees could start their motor");
    }
}
