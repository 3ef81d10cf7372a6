using System.Collections.Immutable;

namespace Orlop.Numerics.Graphs;

/// <summary>The lightest tree that joins some nodes of a graph, by way of any others.</summary>
/// <param name="Arcs">Indices of its arcs.</param>
/// <param name="Weight">Their weights together.</param>
/// <remarks>Dreyfus and Wagner, "The Steiner problem in graphs", Networks 1 (1971): exact, with a table for each set of terminals.</remarks>
public sealed record SteinerTree(ImmutableArray<int> Arcs, double Weight)
{
    /// <summary>Most terminals the table is made for.</summary>
    public const int MostTerminalCount = 12;

    /// <summary>The lightest tree; null where the terminals are not joined.</summary>
    /// <param name="graph">A graph whose arcs are passable both ways: see <see cref="WeightedGraph.BothWays"/>.</param>
    /// <param name="terminals">The nodes to join, 1 to <see cref="MostTerminalCount"/>.</param>
    public static SteinerTree? Of(WeightedGraph graph, IReadOnlyList<int> terminals)
    {
        ArgumentNullException.ThrowIfNull(graph);
        ArgumentNullException.ThrowIfNull(terminals);
        if (terminals.Count is 0 or > MostTerminalCount)
        {
            throw new ArgumentOutOfRangeException(nameof(terminals), terminals.Count, $"Steiner tree: 1 to {MostTerminalCount} terminals.");
        }

        return new Table(graph, [.. terminals.Distinct()]).Tree();
    }

    // For each set of terminals but the last, and each node: the lightest tree that joins the set and the node.
    private sealed class Table
    {
        private readonly WeightedGraph _graph;
        private readonly int[] _terminals;
        private readonly double[][] _weight;
        private readonly int[][] _arc;
        private readonly int[][] _part;

        public Table(WeightedGraph graph, int[] terminals)
        {
            (_graph, _terminals) = (graph, terminals);
            int sets = 1 << (terminals.Length - 1);
            _weight = Make(sets, double.PositiveInfinity);
            _arc = Make(sets, -1);
            _part = Make(sets, 0);
            for (int set = 1; set < sets; set++)
            {
                Fill(set);
            }
        }

        public SteinerTree? Tree()
        {
            if (_terminals.Length == 1)
            {
                return new SteinerTree([], 0);
            }

            int all = _weight.Length - 1, root = _terminals[^1];
            if (double.IsInfinity(_weight[all][root]))
            {
                return null;
            }

            HashSet<int> arcs = [];
            Collect(all, root, arcs);
            return new SteinerTree([.. arcs.Order()], _weight[all][root]);
        }

        private T[][] Make<T>(int sets, T value) => [.. Enumerable.Range(0, sets).Select(_ => Enumerable.Repeat(value, _graph.NodeCount).ToArray())];

        private void Fill(int set)
        {
            double[] weight = _weight[set];
            if ((set & (set - 1)) == 0)
            {
                weight[_terminals[int.Log2(set)]] = 0;
            }

            for (int part = (set - 1) & set; part > set - part; part = (part - 1) & set)
            {
                for (int node = 0; node < weight.Length; node++)
                {
                    double joined = _weight[part][node] + _weight[set - part][node];
                    if (joined < weight[node])
                    {
                        (weight[node], _part[set][node]) = (joined, part);
                    }
                }
            }

            Spread(set, weight);
        }

        // Along arcs, as in a search for shortest paths from many starts.
        private void Spread(int set, double[] weight)
        {
            PriorityQueue<int, double> open = new();
            for (int node = 0; node < weight.Length; node++)
            {
                if (double.IsFinite(weight[node]))
                {
                    open.Enqueue(node, weight[node]);
                }
            }

            while (open.TryDequeue(out int node, out double at))
            {
                if (at > weight[node])
                {
                    continue;
                }

                foreach (int index in _graph.Leaving(node))
                {
                    Arc arc = _graph.Arcs[index];
                    if (at + arc.Weight < weight[arc.To])
                    {
                        (weight[arc.To], _arc[set][arc.To], _part[set][arc.To]) = (at + arc.Weight, index, 0);
                        open.Enqueue(arc.To, weight[arc.To]);
                    }
                }
            }
        }

        private void Collect(int set, int node, HashSet<int> arcs)
        {
            while (_part[set][node] == 0 && _arc[set][node] >= 0)
            {
                arcs.Add(_arc[set][node]);
                node = _graph.Arcs[_arc[set][node]].From;
            }

            if (_part[set][node] is > 0 and int part)
            {
                Collect(part, node, arcs);
                Collect(set - part, node, arcs);
            }
        }
    }
}
