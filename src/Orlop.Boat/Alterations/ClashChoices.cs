using Orlop.Boat.Format;
using Orlop.Boat.Things;
using Orlop.Boat.Values;

namespace Orlop.Boat.Alterations;

/// <summary>What an owner can choose where an alteration's edit no longer fits the boat as built.</summary>
public static class ClashChoices
{
    /// <summary>The alteration with its edit standing, drafted anew against what is there now.</summary>
    public static Alteration KeepEdit(Alteration alteration, Clash clash) => Equals(clash.Found, clash.Wanted)
        ? DropEdit(alteration, clash)
        : With(alteration, clash, edit => edit with { Was = clash.Found });

    /// <summary>The alteration without the edit; what is there now stays.</summary>
    public static Alteration DropEdit(Alteration alteration, Clash clash) => alteration with
    {
        Edits = alteration.Edits.Where(edit => edit.Id != clash.Id || edit.BuiltOn is not null).ToValueList(),
    };

    /// <summary>The alteration with what the edit changes laid over what is there now; null where both changed the same field or one side is a removal.</summary>
    public static Alteration? KeepBoth(Alteration alteration, Clash clash) => Merged(clash) is not { } merged ? null
        : With(alteration, clash, edit => edit with { Was = clash.Found, Becomes = merged });

    private static Thing? Merged(Clash clash)
    {
        if (clash is not { Expected: { } expected, Found: { } found, Wanted: { } wanted } || expected.GetType() != found.GetType() || found.GetType() != wanted.GetType())
        {
            return null;
        }

        Thing merged = found;
        foreach (FieldSchema field in ThingSchema.Of(found.GetType()).Fields)
        {
            object? was = field.Get(expected), here = field.Get(found), mine = field.Get(wanted);
            if (Equals(was, mine))
            {
                continue;
            }

            if (!Equals(was, here) && !Equals(here, mine))
            {
                return null;
            }

            merged = ThingSchema.With(merged, field, mine);
        }

        return merged;
    }

    private static Alteration With(Alteration alteration, Clash clash, Func<Edit, Edit> change) => alteration with
    {
        Edits = alteration.Edits.Select(edit => edit.Id == clash.Id && edit.BuiltOn is null ? change(edit) : edit).ToValueList(),
    };
}
