using System.Collections.Frozen;
using Orlop.Boat.Things;

namespace Orlop.Boat.Validation;

/// <summary>The rules a boat keeps: ranges, ids, references, and what must agree inside one thing. The file reader and the store ask here alike.</summary>
public static class BoatValidation
{
    /// <summary>Everything that is wrong in a boat; empty when nothing is.</summary>
    public static IReadOnlyList<Problem> Check(BoatModel boat)
    {
        ProblemList problems = new();
        Check(Entries(boat.Things), problems);
        return problems.InOrder();
    }

    internal static void Check(IReadOnlyList<ThingEntry> entries, ProblemList problems)
    {
        foreach (ThingEntry entry in entries.Where(entry => entry.Thing is not null))
        {
            RecordRules.CheckThing(entry.Thing!, entry.Spot, entry.IsWhole, problems);
        }

        BoatRules.CheckIds(entries, problems);
        ReferenceRules.Check(entries, FrozenDictionary<string, Spot>.Empty, problems);
        AlterationRules.CheckAltered(entries, problems);
    }

    private static List<ThingEntry> Entries(IReadOnlyList<Thing> things) =>
        [.. things.Select((thing, index) => new ThingEntry(thing, thing.Id, Spot.Thing(index, thing.Id), true))];
}
