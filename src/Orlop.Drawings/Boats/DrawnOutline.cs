using Orlop.Boat;
using Orlop.Boat.Things;
using Orlop.Boat.Values;

namespace Orlop.Drawings.Boats;

/// <summary>The outline that a boat is drawn from: that given for drawing, or else keel, first sharp line and deck edge of the lines that she is floated by.</summary>
public static class DrawnOutline
{
    /// <summary>Null where neither is given.</summary>
    public static HullOutline? Of(BoatModel boat)
    {
        ArgumentNullException.ThrowIfNull(boat);
        return boat.All<HullOutline>().FirstOrDefault(outline => outline.Sheer.Count > 1 && outline.Keel.Count > 1)
            ?? (boat.All<Orlop.Boat.Things.HullLines>().FirstOrDefault() is { } lines ? Of(lines) : null);
    }

    private static HullOutline? Of(Orlop.Boat.Things.HullLines lines)
    {
        HullStation[] stations = [.. lines.Stations.Where(station => station.Points.Count > 1)];
        if (stations.Length < 2)
        {
            return null;
        }

        // A profile at either end belongs to the keel line, up to the deck.
        IEnumerable<StationPoint> stern = IsProfile(stations[0]) ? stations[0].Points.Reverse() : [stations[0].Points[0]];
        IEnumerable<StationPoint> stem = IsProfile(stations[^1]) ? stations[^1].Points : [stations[^1].Points[0]];
        string? sharp = stations.SelectMany(station => station.Points).FirstOrDefault(point => point.Line is not null && point.HalfBreadthM > 0)?.Line;
        return new HullOutline
        {
            Id = lines.Id,
            Sheer = Outline(stations.Select(station => station.Points[^1])),
            Keel = Outline([.. stern, .. stations[1..^1].Select(station => station.Points[0]), .. stem]),
            Chine = sharp is null ? [] : Outline(stations.SelectMany(station => station.Points.Where(point => point.Line == sharp))),
            Deckhouses = lines.TightHouses,
        };
    }

    private static bool IsProfile(HullStation station) => station.Points.All(point => point.HalfBreadthM == 0);

    private static ValueList<OutlinePoint> Outline(IEnumerable<StationPoint> points) => [.. points.Select(point => new OutlinePoint(point.XM, point.HalfBreadthM, point.HeightM))];
}
