using Orlop.Boat.Topology;

namespace Orlop.Review.Networks;

/// <summary>Finds which edges of the wiring lie in loops: parallel ways and rings, by the bridges of the graph (R. Tarjan, 1974).</summary>
internal static class WiringLoops
{
    /// <summary>The number of the loop (two-edge-connected part) of each edge that lies in one.</summary>
    public static Dictionary<string, int> Of(Wiring wiring, string conditionId)
    {
        Dictionary<string, int> order = new(StringComparer.Ordinal);
        Dictionary<string, int> low = new(StringComparer.Ordinal);
        HashSet<string> bridges = [];
        foreach (string root in wiring.Nodes)
        {
            if (!order.ContainsKey(root))
            {
                Search(wiring, conditionId, root, order, low, bridges);
            }
        }

        return Number(wiring, conditionId, bridges);
    }

    private static void Search(Wiring wiring, string conditionId, string root, Dictionary<string, int> order, Dictionary<string, int> low, HashSet<string> bridges)
    {
        Stack<(string Node, WiringEdge? By, int Next)> stack = new([(root, null, 0)]);
        order[root] = low[root] = order.Count;
        while (stack.TryPop(out (string Node, WiringEdge? By, int Next) frame))
        {
            IReadOnlyList<WiringEdge> edges = wiring.At(frame.Node);
            if (frame.Next < edges.Count)
            {
                stack.Push(frame with { Next = frame.Next + 1 });
                WiringEdge edge = edges[frame.Next];
                string other = edge.Other(frame.Node);
                if (edge.Id == frame.By?.Id || !edge.IsClosedIn(conditionId))
                {
                    continue;
                }

                if (order.TryGetValue(other, out int seen))
                {
                    low[frame.Node] = Math.Min(low[frame.Node], seen);
                }
                else
                {
                    order[other] = low[other] = order.Count;
                    stack.Push((other, edge, 0));
                }
            }
            else if (frame.By is { } by)
            {
                string up = by.Other(frame.Node);
                low[up] = Math.Min(low[up], low[frame.Node]);
                if (low[frame.Node] > order[up])
                {
                    bridges.Add(by.Id);
                }
            }
        }
    }

    private static Dictionary<string, int> Number(Wiring wiring, string conditionId, HashSet<string> bridges)
    {
        Dictionary<string, int> loopOf = new(StringComparer.Ordinal);
        HashSet<string> seen = new(StringComparer.Ordinal);
        int count = 0;
        foreach (string root in wiring.Nodes)
        {
            if (!seen.Add(root))
            {
                continue;
            }

            Queue<string> queue = new([root]);
            while (queue.TryDequeue(out string? node))
            {
                foreach (WiringEdge edge in wiring.At(node).Where(edge => edge.IsClosedIn(conditionId) && !bridges.Contains(edge.Id)))
                {
                    loopOf.TryAdd(edge.Id, count);
                    if (seen.Add(edge.Other(node)))
                    {
                        queue.Enqueue(edge.Other(node));
                    }
                }
            }

            count++;
        }

        return loopOf;
    }
}
