using Orlop.Boat.Things;
using Orlop.Boat.Values;
using Orlop.Drawings.Changes;

namespace Orlop.Drawings.Boats;

/// <summary>How much room the boat takes in each view.</summary>
internal static class BoatExtents
{
    private const double AroundHullM = 0.4;
    private const double ThingsBeyondHullM = 1.5;
    private const double CutReachM = 0.25;

    /// <summary>The hull, its deckhouses, things and marks not too far off it, and routes from end to end, up a mast too; null where nothing has a place.</summary>
    internal static Extent? Of(ViewKind kind, HullLines? hull, IReadOnlyList<ThingChange> things, double? cutXM = null, IEnumerable<BoatMark>? marks = null, IEnumerable<DrawnRoute>? routes = null)
    {
        Extent? hullExtent = hull is null ? null : Around(HullPlaces(hull).Select(place => Project(kind, place)));
        Place[] places = [.. things.Where(change => IsAtCut(change.Shown, cutXM)).SelectMany(PlacesOf), .. (marks ?? []).Select(mark => mark.Place)];
        Extent? allowed = hullExtent?.Grown(ThingsBeyondHullM);
        IEnumerable<(double Across, double Up)> near = places.Select(place => Project(kind, place)).Where(point => allowed is null || IsIn(allowed, point));
        IEnumerable<(double Across, double Up)> led = (routes ?? []).SelectMany(route => route.Line).Select(place => Project(kind, place));
        Extent? extent = Around([.. hullExtent is null ? [] : Corners(hullExtent), .. near, .. led]);
        return extent?.Grown(AroundHullM);
    }

    private static (double Across, double Up) Project(ViewKind kind, Place place) =>
        (BoatView.AcrossOf(kind, place.XM, place.YM), BoatView.UpOf(kind, place.YM, place.ZM));

    private static IEnumerable<Place> HullPlaces(HullLines hull) =>
    [
        .. hull.Points.SelectMany(point => new[] { new Place(point.XM, point.HalfBreadthM, point.HeightM), new Place(point.XM, -point.HalfBreadthM, point.HeightM) }),
        .. hull.Deckhouses.SelectMany(house => new[]
        {
            new Place(house.AftXM, house.HalfBreadthM, house.FootM), new Place(house.ForeXM, -house.HalfBreadthM, house.FootM),
            new Place(house.RoofAftXM, house.HalfBreadthM, house.RoofM), new Place(house.RoofForeXM, -house.HalfBreadthM, house.RoofM),
        }),
    ];

    private static IEnumerable<Place> PlacesOf(ThingChange change) =>
        new[] { change.Was, change.Becomes }.OfType<Thing>().Select(PlaceOf).OfType<Place>();

    /// <summary>Where a thing stands, or null where that is not known.</summary>
    internal static Place? PlaceOf(Thing? thing)
    {
        Place? place = thing switch
        {
            Part part => part.Place,
            Gear gear => gear.Place,
            Compass compass => compass.Place,
            Deadweight weight => weight.Place,
            HullOpening opening => opening.Place,
            Tank tank => new Place((tank.From.XM + tank.To.XM) / 2, (tank.From.YM + tank.To.YM) / 2, (tank.From.ZM + tank.To.ZM) / 2),
            _ => null,
        };
        return place is not null && double.IsFinite(place.XM) && double.IsFinite(place.YM) && double.IsFinite(place.ZM) ? place : null;
    }

    /// <summary>The box around a thing, or null.</summary>
    internal static BoxSize? SizeOf(Thing? thing) => thing switch
    {
        Part part => part.Size,
        Gear gear => gear.Size,
        HullOpening { IsExtentTold: true } opening => new BoxSize(opening.ClearLengthM!.Value, opening.ClearBreadthM!.Value, 0),
        Tank tank => new BoxSize(tank.To.XM - tank.From.XM, tank.To.YM - tank.From.YM, tank.To.ZM - tank.From.ZM),
        _ => null,
    };

    /// <summary>The cut goes through the thing or near its centre; every thing when there is no cut.</summary>
    internal static bool IsAtCut(Thing thing, double? cutXM) => cutXM is not { } cut
        || (PlaceOf(thing) is { } place && Math.Abs(place.XM - cut) <= Math.Max((SizeOf(thing)?.LengthM ?? 0) / 2, CutReachM));

    private static IEnumerable<(double Across, double Up)> Corners(Extent extent) =>
        [(extent.LeastAcrossM, extent.LeastUpM), (extent.MostAcrossM, extent.MostUpM)];

    private static bool IsIn(Extent extent, (double Across, double Up) point) =>
        point.Across >= extent.LeastAcrossM && point.Across <= extent.MostAcrossM && point.Up >= extent.LeastUpM && point.Up <= extent.MostUpM;

    private static Extent? Around(IEnumerable<(double Across, double Up)> points)
    {
        (double Across, double Up)[] all = [.. points];
        return all.Length == 0 ? null : new(all.Min(point => point.Across), all.Max(point => point.Across), all.Min(point => point.Up), all.Max(point => point.Up));
    }
}
