using System.Collections.Immutable;
using Orlop.Boat;
using Orlop.Boat.Things;
using Orlop.Boat.Topology;
using Orlop.Boat.Values;
using Orlop.Electrics.Isolation;
using Orlop.Review.Isolation;
using Orlop.Work.Scope;

namespace Orlop.Work.Steps;

/// <summary>A part that was there before and is touched, or at which what lies behind an opening is proved dead.</summary>
/// <param name="PartId">The part.</param>
/// <param name="Nodes">Its touched nodes, and those that prove what lies behind an opening.</param>
/// <param name="StaysLive">Nothing of it can be proved dead.</param>
/// <param name="Points">The readings that prove it; none where it stays live.</param>
internal sealed record PartProofs(string PartId, ImmutableArray<string> Nodes, bool StaysLive, ImmutableArray<ProvingPoint> Points)
{
    /// <summary>The parts in the order of the alteration, then those that only what lies behind an opening asks for; a part of which only the reference is touched is left out.</summary>
    public static ImmutableArray<PartProofs> Of(PackScope scope, WorkIsolation isolation, IsolationResult plan)
    {
        string? reference = Reference(isolation.Boat)?.ToString();
        HashSet<string> live = [.. plan.CannotBeMadeDead.Select(node => node.Node)];
        ImmutableArray<(string Id, ImmutableArray<string> Nodes)> touched = [.. isolation.Touched.Where(part => part.Nodes.Any(node => node != reference))];
        HashSet<string> ids = [.. touched.Select(part => part.Id)];
        ILookup<string, string> laid = (isolation.Laid?.Together() ?? []).SelectMany(points => points.Select(node => (Part: PartFor(points), Node: node))).ToLookup(point => point.Part, point => point.Node);
        return [.. touched.Select(OfPart), .. laid.Where(part => !ids.Contains(part.Key)).Select(part => OfPart((part.Key, [])))];

        string PartFor(ImmutableArray<string> points) => points.Select(ElementIds.ThingOf).OrderByDescending(ids.Contains).First();

        PartProofs OfPart((string Id, ImmutableArray<string> Nodes) part)
        {
            ImmutableArray<string> behind = [.. laid[part.Id].Except(part.Nodes)];
            HashSet<string> own = [.. part.Nodes.Where(node => node != reference && !live.Contains(node)), .. behind];
            bool staysLive = scope.Whole.Find(part.Id) is BatteryBank || own.Count == 0;
            IsolationResult here = plan with
            {
                Proofs = [.. plan.Proofs.Where(proof => own.Contains(proof.Node) && (proof.OtherNode is null || own.Contains(proof.OtherNode))), .. behind.Select(node => new DeadProof(node, null))],
            };
            return new PartProofs(part.Id, [.. part.Nodes, .. behind], staysLive, staysLive ? [] : ProvingPoints.Of(isolation.Boat, scope.WholeWiring, here, isolation.MinusFirst));
        }
    }

    /// <summary>Where the probes go: "Main switch, out to Main minus".</summary>
    public static string Between(PackScope scope, WorkIsolation isolation, ProvingPoint proof) =>
        $"{scope.Words.Node(proof.Node)} to {(proof.OtherNode is { } other ? scope.Words.Node(other) : Reference(isolation.Boat) is { } bar ? scope.Words.At(bar) : "the hull, on bright metal")}";

    /// <summary>The same two points of the wiring; null where the hull is meant and nothing is bonded to it.</summary>
    public static (string Node, string OtherNode)? At(WorkIsolation isolation, ProvingPoint proof) =>
        (proof.OtherNode ?? Reference(isolation.Boat)?.ToString()) is { } other ? (proof.Node, other) : null;

    /// <summary>
    /// " A long lead is needed: …" where the two points are not within the reach of two probes, and the nearer point that metal joins to the reference where there is one; empty where they are near.
    /// </summary>
    public static string Reach(PackScope scope, WorkIsolation isolation, ProvingPoint proof)
    {
        string? other = proof.OtherNode ?? Reference(isolation.Boat)?.ToString();
        if (other is null || scope.Words.LongLead(proof.Node, other) is not { Length: > 0 } lead)
        {
            return "";
        }

        // With a battery's minus off, its post is the only point that tells; else every bar that metal joins to the reference does.
        string? nearer = proof.OtherNode is not null || !isolation.MinusFirst.IsEmpty ? null
            : scope.Words.NearerTo(proof.Node, other, JoinedByMetal(scope.WholeWiring, other).Where(node => isolation.Boat.Find<Busbar>(ElementIds.ThingOf(node)) is not null));
        return nearer is null ? lead : $"{lead} Nearer, and joined to it by metal: {scope.Words.Located(ElementIds.ThingOf(nearer))}; use the same one before and after.";
    }

    /// <summary>Metal alone joins the node to the plus post of a battery of the boat.</summary>
    public static bool IsOnPlusPost(BoatModel boat, string node)
    {
        HashSet<string> joined = JoinedByMetal(Wiring.Of(boat), node);
        return boat.All<BatteryBank>().Any(battery => Poles.Giving(battery) is { } poles && joined.Contains(poles.Plus));
    }

    /// <summary>What metal joins to a node, with nothing between that opens, itself among it.</summary>
    /// <param name="opened">Edges that are lifted meanwhile; null for none.</param>
    public static HashSet<string> JoinedByMetal(Wiring wiring, string from, IReadOnlySet<string>? opened = null)
    {
        HashSet<string> joined = new([from], StringComparer.Ordinal);
        Queue<string> open = new(joined);
        while (open.TryDequeue(out string? node))
        {
            foreach (string next in wiring.At(node).Where(edge => edge.Kind is WiringEdgeKind.Joint or WiringEdgeKind.Core or WiringEdgeKind.Link && opened?.Contains(edge.Id) != true).Select(edge => edge.Other(node)).Where(joined.Add))
            {
                open.Enqueue(next);
            }
        }

        return joined;
    }

    /// <summary>What a dead point is measured against: what is bonded to the hull, else a battery's minus; null where there is neither.</summary>
    public static Terminal? Reference(BoatModel boat) =>
        Bonds.Of(boat.All<Part>()).Concat(boat.All<BatteryBank>().Select(battery => battery.At(TerminalNames.Minus))).Cast<Terminal?>().FirstOrDefault();
}
