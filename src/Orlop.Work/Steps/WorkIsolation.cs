using System.Collections.Immutable;
using Orlop.Boat;
using Orlop.Boat.Things;
using Orlop.Boat.Topology;
using Orlop.Electrics.Isolation;
using Orlop.Review.Isolation;
using Orlop.Work.Scope;

namespace Orlop.Work.Steps;

/// <summary>
/// What is opened before an alteration is worked on. Planned on everything that is in the boat at any time of the work, with only those
/// devices that the alteration neither adds, exchanges nor takes out, so that the plan stays the same however far the work has come. The cables that lie where
/// the work opens, drills, screws or pulls are made dead with it (common practice, no source). What stays live is told of the boat as she stands when the last of it is opened: nothing of the work is fitted yet.
/// </summary>
internal sealed record WorkIsolation(IsolationResult? Result, ImmutableArray<string> Nodes)
{
    /// <summary>The parts that were there before and are touched, with their touched nodes, in the order of the alteration.</summary>
    public required ImmutableArray<(string PartId, ImmutableArray<string> Nodes)> Touched { get; init; }

    /// <summary>The solar controllers whose panels are covered meanwhile: those the plan asks for, and those the alteration itself fits or exchanges.</summary>
    public required ImmutableArray<Charger> Solar { get; init; }

    /// <summary>The batteries whose minus leads come off before the first plus lead, and before anything is done on one of their posts. What the alteration adds has no leads yet.</summary>
    public required ImmutableArray<BatteryBank> MinusFirst { get; init; }

    /// <summary>Where what lies behind an opening is proved dead; null where there is no plan.</summary>
    public required LaidProofs? Laid { get; init; }

    /// <summary>The boat that the plan was made on.</summary>
    public required BoatModel Boat { get; init; }

    public static WorkIsolation Of(PackScope scope)
    {
        HashSet<string> added = [.. scope.Changes.Where(change => change.IsAddition).Select(change => change.Id)];
        HashSet<string> changed = [.. scope.Changes.Where(change => change.Kind is not (ChangeKind.Record or ChangeKind.Move)).Select(change => change.Id)];
        BoatModel boat = scope.Whole.WithThings(scope.Whole.Things.Where(thing => !(added.Contains(thing.Id) && IsSource(thing) && scope.AsBuilt.Find(thing.Id) is null)));
        ImmutableArray<string> nodes =
        [
            .. scope.Changes.Where(change => change.Kind != ChangeKind.Record)
                .SelectMany(change => new[] { change.Edit.Was, change.Edit.Becomes }).OfType<Thing>()
                .SelectMany(thing => IsolationPlans.NodesOf(thing)).Distinct(StringComparer.Ordinal),
        ];
        Wiring wiring = Wiring.Of(boat);
        // The narrowest choice of devices that leaves no more of the parts that were there before live than a wider one would.
        Func<string, bool>[] choices = [id => !changed.Contains(id), id => !added.Contains(id) && !IsGone(scope, id), id => scope.AsBuilt.Find(id) is not null && !IsGone(scope, id)];
        IsolationResult? result = choices.Select(mayOpen => IsolationPlans.Plan(boat, wiring, nodes, mayOpen))
            .MinBy(plan => plan?.CannotBeMadeDead.Count(node => !added.Contains(ElementIds.ThingOf(node.Node))));
        result = result is null ? null : DeadBehind.Widen(scope, boat, wiring, result, choices[0]);
        ImmutableArray<BatteryBank> bare = result is null ? [] : [.. MinusLeads.Of(boat, wiring, result).Concat(WorkedMinus(boat, wiring, result, nodes)).Where(bank => !scope.IsNewBattery(bank.Id)).DistinctBy(bank => bank.Id)];
        result = result is null ? null : AsSheStands(scope, nodes, result, bare);
        return new WorkIsolation(result, nodes)
        {
            Boat = boat,
            Laid = result is null ? null : LaidProofs.Of(scope, result, nodes.Where(node => !added.Contains(ElementIds.ThingOf(node)))),
            Solar = result is null ? [] : [.. PanelsToCover.Of(boat, wiring, result, bare).Concat(OwnSolar(scope)).DistinctBy(charger => charger.Id)],
            MinusFirst = bare,
            Touched = [.. nodes.GroupBy(ElementIds.ThingOf).Where(part => !added.Contains(part.Key)).Select(part => (part.Key, part.ToImmutableArray()))],
        };
    }

    /// <summary>The node is the minus post of a battery whose minus leads are off.</summary>
    public bool IsBareMinus(string node) => MinusFirst.Any(bank => Poles.Giving(bank)?.Minus == node);

    /// <summary>The plan itself lifts a minus lead of the battery.</summary>
    public bool LiftsMinus(BatteryBank bank) => Result is { } plan && Wiring.Of(Boat).At(Poles.Giving(bank)!.Minus).Any(lead => plan.Openings.Any(opening => opening.EdgeIds.Contains(lead.Id)));

    // What the work fits is not there yet when the last thing is opened, and the minus leads that come off are off.
    private static IsolationResult AsSheStands(PackScope scope, ImmutableArray<string> nodes, IsolationResult plan, ImmutableArray<BatteryBank> bare)
    {
        Wiring wiring = scope.WiringBefore;
        return IsolationPlans.CarriedOut(scope.Before, wiring, nodes, plan, bare.SelectMany(bank => wiring.At(Poles.Giving(bank)!.Minus)).Select(lead => lead.Id));
    }

    // A lead goes onto or comes off the minus post itself, and the plan does not lift it anyhow.
    private static IEnumerable<BatteryBank> WorkedMinus(BoatModel boat, Wiring wiring, IsolationResult plan, ImmutableArray<string> nodes)
    {
        HashSet<string> opened = [.. plan.Openings.SelectMany(opening => opening.EdgeIds)];
        return boat.All<BatteryBank>().Where(bank => Poles.Giving(bank) is { } poles && nodes.Contains(poles.Minus) && !wiring.At(poles.Minus).Any(lead => opened.Contains(lead.Id)));
    }

    private static IEnumerable<Charger> OwnSolar(PackScope scope) =>
        scope.Of(ChangeKind.Fit, ChangeKind.Exchange, ChangeKind.Remove).Select(change => change.Thing).OfType<Charger>().Where(charger => charger.Drive == ChargerDrive.Sun);

    private static bool IsGone(PackScope scope, string id) => scope.Changes.Any(change => change.Id == id && change.Edit.Becomes is null);

    private static bool IsSource(Thing thing) => thing is BatteryBank or Charger or ShoreInlet;
}
