using CsCheck;
using Orlop.Boat;
using Orlop.Boat.Things;
using Orlop.Boat.Values;
using Orlop.Review.Findings;
using Xunit;

namespace Orlop.Review.Tests.Electrics.Checks;

/// <summary>
/// By hand: S ≥ √(I²t)/k (IEC 60364-5-54, 543.1.2), k from 70 to 160 °C by annex A of the same, 114.84. Just behind the kettle's breaker at 20 °C: 0.8 ohm ashore, live 3 m of 2.5 mm² (7.98 ohm/km, IEC 60228) and 0.018 ohm of devices, earth the same 3 m;
/// the residual release takes 0.04 s (IEC 61008-1).
/// </summary>
public sealed class EarthFaultHeatCheckTests
{
    private const string Check = "earth-fault-heat";
    private static readonly double K = Math.Sqrt(3.45e-3 * 254.5 / 17.241e-6 * Math.Log(394.5 / 304.5));

    private static Finding From(BoatModel boat, string condition) =>
        Assert.Single(Assert.Single(boat.Findings(), pair => pair.CheckId == Check && pair.SubjectId == "kettle").After!.All, finding => finding.ConditionId == condition);

    // 265.6 A for 0.04 s: 0.46 mm² of the kettle's 1.5 mm², 31 %; behind the shore's breaker 277 A for 0.1 s ask 0.76 of 2.5 mm², 30.6 %.
    [Fact]
    public void FromTheShore_IsTheFormulaByHand_AndHolds()
    {
        Finding finding = From(AcBoat.Whole(), "ashore");
        double faultA = 230 / (0.8 + (2 * 3 * 7.98e-3) + 0.018);
        Assert.Equal(Math.Sqrt(faultA * faultA * 0.04) / K / 1.5, finding.UseFraction!.Value, 1e-9);
        Assert.Equal(Verdict.Holds, finding.Verdict);
        Assert.NotNull(finding.Caution);
    }

    // A stiff supply of 0.02 ohm drives 4.7 kA just behind the first breaker, and its gate of 0.1 s alone does not prove that 2.5 mm² bears that.
    [Fact]
    public void StiffSupply_ByGatesAlone_IsUnknown() => From(Stiff(), "ashore").IsUnknownFor("shore-breaker", "clearingA2S");

    // 1.5 mm² bears (114.84 × 1.5)² = 29.7 kA² s.
    [Theory]
    [InlineData(20_000, Verdict.Holds)]
    [InlineData(27_000, Verdict.Tight)]
    [InlineData(40_000, Verdict.Fails)]
    public void StiffSupply_BySheets_IsHeldAgainstTheThinnestConductor(double clearingA2S, Verdict verdict)
    {
        BoatModel boat = Stiff();
        foreach (string id in new[] { "shore-breaker", "residual", "kettle-breaker" })
        {
            boat = boat.Change<Protection>(id, device => device with { ClearingA2S = clearingA2S });
        }

        Finding finding = From(boat, "ashore");
        Assert.Equal(verdict, finding.Verdict);
        Assert.Equal(Math.Sqrt(clearingA2S) / K / 1.5, finding.UseFraction!.Value, 1e-9);
    }

    // 12 A of an inverter open no breaker for sure, and before the first device nothing else ends them: 2.5 mm² carries that for ever.
    [Fact]
    public void FromTheInverter_WhatIsBorneForEver_NeedsNoEnd()
    {
        Finding finding = From(WithoutResidual(), "in-use");
        Assert.Equal(Verdict.Holds, finding.Verdict);
        Assert.Contains("for ever", finding.Headline.ToString(), StringComparison.Ordinal);
    }

    [Fact]
    public void FromTheInverter_ThatNothingEnds_AndThatIsNotBorne_Fails() =>
        Assert.Equal(Verdict.Fails, From(WithoutResidual().Change<Inverter>("inverter", inverter => inverter with { ShortCircuitA = 45 }), "in-use").Verdict);

    [Fact]
    public void FromTheInverter_ThatShutsDown_ItsTimeCounts() => Assert.Equal(
        Verdict.Holds, From(WithoutResidual().Change<Inverter>("inverter", inverter => inverter with { ShortCircuitA = 45, ShutsDownS = 0.5 }), "in-use").Verdict);

    [Fact]
    public void WhatTheInverterGivesNotGiven_IsUnknown() =>
        From(AcBoat.Whole().Change<Inverter>("inverter", inverter => inverter with { ShortCircuitA = null }), "in-use").IsUnknownFor("inverter", "shortCircuitA");

