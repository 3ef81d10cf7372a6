using System.Collections.Immutable;

namespace Orlop.Electrics.Isolation;

/// <summary>The nodes reached by a walk, how many steps away, and the way to each.</summary>
internal sealed class LiveReach
{
    private readonly record struct Arrival(string? From, string? Id, int StepCount);

    private readonly Dictionary<string, Arrival> _arrivals = [];

    public IEnumerable<string> Nodes => _arrivals.Keys;

    public bool Has(string node) => _arrivals.ContainsKey(node);

    public bool AddStart(string node) => _arrivals.TryAdd(node, new Arrival(null, null, 0));

    public bool Add(string node, string from, string id) =>
        _arrivals.TryAdd(node, new Arrival(from, id, _arrivals[from].StepCount + 1));

    /// <summary>Steps from the nearest start; a very large number where the walk did not come.</summary>
    public int StepCountTo(string node) => _arrivals.TryGetValue(node, out var arrival) ? arrival.StepCount : int.MaxValue;

    /// <summary>Ids of the edges and feeds from a start to the node.</summary>
    public ImmutableArray<string> PathTo(string node)
    {
        var ids = new Stack<string>();
        for (var arrival = _arrivals[node]; arrival.From is not null; arrival = _arrivals[arrival.From])
        {
            ids.Push(arrival.Id!);
        }

        return [.. ids];
    }
}
