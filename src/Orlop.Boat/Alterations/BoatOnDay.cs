using Orlop.Boat.Things;

namespace Orlop.Boat.Alterations;

/// <summary>The boat as she was built on a day.</summary>
public static class BoatOnDay
{
    /// <summary>
    /// The boat without what alterations have built after a day, the newest taken back first; what was built on the day itself is in her. What was changed
    /// otherwise since stays as it is now.
    /// </summary>
    public static BoatModel Of(BoatModel asBuilt, DateOnly day)
    {
        ArgumentNullException.ThrowIfNull(asBuilt);
        return BoatEdits.Apply(asBuilt, asBuilt.All<Alteration>()
            .SelectMany(alteration => alteration.Edits.Where(edit => edit.BuiltOn > day).Reverse())
            .OrderByDescending(edit => edit.BuiltOn)
            .Select(BoatEdits.Inverse)).Boat;
    }
}
