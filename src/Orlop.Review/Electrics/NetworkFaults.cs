using System.Collections.Immutable;
using Orlop.Boat.Topology;
using Orlop.Electrics.Networks;
using Orlop.Review.Findings;
using Orlop.Review.Networks;

namespace Orlop.Review.Electrics;

/// <summary>Bolted faults in the networks of a boat, remembered by a network's content, which conditions share. Safe from several threads.</summary>
internal sealed class NetworkFaults(Memo memo, Wiring wiring, ElectricThings things)
{
    private sealed record Known(PreparedFaults? Prepared);

    private sealed record ToldLines(ImmutableArray<WorkingLine> Lines);

    /// <summary>Greatest fault current between each pair of nodes of a network: null where the two are joined, none at all when the network has faults.</summary>
    public ImmutableArray<FaultCurrentResult?> GreatestBetween(Network network, IEnumerable<(string Plus, string Minus)> pairs) =>
        Greatest(network) is { } faults ? [.. pairs.Select(pair => faults.Between(pair.Plus, pair.Minus))] : [];

    /// <summary>The greatest faults in a network; null when it has faults.</summary>
    public PreparedFaults? Greatest(Network network) => Prepared(network, FaultConditions.Greatest);

    /// <summary>The weakest faults in a network; null when it has faults. Loads take no part in a fault.</summary>
    public PreparedFaults? Least(Network network) => Prepared(network, FaultConditions.Least);

    private sealed record Doubted(Network? Network);

    /// <summary>A network made from another, remembered by that other; null where there is none.</summary>
    public Network? Instead(Network network, string how, Func<Network?> make) => memo.Get((network, how, things.Supplying), () => new Doubted(make())).Network;

    /// <summary>Lines on a fault between two nodes, remembered by the network, the nodes and the names of what lies between.</summary>
    public ImmutableArray<WorkingLine> LinesOf(PreparedFaults? faults, (string Plus, string Minus) at, string what, Func<IEnumerable<WorkingLine>> tell) => faults is null
        ? [.. tell()]
        : memo.Get((faults, at, what, wiring, things.Supplying), () => new ToldLines([.. tell()])).Lines;

    // The same object is found by reference; another of the same content by its key.
    private PreparedFaults? Prepared(Network network, FaultConditions conditions) => memo.Get((network, conditions), () =>
    {
        Network feeding = network with { Loads = [] };
        return memo.Get((new NetworkKey(feeding), conditions), () => new Known(PreparedFaults.OfSound(feeding, conditions)));
    }).Prepared;
}
