namespace Orlop.Electrics.Isolation;

/// <summary>
/// Cheapest set of arcs that separates a start from an end (max-flow min-cut, Ford and Fulkerson 1956), flow by breadth-first augmenting
/// paths (Edmonds and Karp 1972). Of several cheapest cuts the one nearest the end is returned.
/// </summary>
/// <param name="nodeCount">Nodes are numbered from 0.</param>
/// <param name="mostArcCount">At most how many pairs of arcs are joined.</param>
internal sealed class MinimumCut(int nodeCount, int mostArcCount)
{
    /// <summary>Capacity of what cannot be cut.</summary>
    public const long Uncuttable = long.MaxValue / 4;

    private const int None = -1;

    // The arcs from a node are a chain: its first, and from each arc the next. An arc's return has the number beside it.
    private readonly int[] _firstArc = Filled(nodeCount);
    private readonly int[] _nextArc = new int[2 * mostArcCount];
    private readonly int[] _to = new int[2 * mostArcCount];
    private readonly long[] _room = new long[2 * mostArcCount];
    private readonly int[] _queue = new int[nodeCount];
    private int _count;

    /// <summary>Adds a one-way arc and its return with the given capacities.</summary>
    public void Join(int from, int to, long capacity, long returnCapacity)
    {
        Add(from, to, capacity);
        Add(to, from, returnCapacity);
    }

    /// <summary>For each node whether it lies on the end's side of the cheapest cut. Every path must have something that can be cut.</summary>
    public bool[] EndSide(int start, int end)
    {
        int[] arcInto = new int[nodeCount];
        while (FindPath(start, end, arcInto))
        {
            long room = long.MaxValue;
            for (int node = end; node != start; node = _to[arcInto[node] ^ 1])
            {
                room = Math.Min(room, _room[arcInto[node]]);
            }

            for (int node = end; node != start; node = _to[arcInto[node] ^ 1])
            {
                _room[arcInto[node]] -= room;
                _room[arcInto[node] ^ 1] += room;
            }
        }

        return CanStillReach(end);
    }

    private void Add(int from, int to, long capacity)
    {
        (_to[_count], _room[_count], _nextArc[_count]) = (to, capacity, _firstArc[from]);
        _firstArc[from] = _count++;
    }

    private bool FindPath(int start, int end, int[] arcInto)
    {
        Array.Fill(arcInto, None);
        int count = 0;
        _queue[count++] = start;
        for (int k = 0; k < count; k++)
        {
            for (int arc = _firstArc[_queue[k]]; arc != None; arc = _nextArc[arc])
            {
                int next = _to[arc];
                if (_room[arc] > 0 && next != start && arcInto[next] == None)
                {
                    arcInto[next] = arc;
                    if (next == end)
                    {
                        return true;
                    }

                    _queue[count++] = next;
                }
            }
        }

        return false;
    }

    private bool[] CanStillReach(int end)
    {
        bool[] side = new bool[nodeCount];
        side[end] = true;
        int count = 0;
        _queue[count++] = end;
        for (int k = 0; k < count; k++)
        {
            for (int arc = _firstArc[_queue[k]]; arc != None; arc = _nextArc[arc])
            {
                int previous = _to[arc];
                if (_room[arc ^ 1] > 0 && !side[previous])
                {
                    side[previous] = true;
                    _queue[count++] = previous;
                }
            }
        }

        return side;
    }

    private static int[] Filled(int count)
    {
        int[] first = new int[count];
        Array.Fill(first, None);
        return first;
    }
}
