using Orlop.Boat.Things;
using Orlop.Boat.Values;
using Orlop.Presentation.Words;
using Orlop.Review.Findings;
using Orlop.Work.Scope;

namespace Orlop.Work.Steps;

/// <summary>Where a thing goes that is fitted, exchanged or moved: from aft, from the centre line, over the base line.</summary>
internal static class FitPlaces
{
    /// <summary>What the step that moves a thing says: its new space and place.</summary>
    public static Sentence Moved(PackScope scope, Thing thing)
    {
        string space = scope.Words.SpaceOf(thing.Id) is { } named ? PartWords.Small(named) : "space not given";
        return PlaceOf(thing) is { } place
            ? Sentence.Of($"Move {thing.Title} to its new place: {space}, {At(place)}.")
            : Sentence.Of($"Move {thing.Title} to its new place: {space}.");
    }

    /// <summary>What the step that fits a part or gear says of its place, also that it is not given; nothing of what has none, as a cable way.</summary>
    public static Sentence[] Words(Thing thing) => thing is not (Part or Gear) ? []
        : PlaceOf(thing) is { } place ? [Sentence.Of($"Its centre goes {At(place)}.")]
        : [Sentence.Of($"Where in its space it goes is not given.")];

    private static Place? PlaceOf(Thing thing) => thing switch { Part part => part.Place, Gear gear => gear.Place, _ => null };

    private static Sentence At(Place place) => Sentence.Of($"{Metres(place.XM)} {(place.XM < 0 ? "abaft" : "forward of")} the after perpendicular, {Metres(place.YM)} to {(place.YM < 0 ? "starboard" : "port")}, {Metres(place.ZM)} {(place.ZM < 0 ? "below" : "above")} the base line");

    private static Amount Metres(double lengthM) => new(Math.Abs(lengthM), "M");
}
