using System.Collections.Frozen;
using System.Collections.Immutable;
using Orlop.Boat;
using Orlop.Review.Findings;

namespace Orlop.Review.Mending;

/// <summary>
/// Finds changes that clear findings of the electrics that fail, or are tight where that is asked: from stock first, then from the catalogue; the least to pay or the least mass. Every set is
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
    private readonly Dictionary<(string, string), Finding> _toClear;
    private readonly Dictionary<string, ImmutableArray<Finding>> _troubles = new(StringComparer.Ordinal);
    private readonly List<MendConflict> _conflicts = [];
    private int _reviewed;

    private Mender(MendRequest request, IProgress<MendProgress>? progress, CancellationToken token)
    {
        (_request, _progress, _token) = (request, progress, token);
        _judge = new MendJudge(MendJudge.NewEngine(), request.Draft, token);
        _bench = new MendBench(request.Draft, request.Catalogue, request.Cut, request.Aim);
        _toClear = _judge.Before
            .Where(finding => (finding.Verdict == Verdict.Fails || (request.IsTightToo && finding.Verdict == Verdict.Tight)) && (request.Only.IsEmpty || request.Only.Contains((finding.CheckId, finding.SubjectId))))
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
    public static MendProposals Proposals(MendRequest request, IProgress<MendProgress>? progress = null, CancellationToken token = default)
    {
        Mender mender = new(request, progress, token);
        ImmutableArray<MendSet> single = mender.Singles();
        return single.IsEmpty && mender.Find() is var whole ? new MendProposals(whole.Set is { } set ? [set] : [], whole) : new MendProposals(single, null);
    }

    private MendResult Find()
    {
        MendWants wants = new(_bench);
        MendTargets targets = new(_toClear.Values, _request, wants.Add);
        wants.Follow();
        ImmutableArray<MendSlot> slots = wants.Slots();
        while (targets.Any)
        {
            MendAsked asked = targets.Asked();
            MendFound found = new MendSearch(ProblemOf(slots, asked), _request.MostReviewCount - _reviewed, TellingFrom(_reviewed), _token).Find();
            _reviewed = _troubles.Count;
            if (found is not { IsProved: true, Best.IsDefault: true })
            {
                return Told(found, slots, asked, targets.Beyond);
            }

            if (!targets.Relax(found.Hopeless))
            {
                _conflicts.Add(targets.GiveUp([.. _troubles.Values.Select(troubles => _judge.Judge(troubles, asked))]));
            }
        }

        return Told(null, slots, targets.Asked(), targets.Beyond);
    }

    private MendTelling? TellingFrom(int reviewedCount) => _progress is null ? null : (judged, best, bound) => _progress.Report(
        new MendProgress(reviewedCount + judged, _request.MostReviewCount, best is not null) { Aim = _request.Aim, Most = best?.MainIn(_request.Aim), Least = bound.MainIn(_request.Aim) });

    private MendProblem ProblemOf(ImmutableArray<MendSlot> slots, MendAsked asked) => new(
        slots,
        [.. slots.Select(slot => slot.Options.Select(option => MendWeight.Of(option, _request.Aim)).ToImmutableArray())],
        choice => Against(slots, choice, asked),
        (objection, slot, other, had) => !(_bench.IsRelated(objection, slot.ThingId) || slot.AlsoIds.Any(id => _bench.IsRelated(objection, id))) || MendRules.CannotHelp(objection, slot, other, had),
        choice => _bench.Shelf.Overdrawn(slots, choice))
    {
        Apart = MendApart.Of(slots),
    };

    // A set that was reviewed before something was given up is not reviewed again.
    private ImmutableArray<Objection> Against(ImmutableArray<MendSlot> slots, ImmutableArray<int> choice, MendAsked asked)
    {
        string key = string.Join(',', choice);
        if (!_troubles.TryGetValue(key, out ImmutableArray<Finding> troubles))
        {
            _troubles[key] = troubles = _judge.Troubles(BoatWith(slots, choice));
        }

        return _judge.Judge(troubles, asked);
    }

    private BoatModel BoatWith(ImmutableArray<MendSlot> slots, ImmutableArray<int> choice) =>
        slots.Select((slot, at) => slot.Options[choice[at]]).Aggregate(_request.Draft, (boat, option) => option.Apply(boat));

    private MendResult Told(MendFound? found, ImmutableArray<MendSlot> slots, MendAsked asked, IEnumerable<Finding> beyond)
    {
        bool isFound = found is { Best.IsDefault: false };
        (ImmutableArray<int> best, bool isLess) = isFound ? Needed(slots, found!.Best, asked) : (default, false);
        double? least = found?.Bound?.MainIn(_request.Aim);
        return new MendResult
        {
            Outcome = isFound ? MendOutcome.Cleared : _toClear.Count == 0 ? MendOutcome.NothingFails : found is { IsProved: false } ? MendOutcome.NotFound : MendOutcome.NotCleared,
            Aim = _request.Aim,
            IsTightToo = _request.IsTightToo,
            Targets = [.. _toClear.Values],
            Beyond = [.. beyond],
            Conflicts = [.. _conflicts],
            Set = isFound ? SetOf(slots, best) : null,
            IsProved = found is { IsProved: true } && !isLess,
            LeastMoney = _request.Aim == MendAim.Cost && !isLess ? least : null,
            LeastKg = _request.Aim == MendAim.Mass && !isLess ? least : null,
            SlotCount = slots.Length,
            SetCount = slots.Aggregate(1.0, (count, slot) => count * slot.Options.Length),
            ReviewedCount = _reviewed,
            IsStopped = _token.IsCancellationRequested,
        };
    }

    // A set that is not proved, or one that a rule of direction kept too big, may have a change too many: each is left away once and reviewed.
    private (ImmutableArray<int> Choice, bool IsLess) Needed(ImmutableArray<MendSlot> slots, ImmutableArray<int> best, MendAsked asked)
    {
        ImmutableArray<RuledOut> apart = MendApart.Of(slots);
        ImmutableArray<int> needed = best;
        for (int slot = 0; slot < slots.Length && !_token.IsCancellationRequested; slot++)
        {
            int kept = Kept(slots[slot]);
            ImmutableArray<int> without = needed.SetItem(slot, kept);
            if (needed[slot] != kept && !apart.Any(sets => sets.Has(without.AsSpan())) && IsGood(slots, without, asked))
            {
                needed = without;
            }
        }

        return (needed, !needed.SequenceEqual(best));
    }

    // Stopped meanwhile, nobody knows: what was found before stands.
    private bool IsGood(ImmutableArray<MendSlot> slots, ImmutableArray<int> choice, MendAsked asked)
    {
        try
        {
            return Against(slots, choice, asked).IsEmpty;
        }
        catch (OperationCanceledException) when (_token.IsCancellationRequested)
        {
            return false;
        }
    }

    private static int Kept(MendSlot slot) => slot.Options.ToList().FindIndex(option => option.IsKept);

    private MendSet SetOf(ImmutableArray<MendSlot> slots, ImmutableArray<int> choice)
    {
        StudOrder order = StudOrder.Of(_request.Draft, BoatWith(slots, choice));
        BoatModel boat = order.Boat;
        ImmutableArray<Finding> after = _judge.ToTheEnd(boat);
        HashSet<(string, string)> wasTight = [.. _judge.Before.Where(finding => finding.Verdict == Verdict.Tight).Select(finding => (finding.CheckId, finding.SubjectId))];
        return new MendSet(
            [
                .. slots.Select((slot, at) => (slot.ThingId, Option: slot.Options[choice[at]])).Where(change => !change.Option.IsKept).Select(change => new MendChange(
                    change.ThingId, change.Option.What, change.Option.Cost, change.Option.Part?.Id,
                    change.Option.IsFromStock ? [.. _bench.Shelf.Of(change.Option.Part!).Select(item => item.Id)] : [])),
            ],
            boat, Counts(_judge.Before), Counts(after))
        {
            NewlyTight = [.. after.Where(finding => finding.Verdict == Verdict.Tight && !wasTight.Contains((finding.CheckId, finding.SubjectId)))],
            Remarks = [.. order.Remarks, .. IsolatorRemarks.Of(boat, [.. slots.Where((slot, at) => !slot.Options[choice[at]].IsKept).SelectMany(slot => slot.AlsoIds.Add(slot.ThingId))])],
        };
    }

    private static ImmutableDictionary<Verdict, int> Counts(IEnumerable<Finding> findings) =>
        findings.GroupBy(finding => finding.Verdict).ToImmutableDictionary(group => group.Key, group => group.Count());

    private ImmutableArray<MendSet> Singles()
    {
        MendWants wants = new(_bench);
        MendAsked asked = new MendTargets(_toClear.Values, _request, wants.Add).Asked();
        ImmutableArray<MendSlot> slots = wants.Slots();
        ImmutableArray<int> kept = [.. slots.Select(Kept)];
        ImmutableArray<RuledOut> apart = MendApart.Of(slots);
        ImmutableArray<int>[] all = [.. MendSingles.Of(slots, kept).Where(choice => !apart.Any(sets => sets.Has(choice.AsSpan()))).OrderBy(choice => WeightOf(slots, choice))];
        ImmutableArray<MendSet>.Builder good = ImmutableArray.CreateBuilder<MendSet>();
        List<SingleChange> shown = [];
        foreach (ImmutableArray<int> choice in all.Take(MostTried))
        {
            if (_token.IsCancellationRequested || good.Count == MostProposals)
            {
                break;
            }

            if (IsGood(slots, choice, asked) && SingleOf(slots, choice) is var single && !shown.Exists(single.IsNoBetterThan))
            {
                shown.Add(single);
                good.Add(SetOf(slots, choice));
            }

            _progress?.Report(new MendProgress(++_reviewed, Math.Min(MostTried, all.Length), good.Count > 0));
        }

        return good.ToImmutable();
    }

    private SingleChange SingleOf(ImmutableArray<MendSlot> slots, ImmutableArray<int> choice)
    {
        (MendSlot Slot, MendOption Option)[] changed = [.. slots.Select((slot, at) => (slot, slot.Options[choice[at]])).Where(each => !each.Item2.IsKept)];
        return new SingleChange(string.Join(' ', changed.Select(each => each.Slot.Id)), changed[0].Option.Traits,
            new MendCost(changed.Sum(each => each.Option.Cost.PriceMoney), changed.Sum(each => each.Option.Cost.AddedKg)),
            _judge.ToTheEnd(BoatWith(slots, choice)).ToDictionary(finding => (finding.CheckId, finding.SubjectId), finding => finding.Verdict));
    }

    private MendWeight WeightOf(ImmutableArray<MendSlot> slots, ImmutableArray<int> choice) =>
        slots.Select((slot, at) => MendWeight.Of(slot.Options[choice[at]], _request.Aim)).Aggregate(default(MendWeight), (sum, each) => sum + each);
}
