using Orlop.Boat.Alterations;
using Orlop.Boat.Things;
using Orlop.Boat.Values;

namespace Orlop.Boat.Validation;

/// <summary>The rules of alterations: edits that agree with themselves, and an altered boat in which every reference still holds.</summary>
internal static class AlterationRules
{
    /// <summary>Checks one alteration by itself. In one that is not whole, a side that is missing may only have been unreadable.</summary>
    public static void CheckEdits(Alteration alteration, Spot spot, bool isWhole, ProblemList problems)
    {
        for (int i = 0; i < alteration.Edits.Count; i++)
        {
            if (alteration.Edits[i] is not Edit edit)
            {
                continue;
            }

            Spot at = spot.At("edits").At(i);
            if (isWhole && edit is { Was: null, Becomes: null })
            {
                problems.Add(at, "neither was nor becomes", "was, becomes or both", "The edit does nothing.");
            }

            CheckSide(edit.Id, edit.Was, at.At("was"), problems);
            CheckSide(edit.Id, edit.Becomes, at.At("becomes"), problems);
        }
    }

    /// <summary>Checks the boat as each open alteration would leave it. One that clashes with the boat as built is left to the owner to rebase.</summary>
    public static void CheckAltered(IReadOnlyList<ThingEntry> entries, ProblemList problems)
    {
        if (entries.Any(entry => entry.Thing is null || entry.Id is null))
        {
            return;
        }

        BoatModel asBuilt = new() { Things = entries.Select(entry => entry.Thing!).ToValueList() };
        foreach (ThingEntry entry in entries.Where(entry => entry.IsWhole))
        {
            if (entry.Thing is Alteration { Status: AlterationStatus.Draft or AlterationStatus.Accepted or AlterationStatus.UnderWay } open && open.Edits.All(HoldsTogether))
            {
                CheckAltered(asBuilt, open, entries, entry.Spot.At("edits"), problems);
            }
        }
    }

    private static bool IsOf(string? id, Thing? side) => id is null || side?.Id is null || side.Id == id;

    private static bool HoldsTogether(Edit edit) =>
        edit.Was is not Alteration && edit.Becomes is not Alteration && IsOf(edit.Id, edit.Was) && IsOf(edit.Id, edit.Becomes);

    private static void CheckSide(string id, Thing? side, Spot spot, ProblemList problems)
    {
        if (side is Alteration)
        {
            problems.Add(spot.At("kind"), "alteration", "any other kind", "An alteration cannot alter an alteration.");
        }
        else if (side is not null && !IsOf(id, side))
        {
            problems.Add(spot.At("id"), $"'{side.Id}'", $"'{id}', the id of the edit", "The edit and the thing in it have different ids.");
        }
    }

    private static void CheckAltered(BoatModel asBuilt, Alteration alteration, IReadOnlyList<ThingEntry> entries, Spot edits, ProblemList problems)
    {
        EditOutcome outcome = AlteredBoat.Of(asBuilt, alteration);
        if (outcome.Clashes.Count > 0)
        {
            return;
        }

        Dictionary<string, Spot> edited = new(StringComparer.Ordinal);
        for (int i = 0; i < alteration.Edits.Count; i++)
        {
            if (alteration.Edits[i].BuiltOn is null)
            {
                edited[alteration.Edits[i].Id] = edits.At(i);
            }
        }

        Dictionary<string, ThingEntry> untouched = entries.Where(entry => entry.Id is not null).DistinctBy(entry => entry.Id).ToDictionary(entry => entry.Id!);
        ReferenceRules.Check(
            [.. outcome.Boat.Things
                .Where(thing => thing is not (Reading or Photograph))
                .Select(thing => edited.TryGetValue(thing.Id, out Spot? edit)
                    ? new ThingEntry(thing, thing.Id, edit.At("becomes"), true)
                    : untouched[thing.Id])],
            edited,
            problems);
    }
}
