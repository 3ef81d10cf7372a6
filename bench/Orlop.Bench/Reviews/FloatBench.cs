using System.Diagnostics;
using System.Globalization;
using Orlop.Boat;
using Orlop.Boat.Things;
using Orlop.Boat.Values;
using Orlop.Review;
using Orlop.Review.Stability;

namespace Orlop.Bench.Reviews;

/// <summary>
/// From a weight that moves to the waterline, on the demo boat: while a hand holds it, and once it is let go (a boat that the engine has not met, in one condition); then the whole discipline of
/// stability again, in every condition. Ends with 1 when a waterline takes more than 16 ms.
/// </summary>
internal static class FloatBench
{
    private const double MostMs = 16;
    private const int WarmUpCount = 300;
    private const int RepeatCount = 31;

    public static int Run(TextWriter output)
    {
        if (DemoBoat.Read(output) is not { } boat)
        {
            return 1;
        }

        Memo memo = new();
        StabilityView held = new(boat, null, memo);
        Gear gear = boat.Find<Gear>("tool-chests")!;
        StabilityDiscipline discipline = new();
        output.WriteLine("A piece of gear of the demo boat moves. Median times in ms.");
        bool isGood = Measure("held: to the waterline", output, step => held.RestWith(held.Conditions[0], gear.Id, At(gear, step))?.Position) <= MostMs;
        isGood &= Measure("let go: to the waterline", output, step =>
        {
            StabilityView view = new(Moved(boat, gear, step), null, memo);
            return view.FloatingIn(view.Conditions[0])?.Rest.Position;
        }) <= MostMs;
        Measure("let go: all of stability, all conditions", output, step => discipline.Review(Moved(boat, gear, step), null, memo, default).ToArray());
        output.WriteLine(isGood ? "All within limits." : $"Outside the limits: a waterline takes at most {MostMs} ms.");
        return isGood ? 0 : 1;
    }

    private static Place At(Gear gear, int step) => gear.Place! with { XM = gear.Place!.XM + (step * 1e-4) };

    private static BoatModel Moved(BoatModel boat, Gear gear, int step) =>
        boat.WithThings(boat.Things.Select(thing => thing.Id == gear.Id ? gear with { Place = At(gear, step) } : thing));

    private static double Measure(string what, TextWriter output, Func<int, object?> run)
    {
        double[] times = new double[RepeatCount], processorTimes = new double[RepeatCount];
        for (int k = -WarmUpCount; k < RepeatCount; k++)
        {
            (TimeSpan busy, long start) = (Environment.CpuUsage.TotalTime, Stopwatch.GetTimestamp());
            _ = run(k + WarmUpCount + 1) ?? throw new InvalidOperationException("The demo boat does not float.");
            if (k >= 0)
            {
                times[k] = Stopwatch.GetElapsedTime(start).TotalMilliseconds;
                processorTimes[k] = (Environment.CpuUsage.TotalTime - busy).TotalMilliseconds;
            }
        }

        Array.Sort(times);
        Array.Sort(processorTimes);
        output.WriteLine(string.Create(CultureInfo.InvariantCulture, $"{what,-42} {times[RepeatCount / 2],8:F2} on the clock, {processorTimes[RepeatCount / 2],8:F2} of the processor"));
        return times[RepeatCount / 2];
    }
}
