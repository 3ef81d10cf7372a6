using System.Collections.Immutable;
using Orlop.Boat.Things;
using Orlop.Boat.Values;
using Orlop.Numerics.Graphs;
using Orlop.Review.Findings;
using Orlop.Review.Practices;

namespace Orlop.Review.Ways;

/// <summary>Finds the best ways that a cable may take by the owner's preferences.</summary>
public static class RouteFinder
{
    /// <summary>How many are offered.</summary>
    public const int OfferedCount = 3;

    // Paths looked at for ways that differ; the next best is mostly the same way with another corner.
    private const int MostPaths = 400;

    // A way is one of a route's main ones where it holds more than this share of it: routes that differ in them are offered before those that differ in a corner.
    private const double MainFraction = 0.1;

    // A cable is laid round a corner from here on.
    private const double CornerDeg = 10;

    /// <summary>The best way of a cable and the next best that take other ways; remembered by the boat's content.</summary>
    public static CableRoutes Find(WaysView view, Cable cable)
    {
        ArgumentNullException.ThrowIfNull(view);
        ArgumentNullException.ThrowIfNull(cable);
        return view.Memo.Get((view.Boat, cable, "route"), () => Sought(view, cable));
    }

    /// <summary>The ways of the boat as a graph for a cable whose ends are known.</summary>
    /// <param name="view">The boat's ways.</param>
    /// <param name="cable">The cable.</param>
    /// <param name="shareOf">The share that it pays of what is paid once. The pieces of the graph are the same for any share.</param>
    internal static RouteGraph GraphOf(WaysView view, Cable cable, Func<string, double> shareOf)
    {
        (Part? from, Part? to, _) = EndsOf(view, cable);
        return RouteGraph.Of(view, cable, from!, to!, view.Ways.Where(way => view.WhyNot(way, cable) is null), shareOf);
    }

    private static CableRoutes Sought(WaysView view, Cable cable)
    {
        (_, _, ImmutableArray<FindingInput> missing) = EndsOf(view, cable);
        if (!missing.IsEmpty)
        {
            return new CableRoutes(cable, [], missing, []);
        }

        RouteGraph graph = GraphOf(view, cable, _ => 1);
        List<CableRoute> routes = [], alike = [];
        HashSet<string> seen = new(StringComparer.Ordinal), main = new(StringComparer.Ordinal);
        foreach (GraphPath path in ShortestPaths.InOrder(graph.Graph, RouteGraph.Start, RouteGraph.End).Take(MostPaths).TakeWhile(_ => routes.Count < OfferedCount))
        {
            CableRoute route = RouteOf(view, cable, [.. path.Arcs.Select(index => graph.Arcs[index])]);
            if (seen.Add(WaysOf(route, 0)))
            {
                (main.Add(WaysOf(route, MainFraction)) ? routes : alike).Add(route);
            }
        }

        routes = [.. routes.Concat(alike.Take(OfferedCount - routes.Count)).OrderBy(route => route.CostM)];
        return new CableRoutes(cable, [.. routes], [], [.. view.Ways.Select(way => (Way: way, Why: view.WhyNot(way, cable))).Where(pair => pair.Why is not null).Select(pair => new WayLeftOut(pair.Way, pair.Why!))]);
    }

    private static string WaysOf(CableRoute route, double leastFraction) => string.Join('|', route.Stretches
        .Where(stretch => stretch.Way is not null).GroupBy(stretch => stretch.Way!.Id)
        .Where(way => way.Sum(stretch => stretch.LengthM) > leastFraction * route.LengthM)
        .Select(way => way.Key).Order(StringComparer.Ordinal));

