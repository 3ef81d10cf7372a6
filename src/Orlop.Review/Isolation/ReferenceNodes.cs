using Orlop.Boat;
using Orlop.Boat.Things;
using Orlop.Boat.Topology;
using Orlop.Review.Electrics;

namespace Orlop.Review.Isolation;

/// <summary>The nodes that a dead point is measured against: what is bonded to the hull, and the minus of each battery that is not.</summary>
public static class ReferenceNodes
{
    /// <summary>All of them, with every switch taken as closed.</summary>
    public static HashSet<string> Of(BoatModel boat, Wiring wiring)
    {
        ArgumentNullException.ThrowIfNull(boat);
        ArgumentNullException.ThrowIfNull(wiring);
        HashSet<string> reference = [.. Grounding.Of(boat, wiring).Nodes];
        Queue<string> queue = new(boat.All<BatteryBank>().Select(battery => battery.At(TerminalNames.Minus).ToString()).Where(reference.Add));
        while (queue.TryDequeue(out string? node))
        {
            foreach (string next in wiring.At(node).Where(edge => edge.Kind != WiringEdgeKind.ProtectionPole).Select(edge => edge.Other(node)).Where(reference.Add))
            {
                queue.Enqueue(next);
            }
        }

        return reference;
    }
}
