using System.Collections.Immutable;
using Orlop.Boat.Things;
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
    private readonly ConnectSteps _connect = new(scope, isolation, ends);

    public IEnumerable<WorkStep> All() =>
    [
        .. PlugSteps.Pull(scope, isolation),
        .. PanelSteps.Open(scope, _behind),
        .. scope.Of(ChangeKind.Remove).OrderByDescending(change => change.Thing is Cable).ThenByDescending(change => change.Thing is Link).Select(Remove),
        .. scope.Changes.Where(change => change.ReplacesCable).Select(TakeOutOldCable),
        .. DeviceMounts.Remounted(scope).Select(TakeOutOldDevice),
        .. scope.Of(ChangeKind.Fit, ChangeKind.Move, ChangeKind.Exchange).OrderByDescending(change => change.Thing is Gear).ThenByDescending(change => change.Thing is Way).Select(Fit),
        .. scope.Of(ChangeKind.Cable).Select(Run),
        .. scope.Of(ChangeKind.Cable, ChangeKind.Ends).Concat(Remade).Select(MakeOff),
        .. FreeEndTests.Of(scope, ends),
        .. scope.Of(ChangeKind.Cable, ChangeKind.Ends, ChangeKind.Link).Concat(Remade).OrderByDescending(NearestSource).Select(_connect.Of),
        .. scope.Of(ChangeKind.Record).Select(Confirm),
    ];

    // Exchanged devices on which leads that stay get new ends.
    private IEnumerable<WorkChange> Remade => DeviceMounts.Remounted(scope).Where(change => ends.Any(end => end.ForDevice == change.Id));

    // By the core that ends farthest from any source: the minus of every circuit starts beside one.
    private int NearestSource(WorkChange change) => change.Thing is Cable { Cores.Count: > 0 } cable
        ? cable.Cores.Max(core => Math.Min(scope.StepsFrom(core.From.ToString()), scope.StepsFrom(core.To.ToString())))
        : IsolationPlans.NodesOf(change.Thing).Select(scope.StepsFrom).DefaultIfEmpty(0).Min();

    internal static WorkStep Building(WorkChange change, string verb, StepKind kind, Sentence text) => new()
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
        Cautions = [.. change.Thing is Cable laid ? _behind.CautionsAlong(laid) : [], .. Cautions.AtNodes(scope, isolation, IsolationPlans.NodesOf(change.Thing)), .. Cautions.InSpace(SpaceOf(change.Thing), false), .. Lifts.Caution(change.Thing)],
        PeopleCount = Lifts.PeopleFor(change.Thing),
        IsMassUntold = Lifts.IsUntold(change.Thing),
        IsByGear = Lifts.NeedsGear(change.Thing),
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

    private WorkStep TakeOutOldDevice(WorkChange change)
    {
        ImmutableArray<string> nodes = IsolationPlans.NodesOf(change.Edit.Was!);
        return new WorkStep
        {
            Key = $"take-out:{change.Id}",
            Kind = StepKind.Remove,
            Text = DeviceMounts.TakenOut(change),
            Details = [Sentence.Of($"Mark each lead with its terminal before it comes off, and cap it: {DeviceMounts.Leads(scope, change)}."), .. LiveNearby.AtNodes(scope, isolation, nodes)],
            Cautions = [.. Cautions.AtNodes(scope, isolation, nodes)],
            About = [change.Id],
            BuiltOn = change.Edit.BuiltOn,
        };
    }

    private WorkStep Fit(WorkChange change)
    {
        Thing thing = change.Thing;
        bool drills = thing is Way or Gear || change.Kind is ChangeKind.Fit or ChangeKind.Move;
        WorkStep step = change.Kind switch
        {
            ChangeKind.Move => Building(change, "move", StepKind.Fit, FitPlaces.Moved(scope, thing)),
            ChangeKind.Exchange => Building(change, "exchange", StepKind.Fit, DeviceMounts.Exchanged(scope, change)),
            _ when thing is Way => Building(change, "fit", StepKind.Fit, Sentence.Of($"Make the cable way {thing.Title}.")),
            _ => Building(change, "fit", StepKind.Fit, Sentence.Of($"Fit {scope.Words.Located(thing.Id)}.")),
        };
        return step with
        {
            Details =
            [
                .. change.Kind == ChangeKind.Move && thing is Part moved ? Leads.Reach(scope, moved) : [],
                .. change.Kind == ChangeKind.Move ? [] : FitPlaces.Words(thing),
                .. FitDetails(change),
                // What was noted of the piece that goes says nothing of the one that comes.
                .. thing.Note is { Length: > 0 } note && !(change.Kind == ChangeKind.Exchange && note == change.Edit.Was?.Note) ? new[] { Sentence.Of($"{note}") } : [],
            ],
            Cautions =
            [
                .. change.Kind == ChangeKind.Fit ? thing is BatteryBank ? [Cautions.Battery] : [] : Cautions.AtNodes(scope, isolation, IsolationPlans.NodesOf(thing)),
                .. Cautions.InSpace(SpaceOf(thing), drills), .. Lifts.Caution(thing),
            ],
            PeopleCount = Lifts.PeopleFor(thing),
            IsMassUntold = Lifts.IsUntold(thing),
            IsByGear = Lifts.NeedsGear(thing),
        };
    }

    private ImmutableArray<Sentence> FitDetails(WorkChange change) =>
    [
        .. change.Thing is Part part && PartSpec.Of(scope, part) is { } spec ? new[] { Sentence.Of($"{spec}.") } : [],
        .. change.Thing switch
        {
            Protection { Means: ProtectionMeans.Fuse } device => DeviceMounts.Words(scope, change, device),
            Protection device => DeviceMounts.PlaceWords(scope, change, device),
            IsolatorSwitch { IsIsolator: true } => [Sentence.Of($"Leave it open.")],
            PlugAndSocket => [Sentence.Of($"Leave it apart.")],
            BatteryBank when scope.IsNewBattery(change.Id) => [Sentence.Of($"Cover both posts as soon as it stands; they stay covered until its leads go on (common practice, no source).")],
            _ => Array.Empty<Sentence>(),
        },
    ];

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
        ? Sentence.Of($"Cut {new Amount(lengthM, "M")} for {cut.Title}, {CableLengthWords.Cut}; {new Amount(cut.RunM ?? 0, "M")} {CableLengthWords.Laid}.")
        : Sentence.Of($"{cut.Title}: length not known, measure the way first.");

    private WorkStep MakeOff(WorkChange change)
    {
        ImmutableArray<CableEnd> own = [.. ends.Where(end => end.With == change.Id && !end.IsKept)];
        return new WorkStep
        {
            Key = $"make-off:{change.Id}",
            Kind = StepKind.MakeOff,
            Text = change.Thing is Cable ? Sentence.Of($"Make off the {(own.Length == 1 ? "end" : $"{own.Length} ends")} of {change.Thing.Title}, as the make-up list says.") : Sentence.Of($"Cut off the old ends of the leads on {change.Thing.Title} and make off the {own.Length} anew, as the make-up list says."),
            Details =
            [
                own.All(end => end.Means is null) ? Sentence.Of($"{BringList.NotGiven}. Nothing is made off until it is known what goes on.")
                    : own.Any(end => end.Pull is not null)
                        ? Sentence.Of($"One test crimp first, from the same cable and terminal, pulled to its force. Then pull each crimp by hand, hard. No solder, no strand cut or left out{Barrels(own)}.")
                        : Sentence.Of($"No strand cut or left out. Pull each end by hand."),
                .. own.Any(end => end.Means is TerminationMeans.Butt) ? [Sentence.Of($"A butt gets its first crimp here; its heat-shrink goes onto the conductor before it, and is shrunk once the second is made at connecting.")] : Array.Empty<Sentence>(),
                .. own.Where(end => end.IsThreadUntold).Select(end => end.Where).Distinct(StringComparer.Ordinal).Select(where => Sentence.Of($"{where}: the thread of its stud is told neither there nor by another ring on it. Look before the terminal is chosen.")),
            ],
            About = [change.Id],
            Ends = [.. own.Select(end => end.Key)],
            BuiltOn = change.Edit.BuiltOn,
        };
    }

    // A contact must go into its housing, and a butt is shrunk once both its sides are crimped.
    private static string Barrels(ImmutableArray<CableEnd> own) => !own.Any(end => end.IsSleeved && end.Means is not TerminationMeans.Butt) ? ""
        : $"; heat-shrink over the barrel{(own.Any(end => end.Means is TerminationMeans.Contact) ? ", none over a contact that goes into a housing" : "")}";

    private WorkStep Confirm(WorkChange change) => Building(change, "confirm", StepKind.Confirm,
        Sentence.Of($"Nothing to build: see on board that the new record of {scope.Words.Title(change.Id)} is right ({Wording.KindOf(change.Thing)})."));
}
