using Orlop.Boat;
using Orlop.Boat.Things;
using Orlop.Review.Findings;
using Xunit;

namespace Orlop.Review.Tests.Electrics.Checks;

/// <summary>A value that is left out never ends as a pass, in any check that rests on it.</summary>
public sealed class MissingValueTests
{
    private static readonly BoatModel Boat = SmallBoat.OneLamp();

    [Fact]
    public void EverythingGiven_Nothing_FailsOrIsUnknown() =>
        Assert.All(Boat.Findings(), finding => Assert.True(finding.Shown.Verdict is Verdict.Holds or Verdict.Tight, $"{finding.CheckId} {finding.SubjectId}: {finding.Shown.Headline}"));

    [Theory]
    [InlineData("conductor-ampacity", "lamp-cable")]
    [InlineData("device-carries-load", "fuse")]
    [InlineData("part-carries-current", "minus")]
    [InlineData("part-carries-current", "bank")]
    [InlineData("voltage-drop", "lamp")]
    [InlineData("least-voltage", "lamp")]
    [InlineData("load-can-be-served", "lamp")]
    public void DrawNotGiven_CheckThatRestsOnIt_IsUnknown(string checkId, string subjectId) =>
        Boat.Change<ElectricLoad>("lamp", lamp => lamp with { RunningA = null }).Worst(checkId, subjectId).IsUnknownFor("lamp", "runningA");

    [Theory]
    [InlineData("conductor-ampacity", "lamp-cable")]
    [InlineData("voltage-drop", "lamp")]
    [InlineData("least-voltage", "lamp")]
    public void LowestChargeNotGiven_CheckThatReadsIt_IsUnknown(string checkId, string subjectId) =>
        Boat.Change<Condition>("in-use", condition => condition with { LowestChargeFraction = null }).Worst(checkId, subjectId).IsUnknownFor("in-use", "lowestChargeFraction");

    [Theory]
    [InlineData("conductor-ampacity", "lamp-cable")]
    [InlineData("conductor-protection", "lamp-cable.plus")]
    public void InsulationNotGiven_CheckThatReadsIt_IsUnknown(string checkId, string subjectId) =>
        Boat.Change<Cable>("lamp-cable", cable => cable with { InsulationC = null }).Worst(checkId, subjectId).IsUnknownFor("lamp-cable", "insulationC");

    [Fact]
    public void SpaceTemperatureNotGiven_Ampacity_IsUnknown() =>
        Boat.Change<Space>("cabin", space => space with { AmbientC = null }).Worst("conductor-ampacity", "lamp-cable").IsUnknownFor("cabin", "ambientC");

    [Theory]
    [InlineData("conductor-ampacity")]
    [InlineData("run-clear-of-bilge")]
    public void WayAndSpaceOfAStretchNotGiven_IsUnknownAndNamesTheStretch(string checkId)
    {
        Finding finding = Boat.Change<Cable>("lamp-cable", cable => cable with { Run = [new RunLeg { LengthM = 2 }] }).Worst(checkId, "lamp-cable");
        finding.IsUnknownFor("lamp-cable", "run/1");
        Assert.Contains(finding.Working, line => line.Expression == "lamp-cable: way or space of run 1 is not given");
    }

    [Fact]
    public void LengthNotGiven_VoltageDrop_IsUnknown() =>
        Boat.Change<Cable>("lamp-cable", cable => cable with { LengthM = null }).Worst("voltage-drop", "lamp").IsUnknownFor("lamp-cable", "lengthM");

    [Fact]
    public void BreakingCapacityNotGiven_IsUnknown() =>
        Boat.Change<Protection>("fuse", fuse => fuse with { BreakingA = null }).Worst("breaking-capacity", "fuse").IsUnknownFor("fuse", "breakingA");

    [Fact]
    public void BatteryResistanceNotGiven_BreakingCapacity_IsUnknown() =>
        Boat.Change<BatteryBank>("bank", bank => bank with { InternalResistanceOhm = null }).Worst("breaking-capacity", "fuse").IsUnknownFor("bank", "internalResistanceOhm");

    [Fact]
    public void FullBatteryVoltageNotGiven_DeviceVoltage_IsUnknown() =>
        Boat.Change<BatteryBank>("bank", bank => bank with { OpenCircuit = [] }).Worst("device-voltage", "fuse").IsUnknownFor("bank", "openCircuit");

    [Fact]
    public void SecondCoreFeedsUnknownDraw_Ampacity_IsUnknown()
    {
        BoatModel boat = Boat.With(SmallBoat.Lamp("lamp-2", null))
            .Change<Cable>("lamp-cable", cable => cable with
            {
                Cores = [.. cable.Cores, SmallBoat.Core("plus-2", "fuse.out", "lamp-2.+"), SmallBoat.Core("minus-2", "minus.bar", "lamp-2.-")],
            });
        boat.Worst("conductor-ampacity", "lamp-cable").IsUnknownFor("lamp-2", "runningA");
    }

    [Fact]
    public void SecondBankShares_UnknownDraw_ItsLeadIsUnknown()
    {
        BoatModel boat = Boat.Change<ElectricLoad>("lamp", lamp => lamp with { RunningA = null }).With(
            SmallBoat.Battery("bank-2"),
            SmallBoat.LampCable("lead", "bank-2") with { AreaMm2 = 4 });
        boat.Worst("conductor-ampacity", "lead").IsUnknownFor("lamp", "runningA");
    }

    [Fact]
    public void InverterCutOffNotGiven_StartBesideIt_IsUnknown()
    {
        BoatModel boat = Boat.Change<ElectricLoad>("lamp", lamp => lamp with { StartRatio = 1.5, StartS = 0.2 }).With(
            new Inverter { Id = "inverter", RatedW = 100, OutputV = 230, IdleW = 5, ProportionalLossFraction = 0.1, OhmicLossPerW = 0 },
            SmallBoat.LampCable("inverter-cable", "inverter") with { Cores = [SmallBoat.Core("plus", "fuse.out", "inverter.in+"), SmallBoat.Core("minus", "minus.bar", "inverter.in-")] });
        boat.Worst("voltage-while-starting", "lamp").IsUnknownFor("inverter", "cutOffV");
    }

    [Fact]
    public void NoPractice_NoFindingThatNeedsALimit_Holds()
    {
        string[] needing = [.. new ReviewEngine([new Review.Electrics.ElectricsDiscipline()]).Checks.Where(check => check.LimitIds.Length > 0 && check.Id != "least-voltage" && check.Id != "voltage-while-starting").Select(check => check.Id)];
        PairedFinding[] findings = [.. Boat.Without("practice").Findings().Where(finding => needing.Contains(finding.CheckId))];
        Assert.NotEmpty(findings);
        Assert.All(findings, finding => Assert.Equal(Verdict.Unknown, finding.Shown.Verdict));
    }
}
