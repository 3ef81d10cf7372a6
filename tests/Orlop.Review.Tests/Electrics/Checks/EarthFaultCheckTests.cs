using Orlop.Boat;
using Orlop.Boat.Things;
using Orlop.Boat.Values;
using Orlop.Review.Findings;
using Xunit;

namespace Orlop.Review.Tests.Electrics.Checks;

/// <summary>
/// By hand: class 5 copper 7.98 and 13.3 ohm/km at 20 °C (IEC 60228), at 70 °C × 304.5/254.5. Live 3 m each: (0.02394 + 0.0399) × 1.19646 = 0.07638 ohm, and breakers 0.015, change-over 0.003;
/// earth the same 0.07638 ohm.
/// </summary>
public sealed class EarthFaultCheckTests
{
    private const string Check = "earth-fault-disconnection";
    private const double CopperOhm = ((3 * 7.98e-3) + (3 * 13.3e-3)) * 304.5 / 254.5;

    private static Finding From(BoatModel boat, string condition) =>
        Assert.Single(Assert.Single(boat.Findings(), pair => pair.CheckId == Check && pair.SubjectId == "kettle").After!.All, finding => finding.ConditionId == condition);

    private static double Number(Finding finding, string what) => Assert.Single(finding.Working, line => line.What == what).Value!.Value;

    [Fact]
    public void FromTheShore_IsOhmsLawByHand_AndHolds()
    {
        Finding finding = From(AcBoat.Whole(), "ashore");
        double loopOhm = 0.8 + CopperOhm + 0.018 + CopperOhm;
        Assert.Equal(loopOhm, Number(finding, "Resistance of the loop"), 9);
        Assert.Equal(230 / loopOhm, Number(finding, "Current of the fault"), 6);
        Assert.Equal(230 / loopOhm * CopperOhm, Number(finding, "Touched metal, over the earth at the source"), 6);
        Assert.Equal(Verdict.Holds, finding.Verdict);
        Assert.Equal(0.04 / 0.4, finding.UseFraction!.Value, 9);
    }

    // 12 A opens no breaker of 10 or 16 A for sure: the residual-current device does.
    [Fact]
    public void FromTheInverter_TheResidualDeviceMustDoIt()
    {
        Finding finding = From(AcBoat.Whole(), "in-use");
        Assert.Equal(Verdict.Holds, finding.Verdict);
        Assert.Contains("residual within", finding.Headline.ToString(), StringComparison.Ordinal);
        Assert.Contains(finding.Working, line => line.What == "Breakers" && line.Expression.Contains("none is sure to open", StringComparison.Ordinal));
        Assert.NotNull(finding.Caution);
    }

    [Fact]
    public void FromTheInverter_WithoutResidualDevice_Fails() => Assert.Equal(Verdict.Fails, From(WithoutResidual(), "in-use").Verdict);

    [Fact]
    public void FromTheInverter_ThatDoesNotSayWhatItGives_WithoutResidualDevice_IsUnknown() =>
        From(WithoutResidual().Change<Inverter>("inverter", inverter => inverter with { ShortCircuitA = null }), "in-use").IsUnknownFor("inverter", "shortCircuitA");

    [Fact]
    public void FromTheInverter_ThatDoesNotSayWhatItGives_ItsRatingIsEnoughForTheResidualDevice() =>
        Assert.Equal(Verdict.Holds, From(AcBoat.Whole().Change<Inverter>("inverter", inverter => inverter with { ShortCircuitA = null }), "in-use").Verdict);

    // 0.38 s of 0.4 s is 95 %.
    [Theory]
    [InlineData(0.38, Verdict.Tight)]
    [InlineData(0.3, Verdict.Holds)]
    [InlineData(0.5, Verdict.Fails)]
    public void InverterThatShutsDown_ByItsTime(double shutsDownS, Verdict verdict) =>
        Assert.Equal(verdict, From(WithoutResidual().Change<Inverter>("inverter", inverter => inverter with { ShutsDownS = shutsDownS }), "in-use").Verdict);

    // 230/10.2 = 23 A: 2.3 × 10 A; the slow release may take longer than 0.4 s.
    [Fact]
    public void LongLoopAshore_WithoutResidualDevice_Fails() =>
        Assert.Equal(Verdict.Fails, From(WithoutResidual().Change<ShoreInlet>("shore", inlet => inlet with { SourceOhm = 10 }), "ashore").Verdict);

    // 1 ohm drives 19 times 10 A, which opens at once; an estimate of ± 5 may be 11 ohm, and twice 10 A may take too long.
    [Theory]
    [InlineData(Knowledge.Estimated, Verdict.Unknown)]
    [InlineData(Knowledge.Measured, Verdict.Holds)]
    public void ShoreThatNobodyMeasured_EndsInTimeOnlyWhereItsMostDoes(Knowledge known, Verdict expected) =>
        Assert.Equal(expected, From(WithoutResidual().Change<ShoreInlet>("shore", inlet => inlet with { SourceOhm = new Quantity(1, known, 5) }), "ashore").Verdict);

