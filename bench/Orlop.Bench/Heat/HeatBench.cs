using System.Diagnostics;
using System.Globalization;
using Orlop.Electrics.Heat;

namespace Orlop.Bench.Heat;

/// <summary>Bundles of some sizes to rest: one thermal network, and all that a bundle asks for, each cable once in the middle. Ends with 1 when a network takes more than its limit.</summary>
internal static class HeatBench
{
    private const double MostMs = 1;
    private const int WarmUpCount = 300;
    private const int RepeatCount = 101;

    public static int Run(TextWriter output)
    {
        output.WriteLine("Cables together to rest. Median times in ms.");
        output.WriteLine($"{"cables",8} {"network",10} {"bundle",10}");
        bool isGood = true;
        foreach (int count in new[] { 1, 3, 7, 11, 19 })
        {
            BundleInput input = Bundle(count);
            double network = MedianMs(k => ThermalSolver.Steady(BundleHeat.Network(input with { AmbientC = 20 + (k % 20) }, 0)));
            double bundle = MedianMs(k => BundleHeat.Steady(input with { AmbientC = 20 + (k % 20) }));
            output.WriteLine(string.Create(CultureInfo.InvariantCulture, $"{count,8} {network,10:F3} {bundle,10:F3}"));
            isGood &= network <= MostMs;
        }

        output.WriteLine(isGood ? "All within limits." : $"Outside the limit: a network in at most {MostMs} ms.");
        return isGood ? 0 : 1;
    }

    private static BundleInput Bundle(int count) => new()
    {
        Subject = "bench",
        AmbientC = 30,
        OpenFraction = 0.8,
        Cables = [.. Enumerable.Range(0, count).Select(k => new BundledCable($"c{k}", 7 + (k % 4), 3, 0.5 + (k % 5)))],
    };

    private static double MedianMs(Func<int, object> solve)
    {
        double[] times = new double[RepeatCount];
        for (int k = -WarmUpCount; k < RepeatCount; k++)
        {
            long start = Stopwatch.GetTimestamp();
            _ = solve(k + WarmUpCount);
            if (k >= 0)
            {
                times[k] = Stopwatch.GetElapsedTime(start).TotalMilliseconds;
            }
        }

        Array.Sort(times);
        return times[RepeatCount / 2];
    }
}
