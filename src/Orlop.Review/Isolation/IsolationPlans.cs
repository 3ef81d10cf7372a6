using System.Collections.Immutable;
using Orlop.Boat;
using Orlop.Boat.Things;
using Orlop.Boat.Topology;
using Orlop.Boat.Values;
using Orlop.Electrics.Isolation;

namespace Orlop.Review.Isolation;

/// <summary>
/// How a part of the boat is made dead: the boat's wiring handed to the engine, with every switch taken as closed. Where no minus of a
/// battery is bonded to the hull, that battery's own minus counts as the reference that a dead point is measured against.
/// </summary>
public static class IsolationPlans
{
    /// <summary>
    /// The plan that makes one thing dead: a part, a cable or a link. Null, which means unknown, when it is not in the boat, nothing is
    /// wired to it, or the boat has no source.
    /// </summary>
    public static IsolationResult? Plan(BoatModel boat, string thingId)
    {
        ArgumentNullException.ThrowIfNull(boat);
        Wiring wiring = Wiring.Of(boat);
        ImmutableArray<string> nodes = boat.Find(thingId) is { } thing ? NodesOf(thing) : [];
        bool isWired = nodes.Any(node => wiring.At(node).Any(edge => edge.Owner.Id != thingId || edge.Kind is WiringEdgeKind.Joint or WiringEdgeKind.Link));
        return isWired ? Plan(boat, wiring, nodes, _ => true) : null;
    }

    /// <summary>The plan that makes these nodes dead, opening only things that may be opened. Null when nothing is wired to any of them, or the boat has no source.</summary>
    /// <param name="mayOpen">By the id of the thing.</param>
    public static IsolationResult? Plan(BoatModel boat, Wiring wiring, IEnumerable<string> nodes, Func<string, bool> mayOpen)
    {
        return Planner(boat, wiring, mayOpen)(nodes);
    }

    /// <summary>Makes the same plan for one set of nodes after the other; the wiring is read once.</summary>
    /// <param name="mayOpen">By the id of the thing.</param>
    public static Func<IEnumerable<string>, IsolationResult?> Planner(BoatModel boat, Wiring wiring, Func<string, bool> mayOpen)
    {
        ArgumentNullException.ThrowIfNull(boat);
        ArgumentNullException.ThrowIfNull(wiring);
        ArgumentNullException.ThrowIfNull(mayOpen);
        return new SeenWiring(boat, InputOf(boat, wiring, mayOpen)).Find;
    }

    /// <summary>
    /// A plan as it stands on another boat once it is carried out: what stays live and where the meter is tried are told on the boat as she is then; all else is the plan's. The plan itself where none of
    /// the nodes is in that boat.
    /// </summary>
    /// <param name="standing">The boat as she is when the last thing is opened, without what is fitted later.</param>
    /// <param name="wiring">Her wiring.</param>
    /// <param name="nodes">The nodes of the work; those that she has not count nothing.</param>
    /// <param name="plan">The plan.</param>
    /// <param name="alsoOff">Edges that are off besides what the plan opens: the minus leads of batteries.</param>
    public static IsolationResult CarriedOut(BoatModel standing, Wiring wiring, IEnumerable<string> nodes, IsolationResult plan, IEnumerable<string> alsoOff)
    {
        ArgumentNullException.ThrowIfNull(standing);
        ArgumentNullException.ThrowIfNull(wiring);
        ArgumentNullException.ThrowIfNull(plan);
        return new SeenWiring(standing, InputOf(standing, wiring, _ => false)).CarriedOut(plan, nodes, alsoOff);
    }

    /// <summary>The source is live only while light reaches its panels.</summary>
    public static bool IsLitByPanels(StaysLive live) => live?.Because == IsolationSources.Light;

    /// <summary>How a source is stopped, in words; null for one that cannot be.</summary>
    public static string? HowStopped(Part source) => IsolationSources.Of(source)?.Stop?.How;

