using System.Diagnostics;
using System.Globalization;
using Orlop.Bench.Reviews;
using Orlop.Boat;
using Orlop.Boat.Things;
using Orlop.Review;
using Orlop.Review.Practices;
using Orlop.Review.Ways;

namespace Orlop.Bench.Ways;

/// <summary>The demo boat's first cables that have a way, planned together. Ends with 1 when a plan takes longer than its limit.</summary>
internal static class WaysBench
{
    private const double MostMs = 2000;
    private const int WarmUpCount = 2;
    private const int RepeatCount = 5;

    public static int Run(TextWriter output)
    {
        if (DemoBoat.Read(output) is not { } boat)
        {
            return 1;
        }

        WaysView whole = View(boat);
        Cable[] cables = [.. boat.All<Cable>().Where(cable => !RouteFinder.Find(whole, cable).Routes.IsEmpty)];
        output.WriteLine("Cables planned together. Median times in ms, each alone among them.");
        output.WriteLine($"{"cables",8} {"plan",10} {"apart m",10} {"together m",12} {"above the least",16}");
        bool isGood = true;
        foreach (int count in new[] { 1, 2, 4, 8, 16, JointRoutes.MostCableCount })
        {
            Cable[] planned = [.. cables.Take(count)];
            JointRoutes? plan = null;
            double[] times = [.. Enumerable.Range(-WarmUpCount, WarmUpCount + RepeatCount).Select(_ =>
            {
                WaysView view = View(boat);
                long start = Stopwatch.GetTimestamp();
                plan = JointRoutes.Plan(view, planned);
                return Stopwatch.GetElapsedTime(start).TotalMilliseconds;
            }).Skip(WarmUpCount).Order()];
            double median = times[RepeatCount / 2];
            output.WriteLine(string.Create(CultureInfo.InvariantCulture, $"{planned.Length,8} {median,10:F1} {plan?.ApartM,10:F2} {plan?.TogetherM,12:F2} {(plan is null ? "no plan" : plan.IsProved ? "proved" : $"{100 * plan.MostAboveFraction:F1} %"),16}"));
            isGood &= median <= MostMs;
        }

        output.WriteLine(isGood ? "All within limits." : $"Outside the limit: a plan in at most {MostMs} ms.");
        return isGood ? 0 : 1;
    }

    private static WaysView View(BoatModel boat)
    {
        Memo memo = new();
        return new WaysView(boat, Practice.Of(boat, memo), memo, CancellationToken.None);
    }
}
