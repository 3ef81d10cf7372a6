using System.Collections.Immutable;
using System.Numerics;

namespace Orlop.Review.Mending;

/// <summary>What a search is about: choices by rising weight, how a set is judged, and by what rules others fall with it.</summary>
/// <param name="Slots">Each slot's choices by rising weight.</param>
/// <param name="Weights">The weight of each choice, above nothing for all but the one that leaves its thing as it is.</param>
/// <param name="Judge">What stands against a set, by the true review; empty for a good one.</param>
/// <param name="CannotHelp">The rules of direction.</param>
/// <param name="Overdrawn">The slots that together take more from stock than there is; empty where there is enough.</param>
internal sealed record MendProblem(
    ImmutableArray<MendSlot> Slots,
    ImmutableArray<ImmutableArray<MendWeight>> Weights,
    Func<ImmutableArray<int>, ImmutableArray<Objection>> Judge,
    Func<Objection, MendSlot, MendTraits, MendTraits, bool> CannotHelp,
    Func<ImmutableArray<int>, ImmutableArray<int>> Overdrawn)
{
    /// <summary>Sets that nobody can build: choices that only go together, taken apart.</summary>
    public ImmutableArray<RuledOut> Apart { get; init; } = [];

    /// <summary>The set can be built.</summary>
    public bool IsWhole(ImmutableArray<int> choice) => !Apart.Any(apart => apart.Has(choice.AsSpan()));
}

/// <summary>What a search came to.</summary>
/// <param name="Best">The least good set that was found; default when none was.</param>
/// <param name="Bound">No good set is less than this; null when there is none at all.</param>
/// <param name="IsProved">The best is the least of all, or there is none.</param>
/// <param name="Hopeless">Where there is none: what no choice clears.</param>
internal sealed record MendFound(ImmutableArray<int> Best, MendWeight? Bound, bool IsProved, Objection? Hopeless);

/// <summary>Told after each review.</summary>
/// <param name="judgedCount">Sets reviewed by this search.</param>
/// <param name="best">The least good set so far; null where there is none.</param>
/// <param name="bound">No good set is less.</param>
internal delegate void MendTelling(int judgedCount, MendWeight? best, MendWeight bound);

/// <summary>
/// The least good set, by branch and bound over what is not ruled out: the least set left is judged by the true review; what stands
/// against it rules out every set that by the rules of direction cannot do better; the rest is split and the least looked at next. The first good set that
/// comes up so is the least of all. The same problem takes the same steps every time.
/// </summary>
internal sealed class MendSearch(MendProblem problem, int mostJudged, MendTelling? telling, CancellationToken token)
{
    private const int ProbesPerSlot = 4;

    private readonly int _count = problem.Slots.Length;
    private readonly ulong[] _whole = [.. problem.Slots.Select(slot => (1UL << slot.Options.Length) - 1)];
    private readonly List<RuledOut> _ruledOut = [.. problem.Apart];
    private readonly Dictionary<string, ImmutableArray<Objection>> _judged = new(StringComparer.Ordinal);
    private readonly PriorityQueue<ulong[], (MendWeight Least, int Turn)> _open = new();
    private ImmutableArray<int> _best;
    private MendWeight _bestWeight;
    private MendWeight _bound;
    private Objection? _hopeless;
    private int _turn;

    /// <summary>Sets that were reviewed.</summary>
    private int JudgedCount => _judged.Count;

    public MendFound Find()
    {
        Push([.. _whole]);
        try
        {
            while (_open.TryDequeue(out ulong[]? domains, out (MendWeight Least, int Turn) at))
            {
                _bound = at.Least;
                if (!_best.IsDefault && _bound.CompareTo(_bestWeight) >= 0)
                {
                    return new MendFound(_best, _bestWeight, true, null);
                }

                ImmutableArray<int> least = Least(domains);
                if (RuledOutFor(least, domains) is { } known)
                {
                    Split(known, domains);
                }
                else if (problem.Overdrawn(least) is { Length: > 0 } takers)
                {
                    Split(Keep(Exactly(least, takers)), domains);
                }
                else if (JudgedCount >= mostJudged)
                {
                    return new MendFound(_best, _bound, false, null);
                }
                else if (Judged(least) is { Length: > 0 } objections)
                {
                    foreach (Objection objection in objections)
                    {
                        Keep(Learnt(objection, least));
                    }

                    Split(RuledOutFor(least, domains)!, domains);
                }
                else
                {
                    return new MendFound(least, _bound, true, null);
                }
            }
        }
        catch (OperationCanceledException)
        {
            return new MendFound(_best, _bound, false, null);
        }

        return _best.IsDefault ? new MendFound(default, null, true, _hopeless) : new MendFound(_best, _bestWeight, true, null);
    }

