using Orlop.Boat.Things;
using Orlop.Boat.Values;

namespace Orlop.App.Parts;

/// <summary>A thing dragged on a drawing.</summary>
/// <param name="ThingId">The thing.</param>
/// <param name="View">The view it was dragged in: profile, plan or section.</param>
/// <param name="AcrossM">How far to the right on the drawing.</param>
/// <param name="UpM">How far up on the drawing.</param>
public sealed record ThingMove(string ThingId, string View, double AcrossM, double UpM)
{
    private const int CentimetreDecimals = 2;

    /// <summary>The thing where it was dropped, to the nearest centimetre; null for a thing without a place.</summary>
    public Thing? Moved(Thing thing) => thing switch
    {
        Part { Place: { } place } part => part with { Place = Moved(place) },
        Gear { Place: { } place } gear => gear with { Place = Moved(place) },
        Compass { Place: { } place } compass => compass with { Place = Moved(place) },
        Deadweight { Place: { } place } weight => weight with { Place = Moved(place) },
        HullOpening { Place: { } place } opening => opening with { Place = Moved(place) },
        Tank tank => tank with { From = Moved(tank.From), To = Moved(tank.To) },
        _ => null,
    };

    /// <summary>Where the thing is held; null for a thing without a place.</summary>
    public Place? Held(Thing thing) => Moved(thing) switch { Part part => part.Place, Gear gear => gear.Place, Compass compass => compass.Place, Deadweight weight => weight.Place, _ => null };

    private Place Moved(Place place) => View switch
    {
        "profile" => place with { XM = Round(place.XM + AcrossM), ZM = Round(place.ZM + UpM) },
        "plan" => place with { XM = Round(place.XM + AcrossM), YM = Round(place.YM + UpM) },
        _ => place with { YM = Round(place.YM - AcrossM), ZM = Round(place.ZM + UpM) },
    };

    private static double Round(double m) => Math.Round(m, CentimetreDecimals, MidpointRounding.AwayFromZero);
}
