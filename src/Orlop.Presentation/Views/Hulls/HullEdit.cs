using Orlop.Boat.Things;
using Orlop.Boat.Values;
using Orlop.Hull.Surfaces;
using Orlop.Review.Stability;

namespace Orlop.Presentation.Views.Hulls;

/// <summary>Corrections of a hull's lines: each takes the lines and gives them corrected.</summary>
public static class HullEdit
{
    private const int MillimetreDecimals = 3;

    /// <summary>Stations of one side; of the only side for a boat whose sides are alike.</summary>
    public static ValueList<HullStation> Side(HullLines lines, bool isStarboard) =>
        isStarboard && lines.StarboardStations.Count > 0 ? lines.StarboardStations : lines.Stations;

    /// <summary>The point at a spot; null where there is none.</summary>
    public static StationPoint? At(HullLines lines, HullSpot spot) =>
        Side(lines, spot.IsStarboard) is var side && spot.Station >= 0 && spot.Station < side.Count && spot.Point >= 0 && spot.Point < side[spot.Station].Points.Count
            ? side[spot.Station].Points[spot.Point]
            : null;

    /// <summary>With another point at a spot. One point does not make its station a measured one: that the owner says, of all of it.</summary>
    public static HullLines WithPoint(HullLines lines, HullSpot spot, StationPoint point) =>
        WithPoints(lines, spot, points => [.. points.Take(spot.Point), point, .. points.Skip(spot.Point + 1)]);

    /// <summary>With a station of which all points are measured, on both sides.</summary>
    public static HullLines Measured(HullLines lines, int station) => WithStation(lines, station, one => one with { Origin = StationOrigin.Measured });

    /// <summary>With one more point half way to the next above the spot; beyond the topmost, as far again.</summary>
    public static HullLines AddPoint(HullLines lines, HullSpot spot) => WithPoints(lines, spot, points =>
    {
        StationPoint here = points[spot.Point];
        StationPoint other = spot.Point + 1 < points.Count ? points[spot.Point + 1] : points[spot.Point - 1];
        double share = spot.Point + 1 < points.Count ? 0.5 : -0.5;
        double Between(double from, double to) => Math.Round(from + (share * (to - from)), MillimetreDecimals);
        StationPoint added = new(Between(here.XM, other.XM), Math.Max(0, Between(here.HalfBreadthM, other.HalfBreadthM)), Between(here.HeightM, other.HeightM));
        return [.. points.Take(spot.Point + 1), added, .. points.Skip(spot.Point + 1)];
    });

    /// <summary>Without the point at a spot.</summary>
    public static HullLines RemovePoint(HullLines lines, HullSpot spot) =>
        WithPoints(lines, spot, points => [.. points.Take(spot.Point), .. points.Skip(spot.Point + 1)]);

    /// <summary>With one more station half way to the next, laid between them on the surface through those that stand; null where no surface can be laid.</summary>
    public static HullLines? AddStation(HullLines lines, int after)
    {
        string name = NewName(lines, $"{lines.Stations[after].Name} a");
        return FormBetween.HalfWay(HullBodies.FormOf(lines), after, name) is not { } made ? null : lines with
        {
            Stations = Inserted(lines.Stations, after + 1, Station(made.Port, MillimetreDecimals, StationOrigin.Between)),
            StarboardStations = made.Starboard is null ? [] : Inserted(lines.StarboardStations, after + 1, Station(made.Starboard, MillimetreDecimals, StationOrigin.Between)),
        };
    }

    /// <summary>Without a station, on both sides.</summary>
    public static HullLines RemoveStation(HullLines lines, int station) => lines with
    {
        Stations = [.. lines.Stations.Where((_, index) => index != station)],
        StarboardStations = [.. lines.StarboardStations.Where((_, index) => index != station)],
    };

    /// <summary>With a station's points all so much further forward, on both sides: its foremost point at the keel then stands at the place. Where its points are from stays as it was.</summary>
    public static HullLines MoveStation(HullLines lines, int station, double xM)
    {
        double byM = xM - lines.Stations[station].Points[0].XM;
        return WithStation(lines, station, one => one with { Points = [.. one.Points.Select(point => point with { XM = Math.Round(point.XM + byM, MillimetreDecimals + 1) })] });
    }

    /// <summary>With a station changed on both sides: its name, its crease.</summary>
    public static HullLines WithStation(HullLines lines, int station, Func<HullStation, HullStation> change) => lines with
    {
        Stations = [.. lines.Stations.Select((one, index) => index == station ? change(one) : one)],
        StarboardStations = [.. lines.StarboardStations.Select((one, index) => index == station ? change(one) : one)],
    };

    /// <summary>With sides that may differ: the starboard side begins as the port side is.</summary>
    public static HullLines SplitSides(HullLines lines) => lines with { StarboardStations = lines.Stations };

    /// <summary>With both sides as the port side is.</summary>
    public static HullLines JoinSides(HullLines lines) => lines with { StarboardStations = [] };

    /// <summary>Lines of a form, with the houses and the name of those that stood before, and where their points are from.</summary>
    public static HullLines Of(HullForm form, HullLines? before, int? decimals = null, StationOrigin? origin = null) => (before ?? new HullLines { Id = "hull-lines", Name = "Hull lines" }) with
    {
        Stations = [.. form.Sections.Select(section => Station(section, decimals, origin))],
        StarboardStations = [.. form.StarboardSections.Select(section => Station(section, decimals, origin))],
    };

    private static HullStation Station(HullSection section, int? decimals, StationOrigin? origin) => new()
    {
        Origin = origin,
        Name = section.Id,
        IsSharp = section.IsSharp,
        Points = [.. section.Points.Select(point => new StationPoint(Rounded(point.XM, decimals), Rounded(point.HalfBreadthM, decimals), Rounded(point.HeightM, decimals), point.Line))],
    };

    private static double Rounded(double m, int? decimals) => decimals is { } count ? Math.Round(m, count) : m;

    private static ValueList<HullStation> Inserted(ValueList<HullStation> stations, int at, HullStation station) => [.. stations.Take(at), station, .. stations.Skip(at)];

    private static HullLines WithPoints(HullLines lines, HullSpot spot, Func<ValueList<StationPoint>, ValueList<StationPoint>> change)
    {
        ValueList<HullStation> side = Side(lines, spot.IsStarboard);
        ValueList<HullStation> changed = [.. side.Select((one, index) => index == spot.Station ? one with { Points = change(one.Points) } : one)];
        return spot.IsStarboard && lines.StarboardStations.Count > 0 ? lines with { StarboardStations = changed } : lines with { Stations = changed };
    }

    private static string NewName(HullLines lines, string name)
    {
        string found = name;
        for (int number = 2; lines.Stations.Any(station => station.Name == found); number++)
        {
            found = $"{name}{number}";
        }

        return found;
    }
}
