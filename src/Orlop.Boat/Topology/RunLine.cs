using Orlop.Boat.Things;
using Orlop.Boat.Values;

namespace Orlop.Boat.Topology;

/// <summary>The line a cable takes: from part to part, along its ways where it has any, straight where it is loose.</summary>
public static class RunLine
{
    /// <summary>The points of the line of its first core; fewer than two where too little is known to draw it.</summary>
    public static IReadOnlyList<Place> Of(Cable cable, BoatModel boat)
    {
        ArgumentNullException.ThrowIfNull(cable);
        return Of(cable, cable.Cores.Count == 0 ? null : cable.Cores[0], boat);
    }

    /// <summary>The points of the line of one of its cores; fewer than two where too little is known to draw it.</summary>
    public static IReadOnlyList<Place> Of(Cable cable, Core? core, BoatModel boat)
    {
        ArgumentNullException.ThrowIfNull(cable);
        ArgumentNullException.ThrowIfNull(boat);
        Place? end = core is null ? null : boat.Find<Part>(core.To.Part)?.Place;
        List<Place> line = [];
        if (core is not null && boat.Find<Part>(core.From.Part)?.Place is { } start)
        {
            line.Add(start);
        }

        ValueList<Place>[] ways = [.. cable.Run
            .Select(leg => leg.Way is null ? null : boat.Find<Way>(leg.Way))
            .Where(way => way?.Points.Count >= 2)
            .Select(way => way!.Points)];
        for (int index = 0; index < ways.Length; index++)
        {
            Place? next = index + 1 < ways.Length ? NearestOf(ways[index + 1], ways[index]) : end;
            line.AddRange(Stretch(ways[index], line.LastOrDefault(), next));
        }

        if (end is not null)
        {
            line.Add(end);
        }

        return line;
    }

    /// <summary>The way between where the cable joins it and where it leaves it; the whole of it where neither is known.</summary>
    private static IEnumerable<Place> Stretch(ValueList<Place> way, Place? from, Place? to)
    {
        (double at, Place place) join = from is null ? (0, way[0]) : Nearest(way, from);
        (double at, Place place) leave = to is null ? (way.Count - 1, way[^1]) : Nearest(way, to);
        IEnumerable<Place> between = Enumerable.Range(0, way.Count)
            .Where(index => index > Math.Min(join.at, leave.at) && index < Math.Max(join.at, leave.at))
            .Select(index => way[index]);
        return [join.place, .. join.at <= leave.at ? between : between.Reverse(), leave.place];
    }

    private static Place NearestOf(ValueList<Place> candidates, ValueList<Place> way) =>
        candidates.MinBy(candidate => Nearest(way, candidate).Place.DistanceM(candidate))!;

    /// <summary>The point of a line that is nearest to a place, and how far along it lies: whole numbers at its points.</summary>
    public static (double At, Place Place) Nearest(ValueList<Place> way, Place to)
    {
        (double At, Place Place) best = (0, way[0]);
        for (int index = 1; index < way.Count; index++)
        {
            Place from = way[index - 1], until = way[index];
            double x = until.XM - from.XM, y = until.YM - from.YM, z = until.ZM - from.ZM;
            double squared = (x * x) + (y * y) + (z * z);
            double part = squared == 0 ? 0 : Math.Clamp((((to.XM - from.XM) * x) + ((to.YM - from.YM) * y) + ((to.ZM - from.ZM) * z)) / squared, 0, 1);
            Place place = new(from.XM + (part * x), from.YM + (part * y), from.ZM + (part * z));
            if (place.DistanceM(to) < best.Place.DistanceM(to))
            {
                best = (index - 1 + part, place);
            }
        }

        return best;
    }
}
