using System.Collections.Frozen;
using System.Collections.Immutable;
using Orlop.Boat;
using Orlop.Review.Findings;

namespace Orlop.Review.Mending;

/// <summary>
/// Finds changes that clear failing findings of the electrics: from stock first, then from the catalogue; the least to pay or the least mass. Every set is
/// judged by the true review. It adds nothing to any boat: what it gives is a proposal.
/// </summary>
public sealed class Mender
{
    private const int MostProposals = 5;
    private const int MostTried = 80;

    private readonly MendRequest _request;
    private readonly IProgress<MendProgress>? _progress;
    private readonly CancellationToken _token;
    private readonly MendJudge _judge;
    private readonly MendBench _bench;
    private readonly Dictionary<(string, string), Finding> _failing;
    private int _reviewed;

    private Mender(MendRequest request, IProgress<MendProgress>? progress, CancellationToken token)
    {
        (_request, _progress, _token) = (request, progress, token);
        _judge = new MendJudge(MendJudge.NewEngine(), request.Draft, token);
        _bench = new MendBench(request.Draft, request.Catalogue, request.Cut, request.Aim);
        _failing = _judge.Before
            .Where(finding => finding.Verdict == Verdict.Fails && (request.Only.IsEmpty || request.Only.Contains((finding.CheckId, finding.SubjectId))))
            .ToDictionary(finding => (finding.CheckId, finding.SubjectId));
    }

    /// <summary>Ids of the checks whose findings can be mended: those of the electrics.</summary>
    public static FrozenSet<string> CheckIds { get; } = MendJudge.NewEngine().Checks.Select(check => check.Id).ToFrozenSet(StringComparer.Ordinal);

    /// <summary>The least set that clears everything that is asked.</summary>
    /// <param name="progress">Told after each review; null for nobody.</param>
    /// <param name="token">Ends the search with what it has found.</param>
    /// <exception cref="OperationCanceledException">It was ended before the draft itself was reviewed.</exception>
    public static MendResult Find(MendRequest request, IProgress<MendProgress>? progress = null, CancellationToken token = default) =>
        new Mender(request, progress, token).Find();

    /// <summary>A few of the smallest changes that clear one finding, each alone, by rising weight; the least set where no single one does; empty where nothing does.</summary>
    public static ImmutableArray<MendSet> Proposals(MendRequest request, IProgress<MendProgress>? progress = null, CancellationToken token = default)
    {
        Mender mender = new(request, progress, token);
        ImmutableArray<MendSet> single = mender.Singles();
        return single.IsEmpty && mender.Find().Set is { } set ? [set] : single;
    }

    private MendResult Find()
    {
        List<Finding> targets = [.. _failing.Values], beyond = [];
        MendWants wants = new(_bench);
        foreach (Finding target in targets)
        {
            wants.Add(target);
        }

        wants.Follow();
        ImmutableArray<MendSlot> slots = wants.Slots();
        while (targets.Count > 0)
        {
            HashSet<(string, string)> keys = [.. targets.Select(target => (target.CheckId, target.SubjectId))];
            MendSearch search = new(ProblemOf(slots, keys), _request.MostReviewCount - _reviewed, _progress, _token);
            MendFound found = search.Find();
            _reviewed += search.JudgedCount;
            if (found.Hopeless is not { } hopeless || targets.Find(target => (target.CheckId, target.SubjectId) == hopeless.Key) is not { } stubborn)
            {
                return Told(found, slots, targets, beyond);
            }

            targets.Remove(stubborn);
            beyond.Add(stubborn);
        }

        return Told(null, slots, targets, beyond);
    }

    private MendProblem ProblemOf(ImmutableArray<MendSlot> slots, IReadOnlySet<(string, string)> targets) => new(
        slots,
        [.. slots.Select(slot => slot.Options.Select(option => MendWeight.Of(option, _request.Aim)).ToImmutableArray())],
        choice => _judge.Judge(BoatWith(slots, choice), targets),
        (objection, slot, other, had) => !_bench.IsRelated(objection, slot.ThingId) || MendRules.CannotHelp(objection, slot, other, had),
        choice => _bench.Shelf.Overdrawn(slots, choice));

    private BoatModel BoatWith(ImmutableArray<MendSlot> slots, ImmutableArray<int> choice) =>
        slots.Select((slot, at) => slot.Options[choice[at]]).Aggregate(_request.Draft, (boat, option) => option.Apply(boat));

