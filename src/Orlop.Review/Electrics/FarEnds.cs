using System.Collections.Immutable;
using Orlop.Boat.Things;
using Orlop.Boat.Topology;
using Orlop.Electrics.Networks;
using Orlop.Review.Networks;

namespace Orlop.Review.Electrics;

/// <summary>The far end of a conductor on the way from a battery to what it feeds, and the weakest fault there.</summary>
/// <param name="Edge">The conductor.</param>
/// <param name="Cable">Its cable.</param>
/// <param name="NearNode">Node at its near end.</param>
/// <param name="PlusNode">Node at its far end.</param>
/// <param name="MinusNode">Node to which a fault there returns.</param>
/// <param name="Before">The fuses and breakers between the battery and it, from the battery on.</param>
/// <param name="WayIds">The elements that the fault flows through, there and back.</param>
/// <param name="Fault">The weakest fault at its far end: lowest battery, hot conductors, joints as they are; null where it cannot be reckoned.</param>
internal sealed record FarEnd(WiringEdge Edge, Cable Cable, string NearNode, string PlusNode, string MinusNode, ImmutableArray<Protection> Before, ImmutableArray<string> WayIds, FaultFlow? Fault)
{
    /// <summary>What flows in an element on the way to the fault, A; all of it where that element has no resistance.</summary>
    public double ThroughA(string elementId) => Math.Abs(Fault!.BranchA(elementId) ?? Fault.Fault.CurrentA);
}

/// <summary>
/// The far ends of all ungrounded conductors that a battery feeds in a condition. A fault there returns on the other core of the same cable; where that is a cable of its own, from the place on
/// the way back that lies as far from the battery.
/// </summary>
internal sealed class FarEnds
{
    private readonly Dictionary<string, FarEnd> _byEdge = new(StringComparer.Ordinal);
    private readonly Dictionary<string, LimitedEnd> _limitedByEdge = new(StringComparer.Ordinal);

    private FarEnds()
    {
    }

    /// <summary>All of them, in the order of the boat's takers.</summary>
    public IReadOnlyCollection<FarEnd> All => _byEdge.Values;

    /// <summary>The ends behind a DC converter of conductors on no way from a battery, in the order of the boat's takers.</summary>
    public IReadOnlyCollection<LimitedEnd> Limited => _limitedByEdge.Values;

    /// <summary>The far ends in a condition.</summary>
    public static FarEnds Of(ElectricsView view, Condition condition)
    {
        FarEnds ends = new();
        SolvedNetwork lowest = view.Solve(condition, ChargeCase.Lowest);
        foreach (Place place in Places(view, condition))
        {
            FaultFlow? flow = lowest.NetworkOf(place.Edge.Id) is { } network ? view.Faults.Least(network)?.FlowBetween(place.Plus, place.Minus) : null;
            ends._byEdge[place.Edge.Id] = new FarEnd(place.Edge, (Cable)place.Edge.Owner, place.Edge.Other(place.Plus), place.Plus, place.Minus, place.Before, place.WayIds, flow);
        }

        foreach (LimitedEnd end in LimitedEnd.Of(view, condition).Where(end => !ends._byEdge.ContainsKey(end.Edge.Id)))
        {
            ends._limitedByEdge.TryAdd(end.Edge.Id, end);
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

            ImmutableArray<Step> back = [.. Walk(view, way.Back, Poles.Giving(battery)!.Minus)];
            List<Protection> before = [];
            foreach (Step step in Walk(view, way.Out, Poles.Giving(battery)!.Plus).Skip(1))
            {
                if (step.Edge!.Owner is Protection device)
                {
                    before.Add(device);
                }
                else if (step.Edge is { Kind: WiringEdgeKind.Core, Owner: Cable cable } && !view.Grounding.IsGrounded(step.Edge) && seen.Add(step.Edge.Id))
                {
                    int at = ReturnOf(back, cable, step.AlongM);
                    yield return new Place(step.Edge, [.. before], [.. way.Out.TakeWhile(id => id != step.Edge.Id), step.Edge.Id, .. way.Back[..at]], step.Node, back[at].Node);
                }
            }
        }
    }

    /// <summary>A node on a way, the edge that leads to it, and how far from the source it lies; a length that is not given counts as nothing.</summary>
    private sealed record Step(WiringEdge? Edge, string Node, double AlongM);

    private static int ReturnOf(ImmutableArray<Step> back, Cable cable, double alongM)
    {
        int own = -1, nearest = 0;
        for (int k = 0; k < back.Length; k++)
        {
            own = back[k].Edge is { Kind: WiringEdgeKind.Core } edge && edge.Owner.Id == cable.Id ? k : own;
            nearest = Math.Abs(back[k].AlongM - alongM) <= Math.Abs(back[nearest].AlongM - alongM) ? k : nearest;
        }

        return own >= 0 ? own : nearest;
    }

    private static IEnumerable<Step> Walk(ElectricsView view, ImmutableArray<string> edgeIds, string start)
    {
        Step at = new(null, start, 0);
        yield return at;
        foreach (string id in edgeIds)
        {
            WiringEdge edge = view.Wiring.Find(id)!;
            at = new Step(edge, edge.Other(at.Node), at.AlongM + LengthM(edge));
            yield return at;
        }
    }

    private static double LengthM(WiringEdge edge) => edge switch
    {
        { Kind: WiringEdgeKind.Core, Owner: Cable cable } => edge.Core!.LengthM?.Value ?? cable.LengthM?.Value ?? 0,
        { Owner: Link link } => link.LengthM?.Value ?? 0,
        _ => 0,
    };
}
