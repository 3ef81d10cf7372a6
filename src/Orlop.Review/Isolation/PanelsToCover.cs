using System.Collections.Immutable;
using Orlop.Boat;
using Orlop.Boat.Things;
using Orlop.Boat.Topology;
using Orlop.Electrics.Isolation;

namespace Orlop.Review.Isolation;

/// <summary>
/// The solar controllers whose panels are covered before a plan's first opening and uncovered after its last: those that the plan cuts from a battery,
/// those that keep something of the work live, and those whose current flows through a point that is worked on live, as a battery post, or through a battery whose minus comes off. A controller that loses its battery while its panels give may be destroyed, and a direct current
/// drawn out into an arc does not go out by itself (common practice, no source; the controller's sheet goes first).
/// </summary>
public static class PanelsToCover
{
    /// <summary>The controllers, in the order of the boat.</summary>
    /// <param name="bare">The batteries whose minus leads come off.</param>
    public static ImmutableArray<Charger> Of(BoatModel boat, Wiring wiring, IsolationResult plan, ImmutableArray<BatteryBank> bare)
    {
        ArgumentNullException.ThrowIfNull(boat);
        ArgumentNullException.ThrowIfNull(wiring);
        ArgumentNullException.ThrowIfNull(plan);
        ImmutableArray<Charger> solar = [.. boat.All<Charger>().Where(charger => charger.Drive == ChargerDrive.Sun)];
        HashSet<string> opened = [.. plan.Openings.SelectMany(opening => opening.EdgeIds)], live = [.. plan.CannotBeMadeDead.Select(node => node.Node), .. bare.Select(Plus)];
        if (solar.IsEmpty || (opened.Count == 0 && live.Count == 0))
        {
            return [];
        }

        HashSet<string> reference = ReferenceNodes.Of(boat, wiring), batteries = [.. boat.All<BatteryBank>().Select(Plus)];
        List<WiringEdge> all = [.. wiring.Edges.Where(edge => !reference.Contains(edge.A) && !reference.Contains(edge.B))];
        List<WiringEdge> between = WithoutDeadEnds(all, [.. batteries, .. solar.Select(Plus)]);
        return [.. solar.Where(charger => plan.CannotBeMadeDead.Any(node => node.SourceId == charger.Id) || IsCut(Plus(charger)))];

        // A controller that no battery is drawn to is taken to be cut by anything on its circuit.
        bool IsCut(string plus) => Circuit(Circuit(all, plus).Any(edge => batteries.Contains(edge.A) || batteries.Contains(edge.B)) ? between : all, plus).Any(edge => opened.Contains(edge.Id) || live.Contains(edge.A) || live.Contains(edge.B));
    }

    private static string Plus(Part source) => Poles.Giving(source)!.Plus;

    // With loads off, no current of the panels flows in a branch that leads to no battery.
    private static List<WiringEdge> WithoutDeadEnds(List<WiringEdge> edges, HashSet<string> kept)
    {
        while (true)
        {
            Dictionary<string, int> counts = edges.SelectMany(edge => new[] { edge.A, edge.B }).CountBy(node => node).ToDictionary(StringComparer.Ordinal);
            List<WiringEdge> left = edges.FindAll(edge => IsJoined(edge.A) && IsJoined(edge.B));
            if (left.Count == edges.Count)
            {
                return left;
            }

            edges = left;

            bool IsJoined(string node) => counts[node] > 1 || kept.Contains(node);
        }
    }

    private static HashSet<WiringEdge> Circuit(List<WiringEdge> edges, string start)
    {
        ILookup<string, WiringEdge> at = edges.SelectMany(edge => new[] { (Node: edge.A, Edge: edge), (Node: edge.B, Edge: edge) }).ToLookup(pair => pair.Node, pair => pair.Edge, StringComparer.Ordinal);
        HashSet<WiringEdge> circuit = new(ReferenceEqualityComparer.Instance);
        Queue<string> queue = new([start]);
        while (queue.TryDequeue(out string? node))
        {
            foreach (WiringEdge edge in at[node].Where(circuit.Add))
            {
                queue.Enqueue(edge.Other(node));
            }
        }

        return circuit;
    }
}
