using System.Collections.Immutable;

namespace Orlop.Electrics.Networks;

/// <summary>Finds what is wrong with a network before it is solved: every fault, each with the elements it names.</summary>
public static class NetworkCheck
{
    /// <summary>All faults: values first, then ids, then connections. Empty when the network can be solved.</summary>
    public static ImmutableArray<NetworkFault> FindFaults(Network network) => Examine(network).Faults;

    internal static (ImmutableArray<NetworkFault> Faults, Wiring? Wiring) Examine(Network network)
    {
        ArgumentNullException.ThrowIfNull(network);
        var values = new ValueCheck();
        values.Examine(network);
        if (values.HasUnnamed)
        {
            return ([.. values.Faults], null);
        }

        var wiring = new Wiring(network);
        return ([.. values.Faults, .. ConnectionCheck.FindFaults(wiring), .. EnergyLoopCheck.FindFaults(wiring)], wiring);
    }
}
