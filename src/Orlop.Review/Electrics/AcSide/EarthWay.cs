using System.Collections.Immutable;
using Orlop.Boat.Things;
using Orlop.Boat.Topology;
using Orlop.Boat.Values;

namespace Orlop.Review.Electrics.AcSide;

/// <summary>The shortest way of the protective conductor through metal that conducts in a condition; a hull of metal joins all that is bonded to it.</summary>
internal static class EarthWay
{
    /// <summary>The edges from one node to another, in order; null where there is no way. The hull itself counts as no edge.</summary>
    public static ImmutableArray<WiringEdge>? Between(ElectricsView view, Condition condition, string from, string to) =>
        ClosedWay.Between(view, condition, from, to, IsMetal(view) ? [.. Bonds.Of(view.Boat.All<Part>()).Select(bond => bond.ToString())] : []);

    /// <summary>A terminal that is told to be bonded to the hull, reached from a node through plain metal; null where none is.</summary>
    public static Terminal? BondReached(ElectricsView view, string from)
    {
        Dictionary<string, Terminal> bonds = Bonds.Of(view.Boat.All<Part>()).ToDictionary(bond => bond.ToString(), bond => bond, StringComparer.Ordinal);
        HashSet<string> seen = [from];
        Queue<string> queue = new(seen);
        while (queue.TryDequeue(out string? node))
        {
            if (bonds.TryGetValue(node, out Terminal bond))
            {
                return bond;
            }

            foreach (WiringEdge edge in view.Wiring.At(node).Where(IsPlainMetal))
            {
                if (seen.Add(edge.Other(node)))
                {
                    queue.Enqueue(edge.Other(node));
                }
            }
        }

        return null;
    }

    /// <summary>Nothing can open it but a spanner.</summary>
    public static bool IsPlainMetal(WiringEdge edge) => edge.Kind is WiringEdgeKind.Core or WiringEdgeKind.Joint or WiringEdgeKind.Link;

    private static bool IsMetal(ElectricsView view) => view.Boat.Particulars?.Material is HullMaterial.Steel or HullMaterial.Aluminium;
}
