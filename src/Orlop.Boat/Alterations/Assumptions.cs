using Orlop.Boat.Format;
using Orlop.Boat.Things;

namespace Orlop.Boat.Alterations;

/// <summary>
/// Edits of an alteration that nobody builds: how she is used and loaded, what she is held against, what lies at hand, what was measured. The alteration takes them as said;
/// they go into the boat as built with the last of what is built.
/// </summary>
public static class Assumptions
{
    /// <summary>It is no thing of the boat that hands make or change.</summary>
    public static bool IsOne(Thing thing) => thing is Condition or DayPlan or Climate or Deadweight or PracticeChoice or StabilityBasis or WayPreferences or StockItem or Tool or CataloguePart or Reading or Photograph or BerthTest;

    /// <summary>The edit is of such a thing.</summary>
    public static bool IsOne(Edit edit)
    {
        ArgumentNullException.ThrowIfNull(edit);
        return (edit.Becomes ?? edit.Was) is { } thing && IsOne(thing);
    }

    /// <summary>Which open edits go into the boat with those that were built: all that are taken as said where nothing else is left, otherwise those that what is built refers to.</summary>
    internal static IReadOnlySet<string> With(IReadOnlyCollection<Edit> open, IReadOnlyCollection<string> built)
    {
        HashSet<string> ids = [.. built];
        if (open.All(edit => ids.Contains(edit.Id) || IsOne(edit)))
        {
            return open.Select(edit => edit.Id).ToHashSet(StringComparer.Ordinal);
        }

        for (int before = 0; before != ids.Count;)
        {
            before = ids.Count;
            HashSet<string> referred = [.. open.Where(edit => ids.Contains(edit.Id)).Select(edit => edit.Becomes).OfType<Thing>().SelectMany(References.In)];
            ids.UnionWith(open.Where(edit => edit.Becomes is not null && IsOne(edit) && referred.Contains(edit.Id)).Select(edit => edit.Id));
        }

        return ids;
    }
}
