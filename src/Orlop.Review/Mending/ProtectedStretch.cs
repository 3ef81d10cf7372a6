using Orlop.Boat.Things;
using Orlop.Boat.Topology;

namespace Orlop.Review.Mending;

/// <summary>What lies about a thing on its way between fuses and breakers.</summary>
internal static class ProtectedStretch
{
    /// <summary>Along the way out, as far as the next fuse or breaker to either side; nothing for a thing that is not on it.</summary>
    public static IEnumerable<Thing> Beside(Chain chain, string id)
    {
        Thing[] all = [.. chain.Out.Select(item => item.Thing)];
        int at = Array.FindIndex(all, thing => thing.Id == id);
        if (at < 0)
        {
            return [];
        }

        int from = at - 1, to = at + 1;
        while (from >= 0 && all[from] is not Protection)
        {
            from--;
        }

        while (to < all.Length && all[to] is not Protection)
        {
            to++;
        }

        return all[Math.Max(from, 0)..Math.Min(to + 1, all.Length)];
    }
}
