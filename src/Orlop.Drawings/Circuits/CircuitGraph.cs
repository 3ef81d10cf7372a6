using Orlop.Boat;
using Orlop.Boat.Things;
using Orlop.Boat.Values;
using Orlop.Drawings.Changes;

namespace Orlop.Drawings.Circuits;

/// <summary>A part on the diagram.</summary>
internal sealed record CircuitNode(int Index, ThingChange Change)
{
    internal Part Part => (Part)Change.Shown;

    internal bool IsBar => Part is Busbar;
}

/// <summary>A conductor of the supply side between two parts, from the source's side to the load's.</summary>
internal sealed record CircuitEdge(ThingChange Change, Terminal FromTerminal, Terminal ToTerminal, int From, int To)
{
    internal CircuitEdge Reversed() => new(Change, ToTerminal, FromTerminal, To, From);
}

/// <summary>A part of the return side and how many conductors meet at it.</summary>
internal sealed record ReturnPart(ThingChange Change, int ConductorCount);

/// <summary>The supply side of the boat's wiring as parts and directed conductors, and the return side as a list.</summary>
internal sealed class CircuitGraph
{
    private CircuitGraph(IReadOnlyList<CircuitNode> nodes, IReadOnlyList<CircuitEdge> edges, IReadOnlyList<ReturnPart> returns)
    {
        Nodes = nodes;
        Edges = FlowDirection.Directed(nodes, edges);
        Returns = returns;
    }

    internal IReadOnlyList<CircuitNode> Nodes { get; }

    internal IReadOnlyList<CircuitEdge> Edges { get; }

    internal IReadOnlyList<ReturnPart> Returns { get; }

    internal static CircuitGraph Of(BoatModel asBuilt, BoatModel? altered)
    {
        IReadOnlyList<ThingChange> changes = ThingChange.Between(asBuilt, altered);
        ThingChange[] parts = [.. changes.Where(change => change.Shown is Part)];
        (ThingChange Change, Terminal From, Terminal To)[] conductors = [.. changes.SelectMany(Conductors)];
        HashSet<Terminal> returnSide = ReturnSide.Of(parts.Select(change => (Part)change.Shown), conductors.Select(conductor => (conductor.From, conductor.To)));
        (ThingChange Change, Terminal From, Terminal To)[] supply = [.. conductors.Where(conductor => !returnSide.Contains(conductor.From) && !returnSide.Contains(conductor.To))];
        HashSet<string> supplied = [.. supply.SelectMany(conductor => new[] { conductor.From.Part, conductor.To.Part })];
        Dictionary<string, int> conductorCounts = conductors.Except(supply)
            .SelectMany(conductor => new[] { conductor.From.Part, conductor.To.Part })
            .CountBy(id => id).ToDictionary(pair => pair.Key, pair => pair.Value);

        bool IsReturnOnly(ThingChange change) => !supplied.Contains(change.Id) && conductorCounts.ContainsKey(change.Id) && change.Shown is Busbar or Protection or IsolatorSwitch;
        CircuitNode[] nodes = [.. parts.Where(change => !IsReturnOnly(change)).Select((change, index) => new CircuitNode(index, change))];
        Dictionary<string, int> indexOf = nodes.ToDictionary(node => node.Change.Id, node => node.Index);
        CircuitEdge[] edges = [.. supply
            .Where(conductor => indexOf.ContainsKey(conductor.From.Part) && indexOf.ContainsKey(conductor.To.Part) && conductor.From.Part != conductor.To.Part)
            .Select(conductor => new CircuitEdge(conductor.Change, conductor.From, conductor.To, indexOf[conductor.From.Part], indexOf[conductor.To.Part]))];
        return new(nodes, edges, [.. parts.Where(IsReturnOnly).Select(change => new ReturnPart(change, conductorCounts[change.Id]))]);
    }

    private static IEnumerable<(ThingChange Change, Terminal From, Terminal To)> Conductors(ThingChange change) => change.Shown switch
    {
        Cable cable => cable.Cores.Select(core => (change, core.From, core.To)),
        Link link => [(change, link.From, link.To)],
        _ => [],
    };
}
