using System.Collections.Immutable;
using Orlop.Boat.Things;
using Orlop.Boat.Topology;
using Orlop.Boat.Values;
using Orlop.Presentation.Words;
using Orlop.Review.Findings;
using Orlop.Review.Isolation;
using Orlop.Work.Bring;
using Orlop.Work.Ends;
using Orlop.Work.Scope;

namespace Orlop.Work.Steps;

/// <summary>Steps that take out, fit, run, make off, test and connect. Every edit is built by exactly one of them.</summary>
internal sealed class BuildSteps(PackScope scope, WorkIsolation isolation, ImmutableArray<CableCut> cuts, ImmutableArray<CableEnd> ends)
{
    private readonly LiveBehind _behind = new(scope, isolation);

    public IEnumerable<WorkStep> All() =>
    [
        .. PlugSteps.Pull(scope, isolation),
        .. PanelSteps.Open(scope, _behind),
        .. scope.Of(ChangeKind.Remove).OrderByDescending(change => change.Thing is Cable).ThenByDescending(change => change.Thing is Link).Select(Remove),
        .. scope.Changes.Where(change => change.ReplacesCable).Select(TakeOutOldCable),
        .. scope.Of(ChangeKind.Fit, ChangeKind.Move, ChangeKind.Exchange).OrderByDescending(change => change.Thing is Gear).ThenByDescending(change => change.Thing is Way).Select(Fit),
        .. scope.Of(ChangeKind.Cable).Select(Run),
        .. scope.Of(ChangeKind.Cable, ChangeKind.Ends).Select(MakeOff),
        .. FreeEndTests.Of(scope, ends),
        .. scope.Of(ChangeKind.Cable, ChangeKind.Ends, ChangeKind.Link).OrderByDescending(NearestSource).Select(Connect),
        .. scope.Of(ChangeKind.Record).Select(Confirm),
    ];

    // By the core that ends farthest from any source: the minus of every circuit starts beside one.
    private int NearestSource(WorkChange change) => change.Thing is Cable { Cores.Count: > 0 } cable
        ? cable.Cores.Max(core => Math.Min(scope.StepsFrom(core.From.ToString()), scope.StepsFrom(core.To.ToString())))
        : IsolationPlans.NodesOf(change.Thing).Select(scope.StepsFrom).DefaultIfEmpty(0).Min();

    private static WorkStep Building(WorkChange change, string verb, StepKind kind, Sentence text) => new()
    {
        Key = $"{verb}:{change.Id}",
        Kind = kind,
        Text = text,
        About = [change.Id],
        Builds = [change.Id],
        BuiltOn = change.Edit.BuiltOn,
    };

    private WorkStep Remove(WorkChange change) => Building(change, "remove", StepKind.Remove, change.Thing is Cable or Link
        ? Sentence.Of($"Take off and take out: {change.Thing.Title}.")
        : Sentence.Of($"Take out {scope.Words.Located(change.Id)}.")) with
    {
        Details =
        [
            .. change.Thing is Cable ? new[] { Sentence.Of($"Mark each end before it comes off. Leave no dead tail connected to anything.") } : [],
            .. change.Thing is Cable or Link ? LiveNearby.AtNodes(scope, isolation, IsolationPlans.NodesOf(change.Thing)) : [],
            .. change.Thing is Cable cable ? _behind.Along(cable) : [],
        ],
        Cautions = [.. change.Thing is Cable laid ? _behind.CautionsAlong(laid) : [], .. Cautions.AtNodes(scope, isolation, IsolationPlans.NodesOf(change.Thing)), .. Cautions.InSpace(SpaceOf(change.Thing), false), .. Cautions.Lifting(change.Thing)],
        PeopleCount = Cautions.PeopleFor(change.Thing),
    };

    private WorkStep TakeOutOldCable(WorkChange change) => new()
    {
        Key = $"take-out:{change.Id}",
        Kind = StepKind.Remove,
        Text = Sentence.Of($"Take off and take out the old {PartWords.Small(change.Edit.Was!.Title)}; tie a draw wire to it if it runs where the new one will."),
        Details = [.. LiveNearby.AtNodes(scope, isolation, IsolationPlans.NodesOf(change.Edit.Was!)), .. _behind.Along((Cable)change.Edit.Was!)],
        Cautions = [.. _behind.CautionsAlong((Cable)change.Edit.Was!), .. Cautions.AtNodes(scope, isolation, IsolationPlans.NodesOf(change.Edit.Was))],
        About = [change.Id],
    };

