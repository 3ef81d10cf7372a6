using Orlop.Boat.Topology;

namespace Orlop.Review.Electrics;

/// <summary>The fewest edges from a node to any other through what is closed in a condition, with none through everything; each node's ways are looked up once. For one thread.</summary>
internal sealed class WiringTrees(Wiring wiring, string? conditionId)
{
    private readonly Dictionary<string, Dictionary<string, WiringEdge>> _trees = new(StringComparer.Ordinal);

    /// <summary>The edges from one node to another, in order; none where no closed metal joins them.</summary>
    public IEnumerable<WiringEdge> Along(string from, string to)
    {
        if (!_trees.TryGetValue(from, out Dictionary<string, WiringEdge>? cameBy))
        {
            _trees[from] = cameBy = TreeOf(from);
        }

        List<WiringEdge> way = [];
        for (string node = to; node != from; node = way[^1].Other(node))
        {
            if (!cameBy.TryGetValue(node, out WiringEdge? edge))
            {
                return [];
            }

            way.Add(edge);
        }

        way.Reverse();
        return way;
    }

    private Dictionary<string, WiringEdge> TreeOf(string from)
    {
        Dictionary<string, WiringEdge> cameBy = new(StringComparer.Ordinal);
        HashSet<string> seen = new([from], StringComparer.Ordinal);
        Queue<string> open = new([from]);
        while (open.TryDequeue(out string? node))
        {
            foreach (WiringEdge edge in wiring.At(node).Where(edge => edge.IsClosedIn(conditionId) && seen.Add(edge.Other(node))))
            {
                cameBy[edge.Other(node)] = edge;
                open.Enqueue(edge.Other(node));
            }
        }

        return cameBy;
    }
}
