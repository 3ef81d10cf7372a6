using System.Globalization;
using Orlop.Electrics.Networks;
using Xunit;

namespace Orlop.Electrics.Tests.Networks;

/// <summary>
/// Random networks straight on solver and faults: an answer for each, finite, its currents in balance at every node and by every element's own law. Some thousands each time;
/// ORLOP_RANDOM_NETWORKS=200000 runs that many.
/// </summary>
public sealed class RandomSweepTests
{
    private const int UsualCount = 4000;

    private static int Count => int.TryParse(Environment.GetEnvironmentVariable("ORLOP_RANDOM_NETWORKS"), NumberStyles.None, CultureInfo.InvariantCulture, out int count) ? count : UsualCount;

    [Fact]
    public void EveryNetwork_HasAnAnswerThatItsElementsConfirm()
    {
        int solved = 0;
        Parallel.For(0, Count, new ParallelOptions { CancellationToken = TestContext.Current.CancellationToken }, seed =>
        {
            Network network = Build(seed);
            NetworkResult result = NetworkSolver.Solve(network, TestContext.Current.CancellationToken);
            Assert.True(result.Status is SolveStatus.Converged or SolveStatus.NoOperatingPoint or SolveStatus.FaultyNetwork, $"seed {seed}: {result.Status}");
            if (result.Point is { } point)
            {
                ElementLaws.Confirm(network, point, $"seed {seed}");
                Interlocked.Increment(ref solved);
            }
        });
        Assert.True(solved > Count / 2, $"only {solved} of {Count} could be solved");
    }

    [Fact]
    public void EveryFault_IsFinite_AndNoLessThanTheWeakest()
    {
        int faulted = 0;
        Parallel.For(0, Count, new ParallelOptions { CancellationToken = TestContext.Current.CancellationToken }, seed =>
        {
            Network network = Build(seed);
            if (PreparedFaults.OfSound(network, FaultConditions.Greatest) is not { } greatest || PreparedFaults.OfSound(network, FaultConditions.Least) is not { } least)
            {
                return;
            }

            foreach (Load load in network.Loads.Take(3))
            {
                FaultCurrentResult? most = greatest.Between(load.Plus, load.Minus), few = least.Between(load.Plus, load.Minus);
                Assert.Equal(most is null, few is null);
                if (most is not null && few is not null)
                {
                    IsWhole(most, $"seed {seed} {load.Id}");
                    IsWhole(few, $"seed {seed} {load.Id}");
                    Interlocked.Increment(ref faulted);
                }
            }
        });
        Assert.True(faulted > Count / 2, $"only {faulted} faults");
    }

    private static void IsWhole(FaultCurrentResult fault, string at)
    {
        Assert.True(double.IsFinite(fault.CurrentA) && double.IsFinite(fault.OpenCircuitV) && double.IsFinite(fault.LimitedA), $"{at}: {fault}");
        Assert.True(fault.SourceOhm > 0, $"{at}: {fault}");
        double byParts = fault.OpenCircuitV / fault.SourceOhm;
        Assert.True(Math.Abs(fault.CurrentA - byParts - fault.LimitedA) <= 1e-9 * Math.Max(1, Math.Abs(fault.CurrentA)) || fault.LimitedA == fault.CurrentA, $"{at}: {fault}");
    }

    // Trees and meshes, one battery or several, converters and limited sources, warm and cold, light loads and ones too great to serve.
    private static Network Build(int seed)
    {
        Random random = new(seed);
        return RandomNetwork.Build(seed, 2 + random.Next(24), new RandomNetworkKind
        {
            MeshFraction = random.Next(2) * random.NextDouble(),
            PointsPerBattery = 2 + random.Next(30),
            LoadScaleFactor = Math.Pow(10, (random.NextDouble() * 3) - 1),
            IsHeated = random.Next(2) == 0,
            HasLimitedSources = random.Next(2) == 0,
            HasConverters = random.Next(2) == 0,
            HasJoins = random.Next(2) == 0,
        });
    }
}
