using System.Collections.Immutable;
using Orlop.Boat.Things;
using Orlop.Boat.Topology;
using Orlop.Presentation.Words;
using Orlop.Review.Findings;
using Orlop.Review.Isolation;
using Orlop.Work.Ends;
using Orlop.Work.Scope;

namespace Orlop.Work.Steps;

/// <summary>Steps that connect: cables, bolted links, and the leads that stay on a device that is exchanged with its holder.</summary>
internal sealed class ConnectSteps(PackScope scope, WorkIsolation isolation, ImmutableArray<CableEnd> ends)
{
    public WorkStep Of(WorkChange change)
    {
        ImmutableArray<CableEnd> own = [.. ends.Where(end => end.With == change.Id)];
        string[] live = [.. IsolationPlans.NodesOf(change.Thing).Where(StaysLive)];
        return BuildSteps.Building(change, "connect", StepKind.Connect, change.Thing is Link link
            ? Sentence.Of($"Bolt on {link.Title}: {scope.Words.At(link.From)} to {scope.Words.At(link.To)}.")
            : change.Thing is Cable ? Sentence.Of($"Connect {change.Thing.Title}, the end away from the source first.")
            : Sentence.Of($"Connect the leads of {change.Thing.Title}, the end away from the source first: {DeviceMounts.Leads(scope, change)}.")) with
        {
            // A device is built where it is put in.
            Builds = change.Thing is Part ? [] : [change.Id],
            Details =
            [
                .. change.Thing is Link ? LinkWords(change.Thing) : own.OrderByDescending(end => scope.StepsFrom(end.At.ToString())).Select(Tighten),
                .. change.Thing is Part && DeviceMounts.LeadsOn(scope, change.Id).OfType<Boat.Things.Link>().Any() ? [Sentence.Of($"Its bolted links: faces bright and flat, nothing between them; tighten to the maker's torque and mark the nut.")] : Array.Empty<Sentence>(),
                .. live.Select(node => Sentence.Of($"{scope.Words.Node(node)} stays live: what is connected here is live from then on, as far as the first thing that is open. All that hangs on it is fitted, made off and tested before.")),
                .. LiveNearby.AtNodes(scope, isolation, IsolationPlans.NodesOf(change.Thing)),
            ],
            IsOntoLive = live.Length > 0,
            Cautions = [.. Cautions.AtNodes(scope, isolation, IsolationPlans.NodesOf(change.Thing))],
            Ends = [.. own.Select(end => end.Key)],
        };
    }

    // A battery's post, unless its leads go on later; else what the plan cannot make dead and metal alone joins to a plus post, as the near side of a fuse.
    private bool StaysLive(string node) => scope.Whole.Find(ElementIds.ThingOf(node)) is BatteryBank bank
        ? !scope.IsNewBattery(bank.Id) && !isolation.IsBareMinus(node)
        : isolation.Result?.CannotBeMadeDead.Any(point => point.Node == node) == true && PartProofs.IsOnPlusPost(scope.Before, node);

    private IEnumerable<Sentence> LinkWords(Thing link)
    {
        yield return Sentence.Of($"Faces bright and flat, nothing between them; tighten to the maker's torque and mark the nut.");
        foreach (string node in IsolationPlans.NodesOf(link).Where(isolation.IsBareMinus))
        {
            yield return Sentence.Of($"Its end at {scope.Words.Node(node)}: {MinusSteps.NotYet}.");
        }
    }

    // Of a cable that stays, which one it is, too.
    private string Named(CableEnd end) => end.ForDevice is null ? PartWords.CoreName(end.CoreId) : scope.Words.Element($"{end.CableId}.{end.CoreId}");

    private Sentence Tighten(CableEnd end) => (end.Torque, end.IsTightened) switch
    {
        _ when scope.IsNewBattery(end.At.Part) => Sentence.Of($"{Named(end)}: not on its post yet. Cap it and tie it back until it is switched on."),
        _ when isolation.IsBareMinus(end.At.ToString()) => Sentence.Of($"{Named(end)}: {MinusSteps.NotYet}."),
        ({ IsMakers: true } torque, _) => Sentence.Of($"{Named(end)} to {end.Where}: {new Amount(torque.MostNm, "Nm")} ({torque.Connection}). Mark it."),
        ({ } torque, _) => Sentence.Of($"{Named(end)} to {end.Where}: {new Amount(torque.LeastNm, "Nm")} to {new Amount(torque.MostNm, "Nm")} ({torque.Connection}); the maker's figure goes first. Mark it."),
        (null, true) => Sentence.Of($"{Named(end)} to {end.Where}: maker's torque. Mark it."),
        _ when end.Means is null => Sentence.Of($"{Named(end)} to {end.Where}: kind of end not given. Say it before the visit; how it is made off and tightened follows from it."),
        _ when end.Means is TerminationMeans.Butt => Sentence.Of($"{Named(end)} to {end.Where}: heat-shrink pushed back on the conductor first; crimp the other side of the butt onto the lead there, pull hard by hand, then shrink over both crimps."),
        _ => Sentence.Of($"{Named(end)} to {end.Where}: until it clicks or seats; pull to prove."),
    };
}
