using Orlop.Electrics.Networks;

namespace Orlop.Electrics.Diagnosis;

/// <summary>Which nodes have a common zero of potential, so that a voltage between them means something.</summary>
internal static class ConnectedParts
{
    /// <summary>Each node with the name of its part.</summary>
    public static Dictionary<string, string> Of(Network network)
    {
        var parent = new Dictionary<string, string>();
        foreach (var (a, b) in Pairs(network))
        {
            parent[Root(a)] = Root(b);
        }

        return parent.Keys.ToArray().ToDictionary(node => node, Root);

        string Root(string node)
        {
            parent.TryAdd(node, node);
            while (parent[node] != node)
            {
                node = parent[node];
            }

            return node;
        }
    }

    private static IEnumerable<(string A, string B)> Pairs(Network network) =>
        network.Conductors.Select(item => (item.A, item.B))
            .Concat(network.Contacts.Select(item => (item.A, item.B)))
            .Concat(network.Batteries.Select(item => (item.Plus, item.Minus)))
            .Concat(network.LimitedSources.Select(item => (item.Plus, item.Minus)))
            .Concat(network.Loads.Select(item => (item.Plus, item.Minus)))
            .Concat(network.Converters.Select(item => (item.InPlus, item.InMinus)))
            .Concat(network.Converters.Select(item => (item.OutPlus, item.OutMinus)))
            .Concat(network.Converters.Where(item => item.IsSharedMinus).Select(item => (item.InMinus, item.OutMinus)))
            .Concat(network.BondedNodes.Select(node => (node, network.BondedNodes[0])));
}
