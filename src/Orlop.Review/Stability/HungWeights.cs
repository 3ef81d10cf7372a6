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
        select Of(deadweight, view.LoadedIn(condition));

    private static HungWeight Of(Deadweight deadweight, LoadedBoat with)
    {
        LedgerItem? item = with.Ledger.Rows.FirstOrDefault(row => row.ThingId == deadweight.Id) is { } row ? WeightLedger.Item(row) : null;
        if (item is null || with is not { Total: { } total, Input: { } input })
        {
            return new HungWeight(deadweight, with, null, item);
        }

        WeightTotal light = total.With([new WeightChange(item, null)]);
        LoadedBoat? without = light.MassKg > 0 ? with with { Total = light, Input = input with { MassKg = light.MassKg, CentreOfGravity = light.Centre } } : null;
        return new HungWeight(deadweight, with, without, item);
    }
}
