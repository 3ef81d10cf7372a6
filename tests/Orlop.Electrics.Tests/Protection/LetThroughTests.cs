using CsCheck;
using Orlop.Electrics.Protection;
using Xunit;

namespace Orlop.Electrics.Tests.Protection;

/// <summary>Closed forms of I² t over gates made for the tests, and properties over random devices.</summary>
public sealed class LetThroughTests
{
    // At most 100 s from twice the rating, 0.1 s from five times on, by a step.
    private static readonly OperatingGates Stepped = new("a breaker for tests", [new(2, null, 100, false, false), new(5, null, 0.1, true, false)], "no source: made for tests");

    private static LetThroughDevice Breaker(double ratingA) => new() { Subject = "breaker", RatingA = ratingA, Gates = Stepped };

    private static LetThroughEnergy Of(double leastA, double greatestA, params LetThroughDevice[] devices) =>
        LetThrough.Greatest(new LetThroughInput { LeastA = leastA, GreatestA = greatestA, Devices = [.. devices] });

    [Theory]
    [InlineData(60, 200, 200 * 200 * 0.1)]
    [InlineData(30, 200, 50 * 50 * 100.0)]
    [InlineData(30, 40, 40 * 40 * 100.0)]
    public void Greatest_OfARange_IsAtItsEndOrJustShortOfTheStep(double leastA, double greatestA, double a2s) =>
        Assert.Equal(a2s, Of(leastA, greatestA, Breaker(10)).A2S, 1e-6 * a2s);

    [Fact]
    public void CurrentBelowEveryGate_NeverEnds()
    {
        LetThroughEnergy energy = Of(15, 200, Breaker(10));
        Assert.Equal(LetThroughBasis.NeverEnds, energy.Basis);
        Assert.Equal(double.PositiveInfinity, energy.A2S);
    }

    [Fact]
    public void NoDevice_NeverEnds() => Assert.Equal(LetThroughBasis.NeverEnds, Of(1, 2).Basis);

    // 50² × 100 s of the breaker against 50² × 0.04 s of the residual release (IEC 61008-1, from five times 30 mA).
    [Fact]
    public void ResidualRelease_EndsWhatTheBreakerIsSlowOn()
    {
        LetThroughEnergy energy = Of(15, 50, Breaker(10) with { ResidualA = 0.03 });
        Assert.Equal(LetThroughBasis.Residual, energy.Basis);
        Assert.Equal(50 * 50 * 0.04, energy.A2S, 1e-9);
    }

    // A sheet's energy is of a quick opening: at 40 A, 100 s, it says nothing.
    [Theory]
    [InlineData(40, 40, 40 * 40 * 100.0, LetThroughBasis.Gates)]
    [InlineData(60, 1000, 5000, LetThroughBasis.Sheet)]
    public void Sheet_CountsWhereTheDeviceIsQuick(double leastA, double greatestA, double a2s, LetThroughBasis basis)
    {
        LetThroughEnergy energy = Of(leastA, greatestA, Breaker(10) with { ClearingA2S = 5000 });
        Assert.Equal(basis, energy.Basis);
        Assert.Equal(a2s, energy.A2S, 1e-9 * a2s);
    }

    // Last gate at 50 A and 0.1 s: three times 250 A² s; at 60 A its time alone proves less, 360.
    [Theory]
    [InlineData(60, 60 * 60 * 0.1, LetThroughBasis.Gates)]
    [InlineData(5000, 3 * 50 * 50 * 0.1, LetThroughBasis.LastGate)]
    public void Fuse_BeyondItsLastGate_TheLesserCounts(double currentA, double a2s, LetThroughBasis basis)
    {
        LetThroughEnergy energy = LetThrough.ByGates(Breaker(10) with { IsFuse = true }, currentA)!;
        Assert.Equal(basis, energy.Basis);
        Assert.Equal(a2s, energy.A2S, 1e-9 * a2s);
    }

    [Fact]
    public void SourceThatShutsDown_EndsIt() =>
        Assert.Equal(20 * 20 * 0.5, LetThrough.Greatest(new LetThroughInput { LeastA = 20, GreatestA = 20, Devices = [], ShutsDownS = 0.5 }).A2S, 1e-9);

    [Theory]
    [InlineData(double.NaN, 10)]
    [InlineData(0, 10)]
    [InlineData(10, double.NaN)]
    [InlineData(10, 5)]
    public void ImpossibleCurrents_AreRefused(double leastA, double greatestA) => Assert.Throws<ArgumentOutOfRangeException>(() => Of(leastA, greatestA, Breaker(10)));

    private static readonly Gen<OperatingGates> AnyGates =
        from ratios in Gen.Double[0.1, 3].Array[1, 5]
        from first in Gen.Double[0.01, 1000]
        from shares in Gen.Double[0.01, 1].Array[5]
        from isStep in Gen.Bool
        select MadeOf(ratios, first, shares, isStep);

    private static OperatingGates MadeOf(double[] ratios, double firstS, double[] shares, bool isStep)
    {
        (double ratio, double time) = (1, firstS);
        List<OperatingGate> gates = [];
        foreach ((double more, double share) in ratios.Zip(shares))
        {
            (ratio, time) = (ratio + more, time * share);
            gates.Add(new OperatingGate(ratio, null, time, isStep, false));
        }

        return new OperatingGates("random", [.. gates], "no source: made for tests");
    }

    private static OperatingGates Quicker(OperatingGates gates, double share) =>
        new(gates.Id, [.. gates.Gates.Select(gate => gate with { LatestS = gate.LatestS * share })], gates.Source);

    [Fact]
    public void Properties_QuickerDeviceOrOneMoreOrANarrowerRange_IsNeverMore()
    {
        Gen<(OperatingGates Gates, double LeastA, double Wider, double Share, bool IsFuse)> any = Gen.Select(AnyGates, Gen.Double[5, 500], Gen.Double[1, 20], Gen.Double[0.01, 1], Gen.Bool);
        any.Sample(one =>
        {
            LetThroughDevice device = new() { Subject = "device", RatingA = 16, Gates = one.Gates, IsFuse = one.IsFuse };
            double most = one.LeastA * one.Wider, had = Of(one.LeastA, most, device).A2S;
            Assert.True(Of(one.LeastA, most, device with { Gates = Quicker(one.Gates, one.Share) }).A2S <= had * (1 + 1e-9), "quicker");
            Assert.True(Of(one.LeastA, most, device, Breaker(10)).A2S <= had * (1 + 1e-9), "one more");
            Assert.True(Of(one.LeastA, Math.Sqrt(one.LeastA * most), device).A2S <= had * (1 + 1e-6), "narrower");
        }, iter: 2000);
    }

    // Every current of the range, sampled closely, against the greatest that was found.
    [Fact]
    public void Properties_NoCurrentBetween_BringsMore() => Gen.Select(AnyGates, Gen.Double[5, 500], Gen.Double[1, 20], Gen.Bool).Sample((gates, leastA, wider, isFuse) =>
    {
        LetThroughDevice device = new() { Subject = "device", RatingA = 16, Gates = gates, IsFuse = isFuse };
        double greatest = Of(leastA, leastA * wider, device).A2S;
        Assert.All(Enumerable.Range(0, 101).Select(step => leastA * Math.Pow(wider, step / 100.0)), currentA =>
            Assert.True((LetThrough.ByGates(device, currentA)?.A2S ?? double.PositiveInfinity) <= greatest * (1 + 1e-6), $"{currentA} A"));
    }, iter: 500);
}
