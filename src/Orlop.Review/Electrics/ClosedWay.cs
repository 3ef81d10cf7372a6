using System.Collections.Immutable;
using Orlop.Boat.Things;
using Orlop.Boat.Topology;

namespace Orlop.Review.Electrics;

/// <summary>The shortest way between two nodes through what conducts in a condition.</summary>
internal static class ClosedWay
{
    /// <summary>The edges from one node to another, in order; null where there is no way.</summary>
    /// <param name="joined">Nodes that are joined with one another besides, by no edge: what is bonded to a hull of metal.</param>
    public static ImmutableArray<WiringEdge>? Between(ElectricsView view, Condition condition, string from, string to, ImmutableArray<string> joined)
    {
        Dictionary<string, (string From, WiringEdge? By)> reached = new(StringComparer.Ordinal) { [from] = (from, null) };
        Queue<string> queue = new([from]);
        while (queue.TryDequeue(out string? node))
        {
            if (node == to)
            {
                return Back(reached, from, to);
            }

            foreach (WiringEdge edge in view.Wiring.At(node))
            {
                if (edge.IsClosedIn(condition.Id) && reached.TryAdd(edge.Other(node), (node, edge)))
                {
                    queue.Enqueue(edge.Other(node));
                }
            }

            foreach (string other in joined.Contains(node) ? joined : [])
            {
                if (reached.TryAdd(other, (node, null)))
                {
                    queue.Enqueue(other);
                }
            }
        }

        return null;
    }

    private static ImmutableArray<WiringEdge> Back(Dictionary<string, (string From, WiringEdge? By)> reached, string from, string to)
    {
        List<WiringEdge> edges = [];
        for (string node = to; node != from; node = reached[node].From)
        {
            if (reached[node].By is { } edge)
            {
                edges.Add(edge);
            }
        }

        edges.Reverse();
        return [.. edges];
    }
}
