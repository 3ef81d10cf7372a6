using System.Diagnostics;
using System.Globalization;
using Orlop.Electrics.Networks;
using Orlop.Electrics.Tests.Networks;
using Orlop.Reference.Tests.Electrics.Spice;

namespace Orlop.Bench.Networks;

/// <summary>
/// The network solver beside ngspice on the same random networks in one run: largest difference of voltage, and both times. Ends with 1
/// when they disagree by more than a millionth of the source voltage, or when the operating point is less than ten times faster. Both load
/// the network once and then solve it, so the prepared solve stands against the analysis; the ratios that count everything of ours stand beside it.
/// </summary>
internal static class NetworkBench
{
    private const double MostDifferenceRatio = 1e-6;
    private const double LeastSpeedRatio = 10;
    private const double WarmUpS = 3;

    // A point has two nodes, and every third cable a fuse with a node more.
    private const double NodesPerPoint = 2.34;

    public static int Run(TextWriter output)
    {
        if (SpiceRun.Program is null)
        {
            output.WriteLine("ngspice is not installed, so there is nothing to compare with; on Debian: apt-get install ngspice.");
            return 1;
        }

        WarmUp();
        output.WriteLine("Random meshed two-wire networks, batteries, constant-power, -current and -resistance loads. Times in ms, one operating point.");
        output.WriteLine("ours: whole = from records to result, checks and analysis included; prepared = topology already analysed.");
        output.WriteLine("ngspice: analysis = its own figure for the operating point; process = start to exit, reading and writing included.");
        output.WriteLine($"{"nodes",7} {"iter",5} {"ours whole",11} {"prepared",9} {"analysis",9} {"process",9} {"analysis/prepared",18} {"analysis/whole",15} {"process/whole",14} {"difference",11}");
        var isGood = true;
        foreach (var (seed, nodeCount) in new[] { (11, 100), (12, 1_000), (13, 10_000) })
        {
            isGood &= Compare(seed, nodeCount, output);
        }

        output.WriteLine(isGood ? "All within limits." : "Outside the limits: difference at most 1e-6 of the source voltage, analysis/prepared at least 10.");
        return isGood ? 0 : 1;
    }

    private static bool Compare(int seed, int nodeCount, TextWriter output)
    {
        var network = OfNodes(seed, nodeCount);
        var prepared = PreparedNetwork.Of(network);
        var repeatCount = Math.Max(5, 200_000 / nodeCount);
        var (wholeMs, result) = Median(repeatCount, () => NetworkSolver.Solve(network));
        var (preparedMs, _) = Median(repeatCount, () => prepared.Solve());
        if (result.Point is not { } point)
        {
            output.WriteLine($"{nodeCount} nodes: {result.Status}");
            return false;
        }

        // Its clock ticks in milliseconds, so small networks are solved several times over in one process.
        var spiceRepeats = Math.Max(1, 50_000 / nodeCount);
        var deck = new SpiceDeck(network, "n0", spiceRepeats);
        var spice = SpiceRun.Run(deck);
        var processMs = 1000 * (spiceRepeats == 1 ? spice : SpiceRun.Run(new SpiceDeck(network, "n0", 1))).ProcessS;
        var analysisMs = 1000 * spice.AnalysisS / spiceRepeats;
        var differenceV = point.NodeV.Max(n => Math.Abs(n.Value - spice.NodeV[deck[n.Key]]));
        var differenceRatio = differenceV / network.Batteries.Max(b => b.OpenCircuitV);
        output.WriteLine(string.Create(CultureInfo.InvariantCulture,
            $"{point.NodeV.Count,7} {result.IterationCount,5} {wholeMs,11:F3} {preparedMs,9:F3} {analysisMs,9:F3} {processMs,9:F1} {analysisMs / preparedMs,18:F1} {analysisMs / wholeMs,15:F1} {processMs / wholeMs,14:F1} {differenceRatio,11:E1}"));
        return differenceRatio <= MostDifferenceRatio && analysisMs / preparedMs >= LeastSpeedRatio;
    }

    /// <summary>A random network with as near to a number of nodes as whole points allow.</summary>
    private static Network OfNodes(int seed, int nodeCount) =>
        RandomNetwork.Build(seed, (int)(nodeCount / NodesPerPoint), new RandomNetworkKind { LoadScaleFactor = 6 });

    private static (double MedianMs, NetworkResult Result) Median(int repeatCount, Func<NetworkResult> solve)
    {
        var times = new double[repeatCount];
        NetworkResult? result = null;
        for (var k = 0; k < repeatCount; k++)
        {
            var start = Stopwatch.GetTimestamp();
            result = solve();
            times[k] = Stopwatch.GetElapsedTime(start).TotalMilliseconds;
        }

        Array.Sort(times);
        return (times[repeatCount / 2], result!);
    }

    // Long enough that everything runs as it does in a program that has been running for a while.
    private static void WarmUp()
    {
        var network = RandomNetwork.Build(1, 200);
        var prepared = PreparedNetwork.Of(network);
        for (var start = Stopwatch.GetTimestamp(); Stopwatch.GetElapsedTime(start).TotalSeconds < WarmUpS;)
        {
            NetworkSolver.Solve(network);
            prepared.Solve();
        }
    }
}
