using System.Diagnostics;
using System.Globalization;
using Orlop.Boat;
using Orlop.Boat.Things;
using Orlop.Electrics.Networks;
using Orlop.Review;
using Orlop.Review.Electrics;

namespace Orlop.Bench.Reviews;

/// <summary>
/// Reviews the demo boat again after one edit, each time an edit that the engine has not met: time on the clock, processor time of the whole
/// process (its collector and compiler too), networks solved, results computed. Ends with 1 when a median on the clock is over the limit, or when
/// an edit of gear solves a network.
/// </summary>
internal static class ReviewBench
{
    private const double MostMs = 50;
    private const int WarmUpCount = 1000;
    private const int RepeatCount = 31;

    public static int Run(TextWriter output)
    {
        if (DemoBoat.Read(output) is not { } boat)
        {
            return 1;
        }

        output.WriteLine("Re-review of the demo boat after one edit. Median times in ms; networks solved and results computed, the most of all repeats.");
        output.WriteLine($"{"edit",-28} {"clock",8} {"processor",10} {"networks",9} {"results",8}");
        bool isGood = true;
        foreach (BenchEdit edit in BenchEdit.All)
        {
            isGood &= Measure(boat, edit, output);
        }

        output.WriteLine(isGood ? "All within limits." : $"Outside the limits: a median of at most {MostMs} ms, and no network solved by an edit of gear.");
        return isGood ? 0 : 1;
    }

    private static bool Measure(BoatModel boat, BenchEdit edit, TextWriter output)
    {
        ReviewEngine engine = new([new ElectricsDiscipline()]);
        engine.Review(boat);
        double[] times = new double[RepeatCount], processorTimes = new double[RepeatCount];
        long networks = 0, results = 0;
        for (int k = -WarmUpCount; k < RepeatCount; k++)
        {
            (BoatModel asBuilt, Alteration? alteration) = edit.Apply(boat, k + WarmUpCount + 1);
            long networksBefore = engine.Memo.ComputedCountOf<NetworkResult>(), resultsBefore = engine.Memo.ComputedCount;
            (TimeSpan busy, long start) = (Environment.CpuUsage.TotalTime, Stopwatch.GetTimestamp());
            _ = alteration is null ? engine.Review(asBuilt) : engine.Review(asBuilt, alteration);
            if (k >= 0)
            {
                times[k] = Stopwatch.GetElapsedTime(start).TotalMilliseconds;
                processorTimes[k] = (Environment.CpuUsage.TotalTime - busy).TotalMilliseconds;
                networks = Math.Max(networks, engine.Memo.ComputedCountOf<NetworkResult>() - networksBefore);
                results = Math.Max(results, engine.Memo.ComputedCount - resultsBefore);
            }
        }

        Array.Sort(times);
        Array.Sort(processorTimes);
        double medianMs = times[RepeatCount / 2];
        output.WriteLine(string.Create(CultureInfo.InvariantCulture, $"{edit.Name,-28} {medianMs,8:F1} {processorTimes[RepeatCount / 2],10:F1} {networks,9} {results,8}"));
        return medianMs <= MostMs && (edit.MaySolve || networks == 0);
    }
}