    private WorkStep Fit(WorkChange change)
    {
        Thing thing = change.Thing;
        bool drills = thing is Way or Gear || change.Kind is ChangeKind.Fit or ChangeKind.Move;
        WorkStep step = change.Kind switch
        {
            ChangeKind.Move => Building(change, "move", StepKind.Fit, MoveWords(thing)),
            ChangeKind.Exchange => Building(change, "exchange", StepKind.Fit, Sentence.Of($"Exchange or set anew: {scope.Words.Located(thing.Id)}.")),
            _ when thing is Way => Building(change, "fit", StepKind.Fit, Sentence.Of($"Make the cable way {thing.Title}.")),
            _ => Building(change, "fit", StepKind.Fit, Sentence.Of($"Fit {scope.Words.Located(thing.Id)}.")),
        };
        return step with
        {
            Details =
            [
                .. change.Kind == ChangeKind.Move && thing is Part moved ? Leads.Reach(scope, moved) : [],
                .. FitDetails(change),
                // What was noted of the piece that goes says nothing of the one that comes.
                .. thing.Note is { Length: > 0 } note && !(change.Kind == ChangeKind.Exchange && note == change.Edit.Was?.Note) ? new[] { Sentence.Of($"{note}") } : [],
            ],
            Cautions =
            [
                .. change.Kind == ChangeKind.Fit ? thing is BatteryBank ? [Cautions.Battery] : [] : Cautions.AtNodes(scope, isolation, IsolationPlans.NodesOf(thing)),
                .. Cautions.InSpace(SpaceOf(thing), drills), .. Cautions.Lifting(thing),
            ],
            PeopleCount = Cautions.PeopleFor(thing),
        };
    }

    private ImmutableArray<Sentence> FitDetails(WorkChange change) =>
    [
        .. change.Thing is Part part && PartSpec.Of(scope, part) is { } spec ? new[] { Sentence.Of($"{spec}.") } : [],
        .. change.Thing switch
        {
            Protection { Means: ProtectionMeans.Fuse } device => FuseHolders.Words(scope, change, device),
            Protection device => [Sentence.Of($"{new Amount(device.RatedA.Value, "A")}. Leave it off.")],
            IsolatorSwitch { IsIsolator: true } => [Sentence.Of($"Leave it open.")],
            PlugAndSocket => [Sentence.Of($"Leave it apart.")],
            BatteryBank when scope.IsNewBattery(change.Id) => [Sentence.Of($"Cover both posts as soon as it stands; they stay covered until its leads go on (common practice, no source).")],
            _ => Array.Empty<Sentence>(),
        },
    ];

    private Sentence MoveWords(Thing thing)
    {
        Place? place = thing switch { Part part => part.Place, Gear gear => gear.Place, _ => null };
        string space = scope.Words.SpaceOf(thing.Id) is { } named ? PartWords.Small(named) : "space not given";
        return place is null
            ? Sentence.Of($"Move {thing.Title} to its new place: {space}.")
            : Sentence.Of($"Move {thing.Title} to its new place: {space}, {new Amount(place.XM, "M")} forward of the after perpendicular, {new Amount(Math.Abs(place.YM), "M")} to {(place.YM >= 0 ? "port" : "starboard")}, {new Amount(place.ZM, "M")} up.");
    }

    private Space? SpaceOf(Thing thing) => thing switch
    {
        Part { Space: { } space } => scope.Whole.Find<Space>(space),
        Gear { Space: { } space } => scope.Whole.Find<Space>(space),
        Way { Space: { } space } => scope.Whole.Find<Space>(space),
        _ => null,
    };

    private WorkStep Run(WorkChange change)
    {
        Cable cable = (Cable)change.Thing;
        ImmutableArray<CableCut> ofCable = [.. cuts.Where(cut => cut.CableId == cable.Id)];
        ImmutableArray<Space> spaces = [.. cable.Run.Select(leg => leg.Space ?? (leg.Way is null ? null : scope.Whole.Find<Way>(leg.Way)?.Space))
            .OfType<string>().Select(id => scope.Whole.Find<Space>(id)).OfType<Space>().Distinct()];
        bool passesGland = cable.Run.Any(leg => leg.Way is { } way && scope.Whole.Find<Way>(way)?.Means is WayKind.Gland or WayKind.Conduit) || Review.Ways.PassedHole.On(cable, scope.Whole).Any(hole => !hole.Hole.IsMade);
        return new WorkStep
        {
            Key = $"run:{cable.Id}",
            Kind = StepKind.Run,
            Text = Sentence.Of($"Cut and run {cable.Title}, {cable.Cores.Count} × {new Amount(cable.AreaMm2.Value, "Mm2")}."),
            Details =
            [
                .. ofCable.Select(CutWords),
                .. cable.Run.Count == 0 ? [] : new[] { Sentence.Of($"Way: {string.Join(" → ", cable.Run.Select(leg => scope.Words.Title(leg.Way ?? leg.Space ?? "not given")))}.") },
                Sentence.Of($"Label both ends before it goes in. Support every {new Amount(Tables.Allowances.ClipSpacingM, "M")}; no sharp edge, no tight bend; both cores side by side."),
                .. _behind.Along(cable),
            ],
            Cautions = [.. _behind.CautionsAlong(cable), .. spaces.SelectMany(space => Cautions.InSpace(space, passesGland)).Distinct()],
            About = [cable.Id],
            BuiltOn = change.Edit.BuiltOn,
        };
    }

