using CsCheck;
using Orlop.Electrics.Protection;
using Xunit;

namespace Orlop.Electrics.Tests.Protection;

public sealed class OperatingGatesTests
{
    private static readonly OperatingGates Gates = new("a fuse for tests",
        [new(1, 10_000, null, false, false), new(2, 10, 100, false, false), new(4, 0.1, 1, false, false)], "no source: made for tests");

    [Theory]
    [InlineData(0.5, 10_000.0, 10_000.0, OpeningBasis.BelowFirstGate)]
    [InlineData(1, 10_000.0, 10_000.0, OpeningBasis.Exact)]
    [InlineData(2, 10.0, 10.0, OpeningBasis.Exact)]
    [InlineData(2.8284271247461903, 1.0, 0.1, OpeningBasis.Interpolated)]
    [InlineData(4.01, null, null, OpeningBasis.Unknown)]
    public void EarliestOpening_AlongTheCurve_AsByHand(double currentRatio, double? timeS, double? guaranteedS, OpeningBasis basis)
    {
        // Halfway between 2 and 4 on a logarithmic scale is 2·sqrt(2); halfway between 10 s and 0.1 s is 1 s.
        var opening = Gates.EarliestOpening(currentRatio);
        Assert.Equal(basis, opening.Basis);
        AssertSame(timeS, opening.TimeS);
        AssertSame(guaranteedS, opening.GuaranteedS);
    }

    [Theory]
    [InlineData(1.99, null, null, OpeningBasis.Unknown)]
    [InlineData(2, 100.0, 100.0, OpeningBasis.Exact)]
    [InlineData(2.8284271247461903, 10.0, 100.0, OpeningBasis.Interpolated)]
    [InlineData(40, 1.0, 1.0, OpeningBasis.BeyondLastGate)]
    public void LatestOpening_AlongTheCurve_AsByHand(double currentRatio, double? timeS, double? guaranteedS, OpeningBasis basis)
    {
        var opening = Gates.LatestOpening(currentRatio);
        Assert.Equal(basis, opening.Basis);
        AssertSame(timeS, opening.TimeS);
        AssertSame(guaranteedS, opening.GuaranteedS);
    }

    [Fact]
    public void LatestOpening_ShortOfAMagneticTrip_StaysAtTheThermalTime()
    {
        var breaker = OperatingGateTable.Find("breaker-c", 16)!;
        Assert.Equal((60, OpeningBasis.ShortOfStep), (breaker.LatestOpening(9.99).TimeS, breaker.LatestOpening(9.99).Basis));
        Assert.Equal(0.1, breaker.LatestOpening(10).TimeS);
        var onDirectCurrent = breaker.WithInstantaneousTripAt(1.4, "from memory, no source");
        Assert.Equal(60, onDirectCurrent.LatestOpening(13.9).TimeS);
        Assert.Equal(0.1, onDirectCurrent.LatestOpening(14).TimeS);
        Assert.Equal(breaker.EarliestOpening(5).TimeS, onDirectCurrent.EarliestOpening(5).TimeS);
    }

    [Fact]
    public void EveryShippedCurve_MoreCurrent_NeverOpensLaterAndNeverEarliestAfterLatest() =>
        Gen.Select(Gen.Int[0, OperatingGateTable.CurveIds.Length - 1], Gen.Double[0.1, 30], Gen.Double[1, 2]).Sample((index, ratio, more) =>
        {
            var id = OperatingGateTable.CurveIds[index];
            var gates = OperatingGateTable.Find(id, id.StartsWith("strip", StringComparison.Ordinal) ? 100 : 20)!;
            var (earliest, latest) = (gates.EarliestOpening(ratio), gates.LatestOpening(ratio));
            return !(gates.EarliestOpening(ratio * more).TimeS > earliest.TimeS)
                && !(gates.LatestOpening(ratio * more).TimeS > latest.TimeS)
                && !(earliest.TimeS > latest.TimeS)
                && !(earliest.GuaranteedS > earliest.TimeS)
                && !(latest.GuaranteedS < latest.TimeS);
        });

    [Theory]
    [InlineData("blade-type-c", 41)]
    [InlineData("strip-sf30", 25)]
    [InlineData("no such curve", 10)]
    public void Find_NoSuchCurveOrRating_IsNull(string id, double ratingA) => Assert.Null(OperatingGateTable.Find(id, ratingA));

    [Theory]
    [InlineData(0)]
    [InlineData(-1)]
    [InlineData(double.NaN)]
    [InlineData(double.PositiveInfinity)]
    public void Opening_ImpossibleMultiple_IsRefused(double currentRatio)
    {
        Assert.Throws<ArgumentOutOfRangeException>(() => Gates.EarliestOpening(currentRatio));
        Assert.Throws<ArgumentOutOfRangeException>(() => Gates.LatestOpening(currentRatio));
        Assert.Throws<ArgumentOutOfRangeException>(() => InverseTimeCurve.Standard[0].LatestOpening(currentRatio));
    }

    [Fact]
    public void Gates_OutOfOrderOrEmpty_AreRefused()
    {
        Assert.Throws<ArgumentException>(() => new OperatingGates("x", [new(2, 1, 2, false, false), new(1, 3, 4, false, false)], ""));
        Assert.Throws<ArgumentException>(() => new OperatingGates("x", [new(2, 3, 2, false, false)], ""));
        Assert.Throws<ArgumentException>(() => new OperatingGates("x", [new(2, null, null, false, false)], ""));
        Assert.Throws<ArgumentOutOfRangeException>(() => new OperatingGates("x", [new(2, 0, null, false, false)], ""));
    }

    [Theory]
    [InlineData(0.5)]
    [InlineData(1)]
    public void InverseTimeCurve_AtOrBelowItsSetting_NeverOpens(double currentRatio) =>
        Assert.All(InverseTimeCurve.Standard, curve => Assert.Equal((null, OpeningBasis.NeverOpens), (curve.LatestOpening(currentRatio).TimeS, curve.LatestOpening(currentRatio).Basis)));

    private static void AssertSame(double? expected, double? actual)
    {
        Assert.Equal(expected is null, actual is null);
        Assert.Equal(expected ?? 0, actual ?? 0, 1e-9);
    }
}
