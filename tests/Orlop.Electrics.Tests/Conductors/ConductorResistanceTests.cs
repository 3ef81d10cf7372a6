using CsCheck;
using Orlop.Electrics.Conductors;
using Xunit;

namespace Orlop.Electrics.Tests.Conductors;

public sealed class ConductorResistanceTests
{
    [Fact]
    public void Calculate_StandardSize_UsesTheTableAtTemperature()
    {
        // By hand: 0.386 ohm/km × 4 m × (234.5+70)/254.5 = 1.544 mohm × 1.196464 = 1.847340 mohm.
        var result = ConductorResistance.Calculate(Input(50, 4, 70));
        Assert.Equal(ResistanceBasis.Table, result.Basis);
        Assert.Equal(1.847340e-3, result.ResistanceOhm, 1e-9);
        Assert.Equal(0, result.StrandMarginFraction);
        Assert.Equal(result.ResistanceOhm, result.Working[^1].Value);
    }

    [Fact]
    public void Calculate_WireGauge_AddsTheLargerNeighboursMargin()
    {
        // 2/0 AWG, 67.43 mm²: neighbours 50 mm² (0.386 × 50 / 17.241 = 1.1194) and 70 mm² (0.272 × 70 / 17.241 = 1.1043), class 5 plain.
        var result = ConductorResistance.Calculate(Input(AmericanWireGauge.AreaMm2(-1), 1, 20));
        Assert.Equal(ResistanceBasis.IdealWithStrandMargin, result.Basis);
        Assert.Equal(0.1194, result.StrandMarginFraction, 5e-5);
        Assert.Equal(0.25568e-3 * 1.1194, result.ResistanceOhm, 2e-8);
    }

    [Theory]
    [InlineData(0.2, 39.0 * 0.5 / 17.241)]
    [InlineData(500, 0.0641 * 300 / 17.241)]
    public void Calculate_BeyondTheTable_UsesTheEndRowsMargin(double areaMm2, double expectedRatio)
    {
        var result = ConductorResistance.Calculate(Input(areaMm2, 1, 20));
        Assert.Equal(ResistanceBasis.IdealWithStrandMargin, result.Basis);
        Assert.Equal(expectedRatio, result.ResistanceOhm / result.LeastOhm, 1e-9);
    }

    [Fact]
    public void Calculate_AnySize_IsNeverBelowIdealAndProportionalToLength() =>
        Gen.Select(Gen.Double[0.05, 1000], Gen.Double[0.01, 500], Gen.Double[-40, 250], Gen.Bool).Sample((areaMm2, lengthM, conductorC, isTinned) =>
        {
            var one = ConductorResistance.Calculate(Input(areaMm2, lengthM, conductorC) with { IsTinned = isTinned });
            var two = ConductorResistance.Calculate(Input(areaMm2, 2 * lengthM, conductorC) with { IsTinned = isTinned });
            return one.ResistanceOhm >= one.LeastOhm && Math.Abs((two.ResistanceOhm / one.ResistanceOhm) - 2) < 1e-12;
        });

    [Fact]
    public void OfMetreAt20_AnySize_IsTheMetreThatIsWorkedOut() =>
        Gen.Select(Gen.Double[0.05, 1000], Gen.Bool).Sample((areaMm2, isTinned) =>
        {
            var worked = ConductorResistance.Calculate(Input(areaMm2, 1, 20) with { IsTinned = isTinned });
            return ConductorResistance.OfMetreAt20(areaMm2, StrandClass.Class5, isTinned) == (worked.ResistanceOhm, worked.LeastOhm);
        });

    [Fact]
    public void OfMetreAt20_ImpossibleSize_IsRefused() =>
        Assert.Throws<ArgumentOutOfRangeException>(() => ConductorResistance.OfMetreAt20(double.NaN, StrandClass.Class5, false));

    [Theory]
    [InlineData(double.NaN, 1, 20)]
    [InlineData(0.049, 1, 20)]
    [InlineData(1, -0.1, 20)]
    [InlineData(1, 1, double.NegativeInfinity)]
    [InlineData(1, 1, 251)]
    public void Calculate_ImpossibleInput_IsRefused(double areaMm2, double lengthM, double conductorC) =>
        Assert.Throws<ArgumentOutOfRangeException>(() => ConductorResistance.Calculate(Input(areaMm2, lengthM, conductorC)));

    [Fact]
    public void WireGauge_EveryGauge_GoesThereAndBack()
    {
        for (var gauge = AmericanWireGauge.ThickestGauge; gauge <= AmericanWireGauge.ThinnestGauge; gauge++)
        {
            Assert.Equal(gauge, AmericanWireGauge.Nearest(AmericanWireGauge.AreaMm2(gauge)));
            Assert.Equal(gauge, AmericanWireGauge.ThinnestAtLeast(AmericanWireGauge.AreaMm2(gauge)));
            Assert.True(AmericanWireGauge.TryParse(AmericanWireGauge.Format(gauge), out var read));
            Assert.Equal(gauge, read);
        }

        Assert.Null(AmericanWireGauge.ThinnestAtLeast(120));
        Assert.Null(AmericanWireGauge.Nearest(300));
    }

    [Theory]
    [InlineData("0")]
    [InlineData("5/0")]
    [InlineData("0/0")]
    [InlineData("41")]
    [InlineData("-2")]
    [InlineData("")]
    [InlineData("6 mm2")]
    public void WireGauge_NoGauge_IsNotRead(string text) => Assert.False(AmericanWireGauge.TryParse(text, out _));

    private static ConductorResistanceInput Input(double areaMm2, double lengthM, double conductorC) => new()
    {
        Subject = "battery lead",
        AreaMm2 = areaMm2,
        LengthM = lengthM,
        Strand = StrandClass.Class5,
        IsTinned = false,
        ConductorC = conductorC,
    };
}
