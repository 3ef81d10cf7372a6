namespace Orlop.Drawings.Circuits;

/// <summary>
/// Puts parts into columns (away from the source) and rows (one a branch), so that every conductor of a tree runs straight:
/// a part stands in its first branch's row, further branches take the rows below,
/// and chains that feed it from another source use the same rows to its left. Conductors that close a loop are left to lanes.
/// </summary>
internal sealed class CircuitLayout
{
    private readonly CircuitGraph _graph;
    private readonly ILookup<int, CircuitEdge> _out;
    private readonly ILookup<int, CircuitEdge> _in;
    private readonly bool[] _isClaimed;
    private readonly List<CircuitEdge>[] _branches;
    private readonly List<List<CircuitEdge>>[] _feeders;
    private readonly List<int> _roots = [];
    private readonly HashSet<CircuitEdge> _inTree = new(ReferenceEqualityComparer.Instance);

    private CircuitLayout(CircuitGraph graph)
    {
        _graph = graph;
        _out = graph.Edges.ToLookup(edge => edge.From);
        _in = graph.Edges.ToLookup(edge => edge.To);
        _isClaimed = new bool[graph.Nodes.Count];
        _branches = [.. graph.Nodes.Select(_ => new List<CircuitEdge>())];
        _feeders = [.. graph.Nodes.Select(_ => new List<List<CircuitEdge>>())];
        Column = new int[graph.Nodes.Count];
        Row = new int[graph.Nodes.Count];
        LastRow = new int[graph.Nodes.Count];
        Build();
    }

    /// <summary>Column of each node, from 0.</summary>
    internal int[] Column { get; }

    /// <summary>Row of each node, from 0.</summary>
    internal int[] Row { get; }

    /// <summary>The last row at which a conductor joins each node.</summary>
    internal int[] LastRow { get; }

    internal int RowCount { get; private set; }

    /// <summary>Conductors that run straight.</summary>
    internal IReadOnlyCollection<CircuitEdge> Straight => _inTree;

    /// <summary>Conductors that close a loop.</summary>
    internal IEnumerable<CircuitEdge> Loops => _graph.Edges.Where(edge => !_inTree.Contains(edge));

    internal static CircuitLayout Of(CircuitGraph graph) => new(graph);

    /// <summary>Parts that nothing on the drawing stands before, in the order drawn.</summary>
    internal IReadOnlyList<int> Roots => _roots;

    /// <summary>Conductors that lead on from a part along the tree, the shortest branch first.</summary>
    internal IEnumerable<CircuitEdge> BranchesOf(int node) => _branches[node].OrderBy(edge => Height(edge.To));

    /// <summary>Chains that feed a part from other sources, each from the part outwards.</summary>
    internal IReadOnlyList<IReadOnlyList<CircuitEdge>> FeedersOf(int node) => _feeders[node];

    private void Build()
    {
        foreach (CircuitNode root in _graph.Nodes.OrderBy(node => FlowDirection.SourceRank(node.Part)).ThenBy(node => node.Index))
        {
            if (_isClaimed[root.Index])
            {
                continue;
            }

            _roots.Add(root.Index);
            List<int> tree = ClaimBranches(root.Index);
            foreach (int node in tree)
            {
                ClaimFeeders(node, tree);
            }

            RowCount = Place(root.Index, RowCount);
            StartAtLeft([.. tree, .. tree.SelectMany(node => _feeders[node].SelectMany(chain => chain)).Select(edge => edge.From)]);
        }
    }

    /// <summary>Breadth first along the flow, so that each part hangs on its shortest path.</summary>
    private List<int> ClaimBranches(int root)
    {
        List<int> tree = [root];
        _isClaimed[root] = true;
        Column[root] = 0;
        for (int at = 0; at < tree.Count; at++)
        {
            foreach (CircuitEdge edge in _out[tree[at]].Where(edge => !_isClaimed[edge.To]))
            {
                Claim(edge, edge.To, Column[edge.From] + 1);
                _branches[edge.From].Add(edge);
                tree.Add(edge.To);
            }
        }

        return tree;
    }

    /// <summary>Unbranched chains that feed a node from another source; the node moves away from the branching part before it to make room.</summary>
    private void ClaimFeeders(int node, List<int> tree)
    {
        foreach (CircuitEdge edge in _in[node].Where(edge => !_isClaimed[edge.From]).ToArray())
        {
            List<CircuitEdge>? chain = ChainBefore(edge);
            if (chain is null)
            {
                continue;
            }

            int missing = chain.Count - RoomBefore(node, tree) + 1;
            if (missing > 0)
            {
                MoveRight(node, missing);
            }

            for (int step = 0; step < chain.Count; step++)
            {
                Claim(chain[step], chain[step].From, Column[node] - step - 1);
            }

            _feeders[node].Add(chain);
        }
    }

    private List<CircuitEdge>? ChainBefore(CircuitEdge edge)
    {
        List<CircuitEdge> chain = [edge];
        while (true)
        {
            int start = chain[^1].From;
            CircuitEdge[] before = [.. _in[start]];
            if (_isClaimed[start] || _out[start].Count() != 1 || before.Length > 1 || chain.Count > _graph.Nodes.Count)
            {
                return null;
            }

            if (before.Length == 0)
            {
                return chain;
            }

            chain.Add(before[0]);
        }
    }

    /// <summary>Columns free of other parts to the left of a node in the rows below it: up to the branching part it hangs on.</summary>
    private int RoomBefore(int node, List<int> tree)
    {
        int at = node;
        while (true)
        {
            int? parent = tree.Select(candidate => (int?)candidate).FirstOrDefault(candidate => _branches[candidate!.Value].Any(edge => edge.To == at));
            if (parent is null)
            {
                return _graph.Nodes.Count + 1;
            }

            if (_branches[parent.Value].Count > 1 || _feeders[parent.Value].Count > 0)
            {
                return Column[node] - Column[parent.Value];
            }

            at = parent.Value;
        }
    }

    private void StartAtLeft(IReadOnlyList<int> tree)
    {
        int least = tree.Min(node => Column[node]);
        foreach (int node in tree)
        {
            Column[node] -= least;
        }
    }

    private void MoveRight(int node, int columns)
    {
        Column[node] += columns;
        foreach (CircuitEdge feeder in _feeders[node].SelectMany(chain => chain))
        {
            Column[feeder.From] += columns;
        }

        foreach (CircuitEdge branch in _branches[node])
        {
            MoveRight(branch.To, columns);
        }
    }

    private void Claim(CircuitEdge edge, int node, int column)
    {
        _inTree.Add(edge);
        _isClaimed[node] = true;
        Column[node] = column;
    }

    /// <summary>Gives rows to a node and what hangs on it; returns the next free row.</summary>
    private int Place(int node, int row)
    {
        Row[node] = LastRow[node] = row;
        int next = row;
        foreach (CircuitEdge branch in BranchesOf(node))
        {
            LastRow[node] = next;
            next = Place(branch.To, next);
        }

        next = Math.Max(next, row + 1);
        bool hasParent = _in[node].Count(_inTree.Contains) > _feeders[node].Count;
        int chainRow = hasParent ? row + 1 : row;
        foreach (List<CircuitEdge> chain in _feeders[node])
        {
            LastRow[node] = Math.Max(LastRow[node], chainRow);
            foreach (CircuitEdge edge in chain)
            {
                Row[edge.From] = LastRow[edge.From] = chainRow;
            }

            chainRow++;
        }

        return Math.Max(next, chainRow);
    }

    private int Height(int node) => Math.Max(1, _branches[node].Sum(edge => Height(edge.To))) + _feeders[node].Count;
}
