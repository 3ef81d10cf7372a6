namespace Orlop.Numerics;

/// <summary>Sets that are merged pair by pair.</summary>
/// <remarks>Tarjan, "Efficiency of a good but not linear set union algorithm", J. ACM 22 (1975); here with path halving.</remarks>
public sealed class DisjointSets
{
    private readonly int[] _parent;

    /// <summary>Starts with every item in a set of its own.</summary>
    public DisjointSets(int count)
    {
        _parent = new int[count];
        for (var i = 0; i < count; i++)
        {
            _parent[i] = i;
        }
    }

    /// <summary>The item that stands for the set of <paramref name="item"/>: the lowest of the set.</summary>
    public int Find(int item)
    {
        while (_parent[item] != item)
        {
            item = _parent[item] = _parent[_parent[item]];
        }

        return item;
    }

    /// <summary>Makes the sets of two items one; false when they were one already.</summary>
    public bool Merge(int first, int second)
    {
        var (a, b) = (Find(first), Find(second));
        _parent[Math.Max(a, b)] = Math.Min(a, b);
        return a != b;
    }
}
