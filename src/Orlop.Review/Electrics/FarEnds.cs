using System.Collections.Immutable;
using Orlop.Boat.Things;
using Orlop.Boat.Topology;
using Orlop.Electrics.Networks;
using Orlop.Review.Networks;

namespace Orlop.Review.Electrics;

/// <summary>The far end of a conductor on the way from a battery to what it feeds, and the weakest fault there.</summary>
/// <param name="Edge">The conductor.</param>
/// <param name="Cable">Its cable.</param>
/// <param name="PlusNode">Node at its far end.</param>
/// <param name="MinusNode">Node to which a fault there returns.</param>
/// <param name="Before">The fuses and breakers between the battery and it, from the battery on.</param>
/// <param name="WayIds">The elements that the fault flows through, there and back.</param>
/// <param name="Fault">The weakest fault at its far end: lowest battery, hot conductors, joints as they are; null where it cannot be reckoned.</param>
internal sealed record FarEnd(WiringEdge Edge, Cable Cable, string PlusNode, string MinusNode, ImmutableArray<Protection> Before, ImmutableArray<string> WayIds, FaultFlow? Fault)
{
    /// <summary>What flows in an element on the way to the fault, A; all of it where that element has no resistance.</summary>
    public double ThroughA(string elementId) => Math.Abs(Fault!.BranchA.TryGetValue(elementId, out double currentA) ? currentA : Fault.Fault.CurrentA);
}

/// <summary>The far ends of all ungrounded conductors that a battery feeds in a condition. A fault there returns on the other core of the same cable, or on the whole way back.</summary>
internal sealed class FarEnds
{
    private readonly Dictionary<string, FarEnd> _byEdge = new(StringComparer.Ordinal);

    private FarEnds()
    {
    }

    /// <summary>All of them, in the order of the boat's takers.</summary>
    public IReadOnlyCollection<FarEnd> All => _byEdge.Values;

    /// <summary>The far ends in a condition.</summary>
    public static FarEnds Of(ElectricsView view, Condition condition)
    {
        FarEnds ends = new();
        SolvedNetwork lowest = view.Solve(condition, ChargeCase.Lowest);
        foreach (IGrouping<Network?, Place> places in Places(view, condition).GroupBy(place => lowest.NetworkOf(place.Edge.Id)))
        {
            Place[] each = [.. places];
            ImmutableArray<FaultFlow?> flows = places.Key is { } network ? view.LeastFaultsIn(network, [.. each.Select(place => (place.Plus, place.Minus))]) : [];
            for (int k = 0; k < each.Length; k++)
            {
                ends._byEdge[each[k].Edge.Id] = new FarEnd(each[k].Edge, (Cable)each[k].Edge.Owner, each[k].Plus, each[k].Minus, each[k].Before, each[k].WayIds, flows.IsEmpty ? null : flows[k]);
            }
        }

        return ends;
    }

    private sealed record Place(WiringEdge Edge, ImmutableArray<Protection> Before, ImmutableArray<string> WayIds, string Plus, string Minus);

    private static IEnumerable<Place> Places(ElectricsView view, Condition condition)
    {
        HashSet<string> seen = new(StringComparer.Ordinal);
        foreach (Part taker in view.Boat.All<Part>())
        {
            ShortestWay way = Poles.Taking(taker) is null ? ShortestWay.None : view.WayTo(taker, condition);
            if (way.SourceId is not { } id || view.Boat.Find<Part>(id) is not BatteryBank battery || way.Back.IsEmpty)
            {
                continue;
            }

            Dictionary<string, string> returns = ReturnsByCable(view, way, Poles.Giving(battery)!.Minus);
            List<Protection> before = [];
            foreach ((WiringEdge edge, string far) in Walk(view, way.Out, Poles.Giving(battery)!.Plus))
            {
                if (edge.Owner is Protection device)
                {
                    before.Add(device);
                }
                else if (edge is { Kind: WiringEdgeKind.Core, Owner: Cable cable } && !view.Grounding.IsGrounded(edge) && seen.Add(edge.Id))
                {
                    yield return new Place(edge, [.. before], [.. way.Out.TakeWhile(id => id != edge.Id), edge.Id, .. way.Back], far, returns.GetValueOrDefault(cable.Id, Poles.Taking(taker)!.Minus));
                }
            }
        }
    }

    private static Dictionary<string, string> ReturnsByCable(ElectricsView view, ShortestWay way, string start)
    {
        Dictionary<string, string> returns = new(StringComparer.Ordinal);
        foreach ((WiringEdge edge, string far) in Walk(view, way.Back, start).Where(step => step.Edge.Kind == WiringEdgeKind.Core))
        {
            returns[edge.Owner.Id] = far;
        }

        return returns;
    }

    private static IEnumerable<(WiringEdge Edge, string Far)> Walk(ElectricsView view, ImmutableArray<string> edgeIds, string start)
    {
        string node = start;
        foreach (string id in edgeIds)
        {
            WiringEdge edge = view.Wiring.Find(id)!;
            node = edge.Other(node);
            yield return (edge, node);
        }
    }
}
