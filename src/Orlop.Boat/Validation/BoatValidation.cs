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

    /// <summary>What would be wrong if this thing were put into the boat, in place of the one with its id: in the thing, and in what points at it.</summary>
    public static IReadOnlyList<Problem> Check(BoatModel boat, Thing candidate)
    {
        int index = boat.Things.ToList().FindIndex(thing => thing.Id == candidate.Id);
        List<Thing> things = [.. boat.Things];
        if (index < 0)
        {
            index = things.Count;
            things.Add(candidate);
        }
        else
        {
            things[index] = candidate;
        }

        ProblemList problems = new();
        Check(Entries(things), problems);
        HashSet<Problem> known = problems.Count == 0 ? [] : [.. Check(boat)];
        return [.. problems.WithSpots().Where(entry => entry.Spot.Order == index || !known.Contains(entry.Problem)).Select(entry => entry.Problem)];
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