    [Fact]
    public void GatesNotGiven_AreUnknown() => From(Stiff().Change<Protection>("shore-breaker", device => device with { Gates = null }), "ashore").IsUnknownFor("shore-breaker", "gates");

    [Fact]
    public void InsulationNotGiven_IsUnknown() => From(AcBoat.Whole().Change<Cable>("kettle-cable", cable => cable with { InsulationC = null }), "ashore").IsUnknownFor("kettle-cable", "insulationC");

    [Fact]
    public void SourceResistanceNotGiven_IsUnknown() => From(AcBoat.Whole().Change<ShoreInlet>("shore", inlet => inlet with { SourceOhm = null }), "ashore").IsUnknownFor("shore", "sourceOhm");

    [Fact]
    public void NoDeviceAboard_IsUnknown()
    {
        BoatModel boat = AcBoat.Whole();
        foreach (string id in new[] { "shore-breaker", "residual", "kettle-breaker" })
        {
            boat = boat.Change<Protection>(id, device => device with { RatedA = 0 });
        }

        Assert.Equal(Verdict.Unknown, From(boat, "ashore").Verdict);
    }

    // 0.8 ohm: 265.6 A for 0.22 s ask 1.08 of 1.5 mm². An estimate of ± 0.35 may be as little as 0.2 ohm: 865 A, and 3.5 mm².
    [Theory]
    [InlineData(Knowledge.Estimated, Verdict.Unknown)]
    [InlineData(Knowledge.Measured, Verdict.Holds)]
    public void ShoreThatNobodyMeasured_HoldsOnlyWhereItsLeastDoes(Knowledge known, Verdict expected)
    {
        Finding finding = From(Timed(0.02).Change<ShoreInlet>("shore", inlet => inlet with { SourceOhm = new Quantity(0.8, known, 0.35) }), "ashore");
        Assert.Equal(expected, finding.Verdict);
        Assert.Equal(expected == Verdict.Unknown, finding.Inputs.Any(input => input is { ThingId: "shore", Field: "sourceOhm", IsGuess: true }));
    }

    [Fact]
    public void DoubleInsulated_HasNoFinding() => Assert.DoesNotContain(
        AcBoat.Whole().Change<ElectricLoad>("kettle", load => load with { IsDoubleInsulated = true }).Findings(), pair => pair.CheckId == Check);

    // Thicker conductors drive more current too, but never so much more; a quicker device never lets through more.
    [Fact]
    public void Properties_ThickerConductorOrQuickerDevice_IsNeverWorse() => Gen.Select(Gen.Double[0.02, 3], Gen.Double[0.75, 6], Gen.Double[1.1, 4], Gen.Double[0.02, 3], Gen.Double[0.05, 1]).Sample((sourceOhm, areaMm2, thicker, latestS, quicker) =>
    {
        BoatModel boat = Timed(latestS).Change<ShoreInlet>("shore", inlet => inlet with { SourceOhm = sourceOhm }).Change<Cable>("kettle-cable", cable => cable with { AreaMm2 = areaMm2 });
        double had = Use(boat);
        Assert.True(Use(boat.Change<Cable>("kettle-cable", cable => cable with { AreaMm2 = areaMm2 * thicker })) <= had * (1 + 1e-9), "thicker");
        Assert.True(Use(Timed(latestS * quicker).Change<ShoreInlet>("shore", inlet => inlet with { SourceOhm = sourceOhm }).Change<Cable>("kettle-cable", cable => cable with { AreaMm2 = areaMm2 })) <= had * (1 + 1e-9), "quicker");
    }, iter: 40);

    private static double Use(BoatModel boat) => From(boat, "ashore").UseFraction!.Value;

    // Times above a tenth of a second, so that no sheet is asked for.
    private static BoatModel Timed(double latestS)
    {
        BoatModel boat = AcBoat.Whole();
        foreach (string id in new[] { "shore-breaker", "residual", "kettle-breaker" })
        {
            boat = boat.Change<Protection>(id, device => device with { Gates = null, OwnTimes = [new OperatingTime(1.5, null, latestS + 0.2)], ResidualA = null, ClearingA2S = 1e12 });
        }

        return boat;
    }

    private static BoatModel Stiff() => AcBoat.Whole().Change<ShoreInlet>("shore", inlet => inlet with { SourceOhm = 0.02 });

    private static BoatModel WithoutResidual() => AcBoat.Whole().Change<Protection>("residual", device => device with { ResidualA = null, ResidualType = null });
}
