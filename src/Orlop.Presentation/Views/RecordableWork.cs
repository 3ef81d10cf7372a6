using Orlop.Boat;
using Orlop.Boat.Things;

namespace Orlop.Presentation.Views;

/// <summary>Alterations that work can be recorded on, in the order in which they are offered: what is under way first, of several what was worked on last; then what is accepted, what is drafted, what is built.</summary>
public static class RecordableWork
{
    /// <summary>All but the dropped and the empty ones. Accepted work of which a step is ticked or an edit is built counts as under way.</summary>
    public static IEnumerable<Alteration> Of(BoatModel boat)
    {
        ArgumentNullException.ThrowIfNull(boat);
        return boat.All<Alteration>().Where(alteration => alteration.Status is not AlterationStatus.Dropped && alteration.Edits.Count > 0).OrderBy(Rank).ThenByDescending(LastWorkedOn);
    }

    private static int Rank(Alteration alteration) => alteration.Status switch
    {
        AlterationStatus.UnderWay => 0,
        AlterationStatus.Accepted => LastWorkedOn(alteration) is null ? 1 : 0,
        AlterationStatus.Draft => 2,
        _ => 3,
    };

    // The last day on which a step was ticked or an edit built; null where neither was.
    private static DateOnly? LastWorkedOn(Alteration alteration) => alteration.Ticks.Select(tick => (DateOnly?)tick.On).Concat(alteration.Edits.Select(edit => edit.BuiltOn)).Max();
}
