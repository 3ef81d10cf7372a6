using System.Collections.Immutable;
using Orlop.Boat;
using Orlop.Boat.Things;
using Orlop.Boat.Topology;
using Orlop.Electrics.Isolation;

namespace Orlop.Review.Isolation;

/// <summary>
/// The batteries whose minus leads come off before a plan lifts a lead of their plus post or before that post is worked on live, and go back after it: with the minus on, a spanner from the plus
/// post to metal is a short that nothing opens (common practice, no source).
/// </summary>
public static class MinusLeads
{
    /// <summary>The banks, first those whose lead the plan lifts, in its order; none where it lifts no plus lead and no plus post is worked on.</summary>
    public static ImmutableArray<BatteryBank> Of(BoatModel boat, Wiring wiring, IsolationResult plan)
    {
        ArgumentNullException.ThrowIfNull(boat);
        ArgumentNullException.ThrowIfNull(wiring);
        ArgumentNullException.ThrowIfNull(plan);
        HashSet<string> opened = [.. plan.Openings.SelectMany(opening => opening.EdgeIds)];
        IEnumerable<string> lifted = plan.Openings.Where(opening => opening.Means == OpeningMeans.LiftBatteryLead).SelectMany(opening => opening.EdgeIds)
            .Select(wiring.Find).OfType<WiringEdge>().SelectMany(edge => new[] { edge.A, edge.B });
        return
        [
            .. from node in lifted.Concat(plan.CannotBeMadeDead.Select(node => node.Node))
               from bank in boat.All<BatteryBank>()
               let poles = Poles.Giving(bank)
               where poles is not null && node == poles.Plus && !wiring.At(poles.Minus).Any(lead => opened.Contains(lead.Id))
               group bank by bank.Id into one
               select one.First(),
        ];
    }

    /// <summary>Where, among things that are opened or closed in this order, the minus leads come: before the first plus lead that is lifted.</summary>
    public static int PlaceBefore(IReadOnlyList<Opening> openings) =>
        openings.TakeWhile(opening => opening.Means != OpeningMeans.LiftBatteryLead).Count();

    /// <summary>Where they go back: after the last plus lead.</summary>
    public static int PlaceAfter(IReadOnlyList<Opening> closings) =>
        closings.Count - closings.Reverse().TakeWhile(opening => opening.Means != OpeningMeans.LiftBatteryLead).Count();
}
