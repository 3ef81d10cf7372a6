using System.Collections.Immutable;

namespace Orlop.Electrics.Isolation;

/// <summary>The nodes reached by a walk, breadth first: how many steps away, and the way to each.</summary>
internal sealed class LiveReach(int nodeCount)
{
    private const int NotReached = -1;
    private const int IsStart = -2;

    private readonly int[] _from = Filled(nodeCount);
    private readonly string?[] _by = new string?[nodeCount];
    private readonly int[] _stepCount = new int[nodeCount];
    private readonly int[] _inOrder = new int[nodeCount];

    /// <summary>How many nodes are reached.</summary>
    public int Count { get; private set; }

    /// <summary>The reached nodes in the order of the walk.</summary>
    public int this[int place] => _inOrder[place];

    /// <summary>The reached nodes by number.</summary>
    public IEnumerable<int> Nodes => Enumerable.Range(0, nodeCount).Where(Has);

    public bool Has(int node) => _from[node] != NotReached;

    public void AddStart(int node) => Arrive(node, IsStart, null, 0);

    public void Add(int node, int from, string id) => Arrive(node, from, id, _stepCount[from] + 1);

    /// <summary>Steps from the nearest start; a very large number where the walk did not come.</summary>
    public int StepCountTo(int node) => Has(node) ? _stepCount[node] : int.MaxValue;

    /// <summary>Ids of the edges and feeds from a start to the node.</summary>
    public ImmutableArray<string> PathTo(int node)
    {
        Stack<string> ids = new();
        for (; _from[node] != IsStart; node = _from[node])
        {
            ids.Push(_by[node]!);
        }

        return [.. ids];
    }

    private void Arrive(int node, int from, string? id, int stepCount)
    {
        if (_from[node] == NotReached)
        {
            (_from[node], _by[node], _stepCount[node]) = (from, id, stepCount);
            _inOrder[Count++] = node;
        }
    }

    private static int[] Filled(int count)
    {
        int[] from = new int[count];
        Array.Fill(from, NotReached);
        return from;
    }
}
