using System.Collections.Immutable;

namespace Orlop.Electrics.Isolation;

/// <summary>
/// The input as a graph to walk: along conducting edges both ways, along feeds one way, never through a grounded node. Nodes are numbered
/// in the ordinal order of their names, so that order by number is order by name.
/// </summary>
internal sealed class WiringGraph
{
    // A feed is passed with no edge; against its direction it only tells what lies near.
    private const int WithFeed = -1;
    private const int AgainstFeed = -2;

    private readonly Dictionary<string, int> _number;
    private readonly bool[] _isGrounded;
    private readonly int[] _firstStep;
    private readonly (int To, int Edge, string Id)[] _steps;

    public WiringGraph(IsolationInput input)
    {
        string[] names =
        [
            .. input.Edges.SelectMany(edge => new[] { edge.A, edge.B })
                .Concat(input.Feeds.SelectMany(feed => new[] { feed.InputNode, feed.OutputNode }))
                .Concat(input.Sources.SelectMany(source => source.PoleNodes))
                .Distinct(StringComparer.Ordinal).Order(StringComparer.Ordinal),
        ];
        Names = [.. names];
        _number = new Dictionary<string, int>(names.Length, StringComparer.Ordinal);
        for (int node = 0; node < names.Length; node++)
        {
            _number.Add(names[node], node);
        }

        (int From, int To, int Edge, string Id)[] steps =
        [
            .. input.Edges.SelectMany((edge, at) => new[] { (_number[edge.A], _number[edge.B], at, edge.Id), (_number[edge.B], _number[edge.A], at, edge.Id) }),
            .. input.Feeds.SelectMany(feed => new[]
            {
                (_number[feed.InputNode], _number[feed.OutputNode], WithFeed, feed.Id), (_number[feed.OutputNode], _number[feed.InputNode], AgainstFeed, feed.Id),
            }),
        ];
        _firstStep = new int[names.Length + 1];
        foreach (var step in steps)
        {
            _firstStep[step.From + 1]++;
        }

        for (int node = 0; node < names.Length; node++)
        {
            _firstStep[node + 1] += _firstStep[node];
        }

        int[] next = [.. _firstStep];
        _steps = new (int, int, string)[steps.Length];
        foreach (var step in steps)
        {
            _steps[next[step.From]++] = (step.To, step.Edge, step.Id);
        }

        HashSet<string> grounded = [.. input.GroundedNodes];
        _isGrounded = [.. names.Select(grounded.Contains)];
    }

    /// <summary>Names of the nodes, by number.</summary>
    public ImmutableArray<string> Names { get; }

    public bool Has(string node) => _number.ContainsKey(node);

    public int Number(string node) => _number[node];

    public bool IsGrounded(int node) => _isGrounded[node];

    /// <summary>What is live from these poles when only some edges conduct.</summary>
    /// <param name="poles">Nodes to start from; grounded ones are passed over.</param>
    /// <param name="conducts">For each edge of the input.</param>
    public LiveReach LiveFrom(IEnumerable<int> poles, bool[] conducts)
    {
        LiveReach reach = new(Names.Length);
        foreach (int pole in poles)
        {
            if (!_isGrounded[pole])
            {
                reach.AddStart(pole);
            }
        }

        for (int k = 0; k < reach.Count; k++)
        {
            int node = reach[k];
            for (int s = _firstStep[node]; s < _firstStep[node + 1]; s++)
            {
                ref readonly var step = ref _steps[s];
                if (step.Edge != AgainstFeed && !_isGrounded[step.To] && (step.Edge == WithFeed || conducts[step.Edge]))
                {
                    reach.Add(step.To, node, step.Id);
                }
            }
        }

        return reach;
    }

    /// <summary>The wiring around some nodes whatever is open, to tell what lies near them.</summary>
    public LiveReach Around(IEnumerable<int> nodes)
    {
        LiveReach reach = new(Names.Length);
        foreach (int node in nodes)
        {
            reach.AddStart(node);
        }

        for (int k = 0; k < reach.Count; k++)
        {
            int node = reach[k];
            for (int s = _firstStep[node]; s < _firstStep[node + 1]; s++)
            {
                reach.Add(_steps[s].To, node, _steps[s].Id);
            }
        }

        return reach;
    }
}
