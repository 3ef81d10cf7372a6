namespace Orlop.Electrics.Networks;

/// <summary>
/// The blocks (parts held together by more than one node) of the conducting branches: two branches share a block when a closed path runs
/// through both.
/// </summary>
/// <remarks>Hopcroft and Tarjan, "Algorithm 447: efficient algorithms for graph manipulation", Comm. ACM 16 (1973).</remarks>
internal sealed class Blocks
{
    private const int None = -1;
    private readonly Wiring _wiring;
    private readonly int[] _parent;
    private readonly int[] _parentBranch;
    private readonly int[] _depth;
    private readonly int[] _root;
    private readonly int[] _low;
    private readonly int[] _start;
    private readonly int[] _cursor;
    private readonly int[] _incident;

    public Blocks(Wiring wiring)
    {
        _wiring = wiring;
        _parent = Filled(wiring.JunctionCount);
        _parentBranch = Filled(wiring.JunctionCount);
        _depth = Filled(wiring.JunctionCount);
        _root = Filled(wiring.JunctionCount);
        BlockOfBranch = Filled(wiring.Branches.Length);
        _low = Filled(wiring.JunctionCount);
        (_start, _incident) = Incidence(wiring);
        _cursor = (int[])_start.Clone();
        for (var junction = 0; junction < wiring.JunctionCount; junction++)
        {
            if (_depth[junction] == None)
            {
                Visit(junction);
            }
        }

        HasSource = new bool[BlockCount];
        for (var k = 0; k < BlockOfBranch.Length; k++)
        {
            if (BlockOfBranch[k] != None && wiring.Branches[k].IsSource)
            {
                HasSource[BlockOfBranch[k]] = true;
            }
        }
    }

    /// <summary>The block of each conducting branch; -1 of a branch that does not conduct or begins and ends at one junction.</summary>
    public int[] BlockOfBranch { get; }

    public int BlockCount { get; private set; }

    public bool[] HasSource { get; }

    /// <summary>Whether a closed path through the branch passes a source.</summary>
    public bool IsFed(int branch)
    {
        var (a, b) = (_wiring.Branches[branch].A, _wiring.Branches[branch].B);
        if (BlockOfBranch[branch] != None)
        {
            return HasSource[BlockOfBranch[branch]];
        }

        if (a == b || _root[a] != _root[b])
        {
            return false;
        }

        while (a != b)
        {
            if (_depth[a] < _depth[b])
            {
                (a, b) = (b, a);
            }

            if (HasSource[BlockOfBranch[_parentBranch[a]]])
            {
                return true;
            }

            a = _parent[a];
        }

        return false;
    }

    private void Visit(int root)
    {
        var path = new Stack<int>();
        var open = new Stack<int>();
        _depth[root] = _low[root] = 0;
        _root[root] = root;
        path.Push(root);
        while (path.TryPeek(out var junction))
        {
            if (_cursor[junction] == _start[junction + 1])
            {
                path.Pop();
                Close(junction, open);
                continue;
            }

            var branch = _incident[_cursor[junction]++];
            var other = _wiring.Branches[branch].A == junction ? _wiring.Branches[branch].B : _wiring.Branches[branch].A;
            if (branch == _parentBranch[junction])
            {
                continue;
            }

            if (_depth[other] == None)
            {
                (_parent[other], _parentBranch[other], _root[other]) = (junction, branch, root);
                _depth[other] = _low[other] = _depth[junction] + 1;
                open.Push(branch);
                path.Push(other);
            }
            else if (_depth[other] < _depth[junction])
            {
                open.Push(branch);
                _low[junction] = Math.Min(_low[junction], _depth[other]);
            }
        }
    }

    private void Close(int junction, Stack<int> open)
    {
        var parent = _parent[junction];
        if (parent == None)
        {
            return;
        }

        _low[parent] = Math.Min(_low[parent], _low[junction]);
        if (_low[junction] < _depth[parent])
        {
            return;
        }

        int branch;
        do
        {
            branch = open.Pop();
            BlockOfBranch[branch] = BlockCount;
        }
        while (branch != _parentBranch[junction]);
        BlockCount++;
    }

    private static (int[] Start, int[] Incident) Incidence(Wiring wiring)
    {
        var start = new int[wiring.JunctionCount + 1];
        foreach (var branch in wiring.Branches)
        {
            if (IsEdge(wiring, branch))
            {
                start[branch.A + 1]++;
                start[branch.B + 1]++;
            }
        }

        for (var k = 0; k < wiring.JunctionCount; k++)
        {
            start[k + 1] += start[k];
        }

        var incident = new int[start[^1]];
        var filled = start.AsSpan(0, wiring.JunctionCount).ToArray();
        for (var k = 0; k < wiring.Branches.Length; k++)
        {
            if (IsEdge(wiring, wiring.Branches[k]))
            {
                incident[filled[wiring.Branches[k].A]++] = k;
                incident[filled[wiring.Branches[k].B]++] = k;
            }
        }

        return (start, incident);
    }

    private static bool IsEdge(Wiring wiring, Branch branch) => branch.A != branch.B && wiring.Conducts(branch);

    private static int[] Filled(int count)
    {
        var values = new int[count];
        Array.Fill(values, None);
        return values;
    }
}
