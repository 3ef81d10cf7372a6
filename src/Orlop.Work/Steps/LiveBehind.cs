using System.Collections.Immutable;
using Orlop.Boat.Things;
using Orlop.Boat.Topology;
using Orlop.Electrics.Isolation;
using Orlop.Presentation.Words;
using Orlop.Review.Findings;
using Orlop.Review.Isolation;
using Orlop.Work.Scope;

namespace Orlop.Work.Steps;

/// <summary>
/// What a step says that opens, drills, screws or pulls where other cables lie: each cable of the boat as she stands, its nominal voltage, and whether what the pack opens makes it
/// dead. What is still to come is not among them. Only what is drawn can be named.
/// </summary>
internal sealed class LiveBehind
{
    private readonly PackScope _scope;
    private readonly Wiring _wiring;
    private readonly LaidProofs? _proofs;
    private readonly HashSet<string> _live;
    private readonly HashSet<string> _lit;
    private readonly HashSet<string> _opened;
    private readonly HashSet<string> _takenOut;
    private readonly Func<IEnumerable<string>, IsolationResult?> _withOpened;
    private readonly Func<IEnumerable<string>, IsolationResult?> _withAny;
    private readonly Dictionary<string, Said> _said = new(StringComparer.Ordinal);

    public LiveBehind(PackScope scope, WorkIsolation isolation)
    {
        _scope = scope;
        _wiring = scope.WiringBefore;
        _proofs = isolation.Laid;
        ILookup<bool, StaysLive> sources = (isolation.Result?.StaysLive ?? []).ToLookup(IsolationPlans.IsLitByPanels);
        (_live, _lit) = ([.. sources[false].SelectMany(source => source.Nodes)], [.. sources[true].SelectMany(source => source.Nodes)]);
        _opened = [.. (isolation.Result?.Openings ?? []).Select(opening => opening.Id)];
        _takenOut = [.. scope.Changes.Where(change => change.Kind == ChangeKind.Remove || change.ReplacesCable).Select(change => change.Id)];
        HashSet<string> owners = [.. _opened.Select(ElementIds.ThingOf)];
        _withOpened = IsolationPlans.Planner(scope.Before, _wiring, owners.Contains);
        _withAny = IsolationPlans.Planner(scope.Before, _wiring, _ => true);
    }

    /// <summary>What lies in some ways before anything of the work is done there, one line each.</summary>
    public IEnumerable<Sentence> In(IReadOnlySet<string> ways)
    {
        Cable[] laid = [.. LaidCables.In(_scope.Before, ways)];
        return laid.Length == 0
            ? [Sentence.Of($"Behind it no cable is drawn; whether one lies there cannot be told: look and feel first."), .. Unplaced()]
            : [.. laid.Select(cable => Sentence.Of($"Behind it now: {Line(cable)}")), .. Unplaced(), Sentence.Of($"{Prove}")];
    }

    /// <summary>The cautions for the same.</summary>
    public IEnumerable<Caution> CautionsIn(IReadOnlySet<string> ways) => CautionsOf(LaidCables.In(_scope.Before, ways));

    /// <summary>What lies beside a cable that is run or taken out: one line each where nothing had to be opened for it, else only what is live; the step that opened it has the rest.</summary>
    public IEnumerable<Sentence> Along(Cable cable)
    {
        if (cable.Run.Count == 0)
        {
            return [Sentence.Of($"Its way is not told: what lies beside it cannot be told. Follow it by eye first, and take what lies there as live.")];
        }

        HashSet<string> ways = [.. LaidCables.WaysOf(cable)];
        HashSet<string> open = [.. ways.Where(way => _scope.Whole.Find<Way>(way) is not { Opened: { } opened } || string.IsNullOrWhiteSpace(opened))];
        Cable[] all = [.. Beside(cable, ways)], inOpen = [.. Beside(cable, open)];
        return
        [
            .. inOpen.Select(other => Sentence.Of($"Beside it: {Line(other)}")),
            .. all.Except(inOpen).Where(other => Of(other).IsLive).Select(other => Sentence.Of($"Beside it, behind what was opened: {Line(other)}")),
        ];
    }

