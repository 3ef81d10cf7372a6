namespace Orlop.Electrics.Isolation;

/// <summary>The input as a graph to walk: along conducting edges both ways, along feeds one way, never through a grounded node.</summary>
internal sealed class WiringGraph
{
    private readonly record struct Step(string Id, string To, IsolationEdge? Edge, bool IsAgainstFeed);

    private readonly Dictionary<string, List<Step>> _stepsFrom = [];
    private readonly HashSet<string> _grounded;

    public WiringGraph(IsolationInput input)
    {
        _grounded = [.. input.GroundedNodes];
        foreach (var edge in input.Edges)
        {
            StepsFrom(edge.A).Add(new Step(edge.Id, edge.B, edge, false));
            StepsFrom(edge.B).Add(new Step(edge.Id, edge.A, edge, false));
        }

        foreach (var feed in input.Feeds)
        {
            StepsFrom(feed.InputNode).Add(new Step(feed.Id, feed.OutputNode, null, false));
            StepsFrom(feed.OutputNode).Add(new Step(feed.Id, feed.InputNode, null, true));
        }

        foreach (var pole in input.Sources.SelectMany(source => source.PoleNodes))
        {
            StepsFrom(pole);
        }
    }

    public IEnumerable<string> Nodes => _stepsFrom.Keys;

    public bool Has(string node) => _stepsFrom.ContainsKey(node);

    public bool IsGrounded(string node) => _grounded.Contains(node);

    /// <summary>What is live from these poles when only some edges conduct.</summary>
    public LiveReach LiveFrom(IEnumerable<string> poles, Func<IsolationEdge, bool> conducts) =>
        Walk(poles.Where(pole => !IsGrounded(pole)),
            step => !step.IsAgainstFeed && !IsGrounded(step.To) && (step.Edge is null || conducts(step.Edge)));

    /// <summary>The wiring around some nodes whatever is open, to tell what lies near them.</summary>
    public LiveReach Around(IEnumerable<string> nodes) => Walk(nodes, _ => true);

    private LiveReach Walk(IEnumerable<string> starts, Func<Step, bool> isPassed)
    {
        var reach = new LiveReach();
        var queue = new Queue<string>();
        foreach (var start in starts)
        {
            if (reach.AddStart(start))
            {
                queue.Enqueue(start);
            }
        }

        while (queue.TryDequeue(out var node))
        {
            foreach (var step in _stepsFrom[node])
            {
                if (isPassed(step) && reach.Add(step.To, node, step.Id))
                {
                    queue.Enqueue(step.To);
                }
            }
        }

        return reach;
    }

    private List<Step> StepsFrom(string node)
    {
        if (!_stepsFrom.TryGetValue(node, out var steps))
        {
            _stepsFrom[node] = steps = [];
        }

        return steps;
    }
}
