namespace Orlop.Drawings.Circuits;

/// <summary>A part in a diagram that reads downwards.</summary>
/// <param name="Depth">How many fans of branches stand above it.</param>
/// <param name="Edge">The conductor that joins it to the part above; null for the first of a tree.</param>
/// <param name="IsBranch">It hangs on a fan; otherwise straight below the row before.</param>
/// <param name="FeedsIn">Its current runs upwards, into the fan it hangs on.</param>
/// <param name="Fan">Row that it hangs on, where it is a branch.</param>
internal sealed record DownwardRow(CircuitNode Node, int Depth, CircuitEdge? Edge, bool IsBranch, bool FeedsIn, int Fan)
{
    /// <summary>The parts of the trees from top to bottom: a chain stays in its column, branches of a bar or a fork stand one step to the right of it.</summary>
    internal static IReadOnlyList<DownwardRow> Of(CircuitGraph graph, CircuitLayout layout)
    {
        List<DownwardRow> rows = [];
        foreach (int root in layout.Roots)
        {
            Add(rows, graph, layout, new DownwardRow(graph.Nodes[root], 0, null, false, false, -1));
        }

        return rows;
    }

    private static void Add(List<DownwardRow> rows, CircuitGraph graph, CircuitLayout layout, DownwardRow row)
    {
        int at = rows.Count, node = row.Node.Index;
        rows.Add(row);
        CircuitEdge[] branches = [.. layout.BranchesOf(node)];
        IReadOnlyList<IReadOnlyList<CircuitEdge>> feeders = layout.FeedersOf(node);
        bool fans = row.Node.IsBar || branches.Length + feeders.Count > 1;
        int depth = row.Depth + (fans ? 1 : 0);
        foreach (IReadOnlyList<CircuitEdge> chain in feeders)
        {
            for (int step = 0; step < chain.Count; step++)
            {
                rows.Add(new(graph.Nodes[chain[step].From], depth, chain[step], fans && step == 0, true, at));
            }
        }

        foreach (CircuitEdge branch in branches)
        {
            Add(rows, graph, layout, new(graph.Nodes[branch.To], depth, branch, fans, false, at));
        }
    }
}
