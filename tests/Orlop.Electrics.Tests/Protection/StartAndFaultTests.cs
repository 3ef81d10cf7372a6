using System.Collections.Immutable;
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

    [Theory]
    // k²S² = 115² × 6² = 476 100 A²s.
    [InlineData(100, 400, FaultClearingStatus.ClearsInTime)]        // 1 s against 2.976 s
    [InlineData(100, 1000, FaultClearingStatus.MayBeTooLate)]       // 1 s against 0.476 s
    [InlineData(100, 200, FaultClearingStatus.NotDecidedByFormula)] // 100 s against 11.9 s
    [InlineData(100, 150, FaultClearingStatus.MayNeverOpen)]
    public void FaultClearing_LatestAgainstAdiabatic_AsByHand(double ratingA, double faultA, FaultClearingStatus expected)
    {
        var result = FaultClearing.Calculate(new FaultClearingInput { Subject = "pump", Curve = Gates, RatingA = ratingA, FaultCurrentA = faultA, AreaMm2 = 6, KFactor = 115 });
        Assert.Equal(expected, result.Status);
        Assert.Equal(476_100 / (faultA * faultA), result.ConductorWithstandS, 1e-9);
        Assert.Equal(result.LatestOpeningS, result.Working[1].Value);
    }

    [Theory]
    [InlineData(double.NaN)]
    [InlineData(0)]
    [InlineData(-400)]
    public void FaultClearing_ImpossibleFault_IsRefused(double faultA) =>
        Assert.Throws<ArgumentOutOfRangeException>(() => FaultClearing.Calculate(
            new FaultClearingInput { Subject = "pump", Curve = Gates, RatingA = 100, FaultCurrentA = faultA, AreaMm2 = 6, KFactor = 115 }));
}
