using Orlop.Boat.Alterations;
using Orlop.Boat.Chains;
using Orlop.Boat.Things;
using Orlop.Boat.Validation;
using Orlop.Boat.Values;
using Xunit;

namespace Orlop.Boat.Tests.Chains;

/// <summary>A boat with a battery and two bars, and a pump's plan to draw in it.</summary>
internal static class ChainBoat
{
    public static BoatModel Bare { get; } = new()
    {
        Things =
        [
            new Condition { Id = "at-anchor" },
            new BatteryBank { Id = "bank", Chemistry = BatteryChemistry.LithiumIronPhosphate, NominalV = 24 },
            new Busbar { Id = "plus" },
            new Busbar { Id = "minus", IsBonded = true },
            new Link { Id = "bank-plus", From = new("bank", "+"), To = new("plus", "bar") },
            new Link { Id = "bank-minus", From = new("minus", "bar"), To = new("bank", "-") },
        ],
    };

    public static CircuitPlan Pump { get; } = new()
    {
        LoadName = "Wash-down pump",
        NominalV = 24,
        RunningW = 80,
        OnIn = ["at-anchor"],
        From = new Terminal("plus", "bar"),
        Return = new Terminal("minus", "bar"),
        Protection = ProtectionMeans.Fuse,
        ProtectionA = 10,
        AreaMm2 = 2.5,
        OutM = 4.2,
    };

    public static BoatModel With(CircuitPlan plan) => Applied(Bare, ChainBuilder.NewCircuit(Bare, plan));

    /// <summary>The boat with edits, which must fit and leave a boat that obeys every rule.</summary>
    public static BoatModel Applied(BoatModel boat, IReadOnlyList<Edit> edits)
    {
        EditOutcome outcome = BoatEdits.Apply(boat, edits);
        Assert.Empty(outcome.Clashes);
        Assert.Empty(BoatValidation.Check(outcome.Boat));
        return outcome.Boat;
    }
}