    private static ImmutableArray<int> Least(ulong[] domains) => [.. domains.Select(RuledOut.First)];

    private void Push(ulong[] domains) => _open.Enqueue(domains, (WeightOf(Least(domains)), _turn++));

    private MendWeight WeightOf(ImmutableArray<int> choice)
    {
        MendWeight sum = default;
        for (int slot = 0; slot < _count; slot++)
        {
            sum += problem.Weights[slot][choice[slot]];
        }

        return sum;
    }

    private void Split(RuledOut without, ulong[] domains)
    {
        foreach (ulong[] part in without.Without(domains))
        {
            Push(part);
        }
    }

    private RuledOut Keep(RuledOut ruled)
    {
        _ruledOut.Add(ruled);
        return ruled;
    }

    // Of all that rule the set out, the one with the fewest ways on.
    private RuledOut? RuledOutFor(ImmutableArray<int> choice, ulong[] domains) =>
        _ruledOut.Where(ruled => ruled.Has(choice.AsSpan())).MinBy(ruled => ruled.EscapeCount(domains));

    private RuledOut Exactly(ImmutableArray<int> choice, ImmutableArray<int> slots) =>
        new([.. Enumerable.Range(0, _count).Select(slot => slots.Contains(slot) ? 1UL << choice[slot] : ulong.MaxValue)]);

    private ImmutableArray<Objection> Judged(ImmutableArray<int> choice)
    {
        string key = string.Join(',', choice);
        if (_judged.TryGetValue(key, out ImmutableArray<Objection> known))
        {
            return known;
        }

        token.ThrowIfCancellationRequested();
        ImmutableArray<Objection> objections = _judged[key] = problem.Judge(choice);
        if (objections.IsEmpty && problem.IsWhole(choice) && (_best.IsDefault || WeightOf(choice).CompareTo(_bestWeight) < 0))
        {
            (_best, _bestWeight) = (choice, WeightOf(choice));
        }

        telling?.Invoke(JudgedCount, _best.IsDefault ? null : _bestWeight, _bound);
        return objections;
    }

    // What falls with a set, made as wide as a few more reviews allow: where even a better choice does not help, all below it fall too. A set that nobody can build teaches as well, but is never the best.
    private RuledOut Learnt(Objection objection, ImmutableArray<int> choice)
    {
        (Objection lastObjection, ImmutableArray<int> last) = (objection, choice);
        for (int slot = 0; slot < _count; slot++)
        {
            int[] better = [.. Better(lastObjection, slot, last[slot])];
            int low = 0, high = better.Length, probes = 0;
            while (low < high && probes++ < ProbesPerSlot && JudgedCount < mostJudged)
            {
                int at = probes == 1 ? 0 : (low + high) / 2;
                ImmutableArray<int> tried = last.SetItem(slot, better[at]);
                if (problem.Overdrawn(tried).IsEmpty && Judged(tried).FirstOrDefault(other => other.Key == objection.Key) is { } still)
                {
                    (last, lastObjection) = (tried, still);
                    high = at;
                }
                else
                {
                    low = at + 1;
                }
            }
        }

        RuledOut wide = FallenWith(lastObjection, last);
        RuledOut ruled = wide.Has(choice.AsSpan()) ? wide : FallenWith(objection, choice);
        if (ruled.EscapeCount(_whole) == 0)
        {
            _hopeless = objection;
        }

        return ruled;
    }

    private RuledOut FallenWith(Objection objection, ImmutableArray<int> choice) =>
        new([.. Enumerable.Range(0, _count).Select(slot => NoBetter(objection, slot, choice[slot]))]);

    // Choices that leave more fallen than this one does, and this one with them; the one that leaves most first.
    private IEnumerable<int> Better(Objection objection, int slot, int had)
    {
        ulong below = NoBetter(objection, slot, had);
        return Enumerable.Range(0, problem.Slots[slot].Options.Length)
            .Select(other => (Other: other, Below: NoBetter(objection, slot, other)))
            .Where(at => (below & ~at.Below) == 0 && at.Below != below)
            .OrderByDescending(at => BitOperations.PopCount(at.Below)).ThenBy(at => at.Other)
            .DistinctBy(at => at.Below)
            .Select(at => at.Other);
    }

    private ulong NoBetter(Objection objection, int slot, int had)
    {
        MendSlot of = problem.Slots[slot];
        ulong below = 1UL << had;
        for (int other = 0; other < of.Options.Length; other++)
        {
            below |= problem.CannotHelp(objection, of, of.Options[other].Traits, of.Options[had].Traits) ? 1UL << other : 0;
        }

        return below;
    }
}