    /// <summary>
    /// The plans of several parts, each by itself. The wiring is read once, and the plans are remembered by all that isolation reads: a cable's size or a
    /// fuse's rating is not among it.
    /// </summary>
    public static IEnumerable<(Part Part, IsolationResult? Plan)> PlanEach(BoatModel boat, Wiring wiring, IReadOnlyList<Part> parts, Memo memo)
    {
        ArgumentNullException.ThrowIfNull(parts);
        ArgumentNullException.ThrowIfNull(memo);
        IsolationInput input = InputOf(boat, wiring, _ => true);
        ValueList<string> targets = parts.SelectMany(part => NodesOf(part).Prepend(part.Id)).ToValueList();
        PlansOfParts plans = memo.Get((targets, KeyOf(input)), () =>
        {
            SeenWiring seen = new(boat, input);
            return new PlansOfParts([.. parts.Select(part => seen.Find(NodesOf(part)))]);
        });
        return parts.Zip(plans.Each);
    }

    private sealed record PlansOfParts(ImmutableArray<IsolationResult?> Each);

    private static object KeyOf(IsolationInput input) => (
        input.Edges.ToValueList(), input.Feeds.ToValueList(), input.GroundedNodes.ToValueList(),
        input.Sources.Select(source => (source with { PoleNodes = [] }, source.PoleNodes.ToValueList())).ToValueList());

    private static IsolationInput InputOf(BoatModel boat, Wiring wiring, Func<string, bool> mayOpen)
    {
        IsolationInput input = new()
        {
            Edges = [.. wiring.Edges.Select(edge => EdgeOf(boat, edge, mayOpen)), .. boat.All<ElectricLoad>().Select(LoadEdge)],
            Sources = [.. boat.All<Part>().Select(IsolationSources.Of).OfType<IsolationSource>()],
            Feeds = [.. boat.All<Part>().SelectMany(part => IsolationSources.FeedsOf(part))],
        };
        return input with { GroundedNodes = [.. ReferenceNodes.Of(boat, wiring).Where(NodesOf(input).Contains)] };
    }

    private static HashSet<string> NodesOf(IsolationInput input) =>
    [
        .. input.Edges.SelectMany(edge => new[] { edge.A, edge.B }),
        .. input.Sources.SelectMany(source => source.PoleNodes),
        .. input.Feeds.SelectMany(feed => new[] { feed.InputNode, feed.OutputNode }),
    ];

    /// <summary>The nodes a thing brings to the wiring: a part's terminals, the terminals at a cable's or link's ends.</summary>
    public static ImmutableArray<string> NodesOf(Thing thing) => thing switch
    {
        Part part => [.. part.TerminalNames.Select(name => part.At(name).ToString())],
        Cable cable => [.. cable.Cores.SelectMany(core => new[] { core.From.ToString(), core.To.ToString() }).Distinct(StringComparer.Ordinal)],
        Link link => [.. new[] { link.From.ToString(), link.To.ToString() }.Distinct(StringComparer.Ordinal)],
        _ => [],
    };

    private static IsolationEdge LoadEdge(ElectricLoad load)
    {
        PolePair poles = Poles.Taking(load)!;
        return new IsolationEdge(load.Id, poles.Plus, poles.Minus);
    }

    private static IsolationEdge EdgeOf(BoatModel boat, WiringEdge edge, Func<string, bool> mayOpen) =>
        new(edge.Id, edge.A, edge.B, mayOpen(edge.Owner.Id) ? OpeningOf(boat, edge) : null);

    private static EdgeOpening? OpeningOf(BoatModel boat, WiringEdge edge) => edge.Owner switch
    {
        IsolatorSwitch { IsIsolator: true } or Changeover => Opening(edge.Owner.Id, OpeningMeans.Isolator),
        Protection { Means: ProtectionMeans.Breaker } => Opening(edge.Owner.Id, OpeningMeans.Breaker),
        Protection => Opening(edge.Owner.Id, OpeningMeans.PullFuse),
        PlugAndSocket => Opening(edge.Owner.Id, OpeningMeans.Unplug),
        Cable when edge.Kind == WiringEdgeKind.Joint && IsPost(boat, edge) => Opening(edge.Id, OpeningMeans.LiftBatteryLead),
        Link when IsPost(boat, edge) => Opening(edge.Id, OpeningMeans.LiftBatteryLead),
        _ => null,
    };

    private static EdgeOpening Opening(string device, OpeningMeans means) => new(device, means, OpeningCosts.Of(means));

    private static bool IsPost(BoatModel boat, WiringEdge edge) =>
        boat.Find<BatteryBank>(ElementIds.ThingOf(edge.A)) is not null || boat.Find<BatteryBank>(ElementIds.ThingOf(edge.B)) is not null;
}
