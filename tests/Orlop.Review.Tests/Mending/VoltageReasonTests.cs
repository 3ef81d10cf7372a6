using Orlop.Boat;
using Orlop.Boat.Things;
using Orlop.Boat.Values;
using Orlop.Review.Findings;
using Orlop.Review.Mending;
using Xunit;
using static Orlop.Review.Tests.Mending.MendBoats;

namespace Orlop.Review.Tests.Mending;

/// <summary>Where nothing clears too little voltage, it is said where it is lost, what the thickest cables would reach and what would help.</summary>
public sealed class VoltageReasonTests
{
    // 5 A through a joint of 0.5 Ω, three of 0.3 mΩ and two links of 0.2 mΩ, a fuse of 5 mΩ, a battery of 10 mΩ inside: I·R each.
    [Fact]
    public void BadJoint_IsToldWithItsShare_AndNoCableHelps()
    {
        BoatModel boat = Boat(cable => cable with { Cores = cable.Cores.Select(core => core.Id == "plus" ? core with { FromEnd = core.FromEnd! with { ResistanceOhm = 0.5 } } : core).ToValueList() });
        MendResult result = Mend(boat, [Twin(10, 5)]);
        Finding beyond = Assert.Single(result.Beyond, finding => finding.CheckId == "voltage-drop");
        Sentence why = MendReasons.Of(beyond.CheckId, beyond.SubjectId, boat, beyond.ConditionId)!;

        double[] volts = [.. why.Parts.Select(part => part.Amount).OfType<Amount>().Where(amount => amount.Suffix == "V").Select(amount => amount.Value)];
        Assert.Equal(5 * (0.5 + (3 * 0.0003) + (2 * 0.0002)), volts[2], 1e-6);
        Assert.Equal(5 * 0.005, volts[3], 1e-6);
        Assert.Equal(5 * 0.010, volts[4], 1e-6);
        Assert.Equal(volts[0], volts[1] + volts[2] + volts[3], 1e-9);
        Assert.Contains(beyond.Headline.Parts, part => part.Amount is { Suffix: "V" } amount && Math.Abs(amount.Value - volts[0]) < 1e-9);
        Assert.Contains("What would help: fewer joints", why.ToString(), StringComparison.Ordinal);
    }

    // The lamp's terminals take 10 mm², of which 100 m lose a quarter of what 2.5 mm² do, and more than may be lost.
    [Fact]
    public void LongCable_IsToldWithTheBestItsTerminalsTake()
    {
        BoatModel boat = Boat(cable => cable with { LengthM = 100 });
        Finding beyond = Assert.Single(Mend(boat, [Twin(10, 5)]).Beyond, finding => finding.CheckId == "voltage-drop");
        string why = MendReasons.Of(beyond.CheckId, beyond.SubjectId, boat, beyond.ConditionId)!.ToString();

        string best = boat.Change<Cable>("lamp-cable", cable => cable with { AreaMm2 = 10 }).Worst("voltage-drop", "lamp").Headline.ToString();
        Assert.Contains("lamp-cable 10", why, StringComparison.Ordinal);
        Assert.Contains(best, why, StringComparison.Ordinal);
        Assert.Contains("What would help: a shorter way", why, StringComparison.Ordinal);
    }

    [Fact]
    public void TerminalsThatTakeNoMore_AreSaid() => Assert.Contains(
        "No cable on the way can become thicker",
        MendReasons.Of("voltage-drop", "lamp", Boat(cable => cable with { LengthM = 100 }).Change<ElectricLoad>("lamp", lamp => lamp with { TerminalMm2 = 2.5 }), "in-use")!.ToString(), StringComparison.Ordinal);

    // At the load what is lost inside the source counts too: 5 A through 1 Ω.
    [Fact]
    public void LeastVoltage_CountsTheSource()
    {
        BoatModel boat = Boat(cable => cable).Change<BatteryBank>("bank", bank => bank with { InternalResistanceOhm = 1 });
        Finding least = boat.Worst("least-voltage", "lamp");
        Assert.Equal(Verdict.Fails, least.Verdict);
        Sentence why = MendReasons.Of(least.CheckId, least.SubjectId, boat, least.ConditionId)!;
        Assert.Equal(5.0, why.Parts.Select(part => part.Amount).OfType<Amount>().Where(amount => amount.Suffix == "V").ElementAt(1).Value, 1e-6);
        Assert.Contains("What would help: a battery of less resistance", why.ToString(), StringComparison.Ordinal);
    }

    [Fact]
    public void WayThatIsNotWhole_HasNoReason() => Assert.Null(MendReasons.Of("voltage-drop", "lamp", Boat(cable => cable).Without("strap"), "in-use"));

    private static BoatModel Boat(Func<Cable, Cable> change) => SmallBoat.OneLamp(basis: "iso-small-craft").Change("lamp-cable", change);
}
