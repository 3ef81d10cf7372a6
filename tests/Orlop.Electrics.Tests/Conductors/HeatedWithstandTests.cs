using Orlop.Electrics.Conductors;
using Xunit;

namespace Orlop.Electrics.Tests.Conductors;

public sealed class HeatedWithstandTests
{
    private static HeatedWithstandInput Input(double currentA, double areaMm2 = 10) => new()
    {
        Subject = "feed",
        AreaMm2 = areaMm2,
        AmbientC = 25,
        InitialC = 40,
        FinalC = 160,
        CurrentA = currentA,
        RatedCurrentA = 60,
        RatedC = 70,
        TableAmbientC = 30,
    };

    [Theory]
    [InlineData(130)]
    [InlineData(200)]
    [InlineData(500)]
    [InlineData(3000)]
    public void LongestTime_StepByStepIntegration_Agrees(double currentA)
    {
        // The same heat balance by the classical Runge-Kutta method of fourth order, in steps of temperature: dt/dθ.
        var input = Input(currentA);
        double TimePerK(double temperatureC)
        {
            var ohm = 0.017241 / 10 * (234.5 + temperatureC) / 254.5;
            var ratedOhm = 0.017241 / 10 * (234.5 + 70) / 254.5;
            var lossWPerMK = 60 * 60 * ratedOhm / (70 - 30);
            return 3.45 * 10 / ((currentA * currentA * ohm) - (lossWPerMK * (temperatureC - 25)));
        }

        var timeS = 0.0;
        const int steps = 20_000;
        var stepK = (160.0 - 40) / steps;
        for (var k = 0; k < steps; k++)
        {
            var at = 40 + (k * stepK);
            timeS += stepK / 6 * (TimePerK(at) + (4 * TimePerK(at + (stepK / 2))) + TimePerK(at + stepK));
        }

        Assert.Equal(1, HeatedWithstand.LongestTime(input).LongestS / timeS, 1e-8);
    }

    [Fact]
    public void LongestTime_GreatCurrent_MeetsTheAdiabaticFormula()
    {
        var result = HeatedWithstand.LongestTime(Input(100_000));
        Assert.Equal(1, result.LongestS / result.AdiabaticS, 1e-4);
    }

    [Fact]
    public void LongestTime_CurrentThatKeepsItBelow_IsForEver()
    {
        // At the table's current and ambient the copper stays at its rated temperature.
        var steady = Input(60) with { AmbientC = 30, InitialC = 30, FinalC = 70.001 };
        Assert.True(double.IsPositiveInfinity(HeatedWithstand.LongestTime(steady).LongestS));
        Assert.True(double.IsFinite(HeatedWithstand.LongestTime(steady with { FinalC = 69.999 }).LongestS));
    }

    [Fact]
    public void LongestTime_MoreCurrent_NeverLonger_MoreCopper_NeverShorter()
    {
        for (var currentA = 70.0; currentA < 5000; currentA *= 1.1)
        {
            var result = HeatedWithstand.LongestTime(Input(currentA));
            Assert.True(result.LongestS >= HeatedWithstand.LongestTime(Input(currentA * 1.1)).LongestS);
            Assert.True(result.LongestS >= result.AdiabaticS * (1 - 1e-9));
            Assert.True(HeatedWithstand.LongestTime(Input(currentA, 16)).AdiabaticS > result.AdiabaticS);
        }
    }

    [Theory]
    [InlineData(double.NaN)]
    [InlineData(0)]
    [InlineData(double.PositiveInfinity)]
    public void LongestTime_ImpossibleCurrent_IsRefused(double currentA) =>
        Assert.Throws<ArgumentOutOfRangeException>(() => HeatedWithstand.LongestTime(Input(currentA)));
}
