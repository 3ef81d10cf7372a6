using Orlop.Boat.Things;

namespace Orlop.Boat.Alterations;

/// <summary>What alterations made of a thing after a day.</summary>
public static class EditsSince
{
    /// <summary>
    /// The edits that brought a thing to what it is in this boat, the newest first: those not built yet that are in her, where she is a boat as altered, then those built after the day; what was built on the
    /// day itself is not among them. What was changed otherwise is in none.
    /// </summary>
    public static IReadOnlyList<Edit> Of(BoatModel boat, string id, DateOnly day)
    {
        ArgumentNullException.ThrowIfNull(boat);
        (AlterationStatus Status, Edit Edit)[] edits = [.. boat.All<Alteration>().SelectMany(alteration => alteration.Edits.Where(edit => edit.Id == id).Select(edit => (alteration.Status, edit)))];
        List<Edit> open = [.. edits.Where(one => one.Edit.BuiltOn is null && one.Status != AlterationStatus.Dropped).Select(one => one.Edit)];
        List<Edit> found = [];
        Thing? now = boat.Find(id);
        while (open.Find(edit => Equals(edit.Becomes, now) && !Equals(edit.Was, now)) is { } drafted)
        {
            open.Remove(drafted);
            found.Add(drafted);
            now = drafted.Was;
        }

        return [.. found, .. edits.Select(one => one.Edit).Where(edit => edit.BuiltOn > day).Reverse().OrderByDescending(edit => edit.BuiltOn)];
    }
}
