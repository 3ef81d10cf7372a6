using Orlop.Electrics.Protection;
using Xunit;

namespace Orlop.Electrics.Tests.Protection;

/// <summary>Earth-fault loops against Ohm's law by hand, and against the gates of IEC 60898-1: type B opens at once from 5 times its rating.</summary>
public sealed class EarthFaultLoopTests
{
    private static EarthFaultDevice Breaker(double ratedA, string curve = "breaker-b") => new() { Subject = "breaker", RatingA = ratedA, Curve = OperatingGateTable.Find(curve, ratedA) };

    private static EarthFaultDevice Residual(double residualA = 0.03, double? opensS = null) => new() { Subject = "residual", RatingA = 16, ResidualA = residualA, ResidualOpensS = opensS };

    private static EarthFaultInput Loop(params EarthFaultDevice[] devices) => new()
    {
        Subject = "kettle",
        NominalV = 230,
        Return = EarthReturn.Neutral,
        SourceOhm = 0.8,
        LiveOhm = 0.25,
        EarthOhm = 0.1,
        Devices = [.. devices],
    };

    // 230/(0.8 + 0.25 + 0.1) = 200 A; 200 × 0.1 = 20 V; 20 × 10 A is beyond 5 ×: 0.1 s.
    [Fact]
    public void Fault_IsOhmsLaw_AndBreakerOpensAtOnce()
    {
        EarthFaultResult result = EarthFaultLoop.Calculate(Loop(Breaker(10)));
        Assert.Equal(1.15, result.LoopOhm, 12);
        Assert.Equal(200, result.FaultA, 9);
        Assert.Equal(20, result.TouchV, 9);
        Assert.Equal((EarthFaultStatus.EndsInTime, 0.1, 0, 0.4), (result.Status, result.EndsS, result.EndedByIndex, result.PermittedS));
    }

    // U0/(5 In): 230/(5 × 32) = 1.4375 ohm; a hair more and only the slow release is sure: 60 s at 2.55 ×, beyond 0.4 s.
    [Theory]
    [InlineData(1.4374, EarthFaultStatus.EndsInTime)]
    [InlineData(1.4376, EarthFaultStatus.MayEndLate)]
    public void BreakerAlone_AtTheEdgeOfItsInstantaneousTrip(double loopOhm, EarthFaultStatus status) =>
        Assert.Equal(status, EarthFaultLoop.Calculate(Loop(Breaker(32)) with { SourceOhm = loopOhm - 0.35 }).Status);

    [Fact]
    public void GreatestLoop_OfABreaker_IsTheVoltageOverItsInstantaneousTrip() =>
        Assert.Equal(230 / 160.0, EarthFaultLoop.GreatestLoopOhm(Breaker(32), 230, 0.4)!.Value, 12);

    [Fact]
    public void GreatestLoop_OfWhatNeverOpensInTime_IsNone() => Assert.Null(EarthFaultLoop.GreatestLoopOhm(Breaker(32) with { Curve = null }, 230, 0.4));

    // 10 A through a 10 A breaker: below 1.45 × it may never open; the residual release is past five times 30 mA.
    [Fact]
    public void LimitedSource_OpensNoBreaker_TheResidualDeviceEndsIt()
    {
        EarthFaultResult result = EarthFaultLoop.Calculate(Loop(Residual(), Breaker(10)) with { SourceOhm = 0, LimitA = 10 });
        Assert.True(result.IsLimited);
        Assert.Equal((10, 1), (result.FaultA, result.TouchV));
        Assert.Null(result.Openings[1].LatestS);
        Assert.Equal((EarthFaultStatus.EndsInTime, 0.04, 0), (result.Status, result.EndsS, result.EndedByIndex));
    }

    [Fact]
    public void LimitedSource_WithoutResidualDevice_MayNeverEnd() =>
        Assert.Equal(EarthFaultStatus.MayNeverEnd, EarthFaultLoop.Calculate(Loop(Breaker(10)) with { LimitA = 10 }).Status);

