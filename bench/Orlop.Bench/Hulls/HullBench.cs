using System.Diagnostics;
using System.Globalization;
using Orlop.Hull.Floating;
using Orlop.Hull.Measuring;
using Orlop.Hull.Surfaces;

namespace Orlop.Bench.Hulls;

/// <summary>
/// One position of rest and a curve of righting levers, 0 to 90° by 1° with free trim, on one thread, beside the same method vectorised in NumPy in one run; then the sampling of 10 000 weights. Ends with 1
/// when levers differ by more than a millionth of a millimetre or ours is less than ten times faster; without NumPy only our own times are shown.
/// </summary>
internal static class HullBench
{
    private const double MostDifferenceM = 1e-9;
    private const double LeastSpeedRatio = 10;
    private const double MostSamplingMs = 2000;

    public static int Run(TextWriter output)
    {
        if (Python.Program is null)
        {
            output.WriteLine("No python3 with NumPy was found, so there is nothing to compare with; on Debian: apt-get install python3-numpy.");
        }

        output.WriteLine("A single-chine hull of 12 m, 12 t, LCG 5.2 m, KG 1.3 m, salt water. Times in ms of one processor, mean; ratio = NumPy / ours; difference of levers, m.");
        output.WriteLine($"{"triangles",9} {"rest ours",9} {"NumPy",8} {"ratio",6} {"curve ours",10} {"NumPy",8} {"ratio",6} {"difference",11}");
        var isGood = true;
        foreach (var (steps, rows, repeatCount) in new[] { (4, 3, 10), (16, 15, 3), (50, 49, 1) })
        {
            isGood &= Compare(Boat(steps, rows), repeatCount, output);
        }

        isGood &= Sample(output);
        output.WriteLine(isGood ? "All within limits." : "Outside the limits: difference at most 1e-9 m, ratios at least 10, sampling at most 2 s.");
        return isGood ? 0 : 1;
    }

    private static bool Compare(FloatingInput boat, int repeatCount, TextWriter output)
    {
        var input = new RightingInput { Boat = boat, ToDeg = 90 };
        WarmUp(() => RightingCurve.Calculate(input));
        var (restMs, rest) = Mean(3 * repeatCount, () => Equilibrium.Solve(boat));
        var (curveMs, curve) = Mean(repeatCount, () => RightingCurve.Calculate(input));
        var triangleCount = boat.Buoyancy[0].Triangles.Length;
        if (Python.Program is null)
        {
            output.WriteLine(string.Create(CultureInfo.InvariantCulture, $"{triangleCount,9} {restMs,9:F2} {"-",8} {"-",6} {curveMs,10:F1}"));
            return true;
        }

        var numpy = NumpyHull.Run(boat, repeatCount);
        var differenceM = curve.Points.Zip(numpy.LeversM, (point, lever) => Math.Abs(point.GzM - lever)).Append(Math.Abs(rest.Position!.Attitude.DraughtM - numpy.DraughtM)).Max();
        var (restRatio, curveRatio) = (numpy.EquilibriumMs / restMs, numpy.CurveMs / curveMs);
        output.WriteLine(string.Create(CultureInfo.InvariantCulture,
            $"{triangleCount,9} {restMs,9:F2} {numpy.EquilibriumMs,8:F1} {restRatio,6:F1} {curveMs,10:F1} {numpy.CurveMs,8:F0} {curveRatio,6:F1} {differenceM,11:E1}"));
        return curve.Points.Length == numpy.LeversM.Length && differenceM <= MostDifferenceM && restRatio >= LeastSpeedRatio && curveRatio >= LeastSpeedRatio;
    }

    private static bool Sample(TextWriter output)
    {
        var input = new StabilitySamplingInput
        {
            Boat = Boat(4, 3),
            Weight = new WeightSpread(12_000, new Point3(5.2, 0, 1.3), [360 * 360, 0, 0, 0, 0, 0.06 * 0.06, 0, 0, 0, 0, 0.01 * 0.01, 0, 0, 0, 0, 0.04 * 0.04]),
            Openings = [new Opening("hatch", new Point3(3, -0.9, 2.1))],
        };
        StabilitySampling.Calculate(input);
        var (ms, result) = Median(5, () => StabilitySampling.Calculate(input));
        output.WriteLine(string.Create(CultureInfo.InvariantCulture,
            $"Sampling: {input.DrawCount} draws, six criteria, both sides, {input.Boat.Buoyancy[0].Triangles.Length} triangles: {ms:F0} ms on {Environment.ProcessorCount} cores, largest error of a lever {result.LargestErrorM:E1} m."));
        return ms <= MostSamplingMs;
    }

    private static FloatingInput Boat(int steps, int rows) => new()
    {
        Subject = "bench",
        Buoyancy = [HullSurface.Build(StartingForm.Create("bench", StartingShape.SingleChine, 12, 4, 2), new FormFineness(steps, rows)).Surface!],
        MassKg = 12_000,
        CentreOfGravity = new Point3(5.2, 0, 1.3),
        WaterKgPerM3 = 1025,
    };

    // The processor's time, since other work on the machine must not count.
    private static (double MeanMs, T Result) Mean<T>(int repeatCount, Func<T> solve)
    {
        var start = Environment.CpuUsage.TotalTime;
        T result = default!;
        for (var i = 0; i < repeatCount; i++)
        {
            result = solve();
        }

        return ((Environment.CpuUsage.TotalTime - start).TotalMilliseconds / repeatCount, result);
    }

    private static (double MedianMs, T Result) Median<T>(int repeatCount, Func<T> solve)
    {
        var times = new double[repeatCount];
        T result = default!;
        for (var i = 0; i < repeatCount; i++)
        {
            var start = Stopwatch.GetTimestamp();
            result = solve();
            times[i] = Stopwatch.GetElapsedTime(start).TotalMilliseconds;
        }

        Array.Sort(times);
        return (times[repeatCount / 2], result);
    }

    private static void WarmUp(Action run)
    {
        for (var start = Stopwatch.GetTimestamp(); Stopwatch.GetElapsedTime(start).TotalSeconds < 1;)
        {
            run();
        }
    }
}
