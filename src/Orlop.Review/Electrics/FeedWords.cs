using Orlop.Boat.Things;
using Orlop.Electrics.Protection;
using Orlop.Review.Findings;
using static Orlop.Review.Electrics.FindingLines;

namespace Orlop.Review.Electrics;

/// <summary>What limits a feed, as a line of working and in a sentence.</summary>
internal static class FeedWords
{
    /// <summary>A battery reaches it with no fuse or breaker between.</summary>
    public static bool IsBare(ElectricsView view, FeedLimit feed) =>
        double.IsPositiveInfinity(feed.MostA) && feed.LimitedBy.Any(part => view.Boat.Find<Part>(part.Id) is BatteryBank);

    /// <summary>The devices whose ratings are summed, with their names.</summary>
    public static WorkingLine Line(ElectricsView view, FeedLimit feed) => double.IsFinite(feed.MostA)
        ? new WorkingLine(
            "Worst feed",
            string.Join(" + ", feed.LimitedBy.Select(part => $"{Title(view, part)} {N(part.LimitA)} A")) + ", the least that stands between it and every source",
            A(feed.MostA),
            "the wiring as drawn")
        : new WorkingLine("Worst feed", $"{string.Join(" and ", feed.LimitedBy.Where(part => double.IsPositiveInfinity(part.LimitA)).Select(part => Title(view, part)))} reaches it with no fuse or breaker between", null, "the wiring as drawn");

    /// <summary>" (Fuse 1 and Fuse 2 together)" where several are summed; empty for one.</summary>
    public static string Together(ElectricsView view, FeedLimit feed) =>
        feed.LimitedBy.Length > 1 && double.IsFinite(feed.MostA) ? $" ({string.Join(" and ", feed.LimitedBy.Select(part => Title(view, part)))} together)" : "";

    private static string Title(ElectricsView view, FeedPart part) => view.Boat.Find(part.Id)?.Title ?? part.Id;
}
