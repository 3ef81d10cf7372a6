using Orlop.Boat;
using Orlop.Boat.Things;
using Orlop.Boat.Values;

namespace Orlop.Drawings.Boats;

/// <summary>
/// The outline that a boat is drawn from: keel, outermost sharp line and deck edge of the lines that she is floated by, or else the outline given for drawing; deckhouses of that outline stand on either.
/// </summary>
public static class DrawnOutline
{
    /// <summary>Null where neither is given.</summary>
    public static HullOutline? Of(BoatModel boat)
    {
        ArgumentNullException.ThrowIfNull(boat);
        HullOutline? given = boat.All<HullOutline>().FirstOrDefault(outline => outline.Sheer.Count > 1 && outline.Keel.Count > 1);
        HullOutline? measured = boat.All<Orlop.Boat.Things.HullLines>().FirstOrDefault() is { } lines ? Of(lines, Stations(lines.Stations)) : null;
        return measured is null || given is null ? measured ?? given : measured with { Id = given.Id, Deckhouses = given.Deckhouses.Count > 0 ? given.Deckhouses : measured.Deckhouses };
    }

    /// <summary>The port side, and for a boat whose sides differ her starboard side; null where neither lines nor an outline are given.</summary>
    internal static HullLines? LinesOf(BoatModel boat)
    {
        if (Of(boat) is not { } outline)
        {
            return null;
        }

        Orlop.Boat.Things.HullLines? lines = boat.All<Orlop.Boat.Things.HullLines>().FirstOrDefault();
        HullStation[] port = Stations(lines?.Stations ?? []), starboard = Stations(lines?.StarboardStations ?? []);
        DrawnSide portSide = Side(outline, port);
        return new HullLines(outline, portSide, port.Length > 1 && Of(lines!, starboard) is { } other ? Side(other, starboard) : portSide);
    }

    // Sections are drawn of lines along the boat from the keel up to the deck edge: through all measured points of each station, or keel, chine and deck edge of the outline.
    private static DrawnSide Side(HullOutline outline, HullStation[] stations) =>
        new(outline.Sheer, outline.Chine, stations.Length > 1 ? Along(stations) : [outline.Keel, outline.Chine, outline.Sheer]);

    private static HullStation[] Stations(IEnumerable<HullStation> stations) => [.. stations.Where(station => station.Points.Count > 1)];

    // Point for point where every station has as many; else each station at even shares of its girth.
    private static ValueList<OutlinePoint>[] Along(HullStation[] stations)
    {
        const int EvenCount = 17;
        int count = stations[0].Points.Count;
        StationPoint[][] points = [.. stations.Select(station => stations.All(other => other.Points.Count == count) ? [.. station.Points] : Even([.. station.Points], EvenCount))];
        return [.. Enumerable.Range(0, points[0].Length).Select(index => Outline(points.Select(station => station[index])))];
    }

    private static StationPoint[] Even(StationPoint[] points, int count)
    {
        double[] girth = new double[points.Length];
        for (int i = 1; i < points.Length; i++)
        {
            girth[i] = girth[i - 1] + Math.Sqrt(Math.Pow(points[i].HalfBreadthM - points[i - 1].HalfBreadthM, 2) + Math.Pow(points[i].HeightM - points[i - 1].HeightM, 2));
        }

        return [.. Enumerable.Range(0, count).Select(number => At(girth[^1] * number / (count - 1)))];

        StationPoint At(double along)
        {
            int next = Math.Clamp(Array.FindIndex(girth, reached => reached >= along), 1, points.Length - 1);
            double step = girth[next] - girth[next - 1], share = step > 0 ? (along - girth[next - 1]) / step : 0;
            double Between(Func<StationPoint, double> of) => of(points[next - 1]) + (share * (of(points[next]) - of(points[next - 1])));
            return new StationPoint(Between(point => point.XM), Between(point => point.HalfBreadthM), Between(point => point.HeightM));
        }
    }

    private static HullOutline? Of(Orlop.Boat.Things.HullLines lines, HullStation[] stations)
    {
        if (stations.Length < 2)
        {
            return null;
        }

        // A profile at either end belongs to the keel line, up to the deck.
        IEnumerable<StationPoint> stern = IsProfile(stations[0]) ? stations[0].Points.Reverse() : [stations[0].Points[0]];
        IEnumerable<StationPoint> stem = IsProfile(stations[^1]) ? stations[^1].Points : [stations[^1].Points[0]];
        string? sharp = stations.SelectMany(station => station.Points.SkipLast(1)).Where(point => point.Line is not null).GroupBy(point => point.Line!)
            .MaxBy(line => line.Max(point => point.HalfBreadthM))?.Key;
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
