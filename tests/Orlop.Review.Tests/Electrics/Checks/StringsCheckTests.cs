using Orlop.Boat;
using Orlop.Boat.Things;
using Orlop.Review.Findings;
using Xunit;

namespace Orlop.Review.Tests.Electrics.Checks;

/// <summary>Batteries in series and side by side: whole, alike, sharing, each protected. Limits: common practice, no source.</summary>
public sealed class StringsCheckTests
{
    [Fact]
    public void TwoSideBySide_AllHold() => Assert.All(
        StringBoat.Beside().Findings().Where(finding => finding.CheckId.StartsWith("strings-", StringComparison.Ordinal)), finding => Assert.Equal(Verdict.Holds, finding.Shown.Verdict));

    [Fact]
    public void TwoInSeries_GiveTheSumOfTheirPlates()
    {
        Finding finding = StringBoat.InSeries().Worst("strings-whole", "bank");
        Assert.Equal(Verdict.Holds, finding.Verdict);
        Assert.Contains("12 V", finding.Headline.ToString(), StringComparison.Ordinal);
    }

    [Fact]
    public void OneInSeriesTurned_FailsAndIsNamed()
    {
        BoatModel boat = StringBoat.InSeries().With(StringBoat.Lead("series", "bank.-", "bank-2.-", 0.3), StringBoat.Lead("minus-strap", "bank-2.+", "minus.bar", 0.5));
        Finding finding = boat.Worst("strings-whole", "bank");
        Assert.Equal(Verdict.Fails, finding.Verdict);
        Assert.StartsWith("bank-2 stands the wrong way round", finding.Headline.ToString(), StringComparison.Ordinal);
        Assert.NotNull(finding.Caution);
    }

    [Fact]
    public void OneOfTwoBesideTurned_FailsAndIsNamed()
    {
        BoatModel boat = StringBoat.Beside().With(StringBoat.Lead("plus-2", "bank-2.-", "fuse-2.in", 0.5), StringBoat.Lead("minus-2", "bank-2.+", "minus.bar", 0.5));
        Assert.StartsWith("bank-2 stands the wrong way round", boat.Worst("strings-whole", "bank-2").Headline.ToString(), StringComparison.Ordinal);
        Assert.Equal(Verdict.Holds, boat.Worst("strings-whole", "bank").Verdict);
    }

    [Fact]
    public void OneSixVoltBatteryAloneForTwelveVolts_Fails() =>
        Assert.Equal(Verdict.Fails, SmallBoat.OneLamp().Change<BatteryBank>("bank", bank => bank with { NominalV = 6 }).Worst("strings-whole", "bank").Verdict);

    [Fact]
    public void OneBatteryOfTheRightVoltage_IsNoString() => Assert.DoesNotContain(SmallBoat.OneLamp().Findings(), finding => finding.CheckId.StartsWith("strings-", StringComparison.Ordinal));

    [Theory]
    [InlineData(100, Verdict.Holds)]
    [InlineData(90.5, Verdict.Tight)]
    [InlineData(90, Verdict.Tight)]
    [InlineData(89, Verdict.Fails)]
    public void CapacitiesApart_AgainstATenth(double capacityAh, Verdict verdict) =>
        Assert.Equal(verdict, StringBoat.InSeries().Change<BatteryBank>("bank-2", bank => bank with { CapacityAh = capacityAh }).Worst("strings-alike", "bank-2").Verdict);

    [Theory]
    [InlineData(300, Verdict.Holds)]
    [InlineData(360, Verdict.Tight)]
    [InlineData(366, Verdict.Fails)]
    public void DaysApart_AgainstAYear(int days, Verdict verdict) =>
        Assert.Equal(verdict, StringBoat.InSeries().Change<BatteryBank>("bank-2", bank => bank with { InUseSince = StringBoat.New.AddDays(-days) }).Worst("strings-alike", "bank-2").Verdict);

    [Fact]
    public void WornOne_CountsWithWhatIsLeft() =>
        Assert.Equal(Verdict.Fails, StringBoat.InSeries().Change<BatteryBank>("bank-2", bank => bank with { LeftFraction = 0.7 }).Worst("strings-alike", "bank-2").Verdict);

    [Fact]
    public void TwoChemistries_FailWhateverElseIsMissing()
    {
        Finding finding = StringBoat.Beside().Change<BatteryBank>("bank-2", bank => bank with { Chemistry = BatteryChemistry.LithiumIronPhosphate, CapacityAh = null }).Worst("strings-alike", "bank-2");
        Assert.Equal((Verdict.Fails, "bank"), (finding.Verdict, finding.OtherSubjectId));
    }

