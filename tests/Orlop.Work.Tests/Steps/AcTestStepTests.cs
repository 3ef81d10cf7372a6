using Orlop.Boat;
using Orlop.Boat.Things;
using Orlop.Work.Steps;
using Xunit;

namespace Orlop.Work.Tests.Steps;

/// <summary>What the pack asks to be measured on the AC side, on the demo boat with a kettle cable of another section.</summary>
public sealed class AcTestStepTests
{
    private static WorkPack Thicker(Func<BoatModel, BoatModel>? change = null)
    {
        BoatModel boat = change is null ? DemoBoat.Read() : change(DemoBoat.Read());
        Cable was = boat.Find<Cable>("kettle-cable")!;
        return WorkPacks.Plan(boat, new Alteration { Id = "thicker", Name = "Thicker kettle cable", Purpose = "It gets warm.", Edits = [new Edit { Id = was.Id, Was = was, Becomes = was with { AreaMm2 = 2.5 } }] }, TestContext.Current.CancellationToken);
    }

    private static WorkStep Step(WorkPack pack, string key) => Assert.Single(pack.Steps, step => step.Key == key);

    // By hand, tinned class 5 of 2.5 mm² at 20 °C: 8.21 ohm/km (IEC 60228): 2.2 m to the bar and 0.7 m to the inlet with four ends of 0.4 mΩ.
    [Fact]
    public void Dead_ProtectiveConductor_IsPredictedByHand()
    {
        WorkStep dead = Step(Thicker(), "test:ac-dead");
        double ohm = ((2.2 + 0.7) * 8.21e-3) + (4 * 0.0004);
        Assert.Contains(dead.Details, detail => detail.ToString().Contains("Shore inlet", StringComparison.Ordinal)
            && detail.Parts.Any(part => part.Amount is { Suffix: "Ohm" } amount && Math.Abs(amount.Value - ohm) < 1e-9));
        Assert.Contains(dead.Cautions, caution => caution.Kind == CautionKind.Mains && caution.Text.Contains("licensed", StringComparison.Ordinal));
    }

    // The greatest loop: 30 mA is 50/0.03 = 1667 ohm, of which two thirds are accepted cold.
    [Fact]
    public void Live_LoopAndResidualDevice_AreToldWithTheirBands()
    {
        WorkStep live = Step(Thicker(), "test:ac-live");
        Assert.Contains(live.Details, detail => detail.ToString().StartsWith("Loop at Kettle", StringComparison.Ordinal) && detail.Parts.Any(part => part.Amount is { } most && Math.Abs(most.Value - (50 / 0.03 * 2 / 3)) < 1e-6));
        Assert.Contains(live.Details, detail => detail.ToString().Contains("test button", StringComparison.Ordinal));
        Assert.Contains(live.Details, detail => detail.ToString().Contains("0.3 S", StringComparison.Ordinal) && detail.ToString().Contains("0.04 S", StringComparison.Ordinal));
        Assert.Contains(live.Details, detail => detail.ToString().Contains("inside Inverter 1.6 kVA", StringComparison.Ordinal));
    }

    [Fact]
    public void SourceResistanceNotGiven_TellsNoLoop() => Assert.Contains(
        Step(Thicker(boat => boat.WithThings(boat.Things.Select(thing => thing is ShoreInlet inlet ? inlet with { SourceOhm = null } : thing))), "test:ac-live").Details,
        detail => detail.ToString().StartsWith("Loop at Kettle", StringComparison.Ordinal) && detail.ToString().Contains("cannot be worked out", StringComparison.Ordinal));

    [Fact]
    public void AlterationOfTheDcSide_AsksForNoAcReadings() => Assert.DoesNotContain(DemoBoat.Pack("sampling-winch-second").Steps, step => step.Key.StartsWith("test:ac", StringComparison.Ordinal));
}
