using Orlop.Boat;
using Orlop.Boat.Things;
using Orlop.Hull.Floating;
using Orlop.Review.Findings;

namespace Orlop.Review.Stability;

/// <summary>An opening, or the deck edge, that is under water where a boat comes to rest: she fills there, and no number of her floating dry is hers.</summary>
/// <param name="Title">What it is called: "Wheelhouse door", "deck edge at aft, port".</param>
/// <param name="UnderM">How far under, in m, 0 or more.</param>
/// <param name="Doubt">Why it is not sure that water comes in there, within a sentence; null where it is.</param>
/// <param name="Asked">What would tell; null where it is sure.</param>
public sealed record UnderAtRest(string Title, double UnderM, string? Doubt, FindingInput? Asked)
{
    /// <summary>She fills: it is told that water comes in there.</summary>
    public bool Fills => Doubt is null;

    /// <summary>Of what is under where she comes to rest in a condition, what surely lets water in, and of that the deepest; null where nothing is under, or she has no position of rest afloat.</summary>
    public static UnderAtRest? Of(StabilityView view, Condition condition, FloatingResult? rest)
    {
        ArgumentNullException.ThrowIfNull(view);
        if (rest is not { Status: FloatingStatus.Floats, Position.Attitude: var at })
        {
            return null;
        }

        IEnumerable<Opening> places = view.Boat.Particulars?.Deck is null ? DeckEdge.WithOpenings(view, condition) : view.OpeningsIn(condition);
        return places.Select(place => (Place: place, HeightM: at.HeightAboveWaterM(place.Place)))
            .Where(place => !(place.HeightM > 0))
            .Select(place => Of(view.Boat, place.Place, -place.HeightM))
            .OrderBy(under => under.Fills ? 0 : 1).ThenByDescending(under => under.UnderM).FirstOrDefault();
    }

    private static UnderAtRest Of(BoatModel boat, Opening place, double underM)
    {
        (string? doubt, FindingInput? asked) = boat.Find<HullOpening>(place.Id) is { } opening ? DoubtOf(opening, place) : DoubtOfEdge(boat);
        return new UnderAtRest(place.Title, underM, doubt, asked);
    }

    private static (string?, FindingInput?) DoubtOf(HullOpening opening, Opening place) => opening switch
    {
        { Use: OpeningUse.ThroughHull } => ("whether what it leads to keeps the water out is not told", new FindingInput(opening.Id, "hasSeacock", IsMissing: opening.HasSeacock is null)),
        { Use: OpeningUse.Well, IsExtentTold: false, WaterEntersAt: { } middle } when middle.YM != place.Place.YM => ("how far out its sides lie is not given", new FindingInput(opening.Id, "clearBreadthM", IsMissing: true)),
        _ => (null, null),
    };

    private static (string?, FindingInput?) DoubtOfEdge(BoatModel boat) => boat.Particulars?.Deck switch
    {
        DeckKind.Open => (null, null),
        null => ("whether her deck is closed is not said", new FindingInput(boat.Particulars?.Id ?? "particulars", "deck", IsMissing: true)),
        _ => OpeningsGiven.WellsWithoutSides(boat).FirstOrDefault() is { } well
            ? ($"length and breadth of {well.Title} are not given", new FindingInput(well.Id, "clearBreadthM", IsMissing: true))
            : ("no coaming of her well is listed", new FindingInput("opening", "place", IsMissing: true)),
    };
}
