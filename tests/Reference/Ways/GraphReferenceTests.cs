using System.Globalization;
using Orlop.Numerics.Graphs;
using Xunit;

namespace Orlop.Reference.Tests.Ways;

/// <summary>Teaching graphs whose answers are known and were found again by trying everything.</summary>
public sealed class GraphReferenceTests
{
    private static readonly IReadOnlyList<ReferenceRow> Edges = ReferenceCsv.Load("work-graph-edges.csv", 65);
    private static readonly IReadOnlyList<ReferenceRow> Optima = ReferenceCsv.Load("work-graph-optima.csv", 7);

    [Theory]
    [InlineData("clrs_dijkstra")]
    [InlineData("nine_node")]
    public void Distances_AreThePublished(string graph)
    {
        string[] names = Names(graph);
        ReferenceRow row = Optima.Single(one => one.Text("graph") == graph && one.Text("question").StartsWith("distances", StringComparison.Ordinal));
        (string from, string[] to) = graph == "nine_node" ? ("0", Enumerable.Range(0, 9).Select(node => node.ToString(CultureInfo.InvariantCulture)).ToArray()) : ("s", ["t", "y", "x", "z"]);
        double[] distances = ShortestPaths.DistancesFrom(GraphOf(graph), Array.IndexOf(names, from));

        Assert.Equal(Numbers(row.Text("answer")), to.Select(node => distances[Array.IndexOf(names, node)]));
    }

    [Theory]
    [InlineData("steiner_slides12")]
    [InlineData("steiner_five")]
    [InlineData("steiner_unit8")]
    public void SteinerTree_IsTheLightestKnown(string graph)
    {
        string[] names = Names(graph);
        ReferenceRow row = Optima.Single(one => one.Text("graph") == graph);
        int[] terminals = [.. row.Text("question").Split("terminals ")[1].Split(' ').Select(node => Array.IndexOf(names, node))];
        SteinerTree tree = SteinerTree.Of(GraphOf(graph), terminals)!;

        row.Agrees(row.Number("answer"), tree.Weight, 1e-12);
    }

    /// <summary>Trips from the first terminal to the others, of which each edge is paid once, are the same tree, found by another method.</summary>
    [Theory]
    [InlineData("steiner_slides12")]
    [InlineData("steiner_five")]
    [InlineData("steiner_unit8")]
    public void SharedPaths_NothingButCharges_AreAsLightAsTheLightestTreeKnown(string graph)
    {
        string[] names = Names(graph);
        ReferenceRow row = Optima.Single(one => one.Text("graph") == graph);
        int[] terminals = [.. row.Text("question").Split("terminals ")[1].Split(' ').Select(node => Array.IndexOf(names, node))];
        ReferenceRow[] edges = [.. RowsOf(graph)];
        SharedArc[] arcs = [.. edges.SelectMany((edge, index) =>
        {
            (int a, int b) = (Array.IndexOf(names, edge.Text("from_node")), Array.IndexOf(names, edge.Text("to_node")));
            return new[] { new SharedArc(a, b, 0, [index]), new SharedArc(b, a, 0, [index]) };
        })];
        SharedPaths found = SharedPaths.Find(
            new SharedTrips([.. terminals[1..].Select(to => new SharedTrip(names.Length, terminals[0], to, [.. arcs]))], [.. edges.Select(edge => edge.Number("weight"))], (_, _) => true), token: TestContext.Current.CancellationToken)!;

        row.Agrees(row.Number("answer"), found.Weight, 1e-12);
        Assert.True(found.IsProved, $"{found.SearchCount} searches");
    }

    private static string[] Names(string graph) => [.. RowsOf(graph).SelectMany(row => new[] { row.Text("from_node"), row.Text("to_node") }).Distinct()];

    private static WeightedGraph GraphOf(string graph)
    {
        string[] names = Names(graph);
        Arc[] arcs = [.. RowsOf(graph).Select(row => new Arc(Array.IndexOf(names, row.Text("from_node")), Array.IndexOf(names, row.Text("to_node")), row.Number("weight")))];
        return RowsOf(graph).First().Text("directed") == "1" ? new WeightedGraph(names.Length, arcs) : WeightedGraph.BothWays(names.Length, arcs);
    }

    private static IEnumerable<ReferenceRow> RowsOf(string graph) => Edges.Where(row => row.Text("graph") == graph);

    private static double[] Numbers(string text) => [.. text.Split(' ').Select(number => double.Parse(number, CultureInfo.InvariantCulture))];
}
