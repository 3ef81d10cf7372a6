using Orlop.Boat;
using Orlop.Boat.Things;
using Orlop.Boat.Values;
using Orlop.Work.Steps;
using Xunit;

namespace Orlop.Work.Tests.Steps;

/// <summary>Only loads that a reading feels are switched on for it, and what runs has its cautions (common practice, no source).</summary>
public class CommissionLoadTests
{
    // 0.01 W at 12 V is 0.8 mA: over the millohms that it shares with the pump it moves microvolts, of ranges of millivolts and more.
    [Fact]
    public void Commission_LoadThatMovesNoReading_IsLeftOff()
    {
        WorkStep step = Commission(0.01, "Horn");
        Assert.Contains("Need not be on", string.Join('\n', step.Details), StringComparison.Ordinal);
        Assert.Contains("Horn", step.Details.Single(detail => detail.ToString().StartsWith("Need not be on", StringComparison.Ordinal)).ToString(), StringComparison.Ordinal);
        Assert.DoesNotContain(step.Cautions, caution => caution.Text.StartsWith("Horn", StringComparison.Ordinal));
    }

    // 600 W at 12 V is 50 A: over the battery's 5 mΩ alone it moves the voltage by 0.25 V.
    [Theory]
    [InlineData("Horn", "Horn: at a berth")]
    [InlineData("Wiper", "Wiper: never on dry glass")]
    [InlineData("Bilge pump, aft", "Pumps: none runs dry")]
    public void Commission_LoadThatMovesAReading_IsOnWithItsCaution(string name, string caution)
    {
        WorkStep step = Commission(600, name);
        Assert.Contains(name, step.Details.Single(detail => detail.ToString().StartsWith("Switched on", StringComparison.Ordinal)).ToString(), StringComparison.Ordinal);
        Assert.Contains(step.Cautions, said => said.Kind == CautionKind.Running && said.Text.StartsWith(caution, StringComparison.Ordinal));
    }

    [Fact]
    public void Commission_EngineRuns_WarnsOfBeltsHeatAndExhaust()
    {
        Caution engine = DemoBoat.Pack("sampling-winch-second").Steps.Single(step => step.Key == "commission:lifting").Cautions.Single(caution => caution.Text.StartsWith("Engine running", StringComparison.Ordinal));
        Assert.All(["belts", "exhaust burn", "closed space", "carbon monoxide"], words => Assert.Contains(words, engine.Text, StringComparison.Ordinal));
        Assert.DoesNotContain(Commission(0.01, "Horn").Cautions, caution => caution.Text.StartsWith("Engine running", StringComparison.Ordinal));
    }

    private static WorkStep Commission(double watts, string name)
    {
        BoatModel boat = Boats.Small.WithThings(
        [
            .. Boats.Small.Things,
            new ElectricLoad { Id = "other", Name = name, Behaviour = LoadBehaviour.Power, NominalV = 12, RunningW = new Quantity(watts, Knowledge.Sheet), Uses = [new("at-anchor", 1)] },
            Boats.Pair("other-cable", "plus.bar", "other", 25, 1),
        ]);
        string[] pump = ["pump", "pump-fuse", "pump-strap", "pump-cable"];
        return Boats.Plan(boat, Boats.Pump with { Edits = [.. Boats.Pump.Edits.Where(edit => pump.Contains(edit.Id))] }).Steps.Single(step => step.Key == "commission:at-anchor");
    }
}
