using System.Collections.Immutable;
using Orlop.Boat.Things;
using Orlop.Boat.Topology;
using Orlop.Electrics.Protection;
using Orlop.Review.Findings;
using Orlop.Review.Practices;
using static Orlop.Review.Electrics.FindingLines;

namespace Orlop.Review.Electrics;

/// <summary>
/// The stretch of wiring around a core that nothing upstream protects well enough: from the source, bar or device that feeds it, to the
/// devices that protect it at its other end.
/// </summary>
/// <param name="LengthM">Its length, with a length that is <paramref name="Missing"/> as nothing.</param>
/// <param name="IsFromBattery">A battery feeds it.</param>
/// <param name="FromTitle">What feeds it.</param>
/// <param name="DeviceTitle">What protects it at its far end.</param>
/// <param name="Fault">Why no length makes it right; null when one does.</param>
/// <param name="Missing">The lengths that are not given.</param>
internal sealed record UnprotectedStretch(
    double LengthM, bool IsFromBattery, string FromTitle, string DeviceTitle, Sentence? Fault, ImmutableArray<FindingInput> Missing)
{
    /// <summary>The numbers that <see cref="Fault"/> speaks of, as lines of working.</summary>
    public ImmutableArray<WorkingLine> FaultLines { get; init; } = [];

    /// <summary>Follows a core both ways.</summary>
    /// <param name="view">The boat's wiring.</param>
    /// <param name="core">The core, which something can feed.</param>
    /// <param name="condition">The condition.</param>
    /// <param name="mostA">The largest device the core allows, in amperes; infinite to ask whether there is any device at all.</param>
    public static UnprotectedStretch Of(ElectricsView view, WiringEdge core, Condition condition, double mostA)
    {
        (FeedLimit feedAtA, FeedLimit feedAtB) = view.ReachIn(condition).FeedsWithout(core);
        (double atA, double atB) = (feedAtA.MostA, feedAtB.MostA);
        string title = $"{core.Owner.Title}, {core.Core!.Id}";
        if (IsTooMuch(atA, mostA) && IsTooMuch(atB, mostA))
        {
            return Faulty(double.IsFinite(mostA)
                ? Sentence.Of($"{title}: both ends can feed it, {Fed(Math.Max(atA, atB))}, and neither end has a device small enough for it ({A(mostA)} at most)")
                : Sentence.Of($"{title}: both ends can feed it and there is no fuse or breaker at either end"));
        }

        bool isFedAtA = atA >= atB;
        string feedNode = isFedAtA ? core.A : core.B, farNode = isFedAtA ? core.B : core.A;
        List<FindingInput> missing = [];
        double length = LengthOf(core, missing);
        (string from, Part? source, double upstream) = Upstream(view, core, feedNode, condition, missing);
        string fromTitle = source?.Title ?? view.Boat.Find(ElementIds.ThingOf(from))?.Title ?? from;
        Downstream far = FollowDown(view, core, farNode, condition, mostA, missing);
        FeedLimit feed = isFedAtA ? feedAtA : feedAtB;
        if (far.Fault is { } fault)
        {
            Limit? tap = double.IsFinite(mostA) && core.Owner is Cable cable ? view.Practice?.Find(LimitIdOf(source is BatteryBank, cable)) : null;
            return Faulty(double.IsFinite(mostA)
                ? Sentence.Of($"{title}: {Fed(feed.MostA)}{FeedWords.Together(view, feed)}; it allows {A(mostA)}, and {fault}{TapWords(tap)}")
                : Sentence.Of($"{title}: {fault}")) with
            {
                FaultLines = [.. far.Line is { } line ? [line] : Array.Empty<WorkingLine>(), .. tap is null ? [] : new[] { Line(tap, "Longest tap that its far device may protect", "M") }],
            };
        }

        if (far.Bare is { } bare)
        {
            return Faulty(double.IsPositiveInfinity(Math.Max(atA, atB))
                ? Sentence.Of($"{title}: no fuse or breaker between {fromTitle} and {bare}")
                : Sentence.Of($"{title}: {Fed(feed.MostA)}{FeedWords.Together(view, feed)}; it allows {A(mostA)}, and {bare} is reached with no fuse or breaker small enough on the way"));
        }

        return new UnprotectedStretch(upstream + length + far.LengthM, source is BatteryBank, fromTitle, far.Device ?? "its device", null, [.. missing]);
    }

    // Bare: what is reached with no device on the way to it.
    private sealed record Downstream(double LengthM, string? Device, Sentence? Fault, string? Bare = null, WorkingLine? Line = null);

    // What the use is of: everything else in the sentence says why no device at the other end mends it.
    private static Sentence Fed(double feedA) => double.IsFinite(feedA)
        ? Sentence.Of($"at most {A(feedA)} can feed it before something opens")
        : Sentence.Of($"nothing limits what can feed it");

    // A device at the far end protects a short tap only.
    private static Sentence TapWords(Limit? tap) => tap is { } limit
        ? Sentence.Of($". A device at its far end may protect a short tap: {M(limit.Value)} at most from what feeds it")
        : Sentence.Of($". A device at its far end may protect a short tap only");

    /// <summary>The limit of how far a core may run before its device: from a battery, in a sheath, or bare.</summary>
    public static string LimitIdOf(bool isFromBattery, Cable cable) =>
        isFromBattery ? LimitIds.UnprotectedFromBatteryM : cable.IsSheathed ? LimitIds.UnprotectedSheathedM : LimitIds.UnprotectedM;

    private static bool IsTooMuch(double feedA, double mostA) => feedA > mostA || double.IsPositiveInfinity(feedA);

    private static UnprotectedStretch Faulty(Sentence fault) => new(0, false, "", "", fault, []);

    private static double LengthOf(WiringEdge edge, List<FindingInput> missing)
    {
        var length = edge.Owner switch
        {
            Cable cable when edge.Kind == WiringEdgeKind.Core => edge.Core!.LengthM ?? cable.LengthM,
            Link link => link.LengthM ?? 0.0,
            _ => 0.0,
        };
        if (length is null)
        {
            missing.Add(new FindingInput(edge.Owner.Id, "lengthM", IsMissing: true));
        }

        return length?.Value ?? 0;
    }

    // Back towards the feed through plain metal, to a source's terminal, a bar, or the far side of a device.
    private static (string Node, Part? Source, double LengthM) Upstream(ElectricsView view, WiringEdge core, string start, Condition condition, List<FindingInput> missing)
    {
        HashSet<string> seen = [start, core.Other(start)];
        double lengthM = 0;
        string node = start;
        WiringEdge came = core;
        while (true)
        {
            Part? part = view.Boat.Find<Part>(ElementIds.ThingOf(node));
            if (part is not null && Poles.Giving(part) is { } giving && (giving.Plus == node || giving.Minus == node))
            {
                return (node, part, lengthM);
            }

            WiringEdge[] onward = [.. view.Wiring.At(node).Where(edge => edge.Id != came.Id && edge.IsClosedIn(condition.Id) && !seen.Contains(edge.Other(node)))];
            if (part is Busbar || onward.Length != 1 || onward[0].Owner is Protection)
            {
                return (node, null, lengthM);
            }

            came = onward[0];
            lengthM += LengthOf(came, missing);
            node = came.Other(node);
            seen.Add(node);
        }
    }

    // On towards the loads through plain metal: every way must end in a device, and these together be small enough; the longest way counts.
    private static Downstream FollowDown(ElectricsView view, WiringEdge core, string start, Condition condition, double mostA, List<FindingInput> missing)
    {
        Stack<(string Node, double LengthM)> open = new([(start, 0)]);
        HashSet<string> seen = [start, core.Other(start)];
        double longest = 0;
        List<(WiringEdge Edge, string Beyond)> ends = [];
        while (open.TryPop(out (string Node, double LengthM) at))
        {
            Part? part = view.Boat.Find<Part>(ElementIds.ThingOf(at.Node));
            if (part is not null && Poles.Taking(part) is { } taking && (taking.Plus == at.Node || taking.Minus == at.Node))
            {
                return new Downstream(0, null, null, part.Title);
            }

            foreach (WiringEdge edge in view.Wiring.At(at.Node).Where(edge => edge.IsClosedIn(condition.Id) && !seen.Contains(edge.Other(at.Node))))
            {
                if (edge.Owner is Protection)
                {
                    longest = Math.Max(longest, at.LengthM);
                    ends.Add((edge, edge.Other(at.Node)));
                    continue;
                }

                seen.Add(edge.Other(at.Node));
                open.Push((edge.Other(at.Node), at.LengthM + LengthOf(edge, missing)));
            }
        }

        if (ends.Count == 0)
        {
            return new Downstream(0, null, Sentence.Of($"no fuse or breaker protects it at either end"));
        }

        // Devices side by side pass their sum; one that comes back to the same metal, or has nothing wired behind it, passes nothing.
        Protection[] passing = [.. ends.Where(end => !seen.Contains(end.Beyond) && view.Wiring.At(end.Beyond).Count > 1).Select(end => (Protection)end.Edge.Owner)];
        return passing.Sum(device => device.RatedA.Value) > mostA ? new Downstream(0, null, TooBig(passing, mostA), Line: FarDevices(passing)) : new Downstream(longest, ends[0].Edge.Owner.Title, null);
    }

    private static Sentence TooBig(Protection[] passing, double mostA) => passing.FirstOrDefault(device => device.RatedA.Value > mostA) is { } device
        ? Sentence.Of($"{device.Title} of {A(device.RatedA.Value)} at its far end is too big for it too")
        : Sentence.Of($"{string.Join(", ", passing.Select(each => $"{each.Title} {N(each.RatedA.Value)} A"))} may draw {A(passing.Sum(each => each.RatedA.Value))} through it together at its far end");

    private static WorkingLine FarDevices(Protection[] passing)
    {
        double[] ratings = [.. passing.Select(device => device.RatedA.Value)];
        return new WorkingLine(
            "Devices at its far end",
            ratings.Length == 1 ? passing[0].Title : Formula.Of(string.Join(" + ", ratings.Select((_, index) => $"{{{index}}}")), values => values.Sum(), ratings),
            A(ratings.Sum()),
            "the wiring as drawn");
    }
}
