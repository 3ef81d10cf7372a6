using System.Collections.Immutable;
using Orlop.Electrics.Networks;

namespace Orlop.Electrics.Starts;

/// <summary>The network with its stores as voltages behind a resistance, analysed once and solved for each stage of each step.</summary>
internal sealed class StoreCircuit
{
    private readonly StartInput _input;
    private readonly Network _network;
    private readonly PreparedNetwork? _prepared;
    private readonly int _ownBatteryCount;
    private readonly int _ownLoadCount;

    public StoreCircuit(StartInput input)
    {
        _input = input;
        (_ownBatteryCount, _ownLoadCount) = (input.Network.Batteries.Length, input.Network.Loads.Length);
        _network = input.Network with
        {
            Batteries = [.. input.Network.Batteries, .. input.Stores.Select(store => new Battery(store.Id, store.Plus, store.Minus, 1, store.SeriesOhm))],
            Loads = [.. input.Network.Loads, .. input.Currents.Select(current => new Load(current.Id, current.Plus, current.Minus, LoadKind.Current, current.CurrentA))],
        };
        Faults = NetworkCheck.FindFaults(_network);
        _prepared = Faults.IsEmpty ? PreparedNetwork.Of(_network) : null;
    }

    public ImmutableArray<NetworkFault> Faults { get; }

    /// <summary>Solves it.</summary>
    /// <param name="emfV">Voltage of each store behind its resistance; 0 or below as well.</param>
    /// <param name="behindOhm">That resistance.</param>
    /// <param name="isOn">Whether each current is still drawn.</param>
    public NetworkResult Solve(double[] emfV, double[] behindOhm, bool[] isOn, CancellationToken token)
    {
        var batteries = _network.Batteries.ToBuilder();
        for (var k = 0; k < emfV.Length; k++)
        {
            batteries[_ownBatteryCount + k] = batteries[_ownBatteryCount + k] with { OpenCircuitV = emfV[k], InternalOhm = behindOhm[k] };
        }

        var loads = _network.Loads.ToBuilder();
        for (var k = 0; k < isOn.Length; k++)
        {
            loads[_ownLoadCount + k] = loads[_ownLoadCount + k] with { Amount = isOn[k] ? _input.Currents[k].CurrentA : 0 };
        }

        return _prepared!.WithUnchecked(_network with { Batteries = batteries.ToImmutable(), Loads = loads.ToImmutable() }).Solve(token);
    }
}
