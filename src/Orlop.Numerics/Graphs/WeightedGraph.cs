using System.Collections.Immutable;

namespace Orlop.Numerics.Graphs;

/// <summary>An arc of a graph, passable one way.</summary>
/// <param name="From">Node it leaves, from 0.</param>
/// <param name="To">Node it reaches.</param>
/// <param name="Weight">What passing it costs: finite, at least 0.</param>
public readonly record struct Arc(int From, int To, double Weight);

/// <summary>A directed graph of weighted arcs; two nodes may have several between them.</summary>
public sealed class WeightedGraph
{
    private readonly int[][] _leaving;

    /// <param name="nodeCount">How many nodes there are, numbered from 0.</param>
    /// <param name="arcs">The arcs; one that names no node or has a weight below 0 or none is refused.</param>
    public WeightedGraph(int nodeCount, IEnumerable<Arc> arcs)
    {
        NodeCount = nodeCount;
        Arcs = [.. arcs];
        List<int>[] leaving = [.. Enumerable.Range(0, nodeCount).Select(_ => new List<int>())];
        for (int k = 0; k < Arcs.Length; k++)
        {
            Arc arc = Arcs[k];
            if (!(arc.From >= 0 && arc.From < nodeCount && arc.To >= 0 && arc.To < nodeCount && arc.Weight >= 0 && double.IsFinite(arc.Weight)))
            {
                throw new ArgumentOutOfRangeException(nameof(arcs), arc, $"Graph: an arc joins nodes 0 to {nodeCount - 1} with a finite weight of at least 0.");
            }

            leaving[arc.From].Add(k);
        }

        _leaving = [.. leaving.Select(list => list.ToArray())];
    }

    /// <summary>How many nodes there are.</summary>
    public int NodeCount { get; }

    /// <summary>All arcs, in the order given.</summary>
    public ImmutableArray<Arc> Arcs { get; }

    /// <summary>A graph whose arcs are passable both ways.</summary>
    public static WeightedGraph BothWays(int nodeCount, IEnumerable<Arc> arcs) =>
        new(nodeCount, arcs.SelectMany(arc => new[] { arc, new Arc(arc.To, arc.From, arc.Weight) }));

    /// <summary>Indices of the arcs that leave a node.</summary>
    internal ReadOnlySpan<int> Leaving(int node) => _leaving[node];
}
