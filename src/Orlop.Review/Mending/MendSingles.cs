using System.Collections.Immutable;

namespace Orlop.Review.Mending;

/// <summary>Sets of one change, or of two that only go together.</summary>
internal static class MendSingles
{
    /// <summary>Each choice alone; of those that only go together, each of one slot with the least of the other whose cable is no thinner than it is.</summary>
    /// <param name="slots">The slots, each with its choices by rising weight.</param>
    /// <param name="kept">The set that leaves everything as it is.</param>
    public static IEnumerable<ImmutableArray<int>> Of(ImmutableArray<MendSlot> slots, ImmutableArray<int> kept) => slots
        .SelectMany((slot, at) => slot.Options.Select((option, choice) => (Option: option, Set: kept.SetItem(at, choice), At: at)))
        .Where(each => !each.Option.IsKept)
        .SelectMany(each => each.Option.TogetherId is { } id ? Pairs(slots, each.Set, each.At, id) : [each.Set])
        .DistinctBy(set => string.Join(',', set));

    private static IEnumerable<ImmutableArray<int>> Pairs(ImmutableArray<MendSlot> slots, ImmutableArray<int> set, int at, string id) =>
        from other in Enumerable.Range(0, slots.Length)
        where other != at
        let least = slots[other].Options.ToList().FindIndex(option => option.TogetherId == id && !(option.Traits.AreaMm2 < slots[other].Options[0].Traits.AreaMm2))
        where least >= 0
        select set.SetItem(other, least);
}
