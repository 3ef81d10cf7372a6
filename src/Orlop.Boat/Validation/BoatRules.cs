using Orlop.Boat.Things;

namespace Orlop.Boat.Validation;

/// <summary>The rules of a boat's things together: ids once, and once what a boat has one of.</summary>
internal static class BoatRules
{
    public static void CheckIds(IReadOnlyList<ThingEntry> entries, ProblemList problems)
    {
        Dictionary<string, Spot> first = new(StringComparer.Ordinal);
        foreach (ThingEntry entry in entries.Where(entry => entry.Id is not null))
        {
            if (!first.TryAdd(entry.Id!, entry.Spot))
            {
                problems.Add(entry.Spot.At("id"), $"'{entry.Id}' again", $"an id of its own; {first[entry.Id!]} has this one", "Two things have the same id.");
            }
        }

        CheckSingle<Particulars>("particulars", entries, problems);
        CheckSingle<PracticeChoice>("practice", entries, problems);
        CheckSingle<HullLines>("hull-lines", entries, problems);
        CheckSingle<BareBoat>("bare-boat", entries, problems);
        CheckSingle<StabilityBasis>("stability-basis", entries, problems);
        CheckSingle<WayPreferences>("way-preferences", entries, problems);
    }

    private static void CheckSingle<T>(string kind, IReadOnlyList<ThingEntry> entries, ProblemList problems)
        where T : Thing
    {
        foreach (ThingEntry entry in entries.Where(entry => entry.Thing is T).Skip(1))
        {
            problems.Add(entry.Spot.At("kind"), $"a second {kind}", "one in a boat", $"A boat has one {kind}.");
        }
    }
}
