using Orlop.Electrics.Networks;

namespace Orlop.Review.Networks;

/// <summary>Numbers the nodes of a network by the group that its elements join them into, in the order of each group's first element.</summary>
internal sealed class NodeGroups
{
    private readonly Dictionary<string, string> _parent = new(StringComparer.Ordinal);
    private readonly Dictionary<string, int> _numberOfRoot = new(StringComparer.Ordinal);

    public NodeGroups(Network network)
    {
        (string A, string B)[] pairs = [.. Pairs(network)];
        foreach ((string a, string b) in pairs)
        {
            _parent[Root(a)] = Root(b);
        }

        foreach ((string a, _) in pairs)
        {
            _numberOfRoot.TryAdd(Root(a), _numberOfRoot.Count);
        }
    }

    public int Count => _numberOfRoot.Count;

    /// <summary>The group of a node that an element names.</summary>
    public int Of(string node) => _numberOfRoot[Root(node)];

    /// <summary>The group of a node; null when no element names it.</summary>
    public int? Find(string node) => _parent.ContainsKey(node) ? Of(node) : null;

    private static IEnumerable<(string A, string B)> Pairs(Network network) =>
    [
        .. network.Conductors.Select(item => (item.A, item.B)),
        .. network.Contacts.Select(item => (item.A, item.B)),
        .. network.Batteries.Select(item => (item.Plus, item.Minus)),
        .. network.LimitedSources.Select(item => (item.Plus, item.Minus)),
        .. network.Converters.SelectMany(item => new[] { (item.InPlus, item.InMinus), (item.OutPlus, item.OutMinus), (item.InPlus, item.OutPlus) }),
        .. network.Loads.Select(item => (item.Plus, item.Minus)),
    ];

    private string Root(string node)
    {
        string root = node;
        while (_parent.TryGetValue(root, out string? up) && up != root)
        {
            root = up;
        }

        for (string step = node; step != root;)
        {
            string up = _parent.GetValueOrDefault(step, root);
            _parent[step] = root;
            step = up;
        }

        _parent.TryAdd(root, root);
        return root;
    }
}
