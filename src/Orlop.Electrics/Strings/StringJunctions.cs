using Orlop.Numerics;

namespace Orlop.Electrics.Strings;

/// <summary>Nodes that metal makes one, and what meets at each.</summary>
internal sealed class StringJunctions
{
    private readonly Dictionary<string, int> _nodes = new(StringComparer.Ordinal);
    private readonly DisjointSets _all;
    private readonly DisjointSets _unprotected;
    private readonly Dictionary<int, int> _pluses = [];
    private readonly HashSet<int> _outside = [];

    public StringJunctions(StringInput input)
    {
        foreach (var node in input.Batteries.SelectMany(battery => new[] { battery.Plus, battery.Minus })
            .Concat(input.Joins.SelectMany(join => new[] { join.A, join.B })).Concat(input.Outside.SelectMany(outside => new[] { outside.Plus, outside.Minus })))
        {
            _nodes.TryAdd(node, _nodes.Count);
        }

        (_all, _unprotected) = (new DisjointSets(_nodes.Count), new DisjointSets(_nodes.Count));
        foreach (var join in input.Joins)
        {
            _all.Merge(_nodes[join.A], _nodes[join.B]);
            if (!join.IsProtection)
            {
                _unprotected.Merge(_nodes[join.A], _nodes[join.B]);
            }
        }

        foreach (var outside in input.Outside)
        {
            var (plus, minus) = (Of(outside.Plus), Of(outside.Minus));
            _outside.UnionWith([plus, minus]);
            _pluses[plus] = _pluses.GetValueOrDefault(plus) + 1;
            _pluses[minus] = _pluses.GetValueOrDefault(minus) - 1;
        }
    }

    /// <summary>The junction of a node.</summary>
    public int Of(string node) => _all.Find(_nodes[node]);

    /// <summary>What a node is joined to with no fuse or breaker between.</summary>
    public int UnprotectedOf(string node) => _unprotected.Find(_nodes[node]);

    /// <summary>Current enters or leaves the batteries there.</summary>
    public bool IsOutside(int junction) => _outside.Contains(junction);

    /// <summary>How many more plus poles than minus poles of loads and chargers are wired to it.</summary>
    public int PlusesAt(int junction) => _pluses.GetValueOrDefault(junction);
}
