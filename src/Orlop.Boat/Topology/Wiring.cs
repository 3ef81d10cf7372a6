using System.Collections.Immutable;
using Orlop.Boat.Things;

namespace Orlop.Boat.Topology;

/// <summary>What an edge of the wiring is.</summary>
public enum WiringEdgeKind { Joint, Core, Link, ProtectionPole, SwitchPole, ChangeoverPole, PlugContact }

/// <summary>Something that joins two nodes of the wiring.</summary>
/// <param name="Id">Element id, by <see cref="ElementIds"/>.</param>
/// <param name="Owner">The thing it is part of.</param>
/// <param name="A">Node nearer the first end, or the supply side.</param>
/// <param name="B">The other node.</param>
/// <param name="Kind">What it is.</param>
/// <param name="Core">The core, for a core and its joints.</param>
/// <param name="Position">The position that closes it, for a pole of a change-over.</param>
public sealed record WiringEdge(
    string Id, Thing Owner, string A, string B, WiringEdgeKind Kind, Core? Core = null, ChangeoverPosition Position = ChangeoverPosition.Off)
{
    /// <summary>The node at its other end.</summary>
    public string Other(string node) => node == A ? B : A;

    /// <summary>It conducts in the condition; with no condition, whenever it can.</summary>
    public bool IsClosedIn(string? condition) => condition is null || Owner switch
    {
        IsolatorSwitch isolator => !isolator.OpenIn.Contains(condition),
        Changeover changeover => changeover.Positions.FirstOrDefault(use => use.Condition == condition)?.Position == Position,
        _ => true,
    };
}

/// <summary>
/// All joints, cores, links and device poles of a boat as edges between nodes. The one description of the wiring: network, chains,
/// isolation, drawings and labels are all made from it.
/// </summary>
public sealed class Wiring
{
    private readonly Dictionary<string, List<WiringEdge>> _byNode = new(StringComparer.Ordinal);
    private readonly Dictionary<string, WiringEdge> _byId = new(StringComparer.Ordinal);

    private Wiring(ImmutableArray<WiringEdge> edges)
    {
        Edges = edges;
        foreach (WiringEdge edge in edges)
        {
            _byId.TryAdd(edge.Id, edge);
            Attach(edge.A, edge);
            Attach(edge.B, edge);
        }
    }

    /// <summary>All edges, in the order of the boat's things.</summary>
    public ImmutableArray<WiringEdge> Edges { get; }

    /// <summary>All nodes that an edge touches.</summary>
    public IEnumerable<string> Nodes => _byNode.Keys;

    /// <summary>The edges at a node.</summary>
    public IReadOnlyList<WiringEdge> At(string node) => _byNode.TryGetValue(node, out List<WiringEdge>? edges) ? edges : [];

    /// <summary>The edge with this element id, or null.</summary>
    public WiringEdge? Find(string id) => _byId.GetValueOrDefault(id);

    /// <summary>The wiring of a boat.</summary>
    public static Wiring Of(BoatModel boat) => new([.. boat.Things.SelectMany(EdgesOf)]);

    /// <summary>The edges that one thing contributes.</summary>
    public static IEnumerable<WiringEdge> EdgesOf(Thing thing) => thing switch
    {
        Cable cable => cable.Cores.SelectMany(core => EdgesOf(cable, core)),
        Link link => [new WiringEdge(link.Id, link, link.From.ToString(), link.To.ToString(), WiringEdgeKind.Link)],
        Protection device => Poles(device, device.IsTwoPole, WiringEdgeKind.ProtectionPole),
        IsolatorSwitch device => Poles(device, device.IsTwoPole, WiringEdgeKind.SwitchPole),
        PlugAndSocket device => Poles(device, true, WiringEdgeKind.PlugContact),
        Changeover device =>
        [
            Pole(device, TerminalNames.A, TerminalNames.Out, ChangeoverPosition.A, ""),
            Pole(device, TerminalNames.A2, TerminalNames.Out2, ChangeoverPosition.A, ".2"),
            Pole(device, TerminalNames.B, TerminalNames.Out, ChangeoverPosition.B, ""),
            Pole(device, TerminalNames.B2, TerminalNames.Out2, ChangeoverPosition.B, ".2"),
        ],
        _ => [],
    };

    private static IEnumerable<WiringEdge> EdgesOf(Cable cable, Core core)
    {
        string id = ElementIds.Core(cable, core), from = ElementIds.FromJoint(cable, core), to = ElementIds.ToJoint(cable, core);
        yield return new WiringEdge(from, cable, core.From.ToString(), from, WiringEdgeKind.Joint, core);
        yield return new WiringEdge(id, cable, from, to, WiringEdgeKind.Core, core);
        yield return new WiringEdge(to, cable, to, core.To.ToString(), WiringEdgeKind.Joint, core);
    }

    private static IEnumerable<WiringEdge> Poles(Part device, bool isTwoPole, WiringEdgeKind kind)
    {
        yield return new WiringEdge(device.Id, device, Node(device, TerminalNames.In), Node(device, TerminalNames.Out), kind);
        if (isTwoPole)
        {
            yield return new WiringEdge(ElementIds.SecondPole(device), device, Node(device, TerminalNames.In2), Node(device, TerminalNames.Out2), kind);
        }
    }

    private static WiringEdge Pole(Changeover device, string from, string to, ChangeoverPosition position, string pole) =>
        new($"{device.Id}.{position.ToString().ToLowerInvariant()}{pole}", device, Node(device, from), Node(device, to), WiringEdgeKind.ChangeoverPole, null, position);

    private static string Node(Part device, string terminal) => device.At(terminal).ToString();

    private void Attach(string node, WiringEdge edge)
    {
        if (!_byNode.TryGetValue(node, out List<WiringEdge>? edges))
        {
            _byNode[node] = edges = [];
        }

        edges.Add(edge);
    }
}
