using Orlop.Boat;
using Orlop.Boat.Things;
using Orlop.Hull.Floating;
using Orlop.Hull.Hydrostatics;
using Orlop.Review.Findings;
using static Orlop.Review.Stability.StabilityLines;

namespace Orlop.Review.Stability;

/// <summary>
/// An opening, or the deck edge, that is under water where a boat comes to rest, or less far over it than how sure her waterline is: she fills there, or may, and no number of her floating dry is hers.
/// </summary>
/// <param name="Title">What it is called: "Wheelhouse door", "deck edge at aft, port".</param>
/// <param name="UnderM">How far under, in m; below 0 over the water.</param>
/// <param name="HalfM">Half of its band, in m: two standard deviations, from those of displacement, LCG, TCG and KG; infinite where a boat a little heavier or lighter comes to no such rest.</param>
/// <param name="Doubt">Why it is not sure that water comes in there when it is under, within a sentence; null where it is.</param>
/// <param name="Asked">What would tell; null where it is sure.</param>
public sealed record UnderAtRest(string Title, double UnderM, double HalfM, string? Doubt, FindingInput? Asked)
{
    /// <summary>It is under, and by no less than its band; where the band cannot be told, under is enough.</summary>
    public bool IsSurelyUnder => UnderM >= (double.IsFinite(HalfM) ? HalfM : 0);

    /// <summary>She fills: it is surely under, and it is told that water comes in there.</summary>
    public bool Fills => Doubt is null && IsSurelyUnder;

    /// <summary>Its height over the water with its band and how that hangs on her weight.</summary>
    internal Banded Height { get; private init; }

    /// <summary>Which waterline: "where she comes to rest", "where her freeboards float her".</summary>
    public string Spot { get; private init; } = "where she comes to rest";

    /// <summary>"Wheelhouse door is 0.2 m under water where she comes to rest".</summary>
    internal Sentence Where => UnderM < 0 ? Sentence.Of($"{Title} is {M(-UnderM)} over the water {Spot}") : Sentence.Of($"{Title} is {M(UnderM)} under water {Spot}");

    /// <summary>Why it is not sure that she fills, after that: "and that may be 0.03 m more or less", "and whether her deck is closed is not said".</summary>
    internal Sentence Why => (IsSurelyUnder, Doubt) switch
    {
        (true, _) => Sentence.Of($"and {Doubt}"),
        (false, null) => Unsure,
        _ => Sentence.Of($"{Unsure}, and {Doubt}"),
    };

    private Sentence Unsure => double.IsFinite(HalfM) ? Sentence.Of($"and that may be {M(HalfM)} more or less") : Sentence.Of($"and how sure that is cannot be told");

    /// <summary>
    /// Of what is under where she comes to rest, or may be, what surely lets water in, and of that the deepest; null where all stand over the water by their bands, or she has no position of rest afloat.
    /// </summary>
    public static UnderAtRest? Of(StabilityView view, LoadedBoat loaded, FloatingResult? rest)
    {
        ArgumentNullException.ThrowIfNull(view);
        ArgumentNullException.ThrowIfNull(loaded);
        return Of(view, loaded, rest, _ => null);
    }

    /// <summary>
    /// The same of a boat of whose weight KG alone is not known, at the waterline of her freeboards, which ask for none. How far she heels when loaded otherwise goes by KG: what is under only by her heel may be dry.
    /// </summary>
    public static UnderAtRest? OfFreeboards(StabilityView view, LoadedBoat loaded)
    {
        ArgumentNullException.ThrowIfNull(view);
        ArgumentNullException.ThrowIfNull(loaded);
        if (loaded.WithoutKg is not { } afloat)
        {
            return null;
        }

        LoadedBoat weighed = loaded with { Total = afloat.Total, Input = afloat.Input };
        FloatingResult? rest = view.RestOf(weighed);
        Attitude? upright = rest?.Position is { } at ? at.Attitude with { HeelDeg = 0 } : null;
        return Of(view, weighed, rest, place => upright?.HeightAboveWaterM(place.Place) > 0 ? "how far she heels goes by KG, which is not known" : null) is { } under ? under with { Spot = "where her freeboards float her" } : null;
    }

    private static UnderAtRest? Of(StabilityView view, LoadedBoat loaded, FloatingResult? rest, Func<Opening, string?> alsoDoubted)
    {
        if (rest is not { Status: FloatingStatus.Floats, Position.Attitude: var at })
        {
            return null;
        }

        NearbyRests nearby = view.NearbyOf(loaded, rest);
        IEnumerable<Opening> places = view.Boat.Particulars?.Deck is null ? DeckEdge.WithOpenings(view, loaded.Condition) : view.OpeningsIn(loaded.Condition);
        return places.Select(place => (Place: place, Height: nearby.Banded(at.HeightAboveWaterM(place.Place), near => near.Attitude.HeightAboveWaterM(place.Place))))
            .Where(place => !(place.Height.Value > 0) || place.Height.AtLeast(0) != Verdict.Holds)
            .Select(place => Of(view.Boat, place.Place, place.Height, alsoDoubted(place.Place)))
            .OrderBy(under => under.Fills ? 0 : 1).ThenByDescending(under => under.UnderM).FirstOrDefault();
    }

    private static UnderAtRest Of(BoatModel boat, Opening place, Banded height, string? alsoDoubted)
    {
        (string? doubt, FindingInput? asked) = boat.Find<HullOpening>(place.Id) is { } opening ? DoubtOf(opening, place) : DoubtOfEdge(boat);
        return new UnderAtRest(place.Title, -height.Value, height.Half, doubt ?? alsoDoubted, asked) { Height = height };
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
