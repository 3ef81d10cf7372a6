using System.Collections.Immutable;
using Orlop.Boat;
using Orlop.Boat.Things;
using Orlop.Review.Findings;

namespace Orlop.Review.Stability;

/// <summary>Whether the places through which water comes in are written down: a boat of which none is given floods nowhere, and nothing that rests on that may hold.</summary>
public static class OpeningsGiven
{
    /// <summary>An opening through which water can come in is listed; without one, where she floods is not known.</summary>
    public static bool IsAny(BoatModel boat) => All(boat).Any();

    /// <summary>Openings without a place, or that there is none at all.</summary>
    public static ImmutableArray<FindingInput> Missing(BoatModel boat)
    {
        HullOpening[] openings = [.. All(boat)];
        return openings.Length == 0
            ? [new FindingInput("opening", "place", IsMissing: true)]
            : [.. openings.Where(opening => opening.WaterEntersAt is null).Select(opening => new FindingInput(opening.Id, "place", IsMissing: true))];
    }

    private static IEnumerable<HullOpening> All(BoatModel boat)
    {
        ArgumentNullException.ThrowIfNull(boat);
        return boat.All<HullOpening>().Where(opening => opening.IsWayIn);
    }
}