    private static Sentence CutWords(CableCut cut) => cut.CutM is { } lengthM
        ? Sentence.Of($"Cut {new Amount(lengthM, "M")} for {cut.Title} (run {new Amount(cut.RunM ?? 0, "M")}).")
        : Sentence.Of($"{cut.Title}: length not known, measure the way first.");

    private WorkStep MakeOff(WorkChange change)
    {
        ImmutableArray<CableEnd> own = [.. ends.Where(end => end.CableId == change.Id && !end.IsKept)];
        return new WorkStep
        {
            Key = $"make-off:{change.Id}",
            Kind = StepKind.MakeOff,
            Text = Sentence.Of($"Make off the {(own.Length == 1 ? "end" : $"{own.Length} ends")} of {change.Thing.Title}, as the make-up list says."),
            Details = own.All(end => end.Means is null) ? [Sentence.Of($"{BringList.NotGiven}. Nothing is made off until it is known what goes on.")] : own.Any(end => end.Pull is not null)
                ? [Sentence.Of($"One test crimp first, from the same cable and terminal, pulled to its force. Then pull each crimp by hand, hard. No solder, no strand cut or left out; heat-shrink over the barrel.")]
                : [Sentence.Of($"No strand cut or left out. Pull each end by hand.")],
            About = [change.Id],
            Ends = [.. own.Select(end => end.Key)],
            BuiltOn = change.Edit.BuiltOn,
        };
    }

    private WorkStep Connect(WorkChange change)
    {
        ImmutableArray<CableEnd> own = [.. ends.Where(end => end.CableId == change.Id)];
        string[] live = [.. IsolationPlans.NodesOf(change.Thing).Where(StaysLive)];
        return Building(change, "connect", StepKind.Connect, change.Thing is Link link
            ? Sentence.Of($"Bolt on {link.Title}: {scope.Words.At(link.From)} to {scope.Words.At(link.To)}.")
            : Sentence.Of($"Connect {change.Thing.Title}, the end away from the source first.")) with
        {
            Details =
            [
                .. change.Thing is Link ? LinkWords(change.Thing) : own.OrderByDescending(end => scope.StepsFrom(end.At.ToString())).Select(Tighten),
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

    private Sentence Tighten(CableEnd end) => (end.Torque, end.IsTightened) switch
    {
        _ when scope.IsNewBattery(end.At.Part) => Sentence.Of($"{PartWords.CoreName(end.CoreId)}: not on its post yet. Cap it and tie it back until it is switched on."),
        _ when isolation.IsBareMinus(end.At.ToString()) => Sentence.Of($"{PartWords.CoreName(end.CoreId)}: {MinusSteps.NotYet}."),
        ({ IsMakers: true } torque, _) => Sentence.Of($"{PartWords.CoreName(end.CoreId)} to {end.Where}: {new Amount(torque.MostNm, "Nm")} ({torque.Connection}). Mark it."),
        ({ } torque, _) => Sentence.Of($"{PartWords.CoreName(end.CoreId)} to {end.Where}: {new Amount(torque.LeastNm, "Nm")} to {new Amount(torque.MostNm, "Nm")} ({torque.Connection}); the maker's figure goes first. Mark it."),
        (null, true) => Sentence.Of($"{PartWords.CoreName(end.CoreId)} to {end.Where}: maker's torque. Mark it."),
        _ when end.Means is null => Sentence.Of($"{PartWords.CoreName(end.CoreId)} to {end.Where}: kind of end not given. Say it before the visit; how it is made off and tightened follows from it."),
        _ => Sentence.Of($"{PartWords.CoreName(end.CoreId)} to {end.Where}: until it clicks or seats; pull to prove."),
    };

    private WorkStep Confirm(WorkChange change) => Building(change, "confirm", StepKind.Confirm,
        Sentence.Of($"Nothing to build: see on board that the new record of {scope.Words.Title(change.Id)} is right ({Wording.KindOf(change.Thing)})."));
}
