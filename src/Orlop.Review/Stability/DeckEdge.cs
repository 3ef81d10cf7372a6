using System.Collections.Immutable;
using Orlop.Boat;
using Orlop.Boat.Things;
using Orlop.Boat.Values;
using Orlop.Hull.Floating;
using Orlop.Hull.Hydrostatics;
using Orlop.Hull.Surfaces;

namespace Orlop.Review.Stability;

/// <summary>The deck edge of a boat, the last point of each station on both sides and straight between them, and the places where water comes in.</summary>
internal static class DeckEdge
{
    /// <summary>Corners of the deck edge; none without lines.</summary>
    public static ImmutableArray<Opening> Of(BoatModel boat) => [.. Side(boat, 1), .. Side(boat, -1)];

    /// <summary>Corners of the deck edge and those of the openings through which water comes in a condition, each once.</summary>
    public static Opening[] WithOpenings(StabilityView view, Condition condition) => [.. Of(view.Boat).Concat(view.OpeningsIn(condition)).Distinct()];

    /// <summary>Of each opening the corner that stands lowest, and how high over the water; the lowest of all first.</summary>
    public static IEnumerable<(Opening Place, double HeightM)> Heights(IEnumerable<Opening> places, Attitude at) =>
        places.GroupBy(place => place.Id, (_, corners) => Lowest(corners, at)!.Value).OrderBy(lowest => lowest.HeightM);

    /// <summary>Half-breadth of the deck edge at a place along the boat, on one side; that of the nearest end beyond the stations. Null without lines.</summary>
    public static double? HalfBreadthM(BoatModel boat, double xM, int side)
    {
        Point3[] edge = [.. Side(boat, side).Select(corner => corner.Place).OrderBy(place => place.XM)];
        if (edge.Length == 0)
        {
            return null;
        }

        int next = Array.FindIndex(edge, place => place.XM >= xM);
        if (next <= 0)
        {
            return Math.Abs(edge[next < 0 ? ^1 : 0].YM);
        }

        double share = (xM - edge[next - 1].XM) / (edge[next].XM - edge[next - 1].XM);
        return Math.Abs(edge[next - 1].YM + (share * (edge[next].YM - edge[next - 1].YM)));
    }

    /// <summary>The place that stands lowest over the water, and its height; null where there is none.</summary>
    public static (Opening Place, double HeightM)? Lowest(IEnumerable<Opening> places, Attitude at)
    {
        (Opening, double HeightM)[] heights = [.. places.Select(place => (place, at.HeightAboveWaterM(place.Place)))];
        return heights.Length == 0 ? null : heights.MinBy(place => place.HeightM);
    }

    /// <summary>What it is called: the title of the opening, or the deck edge and where.</summary>
    public static string TitleOf(BoatModel boat, string? id) => id is null ? "" : boat.Find(id)?.Title ?? id;

    // 1 for port, -1 for starboard, as y has it.
    private static IEnumerable<Opening> Side(BoatModel boat, int side)
    {
        HullLines? lines = boat.All<HullLines>().FirstOrDefault();
        ValueList<HullStation> stations = lines is null ? [] : side < 0 && lines.StarboardStations.Count > 0 ? lines.StarboardStations : lines.Stations;
        return stations
            .Where(station => station.Points.Count > 0)
            .Select(station => (station.Name, Edge: station.Points[^1]))
            .Select(corner => new Opening($"deck edge at {corner.Name}, {(side < 0 ? "starboard" : "port")}", new Point3(corner.Edge.XM, side * corner.Edge.HalfBreadthM, corner.Edge.HeightM)));
    }
}
