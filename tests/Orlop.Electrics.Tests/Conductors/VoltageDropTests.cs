using Orlop.Electrics.Conductors;
using Xunit;

namespace Orlop.Electrics.Tests.Conductors;

public sealed class VoltageDropTests
{
    [Fact]
    public void Calculate_WorkedByHand_Agrees()
    {
        // 20 m out and back of 0.00195 ohm/m at 15 A on 24 V: 39 mohm, 0.585 V, 2.4375 %.
        var result = VoltageDrop.Calculate(new VoltageDropInput { Subject = "cabin lights", LoopLengthM = 20, ResistanceOhmPerM = 0.00195, CurrentA = 15, NominalV = 24 });
        Assert.Equal(0.039, result.LoopResistanceOhm, 1e-12);
        Assert.Equal(0.585, result.DropV, 1e-12);
        Assert.Equal(0.024375, result.DropFraction, 1e-12);
        Assert.Equal([result.LoopResistanceOhm, result.DropV, result.DropFraction], result.Working.Select(step => step.Value!.Value));
    }

    [Fact]
    public void SmallestArea_AtItsOwnArea_GivesBackTheAllowedDrop()
    {
        var areaMm2 = VoltageDrop.SmallestAreaMm2(12, 30, 0.72, 50);
        var perMetre = AnnealedCopper.ResistivityAt20OhmMm2PerM * AnnealedCopper.ResistanceFactor(50) / areaMm2;
        var drop = VoltageDrop.Calculate(new VoltageDropInput { Subject = "pump", LoopLengthM = 12, ResistanceOhmPerM = perMetre, CurrentA = 30, NominalV = 24 }).DropV;
        Assert.Equal(0.72, drop, 1e-12);
    }

    [Theory]
    [InlineData(double.NaN, 0.01, 1, 24)]
    [InlineData(-1, 0.01, 1, 24)]
    [InlineData(1, 0, 1, 24)]
    [InlineData(1, 0.01, double.PositiveInfinity, 24)]
    [InlineData(1, 0.01, 1, 0)]
    public void Calculate_ImpossibleInput_IsRefused(double lengthM, double ohmPerM, double currentA, double nominalV) =>
        Assert.Throws<ArgumentOutOfRangeException>(() => VoltageDrop.Calculate(
            new VoltageDropInput { Subject = "pump", LoopLengthM = lengthM, ResistanceOhmPerM = ohmPerM, CurrentA = currentA, NominalV = nominalV }));

    [Fact]
    public void Adiabatic_LongestTimeAndSmallestArea_AreInverse()
    {
        var longest = AdiabaticWithstand.LongestTime(16, 143, 2000);
        Assert.Equal(16, AdiabaticWithstand.SmallestAreaMm2(143, 2000, longest.LongestS), 1e-9);
        Assert.Equal(AdiabaticWithstand.LetThroughA2S(16, 143), 2000.0 * 2000 * longest.LongestS, 1e-6);
        Assert.True(AdiabaticWithstand.LongestTime(16, 143, 100).IsBeyondFormula);
    }

    [Theory]
    [InlineData(double.NaN, 115, 100)]
    [InlineData(0, 115, 100)]
    [InlineData(6, 0, 100)]
    [InlineData(6, 115, 0)]
    [InlineData(6, 115, double.NaN)]
    public void Adiabatic_ImpossibleInput_IsRefused(double areaMm2, double kFactor, double currentA) =>
        Assert.Throws<ArgumentOutOfRangeException>(() => AdiabaticWithstand.LongestTime(areaMm2, kFactor, currentA));
}
