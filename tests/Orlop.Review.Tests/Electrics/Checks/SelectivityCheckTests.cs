using Orlop.Boat;
using Orlop.Boat.Things;
using Orlop.Boat.Values;
using Orlop.Review.Findings;
using Xunit;

namespace Orlop.Review.Tests.Electrics.Checks;

public sealed class SelectivityCheckTests
{
    private const string Check = "selectivity";

    [Fact]
    public void HardFault_BeyondTheGates_IsUnknownAndAsksForTheEnergies()
    {
        Finding finding = TwoLamps(30, 10).Worst(Check, "fuse");
        Assert.Equal("main", finding.OtherSubjectId);
        finding.IsUnknownFor("main", "meltingA2S");
        Assert.Contains(finding.Inputs, input => input is { ThingId: "fuse", Field: "clearingA2S", IsMissing: true });
    }

    [Fact]
    public void EnergiesTyped_NearerIsFirst_Holds() => Assert.Equal(Verdict.Holds, WithEnergies(2000, 500).Worst(Check, "fuse").Verdict);

    [Fact]
    public void EnergiesTyped_NearerLetsThroughMore_IsNotHeld() => Assert.NotEqual(Verdict.Holds, WithEnergies(400, 500).Worst(Check, "fuse").Verdict);

    [Fact]
    public void SmallerBefore_Fails()
    {
        Finding finding = TwoLamps(5, 30).Worst(Check, "fuse");
        Assert.Equal(Verdict.Fails, finding.Verdict);
        Assert.Contains("goes dark", finding.Headline.ToString(), StringComparison.Ordinal);
    }

    // From memory of IEC 60269-1: gG links of 16 A and more discriminate at 1.6 to 1.
    [Theory]
    [InlineData(100, 40, true)]
    [InlineData(25, 10, false)]
    [InlineData(50, 40, false)]
    public void FuseLinks_AreTakenAtTheirStandardsWord(double mainA, double branchA, bool isPromised)
    {
        Finding finding = TwoLamps(mainA, branchA)
            .Change<Protection>("main", main => main with { Gates = "link-gg" })
            .Change<Protection>("fuse", fuse => fuse with { Gates = "link-gg" })
            .Worst(Check, "fuse");
        Assert.Equal(isPromised, finding.Working.Any(line => line.Source.Contains("1.6 to 1", StringComparison.Ordinal) && line.IsFromMemory));
        Assert.Equal(isPromised, finding.Verdict is Verdict.Holds or Verdict.Tight);
    }

    // Where the one before feeds nothing else, it does not matter which of the two opens.
    [Fact]
    public void TwoDevicesOfOneCircuit_AreNotJudged() =>
        Assert.DoesNotContain(TwoLamps(30, 10).Without("lamp-2").Without("lamp-2-cable").Findings(), finding => finding.CheckId == Check);

    [Fact]
    public void OperatingTimesNotGiven_AreUnknown() =>
        TwoLamps(30, 10).Change<Protection>("main", main => main with { Gates = null }).Worst(Check, "fuse").IsUnknownFor("main", "gates");

    /// <summary>IEC 60269-1: the series of gG ratings steps from 50 A to 63 A.</summary>
    [Fact]
    public void RatingThatItsKindDoesNotHave_IsToldWithTheNearest()
    {
        Finding finding = TwoLamps(60, 10).Change<Protection>("main", main => main with { Gates = "link-gg" }).Worst(Check, "fuse");
        finding.IsUnknownFor("main", "gates/60/50/63");
        Assert.Contains("its kind has no operating times at 60 A, only at 50 A and 63 A", finding.Headline.ToString(), StringComparison.Ordinal);
        Assert.Contains(finding.Working, line => line.Expression.Contains("operating time at 60 A", StringComparison.Ordinal));
    }

    private static BoatModel WithEnergies(double meltingA2S, double clearingA2S) => TwoLamps(30, 10)
        .Change<Protection>("main", main => main with { MeltingA2S = meltingA2S })
        .Change<Protection>("fuse", fuse => fuse with { ClearingA2S = clearingA2S });

    private static BoatModel TwoLamps(double mainA, double branchA) => SmallBoat.OneLamp(2, branchA).With(
        new Protection { Id = "main", Means = ProtectionMeans.Fuse, RatedA = mainA, RatedV = 58, BreakingA = 2000, Gates = "blade-type-c", ResistanceOhm = 0.003 },
        new Link { Id = "strap", From = new Terminal("bank", "+"), To = new Terminal("main", "in"), LengthM = 0.05, ResistanceOhm = 0.0002 },
        new Link { Id = "main-strap", From = new Terminal("main", "out"), To = new Terminal("fuse", "in"), LengthM = 0.05, ResistanceOhm = 0.0002 },
        SmallBoat.Lamp("lamp-2", 2),
        SmallBoat.LampCable("lamp-2-cable", "lamp-2") with { Cores = [SmallBoat.Core("plus", "main.out", "lamp-2.+"), SmallBoat.Core("minus", "minus.bar", "lamp-2.-")] });
}
