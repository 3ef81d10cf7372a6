using Orlop.Boat.Things;
using Orlop.Hull.Measuring;

namespace Orlop.Review.Stability;

/// <summary>A weight that hangs from a hook in a condition, and the boat with and without it.</summary>
/// <param name="Deadweight">What hangs.</param>
/// <param name="With">The boat with it.</param>
/// <param name="Without">The same boat once it is let go; null where she cannot be floated.</param>
/// <param name="Item">Mass and hook, as the engine takes them; null where one of them is not given.</param>
internal sealed record HungWeight(Deadweight Deadweight, LoadedBoat With, LoadedBoat? Without, LedgerItem? Item)
{
    /// <summary>Each hung weight in each condition that has it.</summary>
    public static IEnumerable<HungWeight> In(StabilityView view) =>
        from deadweight in view.Boat.All<Deadweight>()
        where deadweight.Use == DeadweightUse.Hung
        from condition in view.Conditions
        where deadweight.Aboard.Any(count => count.Condition == condition.Id && count.PieceCount > 0)
        select Of(view, deadweight, view.LoadedIn(condition));

    private static HungWeight Of(StabilityView view, Deadweight deadweight, LoadedBoat with)
    {
        LedgerItem? item = with.Ledger.Rows.FirstOrDefault(row => row.ThingId == deadweight.Id) is { } row ? WeightLedger.Item(row) : null;
        return new HungWeight(deadweight, with, item is null ? null : with.Instead(view.Weight, [deadweight.Id], null), item);
    }
}
