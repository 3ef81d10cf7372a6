using System.Collections.Immutable;
using Orlop.Boat;
using Orlop.Boat.Things;
using Orlop.Review.Findings;

namespace Orlop.Review.Stability;

/// <summary>Whether the places through which water comes in are written down: a boat of which none is given floods nowhere, and nothing that rests on that may hold.</summary>
internal static class OpeningsGiven
{
    /// <summary>Openings without a place, or that there is none at all.</summary>
    public static ImmutableArray<FindingInput> Missing(BoatModel boat)
    {
        HullOpening[] openings = [.. boat.All<HullOpening>().Where(opening => opening.Use != OpeningUse.ThroughHull)];
        return openings.Length == 0
            ? [new FindingInput("opening", "place", IsMissing: true)]
            : [.. openings.Where(opening => opening.Place is null).Select(opening => new FindingInput(opening.Id, "place", IsMissing: true))];
    }
}
