using Orlop.Boat;
using Orlop.Boat.Things;
using Orlop.Boat.Values;
using Orlop.Review.Findings;
using Xunit;

namespace Orlop.Review.Tests.Electrics.Checks;

/// <summary>Division 240, 240-2.31 VII: the neutral is earthed at the active source alone. What is counted is drawn by hand in each test.</summary>
public sealed class NeutralBondCheckTests
{
    private const string Check = "neutral-earth-bond";

    private static BoatModel Bond(string neutral) => AcBoat.Whole().With(new Link { Id = "bond", From = Terminal.Parse(neutral), To = Terminal.Parse("earth.bar") });

    [Theory]
    [InlineData("shore")]
    [InlineData("inverter")]
    public void OnceInEachMode_Holds(string source) => Assert.Equal(Verdict.Holds, AcBoat.Whole().Worst(Check, source).Verdict);

    // A bond before the change-over's common side joins the neutral of whichever feeds: two for each.
    [Theory]
    [InlineData("shore")]
    [InlineData("inverter")]
    public void BondOnBoardBesideTheSources_IsTwice_Fails(string source)
    {
        Finding finding = Bond("changeover.out2").Worst(Check, source);
        Assert.Equal(Verdict.Fails, finding.Verdict);
        Assert.Contains("2 times", finding.Headline.ToString(), StringComparison.Ordinal);
    }

    [Fact]
    public void BondOnTheInvertersSideOfTheChangeover_LeavesTheShoreAlone()
    {
        BoatModel boat = Bond("changeover.b2").Change<Inverter>("inverter", inverter => inverter with { NeutralBond = NeutralBond.Never });
        Assert.Equal(Verdict.Holds, boat.Worst(Check, "shore").Verdict);
        Assert.Equal(Verdict.Holds, boat.Worst(Check, "inverter").Verdict);
        Assert.Equal(Verdict.Holds, boat.Worst("earth-fault-disconnection", "kettle").Verdict);
    }

    // A bar with three neutrals on it and one strap to the earth bar is one bond, two straps are two.
    [Theory]
    [InlineData(1, Verdict.Holds)]
    [InlineData(2, Verdict.Fails)]
    public void BarOfNeutrals_IsBondedAsOftenAsItIsStrapped(int strapCount, Verdict verdict)
    {
        BoatModel boat = AcBoat.Whole().Change<Inverter>("inverter", inverter => inverter with { NeutralBond = NeutralBond.Never }).With(
            new Busbar { Id = "neutrals" }, new Link { Id = "in", From = Terminal.Parse("changeover.b2"), To = Terminal.Parse("neutrals.bar") },
            new ElectricLoad { Id = "second", IsAc = true, Behaviour = LoadBehaviour.Resistance, NominalV = 230, RunningW = 10, Uses = [new LoadUse("in-use", 1)] },
            AcBoat.Cable("second-cable", 1.5, 1, ("live", "changeover.b", "second.l"), ("neutral", "neutrals.bar", "second.n"), ("earth", "earth.bar", "second.pe")));
        for (int strap = 1; strap <= strapCount; strap++)
        {
            boat = boat.With(new Link { Id = $"strap-{strap}", From = Terminal.Parse("neutrals.bar"), To = Terminal.Parse("earth.bar") });
        }

        Assert.Equal(verdict, boat.Worst(Check, "inverter").Verdict);
    }

    [Fact]
    public void OnlyBondBehindTheResidualDevice_Fails() => Assert.Contains(
        "behind the residual-current device",
        Bond("kettle-breaker.in2").Change<Inverter>("inverter", inverter => inverter with { NeutralBond = NeutralBond.Never }).Worst(Check, "inverter").Headline.ToString(),
        StringComparison.Ordinal);

    [Fact]
    public void FloatingSource_WithOneItem_Holds_WithTwo_Fails()
    {
        BoatModel boat = AcBoat.Whole().Change<Inverter>("inverter", inverter => inverter with { NeutralBond = NeutralBond.Never });
        Assert.Equal(Verdict.Holds, boat.Worst(Check, "inverter").Verdict);
        Assert.Equal(Verdict.Fails, boat.With(
            new ElectricLoad { Id = "second", IsAc = true, Behaviour = LoadBehaviour.Resistance, NominalV = 230, RunningW = 10, Uses = [new LoadUse("in-use", 1)] },
            AcBoat.Cable("second-cable", 1.5, 1, ("live", "kettle-breaker.out", "second.l"), ("neutral", "kettle-breaker.out2", "second.n"))).Worst(Check, "inverter").Verdict);
    }

    // A change-over of the live alone would leave the neutrals together: an inverter that keeps its bond then makes a second one on shore power.
    [Fact]
    public void NeutralsLeftTogether_AnInverterThatKeepsItsBond_FailsOnShorePower()
    {
        BoatModel boat = AcBoat.Whole().With(new Link { Id = "common", From = Terminal.Parse("changeover.a2"), To = Terminal.Parse("changeover.b2") });
        Assert.Equal(Verdict.Fails, boat.Change<Inverter>("inverter", inverter => inverter with { NeutralBond = NeutralBond.Always }).Worst(Check, "shore").Verdict);
        Assert.Equal(Verdict.Holds, boat.Worst(Check, "shore").Verdict);
    }

    [Fact]
    public void NotSaid_IsUnknown()
    {
        AcBoat.Whole().Change<Inverter>("inverter", inverter => inverter with { NeutralBond = null }).Worst(Check, "inverter").IsUnknownFor("inverter", "neutralBond");
        AcBoat.Whole().Change<ShoreInlet>("shore", inlet => inlet with { NeutralBond = null }).Worst(Check, "shore").IsUnknownFor("shore", "neutralBond");
    }
}
