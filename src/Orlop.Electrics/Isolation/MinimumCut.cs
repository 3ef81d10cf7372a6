namespace Orlop.Electrics.Isolation;

/// <summary>
/// Cheapest set of arcs that separates a start from an end (max-flow min-cut, Ford and Fulkerson 1956), flow by breadth-first augmenting
/// paths (Edmonds and Karp 1972). Of several cheapest cuts the one nearest the end is returned.
/// </summary>
internal sealed class MinimumCut(int nodeCount)
{
    /// <summary>Capacity of what cannot be cut.</summary>
    public const long Uncuttable = long.MaxValue / 4;

    private readonly List<int>[] _arcsFrom = [.. Enumerable.Range(0, nodeCount).Select(_ => new List<int>())];
    private readonly List<int> _to = [];
    private readonly List<long> _room = [];

    /// <summary>Adds a one-way arc and, at the next number, its return with the given capacity.</summary>
    public void Join(int from, int to, long capacity, long returnCapacity)
    {
        _arcsFrom[from].Add(_to.Count);
        _to.Add(to);
        _room.Add(capacity);
        _arcsFrom[to].Add(_to.Count);
        _to.Add(from);
        _room.Add(returnCapacity);
    }

    /// <summary>For each node whether it lies on the end's side of the cheapest cut. Every path must have something that can be cut.</summary>
    public bool[] EndSide(int start, int end)
    {
        var arcInto = new int[nodeCount];
        while (FindPath(start, end, arcInto))
        {
            var room = long.MaxValue;
            for (var node = end; node != start; node = _to[arcInto[node] ^ 1])
            {
                room = Math.Min(room, _room[arcInto[node]]);
            }

            for (var node = end; node != start; node = _to[arcInto[node] ^ 1])
            {
                _room[arcInto[node]] -= room;
                _room[arcInto[node] ^ 1] += room;
            }
        }

        return CanStillReach(end);
    }

    private bool FindPath(int start, int end, int[] arcInto)
    {
        Array.Fill(arcInto, -1);
        var seen = new bool[nodeCount];
        seen[start] = true;
        var queue = new Queue<int>([start]);
        while (queue.TryDequeue(out var node))
        {
            foreach (var arc in _arcsFrom[node])
            {
                var next = _to[arc];
                if (_room[arc] > 0 && !seen[next])
                {
                    seen[next] = true;
                    arcInto[next] = arc;
                    queue.Enqueue(next);
                }
            }
        }

        return seen[end];
    }

    private bool[] CanStillReach(int end)
    {
        var side = new bool[nodeCount];
        side[end] = true;
        var queue = new Queue<int>([end]);
        while (queue.TryDequeue(out var node))
        {
            foreach (var arc in _arcsFrom[node])
            {
                var previous = _to[arc];
                if (_room[arc ^ 1] > 0 && !side[previous])
                {
                    side[previous] = true;
                    queue.Enqueue(previous);
                }
            }
        }

        return side;
    }
}
