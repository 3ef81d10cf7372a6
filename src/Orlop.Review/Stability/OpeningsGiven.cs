using System.Collections.Immutable;
using Orlop.Boat;
using Orlop.Boat.Things;
using Orlop.Review.Findings;

namespace Orlop.Review.Stability;

/// <summary>
/// Whether the places through which water comes in are written down. A boat of which none is given floods nowhere, one of which nobody said whether she is decked may flood over
/// her side, and nothing that rests on either may hold.
/// </summary>
public static class OpeningsGiven
{
    /// <summary>Where she floods is known: whether her deck is closed, and over the deck edge or through an opening that is listed.</summary>
    public static bool IsAny(BoatModel boat) => WhyNot(boat) is null;

    /// <summary>Why it is not known where she floods, within a sentence; null where it is.</summary>
    public static string? WhyNot(BoatModel boat)
    {
        ArgumentNullException.ThrowIfNull(boat);
        return boat.Particulars?.Deck is null ? "whether her deck is closed is not said, so where she floods is not known"
            : IsOverEdge(boat) || All(boat).Any() ? null
            : "no opening is listed, so where she floods is not known";
    }

    /// <summary>Water comes in over the deck edge: she is open; or partly, and no well is listed; or a well is, whose sides are not known.</summary>
    public static bool IsOverEdge(BoatModel boat)
    {
        ArgumentNullException.ThrowIfNull(boat);
        return boat.Particulars?.Deck is DeckKind.Open || WellsWithoutSides(boat).Any() || (boat.Particulars?.Deck is DeckKind.PartlyOpen && !All(boat).Any(IsWell));
    }

    /// <summary>Wells of which length or breadth is not given: a point on the centre line says nothing of the heel at which she fills over the side of her well.</summary>
    public static IEnumerable<HullOpening> WellsWithoutSides(BoatModel boat) => All(boat).Where(opening => IsWell(opening) && !opening.IsExtentTold);

    /// <summary>What is taken for the sides of wells that nobody told, as lines of working.</summary>
    public static IEnumerable<WorkingLine> Taken(BoatModel boat) => WellsWithoutSides(boat).Select(well => new WorkingLine(
        "Taken", $"length and breadth of {well.Title} are not given: its sides are taken at the deck edge, as wide as she is there, and water to come in over the deck edge too", null, "our rule, no source: they are nowhere farther out"));

    /// <summary>Whether her deck is closed, openings without a place, or that there is none at all.</summary>
    public static ImmutableArray<FindingInput> Missing(BoatModel boat)
    {
        HullOpening[] openings = [.. All(boat)];
        return
        [
            .. boat.Particulars?.Deck is null ? [new FindingInput(boat.Particulars?.Id ?? "particulars", "deck", IsMissing: true)] : Array.Empty<FindingInput>(),
            .. openings.Length == 0 && !IsOverEdge(boat) ? [new FindingInput("opening", "place", IsMissing: true)] : Array.Empty<FindingInput>(),
            .. openings.Where(opening => opening.WaterEntersAt is null).Select(opening => new FindingInput(opening.Id, "place", IsMissing: true)),
        ];
    }

    private static bool IsWell(HullOpening opening) => opening.Use == OpeningUse.Well;

    private static IEnumerable<HullOpening> All(BoatModel boat)
    {
        ArgumentNullException.ThrowIfNull(boat);
        return boat.All<HullOpening>().Where(opening => opening.IsWayIn);
    }
}
