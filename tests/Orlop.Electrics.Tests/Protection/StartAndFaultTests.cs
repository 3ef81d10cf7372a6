using System.Collections.Immutable;
using Orlop.Electrics.Conductors;
using Orlop.Electrics.Protection;
using Xunit;

namespace Orlop.Electrics.Tests.Protection;

public sealed class StartAndFaultTests
{
    private static readonly OperatingGates Gates = new("a fuse for tests",
        [new(1, 10_000, null, false, false), new(2, 10, 100, false, false), new(4, 0.1, 1, false, false)], "no source: made for tests");

    [Fact]
    public void StartHolding_TwoSurges_SharesAddUp()
    {
        // 4 s at the 2× gate (10 s) and 0.05 s at the 4× gate (0.1 s): 0.4 + 0.5 = 0.9.
        var result = StartHolding.Calculate(Gates, [new(0.8, 1e6), new(2, 4), new(4, 0.05)]);
        Assert.Equal(0.9, result.UsedFraction!.Value, 1e-12);
        Assert.Equal(0.9, result.GuaranteedUsedFraction!.Value, 1e-12);
        Assert.Equal(StartHoldingStatus.Holds, result.Status);
        Assert.Equal(result.UsedFraction, result.Working[^1].Value);
        Assert.Equal(StartHoldingStatus.MayOpen, StartHolding.Calculate(Gates, [new(2, 5), new(4, 0.05)]).Status);
    }

    [Fact]
    public void StartHolding_WhereNothingIsKnown_IsUnknown()
    {
        Assert.Equal(StartHoldingStatus.Unknown, StartHolding.Calculate(Gates, [new(5, 0.001)]).Status);
        Assert.Equal(StartHoldingStatus.Unknown, StartHolding.Calculate(Gates, []).Status);
        Assert.Equal(StartHoldingStatus.Unknown, StartHolding.Calculate(Gates, default(ImmutableArray<ProfileStep>)).Status);
        Assert.Null(StartHolding.Calculate(Gates, [new(5, 0.001)]).UsedFraction);
    }

    [Fact]
    public void StartHolding_BelowTheRating_IsCarriedForEver() =>
        Assert.Equal(0, StartHolding.Calculate(Gates, [new(1, 1e6)]).UsedFraction);

    [Theory]
    [InlineData(double.NaN, 1)]
    [InlineData(2, double.NaN)]
    [InlineData(-1, 1)]
    [InlineData(2, -1)]
    public void StartHolding_ImpossibleStep_IsRefused(double ratio, double durationS) =>
        Assert.Throws<ArgumentOutOfRangeException>(() => StartHolding.Calculate(Gates, [new(ratio, durationS)]));

    // 6 mm², from 30 to 160 °C: k = 142.7, so k²S² = 733 kA²s. It carries 50 A for ever, and 160 °C for ever at about 92 A.
    private static HeatedWithstandInput Conductor(double currentA) => new()
    {
        Subject = "pump",
        AreaMm2 = 6,
        AmbientC = 30,
        InitialC = 30,
        FinalC = 160,
        CurrentA = currentA,
        RatedCurrentA = 50,
        RatedC = 70,
        TableAmbientC = 30,
    };

    private static FaultClearingResult Clearing(double ratingA, double faultA) => FaultClearing.Calculate(
        new FaultClearingInput { Subject = "pump", Curve = Gates, RatingA = ratingA, AmpacityA = 50, DeviceCurrentA = faultA, Conductor = Conductor(faultA) });

    [Theory]
    [InlineData(100, 400, FaultClearingStatus.ClearsInTime)]           // 1 s against 4.6 s
    [InlineData(100, 1000, FaultClearingStatus.MayBeTooLate)]          // 1 s against 0.73 s
    [InlineData(125.5, 398.5, FaultClearingStatus.ClearsInTimeLosingHeat)] // 4.64 s, between 4.62 s and 4.73 s
    [InlineData(90, 270, FaultClearingStatus.ClearsLate)]              // 6.8 s, after the formula's 5 s, against 10.6 s
    [InlineData(100, 200, FaultClearingStatus.MayBeTooLate)]           // 100 s against 20 s
    [InlineData(100, 150, FaultClearingStatus.MayNeverOpen)]
    [InlineData(100, 50, FaultClearingStatus.Bears)]
    public void FaultClearing_LatestAgainstWhatTheConductorBears_AsByHand(double ratingA, double faultA, FaultClearingStatus expected)
    {
        var result = Clearing(ratingA, faultA);
        var k = AdiabaticWithstand.KFactor(30, 160);
        Assert.Equal(expected, result.Status);
        Assert.Equal(k * k * 36 / (faultA * faultA), result.AdiabaticS, 1e-9);
        Assert.Equal(result.LatestOpeningS, result.Working[1].Value);
        Assert.True(result.BearsS > result.AdiabaticS);
    }

    [Theory]
    [InlineData(double.NaN)]
    [InlineData(0)]
    [InlineData(-400)]
    public void FaultClearing_ImpossibleFault_IsRefused(double faultA) =>
        Assert.Throws<ArgumentOutOfRangeException>(() => Clearing(100, faultA));
}