    [Theory]
    [InlineData(0.3, EarthFaultStatus.EndsInTime)]
    [InlineData(5, EarthFaultStatus.MayEndLate)]
    public void LimitedSource_ThatShutsDown_EndsTheFaultItself(double shutsDownS, EarthFaultStatus status)
    {
        EarthFaultResult result = EarthFaultLoop.Calculate(Loop(Breaker(10)) with { LimitA = 10, ShutsDownS = shutsDownS });
        Assert.Equal((status, shutsDownS, null), (result.Status, result.EndsS, result.EndedByIndex));
    }

    // The loop lets 200 A flow, less than the source could give: it does not limit, and its shutting down is not counted on.
    [Fact]
    public void SourceThatCouldGiveMore_DoesNotLimit()
    {
        EarthFaultResult result = EarthFaultLoop.Calculate(Loop() with { LimitA = 300, ShutsDownS = 0.1 });
        Assert.Equal((false, EarthFaultStatus.MayNeverEnd), (result.IsLimited, result.Status));
    }

    [Fact]
    public void FloatingSource_DrivesNothing()
    {
        EarthFaultResult result = EarthFaultLoop.Calculate(Loop(Residual()) with { Return = EarthReturn.None });
        Assert.Equal((EarthFaultStatus.DrivesNothing, 0, null), (result.Status, result.FaultA, result.EndsS));
    }

    // An earth of its own, 100 ohm: 2.3 A opens no breaker; 100 × 0.03 = 3 V; 2.3 A is 76 × 30 mA: 0.04 s of 0.2 s.
    [Fact]
    public void OwnEarth_ResidualDevice_EndsIt()
    {
        EarthFaultInput input = Loop(Residual(), Breaker(10)) with { Return = EarthReturn.Ground, SourceOhm = 99.9, LiveOhm = 0 };
        EarthFaultResult result = EarthFaultLoop.Calculate(input);
        Assert.Equal(2.3, result.FaultA, 9);
        Assert.Equal(3, EarthFaultLoop.GroundTouchV(input), 9);
        Assert.Equal((EarthFaultStatus.EndsInTime, 0.04, 0.2), (result.Status, result.EndsS, result.PermittedS));
    }

    // 600 ohm × 0.1 A = 60 V; the fault of 0.38 A is 3.8 ×: 0.15 s of 0.2 s, in time and yet too high.
    [Fact]
    public void OwnEarth_TooMuchForItsResidualCurrent() =>
        Assert.Equal(EarthFaultStatus.TouchTooHigh, EarthFaultLoop.Calculate(Loop(Residual(0.1)) with { Return = EarthReturn.Ground, SourceOhm = 599.65, EarthOhm = 0.35 }).Status);

    [Theory]
    [InlineData(0.029, null)]
    [InlineData(0.03, 0.3)]
    [InlineData(0.06, 0.15)]
    [InlineData(0.15, 0.04)]
    public void Residual_ByTheMultipleOfItsCurrent(double currentA, double? latestS) => Assert.Equal(latestS, ResidualOpening.LatestS(currentA, 0.03));

    [Theory]
    [InlineData(0.1, 0.03, 0.1)]
    [InlineData(0.1, 100, 0.04)]
    [InlineData(0.5, 100, 0.5)]
    public void Residual_ByItsOwnSheet_DelayedOrNot(double ownS, double currentA, double latestS) => Assert.Equal(latestS, ResidualOpening.LatestS(currentA, 0.03, ownS));

    [Fact]
    public void Nonsense_IsRefused()
    {
        Assert.Throws<ArgumentOutOfRangeException>(() => EarthFaultLoop.Calculate(Loop() with { NominalV = double.NaN }));
        Assert.Throws<ArgumentOutOfRangeException>(() => EarthFaultLoop.Calculate(Loop() with { NominalV = 50 }));
        Assert.Throws<ArgumentOutOfRangeException>(() => EarthFaultLoop.Calculate(Loop() with { EarthOhm = double.NaN }));
        Assert.Throws<ArgumentOutOfRangeException>(() => EarthFaultLoop.Calculate(Loop() with { LimitA = double.NaN }));
        Assert.Throws<ArgumentOutOfRangeException>(() => EarthFaultLoop.Calculate(Loop() with { SourceOhm = 0, LiveOhm = 0, EarthOhm = 0 }));
        Assert.Throws<ArgumentOutOfRangeException>(() => EarthFaultLoop.Calculate(Loop(Residual(double.NaN))));
    }
}
