using Orlop.Boat;
using Orlop.Boat.Things;
using Orlop.Boat.Topology;
using Orlop.Review.Findings;
using Orlop.Review.Heat;

namespace Orlop.Review.Mending;

/// <summary>Why nothing that mending may propose clears a finding, and what would: in words, where it is known.</summary>
public static class MendReasons
{
    /// <summary>The reason; null where there is none but that no choice does it.</summary>
    /// <param name="checkId">The check.</param>
    /// <param name="subjectId">What the finding is about.</param>
    /// <param name="draft">The boat that was to be mended.</param>
    /// <param name="conditionId">The condition it is worst in; null where it is the same in all.</param>
    public static Sentence? Of(string checkId, string subjectId, BoatModel draft, string? conditionId = null)
    {
        ArgumentNullException.ThrowIfNull(draft);
        return VoltageReasons.IsOf(checkId) ? VoltageReasons.Of(checkId, subjectId, conditionId, draft)
            : Plain(checkId, subjectId, draft) is { } words ? Sentence.Of($"{words}")
            : null;
    }

    private static string? Plain(string checkId, string subjectId, BoatModel draft) => checkId switch
    {
        "strings-alike" => "No part clears it: batteries of one bank are of one chemistry, size and age, and are replaced together. Until then the odd ones are parted from the bank, each bank with a charger and fuses of its own.",
        "strings-whole" => "No part clears it: the batteries are joined as they belong, on board and in the model, with every lead taken off and the posts covered meanwhile.",
        "strings-share" when draft.Find<BatteryBank>(ElementIds.ThingOf(subjectId)) is { ParallelCount: > 1 } => "Draw its strings with their leads first: nothing can be told or changed of strings that are not drawn.",
        "strings-share" => "Leads of one length and size clear it only where each string has as many leads of its own, of known length, to one point; strings that are joined one to the next are led to one bar first. Batteries that differ in capacity, voltage or resistance share unevenly with any leads.",
        "strings-protected" => "A fuse on each plus post, before all that is bolted there, would part the strings; none of the catalogue's fits without new trouble, or nothing is bolted to a post.",
        "space-temperature" => OfSpace(draft.Find<Space>(subjectId), false),
        "charger-output" or "charge-temperature" => OfSpace(draft.Find<Part>(ElementIds.ThingOf(subjectId))?.Space is { } space ? draft.Find<Space>(space) : null, true),
        _ => null,
    };

    private static string? OfSpace(Space? space, bool isReckonedNeeded) => space switch
    {
        null => null,
        { Use: SpaceUse.OpenDeck } => "It stands in the open air, which no opening cools.",
        _ when !SpaceWarmth.IsDescribed(space) => $"How heat leaves {space.Title} is not described, and its temperature is as typed: no opening or fan can be reckoned with. Describe its sides and openings.",
        { IsReckoned: not true } when isReckonedNeeded => $"The temperature of {space.Title} is as typed, whatever its openings are. Choose that it is reckoned, and openings and fans can be tried.",
        _ => $"No opening or fan of the catalogue is enough for {space.Title}, or none without new trouble: less heat in it, or cooler air to take in, may be.",
    };
}