    /// <summary>The cautions for the same.</summary>
    public IEnumerable<Caution> CautionsAlong(Cable cable) => CautionsOf(Beside(cable, LaidCables.WaysOf(cable).ToHashSet(StringComparer.Ordinal)));

    private const string Prove = "Dead only once proved: each at its nearer end, before a drill, saw or screw goes in (common practice, no source).";

    private sealed record Said(string Words, bool IsLive, bool IsMains);

    private IEnumerable<Cable> Beside(Cable cable, HashSet<string> ways) => LaidCables.In(_scope.Before, ways).Where(other => other.Id != cable.Id && !_takenOut.Contains(other.Id));

    private IEnumerable<Sentence> Unplaced()
    {
        string[] unplaced = [.. LaidCables.Unplaced(_scope.Before).Select(cable => cable.Title)];
        if (unplaced.Length > 0)
        {
            yield return Sentence.Of($"Whether these lie here too cannot be told, as their ways are not: {string.Join("; ", unplaced)}. Take them as live.");
        }
    }

    private IEnumerable<Caution> CautionsOf(IEnumerable<Cable> cables)
    {
        Cable[] live = [.. cables.Where(cable => Of(cable).IsLive)];
        if (live.Length > 0)
        {
            yield return new Caution(CautionKind.StaysLive,
                $"Live, or not known to be dead, where you work: {string.Join("; ", live.Select(cable => cable.Title))}. Make each dead first, as its line says, and prove it; where that cannot be, no drill, saw, blade or screw near it, and no bare tool (common practice, no source).");
        }

        if (live.Any(cable => Of(cable).IsMains))
        {
            yield return Cautions.Mains;
        }
    }

    private string Line(Cable cable) => $"{cable.Title}, {Of(cable).Words}.";

    private Said Of(Cable cable) => _said.TryGetValue(cable.Id, out Said? said) ? said : _said[cable.Id] = Judge(cable);

    private Said Judge(Cable cable)
    {
        (double V, bool IsAc)? nominal = LaidCables.NominalOf(_scope.Before, _wiring, cable);
        string[] nodes = [.. LaidCables.NodesOf(cable)];
        (string words, bool isLive) = _proofs is null || nominal is null ? ("whether it is live cannot be told: take it as live", true)
            : nodes.Any(_live.Contains) ? ($"stays live: {MadeDeadBy(nodes)}", true)
            : nodes.Any(_lit.Contains) ? ("live if light reaches the panels: keep them covered", true)
            : DeadBy(nodes, _proofs.Of(cable));
        return new Said($"{LaidCables.WordsOf(nominal)}, {words}", isLive, nominal is { V: >= LiveBefore.LicensedFromV });
    }

    private (string Words, bool IsLive) DeadBy(string[] nodes, ImmutableArray<string>? points) => (_withOpened(nodes), points) switch
    {
        (not { Openings.IsEmpty: false }, _) => ("minus or earth, no voltage against the hull; not cut", false),
        ({ Openings: var openings }, { } at) => ($"dead by {Names(openings)}, proved at {SentenceText.Listed(at.Select(_scope.Words.Node))}", false),
        ({ Openings: var openings }, null) => ($"dead by {Names(openings)}, but nothing is drawn where a probe could prove it: take it as live. Bare one of its ends, each core against the others and the hull, before a tool goes near it", true),
    };

    // What is opened already does not make it dead by itself.
    private string MadeDeadBy(string[] nodes)
    {
        IsolationResult? plan = _withAny(nodes);
        Opening[] more = [.. (plan?.Openings ?? []).Where(opening => !_opened.Contains(opening.Id))];
        return plan is null || !plan.CannotBeMadeDead.IsEmpty || more.Length == 0 ? "nothing on board makes it dead" : $"made dead by {Names(more)}";
    }

    private string Names(IEnumerable<Opening> openings) => SentenceText.Listed(openings.Select(opening => LaidCables.NameOf(_scope, opening)));
}
