using Orlop.Boat;
using Orlop.Boat.Things;
using Orlop.Boat.Topology;
using Orlop.Boat.Values;

namespace Orlop.Review.Ways;

/// <summary>A hole that a cable goes through.</summary>
/// <param name="Way">The way it is on.</param>
/// <param name="Index">Which of the way's holes, from 0; -1 for the one that a gland is.</param>
/// <param name="Hole">The hole.</param>
public sealed record PassedHole(Way Way, int Index, WayHole Hole)
{
    // A hole this near to the line of a cable is passed.
    private const double NearM = 0.06;

    /// <summary>The holes of a way; a gland is one itself where none is listed.</summary>
    public static IEnumerable<PassedHole> Of(Way way)
    {
        ArgumentNullException.ThrowIfNull(way);
        return way is { Means: WayKind.Gland, Holes.Count: 0 }
            ? [new PassedHole(way, -1, new WayHole { Where = way.Title, Guard = EdgeGuard.Gland })]
            : way.Holes.Select((hole, index) => new PassedHole(way, index, hole));
    }

    /// <summary>The holes that a cable goes through as it runs, in order.</summary>
    public static IEnumerable<PassedHole> On(Cable cable, BoatModel boat)
    {
        ArgumentNullException.ThrowIfNull(cable);
        ArgumentNullException.ThrowIfNull(boat);
        ValueList<Place> line = RunLine.Of(cable, boat).ToValueList();
        return cable.Run.Select(leg => leg.Way).OfType<string>().Distinct().Select(boat.Find<Way>).OfType<Way>().SelectMany(Of)
            .Where(passed => passed.Hole.Place is not { } place || line.Count < 2 || RunLine.Nearest(line, place).Place.DistanceM(place) <= NearM);
    }
}
