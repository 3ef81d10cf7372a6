using System.Globalization;
using Orlop.Boat;
using Orlop.Boat.Things;
using Orlop.Presentation.Quantities;

namespace Orlop.Presentation.Views.Floating;

/// <summary>The place of a load that hangs: it is the point it hangs from, not where the load is.</summary>
public static class HookPlace
{
    /// <summary>Stands beside the place of such a load.</summary>
    public const string How = "The hook: the point it hangs from, not where the load is. At every heel its weight acts there.";

    /// <summary>The thing hangs from a hook.</summary>
    public static bool Is(object thing) => thing is Deadweight { Use: DeadweightUse.Hung };

    /// <summary>What is odd about a hook that stands below the deck edge, and what it counts as; null where it stands over it, has no place, or the hull does not reach there.</summary>
    public static string? Remark(BoatModel boat, Thing? thing, DisplayUnits units, CultureInfo culture)
    {
        ArgumentNullException.ThrowIfNull(boat);
        return thing is Deadweight { Use: DeadweightUse.Hung, Place: { } place } && DeckEdgeM(boat, place.XM) is { } edgeM && place.ZM < edgeM
            ? $"The hook stands at {QuantityText.Shown(place.ZM, "M", units, culture)}, below the deck edge there at {QuantityText.Shown(edgeM, "M", units, culture)}. It counts as hanging from that point, which makes her look stiffer than a hook over the deck does: give the point it hangs from."
            : null;
    }

    // Straight between the stations, as the deck edge is read elsewhere; beyond the ends by the nearest.
    private static double? DeckEdgeM(BoatModel boat, double xM)
    {
        StationPoint[] edge = [.. boat.All<HullLines>().SelectMany(lines => lines.Stations).Where(station => station.Points.Count > 1).Select(station => station.Points[^1]).OrderBy(point => point.XM)];
        if (edge.Length == 0 || !double.IsFinite(xM))
        {
            return null;
        }

        int next = Array.FindIndex(edge, point => point.XM >= xM);
        if (next <= 0)
        {
            return next == 0 ? edge[0].HeightM : edge[^1].HeightM;
        }

        (StationPoint after, StationPoint fore) = (edge[next - 1], edge[next]);
        return after.HeightM + ((fore.HeightM - after.HeightM) * (xM - after.XM) / (fore.XM - after.XM));
    }
}
