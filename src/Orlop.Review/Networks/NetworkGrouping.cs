using System.Collections.Immutable;
using Orlop.Electrics.Networks;

namespace Orlop.Review.Networks;

/// <summary>
/// What nothing feeds in a network, and which elements have nothing to do with each other, so that an edit of one group solves only that one again.
/// It is the same for all networks of one <see cref="NetworkShape"/>. Immutable.
/// </summary>
public sealed class NetworkGrouping
{
    private const int LeftOut = -1;

    private readonly Dictionary<string, int> _groupOfElement = new(StringComparer.Ordinal);
    private readonly Dictionary<string, int> _groupOfNode = new(StringComparer.Ordinal);
    private readonly ElementGroups _conductors, _contacts, _batteries, _limitedSources, _converters, _loads, _bonds;

    private NetworkGrouping(Network network, ImmutableArray<string> unfed)
    {
        Unfed = unfed;
        Network fed = Without(network);
        NodeGroups nodes = new(fed);
        GroupCount = nodes.Count;
        int Element(string id, params ReadOnlySpan<string> ends)
        {
            int group = nodes.Of(ends[0]);
            _groupOfElement.TryAdd(id, group);
            foreach (string node in ends)
            {
                _groupOfNode.TryAdd(node, group);
            }

            return group;
        }

        HashSet<string> left = [.. unfed];
        _conductors = new ElementGroups(GroupCount, network.Conductors.Select(item => Element(item.Id, item.A, item.B)));
        _contacts = new ElementGroups(GroupCount, network.Contacts.Select(item => Element(item.Id, item.A, item.B)));
        _batteries = new ElementGroups(GroupCount, network.Batteries.Select(item => Element(item.Id, item.Plus, item.Minus)));
        _limitedSources = new ElementGroups(GroupCount, network.LimitedSources.Select(item => Element(item.Id, item.Plus, item.Minus)));
        _converters = new ElementGroups(GroupCount, network.Converters.Select(item =>
            left.Contains(item.Id) ? LeftOut : Element(item.Id, item.InPlus, item.InMinus, item.OutPlus, item.OutMinus)));
        _loads = new ElementGroups(GroupCount, network.Loads.Select(item => left.Contains(item.Id) ? LeftOut : Element(item.Id, item.Plus, item.Minus)));
        _bonds = new ElementGroups(GroupCount, network.BondedNodes.Select(node => nodes.Find(node) ?? LeftOut));
    }

    /// <summary>Loads and converters that nothing feeds; they are in no group.</summary>
    public ImmutableArray<string> Unfed { get; }

    /// <summary>How many groups there are.</summary>
    public int GroupCount { get; }

    /// <summary>The grouping of a network. A converter joins the group of its input and that of its output.</summary>
    public static NetworkGrouping Of(Network network)
    {
        ArgumentNullException.ThrowIfNull(network);
        return new NetworkGrouping(network, FindUnfed(network));
    }

    /// <summary>The group that holds an element; null when none does.</summary>
    public int? GroupOf(string elementId) => _groupOfElement.TryGetValue(elementId, out int group) ? group : null;

    /// <summary>The group that holds a node; null when none does.</summary>
    public int? GroupOfNode(string node) => _groupOfNode.TryGetValue(node, out int group) ? group : null;

    /// <summary>A network of the same shape without what nothing feeds.</summary>
    public Network Without(Network network) => Without(network, Unfed);

    /// <summary>The groups of a network of the same shape, in the order of their first element; what nothing feeds is in none.</summary>
    public ImmutableArray<Network> Split(Network network)
    {
        ArgumentNullException.ThrowIfNull(network);
        ImmutableArray<Conductor>[] conductors = _conductors.Split(network.Conductors);
        ImmutableArray<Contact>[] contacts = _contacts.Split(network.Contacts);
        ImmutableArray<Battery>[] batteries = _batteries.Split(network.Batteries);
        ImmutableArray<LimitedSource>[] limitedSources = _limitedSources.Split(network.LimitedSources);
        ImmutableArray<Converter>[] converters = _converters.Split(network.Converters);
        ImmutableArray<Load>[] loads = _loads.Split(network.Loads);
        ImmutableArray<string>[] bonds = _bonds.Split(network.BondedNodes);
        return
        [
            .. Enumerable.Range(0, GroupCount).Select(group => new Network
            {
                Conductors = conductors[group],
                Contacts = contacts[group],
                Batteries = batteries[group],
                LimitedSources = limitedSources[group],
                Converters = converters[group],
                Loads = loads[group],
                BondedNodes = bonds[group],
            }),
        ];
    }

    // What floats is taken out and named until nothing floats any more: a converter that nothing feeds leaves its own loads floating.
    private static ImmutableArray<string> FindUnfed(Network network)
    {
        ImmutableArray<string>.Builder unfed = ImmutableArray.CreateBuilder<string>();
        while (true)
        {
            Network rest = Without(network, unfed);
            HashSet<string> floating = [.. NetworkCheck.FindFaults(rest).Where(fault => fault.Kind == NetworkFaultKind.Floating).SelectMany(fault => fault.Ids)];
            string[] takers = [.. rest.Loads.Select(load => load.Id).Concat(rest.Converters.Select(converter => converter.Id)).Where(floating.Contains).Order(StringComparer.Ordinal)];
            if (takers.Length == 0)
            {
                return unfed.ToImmutable();
            }

            unfed.AddRange(takers);
        }
    }

    private static Network Without(Network network, IReadOnlyCollection<string> takers) => takers.Count == 0 ? network : network with
    {
        Loads = network.Loads.RemoveAll(load => takers.Contains(load.Id)),
        Converters = network.Converters.RemoveAll(converter => takers.Contains(converter.Id)),
    };
}
