using Orlop.Boat.Things;
using Orlop.Hull.Floating;
using Orlop.Review.Electrics;
using Orlop.Review.Findings;
using Orlop.Review.Practices;
using static Orlop.Review.Stability.StabilityLines;

namespace Orlop.Review.Stability.Checks;

/// <summary>Deck edge and openings stand as high over the water at rest as the owner wants.</summary>
public sealed class FreeboardCheck : ICheck<StabilityView>
{
    public CheckDescription Description { get; } = new(
        "freeboard",
        "Freeboard at rest",
        "Height of the lowest place of the deck edge (at the stations, straight between them) and of each opening that is not shut, over the water at rest, each with its own band, against the owner's own limit, in every condition; the place that is least sure to keep it is told; nothing where the owner set none.",
        [LimitIds.LeastFreeboardM])
    {
        IsCriterion = true,
    };

    public IEnumerable<Finding> Run(StabilityView view) => OwnersHold.Run(Description, view, "her freeboard", (loaded, at) =>
    {
        Opening[] places = DeckEdge.WithOpenings(view, loaded.Condition);
        NearbyRests nearby = view.NearbyIn(loaded.Condition);
        Limit limit = view.Practice!.Find(LimitIds.LeastFreeboardM)!;
        // A place a little higher may have the wider band, and its limit be the one that is not sure.
        (Opening lowest, Banded banded) = places
            .Select(place => (Place: place, Height: nearby.Banded(at.Attitude.HeightAboveWaterM(place.Place), near => near.Attitude.HeightAboveWaterM(place.Place))))
            .OrderByDescending(place => Verdicts.Weight(place.Height.AtLeast(limit.Value))).ThenBy(place => place.Height.Value).First();
        double height = banded.Value;
        Sentence told = height < 0
            ? Sentence.Of($"{Begun(DeckEdge.TitleOf(view.Boat, lowest.Id))} is {M(-height)} under water {FindingLines.In(loaded.Condition)}")
            : Sentence.Of($"{(height > places.Min(place => at.Attitude.HeightAboveWaterM(place.Place)) ? "Freeboard" : "Least freeboard")} {FindingLines.In(loaded.Condition)} is {M(height)}, {DeckEdge.TitleOf(view.Boat, lowest.Id)}");
        return OwnersHold.Held(Description, view, loaded, banded, limit, false, "m", told, DeckEdge.Heights(places, at.Attitude).Select(found =>
            new WorkingLine(DeckEdge.TitleOf(view.Boat, found.Place.Id), $"at {found.Place.Place}", M(found.HeightM), view.Boat.Find<HullOpening>(found.Place.Id) is { } opening && OpeningCorners.SillTaken(opening) is { } taken ? $"height over the water at rest; {taken}" : "height over the water at rest")));
    });
}