    private MendResult Told(MendFound? found, ImmutableArray<MendSlot> slots, List<Finding> targets, List<Finding> beyond)
    {
        bool isFound = found is { Best.IsDefault: false };
        (ImmutableArray<int> best, bool isLess) = isFound ? Needed(slots, found!.Best, targets) : (default, false);
        double? least = found?.Bound?.MainIn(_request.Aim);
        return new MendResult
        {
            Outcome = isFound ? MendOutcome.Cleared : _failing.Count == 0 ? MendOutcome.NothingFails : found is { IsProved: false } ? MendOutcome.NotFound : MendOutcome.NotCleared,
            Aim = _request.Aim,
            Targets = [.. _failing.Values],
            Beyond = [.. beyond],
            Set = isFound ? SetOf(slots, best) : null,
            IsProved = found is { IsProved: true } && !isLess,
            LeastMoney = _request.Aim == MendAim.Cost && !isLess ? least : null,
            LeastKg = _request.Aim == MendAim.Mass && !isLess ? least : null,
            SlotCount = slots.Length,
            SetCount = slots.Aggregate(1.0, (count, slot) => count * slot.Options.Length),
            ReviewedCount = _reviewed,
        };
    }

    // A set that is not proved, or one that a rule of direction kept too big, may have a change too many: each is left away once and reviewed.
    private (ImmutableArray<int> Choice, bool IsLess) Needed(ImmutableArray<MendSlot> slots, ImmutableArray<int> best, List<Finding> targets)
    {
        HashSet<(string, string)> keys = [.. targets.Select(target => (target.CheckId, target.SubjectId))];
        ImmutableArray<int> needed = best;
        for (int slot = 0; slot < slots.Length && !_token.IsCancellationRequested; slot++)
        {
            int kept = Kept(slots[slot]);
            if (needed[slot] != kept && _judge.Judge(BoatWith(slots, needed.SetItem(slot, kept)), keys).IsEmpty)
            {
                needed = needed.SetItem(slot, kept);
            }
        }

        return (needed, !needed.SequenceEqual(best));
    }

    private static int Kept(MendSlot slot) => slot.Options.ToList().FindIndex(option => option.IsKept);

    private MendSet SetOf(ImmutableArray<MendSlot> slots, ImmutableArray<int> choice)
    {
        BoatModel boat = BoatWith(slots, choice);
        return new MendSet(
            [
                .. slots.Select((slot, at) => (slot.ThingId, Option: slot.Options[choice[at]])).Where(change => !change.Option.IsKept).Select(change => new MendChange(
                    change.ThingId, change.Option.What, change.Option.Cost, change.Option.Part?.Id,
                    change.Option.IsFromStock ? [.. _bench.Shelf.Of(change.Option.Part!).Select(item => item.Id)] : [])),
            ],
            boat, Counts(_judge.Before), Counts(_judge.Findings(boat)));
    }

    private static ImmutableDictionary<Verdict, int> Counts(IEnumerable<Finding> findings) =>
        findings.GroupBy(finding => finding.Verdict).ToImmutableDictionary(group => group.Key, group => group.Count());

    private ImmutableArray<MendSet> Singles()
    {
        MendWants wants = new(_bench);
        foreach (Finding target in _failing.Values)
        {
            wants.Add(target);
        }

        ImmutableArray<MendSlot> slots = wants.Slots();
        ImmutableArray<int> kept = [.. slots.Select(Kept)];
        HashSet<(string, string)> keys = [.. _failing.Keys];
        List<(MendWeight Weight, ImmutableArray<int> Choice)> all =
        [
            .. slots.SelectMany((slot, at) => slot.Options.Select((option, choice) => (option, choice)).Where(each => !each.option.IsKept)
                .Select(each => (MendWeight.Of(each.option, _request.Aim), kept.SetItem(at, each.choice)))).OrderBy(each => each.Item1),
        ];
        ImmutableArray<MendSet>.Builder good = ImmutableArray.CreateBuilder<MendSet>();
        foreach ((_, ImmutableArray<int> choice) in all.Take(MostTried))
        {
            if (_token.IsCancellationRequested || good.Count == MostProposals)
            {
                break;
            }

            if (_judge.Judge(BoatWith(slots, choice), keys).IsEmpty)
            {
                good.Add(SetOf(slots, choice));
            }

            _progress?.Report(new MendProgress(++_reviewed, Math.Min(MostTried, all.Count), good.Count > 0));
        }

        return good.ToImmutable();
    }
}
