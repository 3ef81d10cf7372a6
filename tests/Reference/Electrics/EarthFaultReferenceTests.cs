using Orlop.Electrics.Protection;
using Xunit;

namespace Orlop.Reference.Tests.Electrics;

public sealed class EarthFaultReferenceTests
{
    /// <summary>Source: IEC 60364-4-41 table 41.1 (BS 7671 table 41.1), alternating current, as quoted openly.</summary>
    [Theory]
    [InlineData(51, 0.8, 0.3)]
    [InlineData(120, 0.8, 0.3)]
    [InlineData(121, 0.4, 0.2)]
    [InlineData(230, 0.4, 0.2)]
    [InlineData(231, 0.2, 0.07)]
    [InlineData(400, 0.2, 0.07)]
    public void DisconnectionTimes_FinalCircuits_AreThoseOfTheTable(double nominalV, double neutralS, double groundS)
    {
        Assert.Equal(neutralS, DisconnectionTimes.Permitted(nominalV, EarthReturn.Neutral, 32));
        Assert.Equal(groundS, DisconnectionTimes.Permitted(nominalV, EarthReturn.Ground, 32));
    }

    [Theory]
    [InlineData(50)]
    [InlineData(401)]
    public void DisconnectionTimes_OutsideTheTable_AreUnknown(double nominalV) => Assert.Null(DisconnectionTimes.Permitted(nominalV, EarthReturn.Neutral, 16));

    /// <summary>Source: the greatest electrode resistance at 50 V by rated residual current, as a public loop tester's manual prints it after IEC 60364: 5000, 1667, 500, 167, 100, 50 ohm.</summary>
    [Theory]
    [InlineData(0.01, 5000)]
    [InlineData(0.03, 1667)]
    [InlineData(0.1, 500)]
    [InlineData(0.3, 167)]
    [InlineData(0.5, 100)]
    [InlineData(1, 50)]
    public void GreatestLoop_OfAResidualDevice_IsThePrintedOne(double residualA, double printedOhm) => Assert.Equal(
        printedOhm, Math.Round(EarthFaultLoop.GreatestLoopOhm(new EarthFaultDevice { Subject = "residual", RatingA = 16, ResidualA = residualA }, 230, 0.2)!.Value));

    /// <summary>Source: BS 7671 table 41.3 divides by 1.0526 (C_min 0.95); without that factor type B of 32 A is 230/160 = 1.44 ohm, type C 0.72 ohm: the closed form U0/(5 In), U0/(10 In).</summary>
    [Theory]
    [InlineData("breaker-b", 6, 7.67)]
    [InlineData("breaker-b", 32, 1.44)]
    [InlineData("breaker-c", 16, 1.44)]
    [InlineData("breaker-c", 32, 0.72)]
    public void GreatestLoop_OfABreaker_IsTheClosedForm(string curve, double ratedA, double printedOhm) => Assert.Equal(
        printedOhm, Math.Round(EarthFaultLoop.GreatestLoopOhm(new EarthFaultDevice { Subject = "breaker", RatingA = ratedA, Curve = OperatingGateTable.Find(curve, ratedA) }, 230, 0.4)!.Value, 2));
}
