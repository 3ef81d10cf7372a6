using Orlop.Electrics.Networks;
using Orlop.Electrics.Starts;
using Orlop.Electrics.Tests.Networks;
using Orlop.Reference.Tests.Electrics.Spice;
using Xunit;

namespace Orlop.Reference.Tests.Electrics;

/// <summary>Starts in time against the transient analysis of ngspice, a circuit simulator written by others: a motor and a capacitor at once in random networks.</summary>
public sealed class SpiceStartTests
{
    private const double FirstShare = 0.01;

    [Theory]
    [InlineData(1, 5)]
    [InlineData(2, 12)]
    [InlineData(3, 30)]
    [InlineData(4, 60)]
    public void Start_InARandomNetwork_AgreesWithSpice(int seed, int pointCount)
    {
        Assert.SkipWhen(SpiceRun.Program is null, "ngspice is not installed; on Debian: apt-get install ngspice.");
        int last = pointCount - 1;
        StartInput input = new()
        {
            Network = RandomNetwork.Build(seed, pointCount),
            Stores =
            [
                StartingStore.Motor("motor", $"p{last}", $"n{last}", 24, 10, 4, 0.6),
                StartingStore.Capacitor("input", $"p{last / 2}", $"n{last / 2}", 0.02, 0.3, prechargeV: 6),
            ],
            HorizonS = 1,
            ToleranceV = 1e-3,
        };

        StartResult start = StartStudy.Run(input, TestContext.Current.CancellationToken);

        Assert.Equal(SolveStatus.Converged, start.Status);
        SpiceDeck deck = new(input, "n0");
        IReadOnlyList<double[]> spice = SpiceRun.RunStart(deck);
        Dictionary<int, int> column = deck.Written.Select((node, k) => (node, k)).ToDictionary(pair => pair.node, pair => pair.k + 1);
        double largestV = 0;
        // The first step of the deck's own is of first order, from nothing at every node without a capacitor.
        foreach (StartMoment moment in start.Moments.Where(moment => moment.TimeS > FirstShare * input.HorizonS))
        {
            foreach ((string node, double volts) in moment.Point.NodeV.Where(pair => deck[pair.Key] > 0))
            {
                largestV = Math.Max(largestV, Math.Abs(volts - At(spice, moment.TimeS, column[deck[node]])));
            }
        }

        Assert.InRange(largestV, 0, 2e-3);
    }

    private static double At(IReadOnlyList<double[]> rows, double timeS, int column)
    {
        int after = 1;
        while (after < rows.Count - 1 && rows[after][0] < timeS)
        {
            after++;
        }

        (double[] from, double[] to) = (rows[after - 1], rows[after]);
        double share = Math.Clamp((timeS - from[0]) / (to[0] - from[0]), 0, 1);
        return from[column] + (share * (to[column] - from[column]));
    }
}
