using Orlop.Boat.Things;
using Orlop.Boat.Values;
using Orlop.Review.Networks;
using Xunit;

namespace Orlop.Review.Tests.Networks;

/// <summary>What is typical of a chemistry: the figures of the tables it names, scaled by cells and capacity, never as if measured.</summary>
public sealed class TypicalBatteryTests
{
    // Flooded and AGM: the 12 V columns of two public manuals. Gel: lead-acid in general, the 24 V column of a third. Lithium iron phosphate: from memory, so no figure of it is held here.
    [Theory]
    [InlineData(BatteryChemistry.FloodedLeadAcid, 12, 0.5, 12.2)]
    [InlineData(BatteryChemistry.FloodedLeadAcid, 24, 0.5, 24.4)]
    [InlineData(BatteryChemistry.FloodedLeadAcid, 24, 1, 25.4)]
    [InlineData(BatteryChemistry.AbsorbedGlassMat, 12, 0.25, 12.0)]
    [InlineData(BatteryChemistry.AbsorbedGlassMat, 12, 1, 12.8)]
    [InlineData(BatteryChemistry.Gel, 24, 0.5, 24.2)]
    [InlineData(BatteryChemistry.Gel, 24, 0.1, 23.2)]
    public void Curve_IsThatOfItsTable(BatteryChemistry chemistry, double nominalV, double chargeFraction, double openCircuitV)
    {
        BatteryBank filled = TypicalBattery.WithCurve(Bare(chemistry, nominalV))!;
        Assert.Equal(openCircuitV, filled.OpenCircuit.Single(point => point.ChargeFraction == chargeFraction).OpenCircuitV, 6);
    }

    [Theory]
    [InlineData(BatteryChemistry.FloodedLeadAcid)]
    [InlineData(BatteryChemistry.AbsorbedGlassMat)]
    [InlineData(BatteryChemistry.Gel)]
    [InlineData(BatteryChemistry.LithiumIronPhosphate)]
    public void WhatIsFilledIn_IsAGuessThatSaysSoAndNeverFalls(BatteryChemistry chemistry)
    {
        BatteryBank filled = TypicalBattery.WithCurve(Bare(chemistry, 24))!;
        Assert.Equal(Knowledge.Guessed, filled.OpenCircuitKnown);
        Assert.Contains("not measured", filled.OpenCircuitMethod!, StringComparison.Ordinal);
        Assert.True(filled.OpenCircuit.Zip(filled.OpenCircuit.Skip(1)).All(pair => pair.First.ChargeFraction < pair.Second.ChargeFraction && pair.First.OpenCircuitV <= pair.Second.OpenCircuitV));

        Quantity ohm = TypicalBattery.ResistanceOhm(Bare(chemistry, 24))!;
        Assert.Equal(Knowledge.Guessed, ohm.Known);
        Assert.True(ohm.PlusMinus > 0);
        Assert.Contains("not measured", ohm.Method!, StringComparison.Ordinal);
    }

    // 3 to 5 milliohm for a good 12 V battery: public trade pages. Twice the cells double it, twice the capacity halves it (series and parallel).
    [Fact]
    public void Resistance_LiesWhereTheTradePagesHaveItAndGoesWithTheCells()
    {
        double one = TypicalBattery.ResistanceOhm(Bare(BatteryChemistry.FloodedLeadAcid, 12))!.Value;
        Assert.InRange(one, 0.003, 0.005);
        Assert.Equal(2 * one, TypicalBattery.ResistanceOhm(Bare(BatteryChemistry.FloodedLeadAcid, 24))!.Value, 9);
        Assert.Equal(one / 2, TypicalBattery.ResistanceOhm(Bare(BatteryChemistry.FloodedLeadAcid, 12) with { CapacityAh = 200 })!.Value, 9);
    }

    [Theory]
    [InlineData(12, 4)]
    [InlineData(12.8, 4)]
    [InlineData(24, 8)]
    [InlineData(25.6, 8)]
    [InlineData(48, 16)]
    [InlineData(51.2, 16)]
    public void LithiumIronPhosphate_CellsAreCountedAtEitherNominalVoltage(double nominalV, int cells) =>
        Assert.Equal(cells, TypicalBattery.CellCount(Bare(BatteryChemistry.LithiumIronPhosphate, nominalV)));

    [Fact]
    public void CellsThatCannotBeCounted_OrNoCapacity_FillNothingIn()
    {
        Assert.Null(TypicalBattery.WithCurve(Bare(BatteryChemistry.Gel, 13)));
        Assert.Null(TypicalBattery.WithResistance(Bare(BatteryChemistry.Gel, 13)));
        Assert.Null(TypicalBattery.WithCurve(Bare(BatteryChemistry.Gel, double.NaN)));
        Assert.Null(TypicalBattery.WithResistance(Bare(BatteryChemistry.Gel, 12) with { CapacityAh = null }));
    }

    private static BatteryBank Bare(BatteryChemistry chemistry, double nominalV) => new() { Id = "bank", Chemistry = chemistry, NominalV = nominalV, CapacityAh = 100 };
}
