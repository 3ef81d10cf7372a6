using System.Collections.Immutable;
using Orlop.Electrics.Networks;

namespace Orlop.Review.Networks;

/// <summary>One group of a network, solved.</summary>
public sealed record SolvedGroup(Network Network, NetworkResult Result);

/// <summary>A boat's network in one case, solved group by group. A number is null where its group has no operating point, or it is not there.</summary>
public sealed class SolvedNetwork
{
    private readonly Dictionary<string, SolvedGroup> _groupOf = new(StringComparer.Ordinal);
    private readonly Dictionary<string, SolvedGroup> _groupOfNode = new(StringComparer.Ordinal);

    public SolvedNetwork(BuiltNetwork built, ImmutableArray<SolvedGroup> groups)
    {
        Built = built;
        Groups = groups;
        foreach (SolvedGroup group in groups)
        {
            Network network = group.Network;
            foreach (string id in network.Conductors.Select(item => item.Id).Concat(network.Contacts.Select(item => item.Id))
                .Concat(network.Batteries.Select(item => item.Id)).Concat(network.LimitedSources.Select(item => item.Id))
                .Concat(network.Converters.Select(item => item.Id)).Concat(network.Loads.Select(item => item.Id)))
            {
                _groupOf.TryAdd(id, group);
            }

            foreach (string node in group.Result.Point?.NodeV.Keys ?? [])
            {
                _groupOfNode.TryAdd(node, group);
            }
        }
    }

    public BuiltNetwork Built { get; }

    public ImmutableArray<SolvedGroup> Groups { get; }

    /// <summary>The group that holds an element, or null.</summary>
    public SolvedGroup? GroupOf(string elementId) => _groupOf.GetValueOrDefault(elementId);

    /// <summary>Voltage across a load or a converter's input.</summary>
    public double? LoadV(string id) => Find(id, point => point.LoadV);

    /// <summary>Current into a load or a converter's input.</summary>
    public double? LoadA(string id) => Find(id, point => point.LoadA);

    /// <summary>Current of a conductor or contact, positive from its first end.</summary>
    public double? BranchA(string id) => Find(id, point => point.BranchA);

    /// <summary>Current out of a source or a converter's output.</summary>
    public double? SourceA(string id) => Find(id, point => point.SourceA);

    /// <summary>Temperature of a conductor.</summary>
    public double? ConductorC(string id) => Find(id, point => point.ConductorC);

    /// <summary>Power out of a converter.</summary>
    public double? ConverterOutputW(string id) => Find(id, point => point.ConverterOutputW);

    /// <summary>Voltage between two nodes of one group.</summary>
    public double? BetweenV(string plus, string minus) =>
        _groupOfNode.TryGetValue(plus, out SolvedGroup? group) && group.Result.Point is { } point && point.NodeV.TryGetValue(minus, out double minusV)
            ? point.NodeV[plus] - minusV
            : null;

    private double? Find(string id, Func<OperatingPoint, IReadOnlyDictionary<string, double>> table) =>
        GroupOf(id)?.Result.Point is { } point && table(point).TryGetValue(id, out double value) ? value : null;
}
