using Orlop.Numerics.Graphs;
using Xunit;

namespace Orlop.Numerics.Tests.Graphs;

public sealed class ShortestPathsTests
{
    /// <summary>Every path without a node twice, listed one by one and sorted, is what the search gives in order.</summary>
    [Fact]
    public void InOrder_SmallRandomGraphs_AreAllPathsSortedByWeight()
    {
        for (int seed = 0; seed < 60; seed++)
        {
            WeightedGraph graph = RandomGraph(seed, nodeCount: 6, arcCount: 14);
            double[] listed = [.. AllPaths(graph, 0, 5).Select(path => path.Sum(arc => graph.Arcs[arc].Weight)).Order()];
            GraphPath[] found = [.. ShortestPaths.InOrder(graph, 0, 5)];

            Assert.Equal(listed.Length, found.Length);
            Assert.Equal(found.Length, found.Select(path => string.Join(',', path.Arcs)).Distinct().Count());
            for (int k = 0; k < listed.Length; k++)
            {
                Assert.Equal(listed[k], found[k].Weight, 1e-9);
                Assert.Equal(found[k].Weight, found[k].Arcs.Sum(arc => graph.Arcs[arc].Weight), 1e-9);
            }
        }
    }

    /// <summary>A distance is never longer than by way of a third node: shortest distances are a metric.</summary>
    [Fact]
    public void DistancesFrom_ObeyTheTriangleInequality()
    {
        for (int seed = 100; seed < 130; seed++)
        {
            WeightedGraph graph = RandomGraph(seed, nodeCount: 9, arcCount: 26);
            double[][] all = [.. Enumerable.Range(0, graph.NodeCount).Select(node => ShortestPaths.DistancesFrom(graph, node))];
            for (int a = 0; a < all.Length; a++)
            {
                for (int b = 0; b < all.Length; b++)
                {
                    for (int c = 0; c < all.Length; c++)
                    {
                        Assert.True(all[a][c] <= all[a][b] + all[b][c] + 1e-9, $"seed {seed}: {a} to {c} by way of {b}");
                    }
                }
            }
        }
    }

    [Fact]
    public void Find_NoWay_IsNull_AndToItselfIsNothing()
    {
        WeightedGraph graph = new(3, [new Arc(0, 1, 2)]);
        Assert.Null(ShortestPaths.Find(graph, 1, 0));
        Assert.Empty(ShortestPaths.InOrder(graph, 0, 2));
        Assert.Equal((0, 0.0), (ShortestPaths.Find(graph, 2, 2)!.Arcs.Length, ShortestPaths.Find(graph, 2, 2)!.Weight));
    }

    [Theory]
    [InlineData(0, 3, 1)]
    [InlineData(-1, 0, 1)]
    [InlineData(0, 1, -0.1)]
    [InlineData(0, 1, double.NaN)]
    [InlineData(0, 1, double.PositiveInfinity)]
    public void Graph_ArcThatCannotBe_IsRefused(int from, int to, double weight) =>
        Assert.Throws<ArgumentOutOfRangeException>(() => new WeightedGraph(3, [new Arc(from, to, weight)]));

    internal static WeightedGraph RandomGraph(int seed, int nodeCount, int arcCount)
    {
        Random random = new(seed);
        return new WeightedGraph(nodeCount, Enumerable.Range(0, arcCount).Select(_ => new Arc(random.Next(nodeCount), random.Next(nodeCount), Math.Round(10 * random.NextDouble(), 2))).Where(arc => arc.From != arc.To));
    }

    private static IEnumerable<List<int>> AllPaths(WeightedGraph graph, int from, int to, List<int>? so = null)
    {
        so ??= [];
        if (from == to)
        {
            yield return so;
            yield break;
        }

        for (int arc = 0; arc < graph.Arcs.Length; arc++)
        {
            int next = graph.Arcs[arc].To;
            bool isPassed = so.Any(passed => graph.Arcs[passed].From == next);
            if (graph.Arcs[arc].From == from && !isPassed)
            {
                foreach (List<int> path in AllPaths(graph, next, to, [.. so, arc]))
                {
                    yield return path;
                }
            }
        }
    }
}
