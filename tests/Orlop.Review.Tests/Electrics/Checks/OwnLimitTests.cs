using Orlop.Boat;
using Orlop.Boat.Things;
using Orlop.Review.Findings;
using Orlop.Review.Practices;
using Xunit;

namespace Orlop.Review.Tests.Electrics.Checks;

public sealed class OwnLimitTests
{
    [Theory]
    [InlineData(LimitIds.GeneralDropFraction, "voltage-drop", "lamp")]
    [InlineData(LimitIds.GreatestVoltageFraction, "voltage-not-too-high", "lamp")]
    [InlineData(LimitIds.LoadOverDeviceFraction, "device-carries-load", "fuse")]
    [InlineData(LimitIds.DeviceOverAmpacityBelow50VRatio, "conductor-protection", "lamp-cable.plus")]
    public void LimitOfZero_FailsWhereSomethingIsAsked(string limitId, string checkId, string subjectId)
    {
        Finding finding = Own(new OwnLimit(limitId, 0, "none at all")).Worst(checkId, subjectId);
        Assert.Equal(Verdict.Fails, finding.Verdict);
        Assert.Null(finding.UseFraction);
    }

    [Fact]
    public void LimitOfZero_NothingAsked_DoesNotFail() => Assert.Equal(
        Verdict.Holds, Own(new OwnLimit(LimitIds.LoadOverDeviceFraction, 0, "none")).Change<ElectricLoad>("lamp", lamp => lamp with { RunningA = 0 }).Worst("device-carries-load", "fuse").Verdict);

    [Fact]
    public void LimitOfZero_DrawNotKnown_IsUnknown() => Own(new OwnLimit(LimitIds.LoadOverDeviceFraction, 0, "none"))
        .Change<ElectricLoad>("lamp", lamp => lamp with { RunningA = null }).Worst("device-carries-load", "fuse").IsUnknownFor("lamp", "runningA");

    // A least voltage above nominal leaves no room below it: 12.6 V is not enough where 1.1 × 12 V is asked.
    [Fact]
    public void LeastVoltageAboveNominal_Fails() => Assert.Equal(
        Verdict.Fails,
        Own(new OwnLimit(LimitIds.LeastVoltageFraction, 1.1, "strict")).Change<ElectricLoad>("lamp", lamp => lamp with { LeastV = null }).Worst("least-voltage", "lamp").Verdict);

    [Fact]
    public void NoSuchLimit_IsToldAsUnknown()
    {
        Finding finding = Own(new OwnLimit("general-drop", 0.05, "mistyped"), new OwnLimit(LimitIds.ResidualA, 0.03, "as usual")).Worst("owner-limit", "practice");
        Assert.Equal(Verdict.Unknown, finding.Verdict);
        Assert.Equal("general-drop", Assert.Single(finding.Working).What);
    }

    [Fact]
    public void AmpacityTablesOwnAmbient_CannotBeSet() => Assert.Equal(Verdict.Unknown, Own(new OwnLimit(LimitIds.TableAmbientC, 20, "cool boat")).Worst("owner-limit", "practice").Verdict);

    [Fact]
    public void SameLimitTwice_IsToldAsUnknown() => Assert.Equal(
        Verdict.Unknown, Own(new OwnLimit(LimitIds.ResidualA, 0.03, "one"), new OwnLimit(LimitIds.ResidualA, 0.01, "two")).Worst("owner-limit", "practice").Verdict);

    [Fact]
    public void EveryLimitCounts_Holds() => Assert.Equal(Verdict.Holds, Own(new OwnLimit(LimitIds.ResidualA, 0.03, "as usual")).Worst("owner-limit", "practice").Verdict);

    [Fact]
    public void SpaceAsHotAsTheInsulation_SaysSo()
    {
        Finding finding = SmallBoat.OneLamp().Change<Space>("cabin", space => space with { AmbientC = 95 }).Change<PracticeChoice>("practice", practice => practice with
        {
            Own = [new OwnLimit(LimitIds.DeviceUsesDeratedAmpacityFlag, 1, "where it runs")],
        }).Worst("conductor-protection", "lamp-cable.plus");
        Assert.Equal(Verdict.Fails, finding.Verdict);
        Assert.Contains("as hot as its insulation may get", finding.Headline.ToString(), StringComparison.Ordinal);
    }

    private static BoatModel Own(params OwnLimit[] limits) =>
        SmallBoat.OneLamp().Change<PracticeChoice>("practice", practice => practice with { Own = [.. limits] });
}
