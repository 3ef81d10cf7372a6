using System.Collections.Immutable;
using Orlop.Hull.Measuring;
using Xunit;

namespace Orlop.Hull.Tests.Measuring;

public sealed class MeasuringTests
{
    // Two-sided 5 % points of Student's t, as printed in every table: 12.706, 2.776, 2.228, 2.042, 1.980.
    [Theory]
    [InlineData(1, 12.706)]
    [InlineData(4, 2.776)]
    [InlineData(10, 2.228)]
    [InlineData(30, 2.042)]
    [InlineData(120, 1.980)]
    public void StudentT_PrintedTable_Agrees(int degreesOfFreedom, double t) => Assert.Equal(t, StudentT.TwoSided(0.05, degreesOfFreedom), 5e-4);

    [Fact]
    public void Inclination_OneReadingMisread_IsNamed()
    {
        var random = new Random(8);
        var readings = Readings(random, 16).SetItem(5, new InclinationReading("misread", 300, 0.025));
        Assert.Equal(["misread"], InclinationTest.Calculate(Input(readings)).Outliers);
    }

    [Fact]
    public void Inclination_ManyTests_BandHoldsTheTruthInNineteenOfTwenty()
    {
        var random = new Random(9);
        var held = Enumerable.Range(0, 2000).Count(_ =>
        {
            var fit = InclinationTest.Calculate(Input(Readings(random, 10))).WithIntercept;
            return Math.Abs(fit.GmM - 0.9) <= fit.GmHalfBandM;
        });
        Assert.InRange(held, 1860, 1940);
    }

    [Fact]
    public void Inclination_PoorTests_AreRefused()
    {
        var good = Readings(new Random(1), 8);
        Assert.Contains("3 readings", Assert.Throws<ArgumentException>(() => InclinationTest.Calculate(Input(good[..3]))).Message, StringComparison.Ordinal);
        Assert.Contains("same heel", Assert.Throws<ArgumentException>(() => InclinationTest.Calculate(Input([.. good.Select(reading => reading with { HeelTangentRatio = 0.01 })]))).Message, StringComparison.Ordinal);
        Assert.Contains("r2: reading.HeelTangentRatio", Assert.Throws<ArgumentOutOfRangeException>(() => InclinationTest.Calculate(Input(good.SetItem(2, good[2] with { HeelTangentRatio = double.NaN })))).Message, StringComparison.Ordinal);
        Assert.Throws<ArgumentOutOfRangeException>(() => InclinationTest.Calculate(Input(good) with { DisplacementKg = double.NaN }));
    }

    [Fact]
    public void RollDecay_BadRecords_AreRefused()
    {
        RollPeak[] good = [new(0, 10), new(2, -8), new(4, 6.5), new(6, -5)];
        Assert.True(RollDecay.Calculate("roll", [.. good]).DampingRatio > 0);
        Assert.Throws<ArgumentException>(() => RollDecay.Calculate("roll", [.. good[..3]]));
        Assert.Contains("extreme 2", Assert.Throws<ArgumentException>(() => RollDecay.Calculate("roll", [good[0], new(2, 8), good[2], good[3]])).Message, StringComparison.Ordinal);
        Assert.Contains("die out", Assert.Throws<ArgumentException>(() => RollDecay.Calculate("roll", [new(0, 5), new(2, -8), new(4, 6.5), new(6, -5)])).Message, StringComparison.Ordinal);
        Assert.Contains("extreme 4", Assert.Throws<ArgumentOutOfRangeException>(() => RollDecay.Calculate("roll", [.. good[..3], new(6, double.NaN)])).Message, StringComparison.Ordinal);
    }

    [Fact]
    public void RollPeriod_NoGm_HasNone()
    {
        Assert.Null(RollPeriod.FromGyrationS(1.4, 0));
        Assert.Null(RollPeriod.FromBeamS(0.8, 4, -0.2));
        Assert.Throws<ArgumentOutOfRangeException>(() => RollPeriod.FromBeamS(0.8, double.NaN, 1));
        Assert.Throws<ArgumentOutOfRangeException>(() => RollPeriod.Gm(0.8, 4, 0));
    }

    private static InclinationInput Input(ImmutableArray<InclinationReading> readings) =>
        new() { Subject = "test", Readings = readings, DisplacementKg = 12_000, DisplacementDeviationKg = 0 };

    // GM 0.9 m at 12 t, moments to 400 kg·m, read with a deviation of 0.0005 and a zero error of 0.002.
    private static ImmutableArray<InclinationReading> Readings(Random random, int count) =>
    [
        .. Enumerable.Range(0, count).Select(i => -400 + (800.0 * i / (count - 1)))
            .Select((moment, i) => new InclinationReading($"r{i}", moment, (moment / (12_000 * 0.9)) + 0.002 + (0.0005 * Normal(random)))),
    ];

    private static double Normal(Random random) => Math.Sqrt(-2 * Math.Log(1 - random.NextDouble())) * Math.Cos(Math.Tau * random.NextDouble());
}
