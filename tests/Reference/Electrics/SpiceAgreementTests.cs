using Orlop.Electrics.Networks;
using Orlop.Electrics.Tests.Networks;
using Orlop.Reference.Tests.Electrics.Spice;
using Xunit;

namespace Orlop.Reference.Tests.Electrics;

/// <summary>The solver against ngspice, a circuit simulator written by others, on random meshed networks with loads of constant power.</summary>
public sealed class SpiceAgreementTests
{
    [Theory]
    [InlineData(1, 5, 1)]
    [InlineData(2, 20, 1)]
    [InlineData(3, 60, 1)]
    [InlineData(4, 150, 1)]
    [InlineData(5, 400, 1)]
    [InlineData(6, 30, 10)]
    [InlineData(7, 60, 20)]
    public void Solve_RandomMeshedNetwork_AgreesWithSpice(int seed, int pointCount, double loadScaleFactor)
    {
        Assert.SkipWhen(SpiceRun.Program is null, "ngspice is not installed; on Debian: apt-get install ngspice.");
        var network = RandomNetwork.Build(seed, pointCount, new RandomNetworkKind { LoadScaleFactor = loadScaleFactor });
        var result = NetworkSolver.Solve(network, TestContext.Current.CancellationToken);
        Assert.Equal(SolveStatus.Converged, result.Status);
        var deck = new SpiceDeck(network, "n0", repeatCount: 1);
        var spice = SpiceRun.Run(deck);
        var toleranceV = 1e-6 * network.Batteries.Max(b => b.OpenCircuitV);
        foreach (var (node, voltageV) in result.Point!.NodeV)
        {
            Assert.Equal(spice.NodeV[deck[node]], voltageV, toleranceV);
        }
    }
}