    [Fact]
    public void CapacityNotGiven_IsUnknown()
    {
        BoatModel boat = StringBoat.Beside().Change<BatteryBank>("bank", bank => bank with { CapacityAh = null });
        boat.Worst("strings-alike", "bank-2").IsUnknownFor("bank", "capacityAh");
        boat.Worst("strings-share", "bank-2").IsUnknownFor("bank", "capacityAh");
    }

    [Fact]
    public void AgeNotGiven_IsUnknown() => StringBoat.Beside().Change<BatteryBank>("bank-2", bank => bank with { InUseSince = null }).Worst("strings-alike", "bank-2").IsUnknownFor("bank-2", "inUseSince");

    // By hand: 10 mΩ inside, 0.39 mΩ for 0.5 m of 25 mm² (IEC 60228 class 5 tinned: 0.795 mΩ/m) in each of two leads, four joints of 0.1 mΩ, 1 mΩ of fuse, 0.1 mΩ of strap:
    // 12.3 mΩ; with leads of 4 m 17.9 mΩ. The nearer gives 17.9 ÷ (17.9 + 12.3) = 59 %.
    [Fact]
    public void LeadsEightTimesAsLong_ShareUnevenlyAndFail()
    {
        BoatModel boat = StringBoat.Beside(otherLeadM: 4);
        Finding near = boat.Worst("strings-share", "bank");
        Assert.Equal(Verdict.Fails, near.Verdict);
        double share = near.Working.Single(line => line.What == "Share").Value!.Value;
        Assert.InRange(share, 0.585, 0.6);
        Assert.Equal(Verdict.Holds, boat.Worst("strings-share", "bank-2").Verdict);
    }

    // A limit of its own: 20 % over, twice what is common.
    [Fact]
    public void OwnersLimit_CountsInsteadOfTheCommonOne() => Assert.Equal(Verdict.Tight, StringBoat.Beside(otherLeadM: 4)
        .With(new PracticeChoice { Id = "practice", Basis = "owner", Own = [new OwnLimit("string-over-share-fraction", 0.2, "short trips")] }).Worst("strings-share", "bank").Verdict);

    [Fact]
    public void InternalResistanceNotGiven_IsUnknown() =>
        StringBoat.Beside().Change<BatteryBank>("bank-2", bank => bank with { InternalResistanceOhm = null }).Worst("strings-share", "bank").IsUnknownFor("bank-2", "internalResistanceOhm");

    // 12.6 V and 12.0 V behind 24.7 mΩ together: 24 A with nothing on, of 20 A allowed.
    [Fact]
    public void MoreFlowsBetweenThemThanOneMayTake_Fails()
    {
        BoatModel boat = StringBoat.Beside().Change<BatteryBank>("bank-2", bank => bank with { MostChargeA = 20, OpenCircuit = [new ChargePoint(0, 11.2), new ChargePoint(1, 12.2)] });
        Finding finding = boat.Worst("strings-share", "bank-2");
        Assert.Equal(Verdict.Fails, finding.Verdict);
        Assert.Contains("flow into it from the strings beside it with nothing on", finding.Headline.ToString(), StringComparison.Ordinal);
    }

    [Fact]
    public void BankOfStringsThatNobodyHasDrawn_IsUnknown() =>
        Assert.Equal(Verdict.Unknown, SmallBoat.OneLamp().Change<BatteryBank>("bank", bank => bank with { ParallelCount = 2 }).Worst("strings-share", "bank").Verdict);

    [Fact]
    public void NothingOn_IsUnknown() =>
        Assert.Equal(Verdict.Unknown, StringBoat.Beside().Change<ElectricLoad>("lamp", lamp => lamp with { Uses = [] }).Worst("strings-share", "bank").Verdict);

    [Fact]
    public void NoFuseOfItsOwn_Fails()
    {
        BoatModel boat = StringBoat.Beside().With(StringBoat.Lead("plus-1", "bank.+", "fuse.in", 0.5), StringBoat.Lead("plus-2", "bank-2.+", "fuse.in", 0.5));
        Assert.Equal((Verdict.Fails, Verdict.Fails), (boat.Worst("strings-protected", "bank").Verdict, boat.Worst("strings-protected", "bank-2").Verdict));
    }

    [Fact]
    public void NoPractice_IsUnknown()
    {
        BoatModel boat = StringBoat.Beside().Without("practice");
        Assert.Equal((Verdict.Unknown, Verdict.Unknown), (boat.Worst("strings-alike", "bank-2").Verdict, boat.Worst("strings-share", "bank").Verdict));
    }
}
