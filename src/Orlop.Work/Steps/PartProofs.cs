using System.Collections.Immutable;
using Orlop.Boat;
using Orlop.Boat.Things;
using Orlop.Boat.Topology;
using Orlop.Boat.Values;
using Orlop.Electrics.Isolation;
using Orlop.Review.Isolation;
using Orlop.Work.Scope;

namespace Orlop.Work.Steps;

/// <summary>A part that was there before and is touched, and where it is proved dead.</summary>
/// <param name="PartId">The part.</param>
/// <param name="Nodes">Its touched nodes.</param>
/// <param name="StaysLive">Nothing of it can be proved dead.</param>
/// <param name="Points">The readings that prove it; none where it stays live.</param>
internal sealed record PartProofs(string PartId, ImmutableArray<string> Nodes, bool StaysLive, ImmutableArray<ProvingPoint> Points)
{
    /// <summary>The parts in the order of the alteration; a part of which only the reference is touched is left out.</summary>
    public static ImmutableArray<PartProofs> Of(PackScope scope, WorkIsolation isolation, IsolationResult plan)
    {
        string? reference = Reference(isolation.Boat)?.ToString();
        HashSet<string> live = [.. plan.CannotBeMadeDead.Select(node => node.Node)];
        return [.. isolation.Touched.Where(part => part.Nodes.Any(node => node != reference)).Select(OfPart)];

        PartProofs OfPart((string Id, ImmutableArray<string> Nodes) part)
        {
            HashSet<string> own = [.. part.Nodes.Where(node => node != reference && !live.Contains(node))];
            bool staysLive = scope.Whole.Find(part.Id) is BatteryBank || own.Count == 0;
            IsolationResult here = plan with { Proofs = [.. plan.Proofs.Where(proof => own.Contains(proof.Node) && (proof.OtherNode is null || own.Contains(proof.OtherNode)))] };
            return new PartProofs(part.Id, part.Nodes, staysLive, staysLive ? [] : ProvingPoints.Of(isolation.Boat, scope.WholeWiring, here, isolation.MinusFirst));
        }
    }

    /// <summary>Where the probes go: "Main switch, out to Main minus".</summary>
    public static string Between(PackScope scope, WorkIsolation isolation, ProvingPoint proof) =>
        $"{scope.Words.Node(proof.Node)} to {(proof.OtherNode is { } other ? scope.Words.Node(other) : Reference(isolation.Boat) is { } bar ? scope.Words.At(bar) : "the hull, on bright metal")}";

    private static Terminal? Reference(BoatModel boat) =>
        Bonds.Of(boat.All<Part>()).Concat(boat.All<BatteryBank>().Select(battery => battery.At(TerminalNames.Minus))).Cast<Terminal?>().FirstOrDefault();
}
