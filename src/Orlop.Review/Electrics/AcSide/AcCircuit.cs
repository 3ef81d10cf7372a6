using System.Collections.Immutable;
using Orlop.Boat.Things;
using Orlop.Boat.Topology;

namespace Orlop.Review.Electrics.AcSide;

/// <summary>What takes alternating current, the source that feeds it, and the first condition in which it does.</summary>
/// <param name="Taker">A load or a shore charger.</param>
/// <param name="Source">An inverter or a shore inlet.</param>
/// <param name="Condition">The condition in which the way is closed.</param>
/// <param name="Live">The edges from the source's live terminal to the taker, in order.</param>
internal sealed record AcCircuit(Part Taker, Part Source, Condition Condition, ImmutableArray<WiringEdge> Live)
{
    /// <summary>The fuses and breakers in the live conductor, from the source on.</summary>
    public ImmutableArray<Protection> Devices { get; } = [.. Live.Where(edge => edge.Kind == WiringEdgeKind.ProtectionPole).Select(edge => (Protection)edge.Owner)];

    /// <summary>The last conductor of its way; null where it hangs on its device without a cable.</summary>
    public WiringEdge? LastCore { get; } = Live.LastOrDefault(edge => edge.Kind == WiringEdgeKind.Core);
}

/// <summary>All circuits of alternating current, each with each source that feeds it in some condition.</summary>
internal static class AcCircuits
{
    /// <summary>What takes alternating current.</summary>
    public static IEnumerable<Part> Takers(ElectricsView view) => view.Boat.All<Part>().Where(part => Poles.Taking(part) is { IsAc: true });

    /// <summary>What gives alternating current.</summary>
    public static IEnumerable<Part> Sources(ElectricsView view) => view.Boat.All<Part>().Where(part => Poles.Giving(part) is { IsAc: true });

    /// <summary>All circuits, in the boat's order of takers.</summary>
    public static ImmutableArray<AcCircuit> Of(ElectricsView view) => [.. Takers(view).SelectMany(taker => view.Conditions
        .Select(condition => Circuit(view, taker, condition)).OfType<AcCircuit>().DistinctBy(circuit => circuit.Source.Id))];

    private static AcCircuit? Circuit(ElectricsView view, Part taker, Condition condition)
    {
        ShortestWay way = view.WayTo(taker, condition);
        return way.SourceId is { } id && view.Boat.Find<Part>(id) is { } source && Poles.Giving(source) is { IsAc: true }
            ? new AcCircuit(taker, source, condition, [.. way.Out.Select(edge => view.Wiring.Find(edge)!)])
            : null;
    }
}