    /// <summary>The things at a cable's two ends, and what must be known of them before its way can be told.</summary>
    internal static (Part? From, Part? To, ImmutableArray<FindingInput> Missing) EndsOf(WaysView view, Cable cable)
    {
        if (cable.Cores.Count == 0)
        {
            return (null, null, [new FindingInput(cable.Id, "cores", IsMissing: true)]);
        }

        Part?[] ends = [view.Boat.Find<Part>(cable.Cores[0].From.Part), view.Boat.Find<Part>(cable.Cores[0].To.Part)];
        return (ends[0], ends[1],
        [
            .. ends.OfType<Part>().Where(part => part.Place is null).Select(part => new FindingInput(part.Id, "place", IsMissing: true)),
            .. ends.Contains(null) ? new[] { new FindingInput(cable.Id, "cores") } : [],
        ]);
    }

    /// <summary>The route along these pieces.</summary>
    internal static CableRoute RouteOf(WaysView view, Cable cable, RouteArc[] arcs)
    {
        ImmutableArray<RouteStretch> stretches = [.. Stretches(arcs)];
        Way[] ways = [.. stretches.Select(stretch => stretch.Way).OfType<Way>().DistinctBy(way => way.Id)];
        ImmutableArray<PassedHole> holes = [.. arcs.SelectMany(arc => arc.Holes).Distinct()];
        ConduitContents[] contents = [.. ways.Where(ConduitContents.IsConduit).Select(way => view.Contents(way, cable))];
        double? spacingM = view.Practice?.Find(LimitIds.SupportSpacingM)?.Value;
        return new CableRoute
        {
            Stretches = stretches,
            Costs = [.. arcs.SelectMany(arc => arc.Costs).GroupBy(cost => cost.Kind).OrderBy(kind => kind.Key).Select(kind => new RouteCost(kind.Key, kind.Sum(cost => cost.WorthM)))],
            Holes = holes,
            Fills = [.. contents.Select(content => new RouteFill(content.Way, content.FillFraction, content.Limit?.Value))],
            AllowanceM = (2 * view.Rules.TailM) + view.Rules.LoopM,
            LeastBendMm = view.LeastBendMm(cable),
            BendCount = CornerCount([.. stretches.SelectMany(stretch => stretch.Line)]),
            SupportCount = spacingM is { } spacing ? stretches.Where(stretch => stretch.Way?.Means is not (WayKind.Conduit or WayKind.Gland)).Sum(stretch => (int)Math.Ceiling((stretch.LengthM / spacing) - 1e-9)) : null,
            BesideAcM = stretches.Where(stretch => stretch.Way is { } way && view.IsBesideOtherKind(way, cable)).Sum(stretch => stretch.LengthM),
            Missing =
            [
                .. ways.Where(way => view.UseOf(way) is null).Select(way => new FindingInput(way.Id, "space", IsMissing: true)),
                .. contents.SelectMany(content => content.Missing),
                .. WaysView.MissingForBend(cable),
                .. holes.Where(hole => hole.Hole.Guard is null).Select(hole => new FindingInput(hole.Way.Id, "holes", IsMissing: true)).Distinct(),
            ],
        };
    }

    // Pieces in a row along one way, or loose in one space, are one stretch; its length is rounded up to the centimetre.
    private static IEnumerable<RouteStretch> Stretches(RouteArc[] arcs)
    {
        for (int k = 0; k < arcs.Length;)
        {
            int first = k;
            while (k < arcs.Length && arcs[k].Way?.Id == arcs[first].Way?.Id && arcs[k].Space?.Id == arcs[first].Space?.Id)
            {
                k++;
            }

            RouteArc[] run = arcs[first..k];
            double lengthM = Math.Round(Math.Ceiling((run.Sum(arc => arc.LengthM) * 100) - 1e-6) / 100, 2);
            if (lengthM > 0)
            {
                yield return new RouteStretch(run[0].Way, run[0].Space, run[0].Use, lengthM, [.. run.SelectMany(arc => arc.Line)]);
            }
        }
    }

    private static int CornerCount(ImmutableArray<Place> line)
    {
        Place[] points = [.. line.Where((place, index) => index == 0 || place.DistanceM(line[index - 1]) > 1e-6)];
        return Enumerable.Range(1, Math.Max(0, points.Length - 2)).Count(k => WayCorners.TurnDeg(points[k - 1], points[k], points[k + 1]) >= CornerDeg);
    }
}
