using Orlop.Boat.Things;
using Orlop.Numerics.Graphs;

namespace Orlop.Review.Ways;

/// <summary>What the way of a cable measures from end to end, along the ways that its run names, with its ends and ways where they are now.</summary>
/// <param name="From">Its first end.</param>
/// <param name="To">Its other end.</param>
/// <param name="LengthM">The shortest that takes those ways in their order, with slack and without tails, in metres, above 0; null where no way leads along them any more.</param>
internal sealed record RoutedLength(Part From, Part To, double? LengthM)
{
    // A stretch shorter than this is left out of a run.
    private const double PassedM = 1e-8;

    /// <summary>The length of a cable was found along ways, and not measured or typed since.</summary>
    public static bool IsTold(Cable cable) => cable.LengthM?.Method == CableRoute.Method && cable.Run.Count > 0;

    /// <summary>Of a cable with a run; null where an end has no place, or a way of its run is gone or not drawn.</summary>
    /// <remarks>
    /// Dijkstra on the graph of its ways, once for each way taken so far. What is loose between ways and at the ends is free, and so is a way that is only crossed at a point and that no run names, so that a route as it was found is never longer than itself.
    /// </remarks>
    public static RoutedLength? Of(WaysView view, Cable cable)
    {
        (Part? from, Part? to, var missing) = RouteFinder.EndsOf(view, cable);
        Way?[] run = [.. cable.Run.Where(leg => leg.Way is not null).Select(leg => view.Boat.Find<Way>(leg.Way!))];
        return from is null || to is null || !missing.IsEmpty || run.Any(way => way is not { Points.Count: > 1 })
            ? null
            : new RoutedLength(from, to, Shortest(RouteGraph.Of(view, cable, from, to, view.Ways.Where(way => run.Any(taken => taken!.Id == way.Id) || view.WhyNot(way, cable) is null), _ => 1), InOrder([.. run.Select(way => way!.Id)])));
    }

    // Stretches in a row along one way are one.
    private static string[] InOrder(string[] ways) => [.. ways.Where((way, index) => index == 0 || way != ways[index - 1])];

    // A node is a stop with how many of the ways have been taken there.
    private static double? Shortest(RouteGraph graph, string[] ways)
    {
        int Node(int stop, int taken) => (taken * graph.StopCount) + stop;
        List<Arc> arcs = [];
        for (int taken = 0; taken <= ways.Length; taken++)
        {
            foreach (RouteArc arc in graph.Arcs.Where(arc => arc.Way is null || arc.LengthM < PassedM || (taken > 0 && arc.Way.Id == ways[taken - 1])))
            {
                arcs.Add(new Arc(Node(arc.From, taken), Node(arc.To, taken), arc.LengthM));
            }

            if (taken == ways.Length)
            {
                break;
            }

            arcs.AddRange(graph.Arcs.Where(arc => arc.Way?.Id == ways[taken]).Select(arc => new Arc(Node(arc.From, taken), Node(arc.To, taken + 1), arc.LengthM)));
            arcs.AddRange(Enumerable.Range(0, graph.StopCount).Where(stop => graph.WayAt(stop) == ways[taken]).Select(stop => new Arc(Node(stop, taken), Node(stop, taken + 1), 0)));
        }

        return ShortestPaths.Find(new WeightedGraph(Node(0, ways.Length + 1), arcs), Node(RouteGraph.Start, 0), Node(RouteGraph.End, ways.Length))?.Weight;
    }
}
