using Orlop.Numerics.Graphs;
using Xunit;

namespace Orlop.Numerics.Tests.Graphs;

public sealed class SteinerTreeTests
{
    /// <summary>The lightest tree is that of the lightest spanning tree over any set of nodes that holds the terminals.</summary>
    [Fact]
    public void Of_SmallRandomGraphs_IsAsLightAsTheBestOfAllSpanningTrees()
    {
        for (int seed = 0; seed < 40; seed++)
        {
            Random random = new(seed);
            Arc[] edges = [.. Enumerable.Range(0, 13).Select(_ => new Arc(random.Next(7), random.Next(7), Math.Round(9 * random.NextDouble(), 2)))];
            int[] terminals = [.. Enumerable.Range(0, 7).OrderBy(_ => random.Next()).Take(2 + (seed % 3))];
            double best = BestSpanning(edges, 7, terminals);
            WeightedGraph graph = WeightedGraph.BothWays(7, edges);
            SteinerTree? tree = SteinerTree.Of(graph, terminals);

            if (double.IsInfinity(best))
            {
                Assert.Null(tree);
                continue;
            }

            Assert.Equal(best, tree!.Weight, 1e-9);
            Assert.True(tree.Arcs.Sum(arc => graph.Arcs[arc].Weight) <= best + 1e-9);
            Assert.True(Joins(tree.Arcs.Select(arc => graph.Arcs[arc]), 7, terminals), $"seed {seed}");
        }
    }

    [Fact]
    public void Of_NoneOrTooManyTerminals_IsRefused()
    {
        WeightedGraph graph = WeightedGraph.BothWays(20, []);
        Assert.Throws<ArgumentOutOfRangeException>(() => SteinerTree.Of(graph, []));
        Assert.Throws<ArgumentOutOfRangeException>(() => SteinerTree.Of(graph, [.. Enumerable.Range(0, SteinerTree.MostTerminalCount + 1)]));
        Assert.Equal(0, SteinerTree.Of(graph, [4])!.Weight);
    }

    private static double BestSpanning(Arc[] edges, int nodeCount, int[] terminals)
    {
        double best = double.PositiveInfinity;
        for (int set = 0; set < 1 << nodeCount; set++)
        {
            if (terminals.All(node => (set & (1 << node)) != 0))
            {
                DisjointSets pieces = new(nodeCount);
                double weight = edges.Where(edge => (set & (1 << edge.From)) != 0 && (set & (1 << edge.To)) != 0).OrderBy(edge => edge.Weight).Sum(edge => pieces.Merge(edge.From, edge.To) ? edge.Weight : 0);
                int[] inside = [.. Enumerable.Range(0, nodeCount).Where(node => (set & (1 << node)) != 0)];
                best = inside.All(node => pieces.Find(node) == pieces.Find(inside[0])) ? Math.Min(best, weight) : best;
            }
        }

        return best;
    }

    private static bool Joins(IEnumerable<Arc> arcs, int nodeCount, int[] terminals)
    {
        DisjointSets pieces = new(nodeCount);
        foreach (Arc arc in arcs)
        {
            pieces.Merge(arc.From, arc.To);
        }

        return terminals.All(node => pieces.Find(node) == pieces.Find(terminals[0]));
    }
}
