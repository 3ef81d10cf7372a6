using System.Collections.Immutable;

namespace Orlop.Numerics.Graphs;

/// <summary>A path through a graph.</summary>
/// <param name="Arcs">Indices of its arcs, in order; none where it ends where it begins.</param>
/// <param name="Weight">Their weights together.</param>
public sealed record GraphPath(ImmutableArray<int> Arcs, double Weight);

/// <summary>Shortest paths from node to node, and the next best after them.</summary>
/// <remarks>
/// Dijkstra, "A note on two problems in connexion with graphs", Numerische Mathematik 1 (1959); Yen, "Finding the k shortest loopless paths in a network",
/// Management Science 17 (1971).
/// </remarks>
public static class ShortestPaths
{
    /// <summary>The weight of the shortest path from a node to every node; infinite where there is none.</summary>
    public static double[] DistancesFrom(WeightedGraph graph, int from)
    {
        ArgumentNullException.ThrowIfNull(graph);
        return Search(graph, from, -1, [], []).Distances;
    }

    /// <summary>A shortest path, or null where there is none.</summary>
    public static GraphPath? Find(WeightedGraph graph, int from, int to)
    {
        ArgumentNullException.ThrowIfNull(graph);
        return Find(graph, from, to, [], []);
    }

    /// <summary>All paths that pass no node twice, the shortest first, each found when it is asked for.</summary>
    public static IEnumerable<GraphPath> InOrder(WeightedGraph graph, int from, int to)
    {
        ArgumentNullException.ThrowIfNull(graph);
        PriorityQueue<GraphPath, (double Weight, int Order)> candidates = new();
        HashSet<string> seen = new(StringComparer.Ordinal);
        List<GraphPath> found = [];
        Offer(Find(graph, from, to));
        while (candidates.TryDequeue(out GraphPath? path, out _))
        {
            yield return path;
            found.Add(path);
            foreach (GraphPath? next in Deviations(graph, from, to, path, found))
            {
                Offer(next);
            }
        }

        void Offer(GraphPath? path)
        {
            if (path is not null && seen.Add(string.Join(',', path.Arcs)))
            {
                candidates.Enqueue(path, (path.Weight, seen.Count));
            }
        }
    }

    // For each node of a path: the same way up to there, and on from there by none of the arcs that a found path takes.
    private static IEnumerable<GraphPath?> Deviations(WeightedGraph graph, int from, int to, GraphPath path, List<GraphPath> found)
    {
        HashSet<int> passed = [];
        int node = from;
        double weight = 0;
        for (int spur = 0; spur < path.Arcs.Length; spur++)
        {
            int upTo = spur;
            HashSet<int> taken = [.. found.Where(other => other.Arcs.Length > upTo && other.Arcs.AsSpan()[..upTo].SequenceEqual(path.Arcs.AsSpan()[..upTo])).Select(other => other.Arcs[upTo])];
            if (Find(graph, node, to, passed, taken) is { } rest)
            {
                yield return new GraphPath([.. path.Arcs[..spur], .. rest.Arcs], weight + rest.Weight);
            }

            passed.Add(node);
            Arc arc = graph.Arcs[path.Arcs[spur]];
            weight += arc.Weight;
            node = arc.To;
        }
    }

    /// <summary>A shortest path that passes none of these nodes and arcs; null where there is none.</summary>
    internal static GraphPath? Find(WeightedGraph graph, int from, int to, HashSet<int> closedNodes, HashSet<int> closedArcs)
    {
        (double[] distances, int[] reachedBy) = Search(graph, from, to, closedNodes, closedArcs);
        if (double.IsInfinity(distances[to]))
        {
            return null;
        }

        List<int> arcs = [];
        for (int node = to; node != from; node = graph.Arcs[reachedBy[node]].From)
        {
            arcs.Add(reachedBy[node]);
        }

        arcs.Reverse();
        return new GraphPath([.. arcs], distances[to]);
    }

    private static (double[] Distances, int[] ReachedBy) Search(WeightedGraph graph, int from, int to, HashSet<int> closedNodes, HashSet<int> closedArcs)
    {
        double[] distances = new double[graph.NodeCount];
        int[] reachedBy = new int[graph.NodeCount];
        Array.Fill(distances, double.PositiveInfinity);
        bool[] isDone = new bool[graph.NodeCount];
        PriorityQueue<int, (double, int)> open = new();
        distances[from] = 0;
        open.Enqueue(from, (0, from));
        while (open.TryDequeue(out int node, out _) && node != to)
        {
            if (isDone[node])
            {
                continue;
            }

            isDone[node] = true;
            foreach (int index in graph.Leaving(node))
            {
                Arc arc = graph.Arcs[index];
                double distance = distances[node] + arc.Weight;
                if (distance < distances[arc.To] && !closedArcs.Contains(index) && !closedNodes.Contains(arc.To))
                {
                    distances[arc.To] = distance;
                    reachedBy[arc.To] = index;
                    open.Enqueue(arc.To, (distance, arc.To));
                }
            }
        }

        return (distances, reachedBy);
    }
}
