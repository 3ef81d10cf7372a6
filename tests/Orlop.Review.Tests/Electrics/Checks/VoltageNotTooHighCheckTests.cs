using Orlop.Boat;
using Orlop.Boat.Things;
using Orlop.Boat.Values;
using Orlop.Review.Findings;
using Xunit;

namespace Orlop.Review.Tests.Electrics.Checks;

/// <summary>French order of 23 November 1987, Division 240, 240-2.31: equipment works from -10 % to +20 % of its nominal voltage.</summary>
public sealed class VoltageNotTooHighCheckTests
{
    private const string Check = "voltage-not-too-high";

    [Fact]
    public void LoadOnItsOwnSystem_Holds() => Assert.Equal(Verdict.Holds, SmallBoat.OneLamp().Worst(Check, "lamp").Verdict);

    [Fact]
    public void TwelveVoltLoadOnTwentyFour_Fails() => Assert.Equal(Verdict.Fails, Full(24, 25.6, 12).Worst(Check, "lamp").Verdict);

    // 28.4 ÷ (1.2 × 24) = 0.986: a charger's absorption voltage on a 24 V system is as meant, not tight.
    [Fact]
    public void AbsorptionVoltageOnTwentyFourVoltLoad_HoldsAndIsNotTight()
    {
        Finding finding = Full(24, 28.4, 24).Worst(Check, "lamp");
        Assert.Equal(Verdict.Holds, finding.Verdict);
        Assert.Equal(28.4 / 28.8, finding.UseFraction!.Value, 12);
    }

    [Theory]
    [InlineData(14.4, Verdict.Holds)]
    [InlineData(14.401, Verdict.Fails)]
    public void AtTheLimit_HoldsAndJustAboveFails(double fullV, Verdict verdict) => Assert.Equal(verdict, Full(12, fullV, 12).Worst(Check, "lamp").Verdict);

    [Fact]
    public void FullBatteryVoltageNotGiven_IsUnknown() =>
        SmallBoat.OneLamp().Change<BatteryBank>("bank", bank => bank with { OpenCircuit = [] }).Worst(Check, "lamp").IsUnknownFor("bank", "openCircuit");

    [Fact]
    public void NoSource_IsUnknown() => Assert.Equal(Verdict.Unknown, SmallBoat.OneLamp().Without("bank").Worst(Check, "lamp").Verdict);

    [Fact]
    public void SecondBankInSeries_IsUnknownAndNoPass() => Assert.Equal(Verdict.Unknown, SmallBoat.OneLamp().Without("minus-strap").With(
        SmallBoat.Battery("bank-2"),
        new Link { Id = "series", From = new Terminal("bank", "-"), To = new Terminal("bank-2", "+"), LengthM = 0.1 },
        new Link { Id = "minus-strap", From = new Terminal("bank-2", "-"), To = new Terminal("minus", "bar"), LengthM = 0.1 }).Worst(Check, "lamp").Verdict);

    private static BoatModel Full(double bankV, double fullV, double lampV) => SmallBoat.OneLamp()
        .Change<BatteryBank>("bank", bank => bank with { NominalV = bankV, OpenCircuit = [new ChargePoint(0, bankV * 0.95), new ChargePoint(1, fullV)] })
        .Change<ElectricLoad>("lamp", lamp => lamp with { NominalV = lampV });
}
