using System.Collections.Immutable;
using Orlop.Electrics.Networks;

namespace Orlop.Review.Networks;

/// <summary>A boat's network in one case, split into its groups, and the group of each element and node. Immutable.</summary>
public sealed class GroupedNetwork
{
    private readonly Dictionary<string, int> _groupOf = new(StringComparer.Ordinal);
    private readonly Dictionary<string, int> _groupOfNode = new(StringComparer.Ordinal);

    public GroupedNetwork(BuiltNetwork built)
    {
        Built = built;
        Groups = NetworkGroups.Split(built.Network);
        for (int group = 0; group < Groups.Length; group++)
        {
            Index(Groups[group], group);
        }
    }

    public BuiltNetwork Built { get; }

    public ImmutableArray<Network> Groups { get; }

    /// <summary>The place among <see cref="Groups"/> of the group that holds an element; null when none does.</summary>
    public int? GroupOf(string elementId) => _groupOf.TryGetValue(elementId, out int group) ? group : null;

    /// <summary>The place among <see cref="Groups"/> of the group that holds a node; null when none does.</summary>
    public int? GroupOfNode(string node) => _groupOfNode.TryGetValue(node, out int group) ? group : null;

    private void Index(Network network, int group)
    {
        void Element(string id, params ReadOnlySpan<string> nodes)
        {
            _groupOf.TryAdd(id, group);
            foreach (string node in nodes)
            {
                _groupOfNode.TryAdd(node, group);
            }
        }

        foreach (Conductor item in network.Conductors)
        {
            Element(item.Id, item.A, item.B);
        }

        foreach (Contact item in network.Contacts)
        {
            Element(item.Id, item.A, item.B);
        }

        foreach (Battery item in network.Batteries)
        {
            Element(item.Id, item.Plus, item.Minus);
        }

        foreach (LimitedSource item in network.LimitedSources)
        {
            Element(item.Id, item.Plus, item.Minus);
        }

        foreach (Converter item in network.Converters)
        {
            Element(item.Id, item.InPlus, item.InMinus, item.OutPlus, item.OutMinus);
        }

        foreach (Load item in network.Loads)
        {
            Element(item.Id, item.Plus, item.Minus);
        }
    }
}
