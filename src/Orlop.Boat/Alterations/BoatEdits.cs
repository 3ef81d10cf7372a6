using Orlop.Boat.Things;

namespace Orlop.Boat.Alterations;

/// <summary>An edit that does not fit the boat it is applied to: what it expected, what is there.</summary>
/// <param name="Id">Id of the thing.</param>
/// <param name="Expected">The thing as the edit saw it; null where it saw none.</param>
/// <param name="Found">The thing as it is now; null where there is none.</param>
/// <param name="Wanted">What the edit would make of it; null for a removal.</param>
public sealed record Clash(string Id, Thing? Expected, Thing? Found, Thing? Wanted);

/// <summary>A boat with edits applied, and the edits that did not fit and were left out.</summary>
public sealed record EditOutcome(BoatModel Boat, IReadOnlyList<Clash> Clashes);

/// <summary>Applies edits. An edit fits when the thing it names is still as the edit saw it; otherwise it is a clash, never resolved in silence.</summary>
public static class BoatEdits
{
    /// <summary>Adds a thing that is not there yet.</summary>
    public static Edit Add(Thing thing) => new() { Id = thing.Id, Becomes = thing };

    /// <summary>Replaces a thing by another with the same id.</summary>
    public static Edit Replace(Thing was, Thing becomes) => new() { Id = was.Id, Was = was, Becomes = becomes };

    /// <summary>Removes a thing.</summary>
    public static Edit Remove(Thing was) => new() { Id = was.Id, Was = was };

    /// <summary>The edit that takes an edit back.</summary>
    public static Edit Inverse(Edit edit) => new() { Id = edit.Id, Was = edit.Becomes, Becomes = edit.Was };

    /// <summary>Applies edits in order. A replaced thing keeps its position; an added one goes to the end.</summary>
    public static EditOutcome Apply(BoatModel boat, IEnumerable<Edit> edits)
    {
        List<Thing> things = [.. boat.Things];
        List<Clash> clashes = [];
        foreach (Edit edit in edits)
        {
            int index = things.FindIndex(thing => thing.Id == edit.Id);
            Thing? found = index < 0 ? null : things[index];
            if (!Equals(found, edit.Was))
            {
                clashes.Add(new Clash(edit.Id, edit.Was, found, edit.Becomes));
            }
            else if (edit.Becomes is null)
            {
                if (index >= 0)
                {
                    things.RemoveAt(index);
                }
            }
            else if (index < 0)
            {
                things.Add(edit.Becomes);
            }
            else
            {
                things[index] = edit.Becomes;
            }
        }

        return new EditOutcome(boat.WithThings(things), clashes);
    }

    /// <summary>The edits that lead from one boat to another, in the order of the things.</summary>
    public static IReadOnlyList<Edit> Between(BoatModel from, BoatModel to)
    {
        List<Edit> edits = [];
        foreach (Thing was in from.Things)
        {
            Thing? becomes = to.Find(was.Id);
            if (!Equals(was, becomes))
            {
                edits.Add(new Edit { Id = was.Id, Was = was, Becomes = becomes });
            }
        }

        edits.AddRange(to.Things.Where(thing => from.Find(thing.Id) is null).Select(Add));
        return edits;
    }
}