    [Fact]
    public void BreakersWithoutTimes_WithoutResidualDevice_AreUnknown() => From(
        WithoutResidual().Change<Protection>("kettle-breaker", device => device with { Gates = null }).Change<ShoreInlet>("shore", inlet => inlet with { SourceOhm = 10 }), "ashore").IsUnknownFor("kettle-breaker", "gates");

    // IEC 60898-1 covers breakers up to 125 A.
    [Fact]
    public void BreakerBeyondTheRatingsOfItsKind_WithoutResidualDevice_IsUnknownForThem() => From(
        WithoutResidual().Change<Protection>("kettle-breaker", device => device with { Gates = "breaker-b", RatedA = 150 }).Change<ShoreInlet>("shore", inlet => inlet with { SourceOhm = 10 }), "ashore").IsUnknownFor("kettle-breaker", "gates/150//125");

    // 1700 ohm × 30 mA is 51 V; the current of 0.135 A is past twice 30 mA: 0.15 s of 0.2 s.
    [Theory]
    [InlineData(100, Verdict.Holds)]
    [InlineData(1700, Verdict.Fails)]
    public void OwnEarthAshore_ByItsResistance(double sourceOhm, Verdict verdict) => Assert.Equal(
        verdict, From(AcBoat.Whole().Change<ShoreInlet>("shore", inlet => inlet with { NeutralBond = NeutralBond.OwnEarth, SourceOhm = sourceOhm }), "ashore").Verdict);

    [Fact]
    public void FloatingInverter_ThatFeedsOneItem_Holds() => Assert.Equal(Verdict.Holds, From(Floating(), "in-use").Verdict);

    [Fact]
    public void FloatingInverter_ThatFeedsTwo_Fails() => Assert.Equal(Verdict.Fails, From(Floating().With(
        new ElectricLoad { Id = "lamp-ac", IsAc = true, Behaviour = LoadBehaviour.Resistance, NominalV = 230, RunningW = 10, Uses = [new LoadUse("in-use", 1)] },
        AcBoat.Cable("lamp-ac-cable", 1.5, 1, ("live", "kettle-breaker.out", "lamp-ac.l"), ("neutral", "kettle-breaker.out2", "lamp-ac.n"), ("earth", "earth.bar", "lamp-ac.pe"))), "in-use").Verdict);

    [Fact]
    public void EarthNotWired_IsUnknownUntilItIsSaidToNeedNone()
    {
        BoatModel boat = WithoutKettleEarth();
        From(boat, "ashore").IsUnknownFor("kettle", "isDoubleInsulated");
        Assert.Equal(Verdict.Fails, From(boat.Change<ElectricLoad>("kettle", load => load with { IsDoubleInsulated = false }), "ashore").Verdict);
        Assert.DoesNotContain(boat.Change<ElectricLoad>("kettle", load => load with { IsDoubleInsulated = true }).Findings(), pair => pair.CheckId == Check);
    }

    [Fact]
    public void EachMissingInput_IsUnknown()
    {
        From(AcBoat.Whole().Change<ShoreInlet>("shore", inlet => inlet with { SourceOhm = null }), "ashore").IsUnknownFor("shore", "sourceOhm");
        From(AcBoat.Whole().Change<ShoreInlet>("shore", inlet => inlet with { NeutralBond = null }), "ashore").IsUnknownFor("shore", "neutralBond");
        From(AcBoat.Whole().Change<Inverter>("inverter", inverter => inverter with { NeutralBond = null }), "in-use").IsUnknownFor("inverter", "neutralBond");
        From(AcBoat.Whole().Change<Cable>("kettle-cable", cable => cable with { LengthM = null }), "ashore").IsUnknownFor("kettle-cable", "lengthM");
        From(AcBoat.Whole().Change<Cable>("kettle-cable", cable => cable with { InsulationC = null }), "ashore").IsUnknownFor("kettle-cable", "insulationC");
        Assert.Equal(Verdict.Unknown, AcBoat.Whole().Change<Changeover>("changeover", changeover => changeover with { Positions = [] }).Worst(Check, "kettle").Verdict);
    }

    private static BoatModel WithoutResidual() => AcBoat.Whole().Change<Protection>("residual", device => device with { ResidualA = null });

    private static BoatModel Floating() => AcBoat.Whole().Change<Inverter>("inverter", inverter => inverter with { NeutralBond = NeutralBond.Never });

    private static BoatModel WithoutKettleEarth() => AcBoat.Whole().Change<Cable>("kettle-cable", cable => cable with { Cores = [.. cable.Cores.Where(core => core.Id != "earth")] });
}
