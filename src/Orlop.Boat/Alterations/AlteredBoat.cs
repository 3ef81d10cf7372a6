using Orlop.Boat.Things;
using Orlop.Boat.Values;

namespace Orlop.Boat.Alterations;

/// <summary>The boat as an alteration would make it, and how the alteration itself is changed.</summary>
public static class AlteredBoat
{
    /// <summary>The boat as built with the edits of an alteration that are not built yet; clashes where the boat has moved on.</summary>
    public static EditOutcome Of(BoatModel asBuilt, Alteration alteration) =>
        BoatEdits.Apply(asBuilt, alteration.Edits.Where(edit => edit.BuiltOn is null));

    /// <summary>A boat as altered with the alteration among her things, also where it is in no file yet: what it changes can then be told from what was always so.</summary>
    public static BoatModel Holding(BoatModel altered, Alteration alteration)
    {
        ArgumentNullException.ThrowIfNull(altered);
        ArgumentNullException.ThrowIfNull(alteration);
        return Equals(altered.Find(alteration.Id), alteration) ? altered : altered.WithThings([.. altered.Things.Where(thing => thing.Id != alteration.Id), alteration]);
    }

    /// <summary>Edits may go into the alteration: it is neither built nor dropped.</summary>
    public static bool TakesEdits(Alteration alteration) => alteration is { Status: not (AlterationStatus.Built or AlterationStatus.Dropped) };

    /// <summary>
    /// The alteration with one more edit: <paramref name="becomes"/> in place of the thing <paramref name="id"/> of the altered boat,
    /// or its removal when null. Edits of one thing are folded into one; an edit that ends where it began goes away.
    /// </summary>
    public static Alteration WithEdit(BoatModel asBuilt, Alteration alteration, string id, Thing? becomes)
    {
        List<Edit> edits = [.. alteration.Edits];
        int index = edits.FindIndex(edit => edit.Id == id && edit.BuiltOn is null);
        Thing? was = index < 0 ? asBuilt.Find(id) : edits[index].Was;
        Edit folded = new() { Id = id, Was = was, Becomes = becomes };
        bool isNothing = Equals(was, becomes);
        if (index >= 0 && isNothing)
        {
            edits.RemoveAt(index);
        }
        else if (index >= 0)
        {
            edits[index] = folded;
        }
        else if (!isNothing)
        {
            edits.Add(folded);
        }

        return alteration with { Edits = edits.ToValueList() };
    }

    /// <summary>The alteration seen against the boat as it is now: each edit's <c>Was</c> is what is there. The owner has seen the clashes.</summary>
    public static Alteration Rebased(BoatModel asBuilt, Alteration alteration) => alteration with
    {
        Edits = alteration.Edits
            .Select(edit => edit.BuiltOn is null ? edit with { Was = asBuilt.Find(edit.Id) } : edit)
            .Where(edit => edit.BuiltOn is not null || !Equals(edit.Was, edit.Becomes))
            .ToValueList(),
    };

    /// <summary>The alteration with another status. The day on which it was accepted is kept with it, and forgotten when it no longer is.</summary>
    public static Alteration Become(Alteration alteration, AlterationStatus status, DateOnly today)
    {
        ArgumentNullException.ThrowIfNull(alteration);
        return alteration with
        {
            Status = status,
            AcceptedOn = status switch
            {
                AlterationStatus.Accepted => today,
                AlterationStatus.UnderWay or AlterationStatus.Built => alteration.AcceptedOn,
                _ => null,
            },
        };
    }

    /// <summary>
    /// The edits that record an edit of an alteration as built: the thing itself, and the alteration with the day on it. What is only taken as said (<see cref="Assumptions"/>) goes in
    /// with what refers to it, and all of it with the last that is built. The status becomes under way, or built when nothing is left to build.
    /// </summary>
    public static IReadOnlyList<Edit> Build(BoatModel asBuilt, Alteration alteration, IReadOnlyCollection<string> ids, DateOnly on)
    {
        IReadOnlySet<string> all = Assumptions.With([.. alteration.Edits.Where(edit => edit.BuiltOn is null)], ids);
        List<Edit> done = [.. alteration.Edits.Where(edit => edit.BuiltOn is null && all.Contains(edit.Id))];
        ValueList<Edit> edits = alteration.Edits
            .Select(edit => edit.BuiltOn is null && all.Contains(edit.Id) ? edit with { BuiltOn = on } : edit)
            .ToValueList();
        Alteration recorded = alteration with
        {
            Edits = edits,
            Status = edits.All(edit => edit.BuiltOn is not null) ? AlterationStatus.Built : AlterationStatus.UnderWay,
        };
        return [.. done.Select(edit => edit with { BuiltOn = null }), BoatEdits.Replace(asBuilt.Find<Alteration>(alteration.Id) ?? alteration, recorded)];
    }
}
