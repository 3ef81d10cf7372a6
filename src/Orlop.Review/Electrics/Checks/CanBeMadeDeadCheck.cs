using Orlop.Boat.Things;
using Orlop.Electrics.Isolation;
using Orlop.Review.Findings;
using static Orlop.Review.Electrics.FindingLines;

namespace Orlop.Review.Electrics.Checks;

/// <summary>Every part that someone works on can be made dead, and how.</summary>
public sealed class CanBeMadeDeadCheck : ICheck<ElectricsView>
{
    private const string Source = "common practice, no source";

    public CheckDescription Description { get; } = new(
        "can-be-made-dead",
        "It can be made dead for work",
        "What must be opened or stopped so that no source reaches a load, converter, inverter or bar. It holds with isolators, breakers, plugs and stopped sources; it is tight when a fuse must be pulled; it fails when only a lifted battery lead does it, or nothing.",
        []);

    public IEnumerable<Finding> Run(ElectricsView view) =>
        from found in view.PlansToMakeDead([.. view.Boat.All<Part>().Where(part => part is ElectricLoad or DcConverter or Inverter or Busbar { IsBonded: false })])
        where found.Part is not Busbar || found.Plan is not { Status: IsolationStatus.AlreadyDead }
        select Judge(view, found.Part, found.Plan);

    private Finding Judge(ElectricsView view, Part part, IsolationResult? found)
    {
        if (found is not { } plan)
        {
            return Unknown(Description, part.Id, null, Sentence.Of($"{part.Title}: no source or no wiring is known, so whether it can be made dead cannot be told"), [new FindingInput(part.Id, "id")]);
        }

        return new Finding
        {
            CheckId = Description.Id,
            SubjectId = part.Id,
            Verdict = VerdictOf(plan),
            Headline = HeadlineOf(view, part, plan),
            WorkingWhenAsked = () =>
            [
                .. plan.Openings.Select((opening, index) => new WorkingLine($"Step {index + 1}", HowText(view, opening), null, Source)),
                .. plan.StaysLive.Select(live => new WorkingLine("Stays live", $"{Title(view, live.SourceId)}: {live.Because}", null, "the wiring as drawn")),
                .. plan.CannotBeMadeDead.Select(node => new WorkingLine("Cannot be made dead", $"{node.Node}, by {Title(view, node.SourceId)}: {node.Because}", null, "the wiring as drawn")),
                new WorkingLine("Then", "prove it dead with a meter tried just before and just after; the plan is only as true as the wiring typed", null, Source),
            ],
            Inputs = [.. plan.Openings.Select(opening => new FindingInput(Orlop.Boat.Topology.ElementIds.ThingOf(opening.Id), opening.Means == OpeningMeans.Isolator ? "isIsolator" : "id"))],
            Caution = plan.Openings.Any(opening => opening.Means == OpeningMeans.LiftBatteryLead) ? Cautions.BatteryPost
                : part is Inverter or DcConverter ? Cautions.StoredCharge
                : part is ElectricLoad { IsAc: true } ? Cautions.MainsVoltage : null,
        };
    }

    private static Verdict VerdictOf(IsolationResult plan) => plan.Status switch
    {
        IsolationStatus.PartlyDead or IsolationStatus.CannotBeMadeDead => Verdict.Fails,
        IsolationStatus.AlreadyDead => Verdict.Unknown,
        _ when plan.Openings.Any(opening => opening.Means == OpeningMeans.LiftBatteryLead) => Verdict.Fails,
        _ when plan.Openings.Any(opening => opening.Means == OpeningMeans.PullFuse) => Verdict.Tight,
        _ => Verdict.Holds,
    };

    private static Sentence HeadlineOf(ElectricsView view, Part part, IsolationResult plan) => (plan.Status, VerdictOf(plan)) switch
    {
        (IsolationStatus.AlreadyDead, _) => Sentence.Of($"{part.Title}: no source reaches it as the wiring is typed, so how it is made dead cannot be told"),
        (IsolationStatus.PartlyDead or IsolationStatus.CannotBeMadeDead, _) => Sentence.Of($"{part.Title} cannot be made dead: nothing that can be opened stands between it and {Title(view, plan.CannotBeMadeDead[0].SourceId)}"),
        (_, Verdict.Fails) => Sentence.Of($"{part.Title} is made dead only by lifting a battery lead"),
        (_, Verdict.Tight) => Sentence.Of($"{part.Title} is made dead only by pulling a fuse"),
        _ => Sentence.Of($"{part.Title} is made dead in {plan.Openings.Length} {(plan.Openings.Length == 1 ? "step" : "steps")}"),
    };

    private static string HowText(ElectricsView view, Opening opening) => opening.Means switch
    {
        OpeningMeans.Isolator => $"open {Title(view, opening.Id)}",
        OpeningMeans.Breaker => $"open breaker {Title(view, opening.Id)}",
        OpeningMeans.Unplug => $"unplug {Title(view, opening.Id)}",
        OpeningMeans.PullFuse => $"pull fuse {Title(view, opening.Id)}",
        OpeningMeans.LiftBatteryLead => $"lift the battery lead {Title(view, opening.Id)}",
        _ => $"{Title(view, opening.Id)}: {opening.StopHow}",
    };

    private static string Title(ElectricsView view, string elementId)
    {
        string id = Orlop.Boat.Topology.ElementIds.ThingOf(elementId);
        return view.Boat.Find(id)?.Title ?? id;
    }
}
