using System.Collections.Immutable;

namespace Orlop.Review.Mending;

/// <summary>Sets that nobody can build: a device that is moved for one cable and not for the other.</summary>
internal static class MendApart
{
    /// <summary>Those of these slots; a choice whose counterpart has no slot falls alone.</summary>
    public static ImmutableArray<RuledOut> Of(ImmutableArray<MendSlot> slots)
    {
        IEnumerable<string> ids = slots.SelectMany(slot => slot.Options).Select(option => option.TogetherId).OfType<string>().Distinct();
        return [.. ids.SelectMany(id => Of(slots, id))];
    }

    private static IEnumerable<RuledOut> Of(ImmutableArray<MendSlot> slots, string id)
    {
        ulong[] with = [.. slots.Select(slot => Bits(slot, option => option.TogetherId == id))];
        int[] at = [.. Enumerable.Range(0, slots.Length).Where(slot => with[slot] != 0)];
        RuledOut Only(params IEnumerable<(int Slot, ulong Choices)> of) => new([.. Enumerable.Range(0, slots.Length).Select(slot => of.Where(each => each.Slot == slot).Select(each => each.Choices).FirstOrDefault(ulong.MaxValue))]);
        ulong Without(int slot) => Bits(slots[slot], option => option.TogetherId != id);
        return at.Length == 1 ? [Only((at[0], with[at[0]]))]
            : at.SelectMany(one => at.Where(other => other != one).Select(other => Only((one, with[one]), (other, Without(other)))));
    }

    private static ulong Bits(MendSlot slot, Func<MendOption, bool> isIn) =>
        slot.Options.Index().Where(each => isIn(each.Item)).Aggregate(0UL, (bits, each) => bits | (1UL << each.Index));
}
