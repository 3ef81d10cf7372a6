using System.Collections.Concurrent;
using System.Collections.Immutable;

namespace Orlop.Electrics.Networks;

/// <summary>
/// Faults in one network under one set of conditions, by the method of <see cref="FaultCurrent"/>: the network is factored once, each fault is reckoned when it is first asked for and
/// remembered. Safe from several threads.
/// </summary>
public sealed class PreparedFaults
{
    private readonly Wiring _wiring;
    private readonly FaultStudy _study;
    private readonly ConcurrentDictionary<(int Plus, int Minus), FaultCurrentResult?> _faults = [];
    private readonly ConcurrentDictionary<(int Plus, int Minus), FaultFlow?> _flows = [];
    private readonly ConcurrentDictionary<(int Plus, int Minus), ImmutableArray<FaultPiece>> _pieces = [];

    internal PreparedFaults(Wiring wiring, FaultConditions conditions)
    {
        _wiring = wiring;
        _study = new FaultStudy(wiring, conditions);
    }

    /// <summary>The faults of a network; null when <see cref="NetworkCheck"/> finds anything wrong in it.</summary>
    public static PreparedFaults? OfSound(Network network, FaultConditions conditions)
    {
        var (found, wiring) = NetworkCheck.Examine(network);
        return found.IsEmpty && wiring is not null ? new PreparedFaults(wiring, conditions) : null;
    }

    /// <summary>The fault between two nodes; null where they are joined with no resistance, and there is nothing to short.</summary>
    /// <exception cref="ArgumentException">A node is not in the network.</exception>
    public FaultCurrentResult? Between(string plusNode, string minusNode) =>
        _faults.GetOrAdd((Junction(plusNode), Junction(minusNode)), pair => _study.Between(pair.Plus, pair.Minus));

    /// <summary>The fault between two nodes by batteries alone, with what flows where; null where they are joined with no resistance, or no battery feeds the fault.</summary>
    /// <exception cref="ArgumentException">A node is not in the network.</exception>
    public FaultFlow? FlowBetween(string plusNode, string minusNode) =>
        _flows.GetOrAdd((Junction(plusNode), Junction(minusNode)), pair => _study.FlowBetween(pair.Plus, pair.Minus));

    /// <summary>The elements that make up the resistance between two nodes that batteries feed; none where they are joined with no resistance, or no battery feeds the fault.</summary>
    /// <exception cref="ArgumentException">A node is not in the network.</exception>
    public ImmutableArray<FaultPiece> PiecesBetween(string plusNode, string minusNode) =>
        _pieces.GetOrAdd((Junction(plusNode), Junction(minusNode)), pair => _study.PiecesBetween(pair.Plus, pair.Minus));

    private int Junction(string node) => _wiring.Find(node) is { } number
        ? _wiring.JunctionOfNode[number]
        : throw new ArgumentException($"Node '{node}' is not in the network.", nameof(node));
}
