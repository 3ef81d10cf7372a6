using System.Collections.Immutable;
using Orlop.Boat;
using Orlop.Boat.Things;
using Orlop.Boat.Topology;

namespace Orlop.Review.Isolation;

/// <summary>Which things keep a charge in their capacitors on what is worked on: those joined to it by nothing that is open, whatever else cut it off.</summary>
public static class StoredCharge
{
    /// <summary>Inverters, converters and chargers at these nodes, or joined to one of them, in the order of the boat. The minus joins nothing: a charge stands between two poles.</summary>
    /// <param name="boat">The boat.</param>
    /// <param name="wiring">Her wiring, with every switch taken as closed.</param>
    /// <param name="nodes">What is worked on.</param>
    /// <param name="opened">Edges that are open meanwhile.</param>
    public static ImmutableArray<Part> At(BoatModel boat, Wiring wiring, IEnumerable<string> nodes, IReadOnlySet<string> opened)
    {
        ArgumentNullException.ThrowIfNull(boat);
        ArgumentNullException.ThrowIfNull(wiring);
        ArgumentNullException.ThrowIfNull(opened);
        HashSet<string> reference = ReferenceNodes.Of(boat, wiring), reached = [.. nodes];
        HashSet<string> touched = [.. reached.Select(ElementIds.ThingOf)];
        Queue<string> queue = new(reached.Where(node => !reference.Contains(node)));
        while (queue.TryDequeue(out string? node))
        {
            touched.Add(ElementIds.ThingOf(node));
            foreach (WiringEdge edge in wiring.At(node).Where(edge => !opened.Contains(edge.Id)))
            {
                string next = edge.Other(node);
                if (!reference.Contains(next) && reached.Add(next))
                {
                    queue.Enqueue(next);
                }
            }
        }

        return [.. boat.All<Part>().Where(part => part is Inverter or DcConverter or Charger { Drive: not ChargerDrive.Engine } && touched.Contains(part.Id))];
    }
}
