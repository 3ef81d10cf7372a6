using System.Collections.Immutable;
using Orlop.Electrics.Networks;

namespace Orlop.Review.Networks;

/// <summary>Splits a network into the groups that have nothing to do with each other, so that an edit of one solves only that one again.</summary>
public static class NetworkGroups
{
    /// <summary>The groups, in the order of their first element. A converter joins the group of its input and that of its output.</summary>
    public static ImmutableArray<Network> Split(Network network)
    {
        Dictionary<string, string> parent = new(StringComparer.Ordinal);
        foreach ((string a, string b) in Pairs(network))
        {
            parent[Root(parent, a)] = Root(parent, b);
        }

        Dictionary<string, Network> groups = new(StringComparer.Ordinal);
        List<string> order = [];
        void Put(string node, Func<Network, Network> add)
        {
            string root = Root(parent, node);
            if (!groups.TryGetValue(root, out Network? group))
            {
                order.Add(root);
                group = new Network();
            }

            groups[root] = add(group);
        }

        foreach (IGrouping<string, Conductor> part in network.Conductors.GroupBy(item => Root(parent, item.A)))
        {
            Put(part.Key, group => group with { Conductors = [.. part] });
        }

        foreach (IGrouping<string, Contact> part in network.Contacts.GroupBy(item => Root(parent, item.A)))
        {
            Put(part.Key, group => group with { Contacts = [.. part] });
        }

        foreach (IGrouping<string, Battery> part in network.Batteries.GroupBy(item => Root(parent, item.Plus)))
        {
            Put(part.Key, group => group with { Batteries = [.. part] });
        }

        foreach (IGrouping<string, LimitedSource> part in network.LimitedSources.GroupBy(item => Root(parent, item.Plus)))
        {
            Put(part.Key, group => group with { LimitedSources = [.. part] });
        }

        foreach (IGrouping<string, Converter> part in network.Converters.GroupBy(item => Root(parent, item.InPlus)))
        {
            Put(part.Key, group => group with { Converters = [.. part] });
        }

        foreach (IGrouping<string, Load> part in network.Loads.GroupBy(item => Root(parent, item.Plus)))
        {
            Put(part.Key, group => group with { Loads = [.. part] });
        }

        foreach (IGrouping<string, string> part in network.BondedNodes.Where(parent.ContainsKey).GroupBy(node => Root(parent, node)))
        {
            Put(part.Key, group => group with { BondedNodes = [.. part] });
        }

        return [.. order.Select(root => groups[root])];
    }

    private static IEnumerable<(string A, string B)> Pairs(Network network) =>
    [
        .. network.Conductors.Select(item => (item.A, item.B)),
        .. network.Contacts.Select(item => (item.A, item.B)),
        .. network.Batteries.Select(item => (item.Plus, item.Minus)),
        .. network.LimitedSources.Select(item => (item.Plus, item.Minus)),
        .. network.Loads.Select(item => (item.Plus, item.Minus)),
        .. network.Converters.SelectMany(item => new[] { (item.InPlus, item.InMinus), (item.OutPlus, item.OutMinus), (item.InPlus, item.OutPlus) }),
    ];

    private static string Root(Dictionary<string, string> parent, string node)
    {
        string root = node;
        while (parent.TryGetValue(root, out string? up) && up != root)
        {
            root = up;
        }

        for (string step = node; step != root;)
        {
            string up = parent.GetValueOrDefault(step, root);
            parent[step] = root;
            step = up;
        }

        parent.TryAdd(root, root);
        return root;
    }
}
