using Orlop.Boat.Things;

namespace Orlop.Drawings.Boats;

/// <summary>People, stores and hung weights that are not aboard in the condition whose waterline is drawn: they are in none of its numbers.</summary>
internal static class Ashore
{
    /// <summary>Ends the accessible name of such a thing.</summary>
    internal const string Remark = ", not aboard in this condition";

    /// <summary>Stands below a drawing that has any.</summary>
    internal const string Legend = "Faint and dotted: not aboard in this condition. ";

    /// <summary>It is not aboard; false without a condition, and for all that is always there.</summary>
    internal static bool Is(Thing thing, BoatDrawingOptions options) => options.ConditionId is { } condition && thing is Deadweight weight && weight.PiecesIn(condition) == 0;
}
