using System.Collections.Immutable;
using Orlop.Boat;
using Orlop.Boat.Things;
using Orlop.Boat.Topology;
using Orlop.Electrics.Isolation;
using Orlop.Review.Isolation;
using Orlop.Work.Scope;

namespace Orlop.Work.Steps;

/// <summary>Widens a plan to the cables that lie where the work opens, drills, screws or pulls (common practice, no source).</summary>
internal static class DeadBehind
{
    /// <summary>The plan with what else is opened for them. Cables that light on the panels keeps live are planned apart: what else lies there is cut from the panels too.</summary>
    /// <param name="mayOpen">By the id of the thing.</param>
    public static IsolationResult Widen(PackScope scope, BoatModel boat, Wiring wiring, IsolationResult plan, Func<string, bool> mayOpen)
    {
        Func<IEnumerable<string>, IsolationResult?> planner = IsolationPlans.Planner(boat, wiring, mayOpen);
        ILookup<bool, string> nodes = LaidCables.In(scope.Before, LaidCables.Entered(scope))
            .SelectMany(cable => LaidCables.NodesOf(cable).Select(node => (Node: node, IsLit: IsLit(planner([node])))))
            .ToLookup(pair => pair.IsLit, pair => pair.Node);
        return new[] { planner(nodes[false]), planner(nodes[true]) }.OfType<IsolationResult>().Aggregate(plan, Joined);

        bool IsLit(IsolationResult? one) => one?.CannotBeMadeDead.Any(node => boat.Find<Charger>(node.SourceId) is { Drive: ChargerDrive.Sun }) == true;
    }

    // Sources are stopped first and battery leads come off last, as in each of the two.
    private static IsolationResult Joined(IsolationResult plan, IsolationResult more)
    {
        ImmutableArray<Opening> openings = [.. plan.Openings.Concat(more.Openings).DistinctBy(opening => opening.Id).OrderBy(opening => opening.Means switch { null => 0, OpeningMeans.LiftBatteryLead => 2, _ => 1 })];
        return plan with
        {
            Status = plan.Status == IsolationStatus.AlreadyDead && !openings.IsEmpty ? IsolationStatus.CanBeMadeDead : plan.Status,
            Openings = openings,
            Cost = openings.Sum(opening => (long)opening.Cost),
            CannotBeMadeDead = [.. plan.CannotBeMadeDead, .. more.CannotBeMadeDead],
        };
    }
}
