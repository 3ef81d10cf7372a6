using System.Collections.Immutable;

namespace Orlop.Review.Mending;

/// <summary>Sets that nobody can build: a device that is moved for one cable and not for the other, a cable thicker than the holder takes that it ends in.</summary>
internal static class MendApart
{
    /// <summary>Those of these slots; a choice whose counterpart has no slot falls alone.</summary>
    public static ImmutableArray<RuledOut> Of(ImmutableArray<MendSlot> slots)
    {
        IEnumerable<string> ids = slots.SelectMany(slot => slot.Options).Select(option => option.TogetherId).OfType<string>().Distinct();
        return [.. ids.SelectMany(id => Of(slots, id)), .. Enumerable.Range(0, slots.Length).SelectMany(device => slots[device].Ends.SelectMany(end => TooThick(slots, device, end.CableId, end.AreaMm2)))];
    }

    // One for each thickest conductor that a choice takes; a cable that nothing else is chosen for stays as it is.
    private static IEnumerable<RuledOut> TooThick(ImmutableArray<MendSlot> slots, int device, string cableId, double areaMm2)
    {
        int cable = Enumerable.Range(0, slots.Length).FirstOrDefault(slot => slots[slot].Kind == SlotKind.Cable && slots[slot].ThingId == cableId, -1);
        foreach (double mostMm2 in slots[device].Options.Select(option => option.TakesMm2).OfType<double>().Distinct())
        {
            (int, ulong) into = (device, Bits(slots[device], option => option.TakesMm2 == mostMm2));
            if (cable >= 0)
            {
                if (Bits(slots[cable], option => option.Traits.AreaMm2 > mostMm2) is not 0 and var tooThick)
                {
                    yield return Only(slots, into, (cable, tooThick));
                }
            }
            else if (areaMm2 > mostMm2)
            {
                yield return Only(slots, into);
            }
        }
    }

    private static IEnumerable<RuledOut> Of(ImmutableArray<MendSlot> slots, string id)
    {
        ulong[] with = [.. slots.Select(slot => Bits(slot, option => option.TogetherId == id))];
        int[] at = [.. Enumerable.Range(0, slots.Length).Where(slot => with[slot] != 0)];
        ulong Without(int slot) => Bits(slots[slot], option => option.TogetherId != id);
        return at.Length == 1 ? [Only(slots, (at[0], with[at[0]]))]
            : at.SelectMany(one => at.Where(other => other != one).Select(other => Only(slots, (one, with[one]), (other, Without(other)))));
    }

    // The sets that choose these in these slots, and anything in the others.
    private static RuledOut Only(ImmutableArray<MendSlot> slots, params IEnumerable<(int Slot, ulong Choices)> of) =>
        new([.. Enumerable.Range(0, slots.Length).Select(slot => of.Where(each => each.Slot == slot).Select(each => each.Choices).FirstOrDefault(ulong.MaxValue))]);

    private static ulong Bits(MendSlot slot, Func<MendOption, bool> isIn) =>
        slot.Options.Index().Where(each => isIn(each.Item)).Aggregate(0UL, (bits, each) => bits | (1UL << each.Index));
}
