using Orlop.Boat;
using Orlop.Boat.Things;
using Orlop.Boat.Values;
using Orlop.Review.Electrics.Checks;
using Orlop.Review.Findings;
using Xunit;

namespace Orlop.Review.Tests.Electrics.Checks;

/// <summary>Protective conductor, earth to hull and minus, shore earth, polarity, type of the residual-current device; what is asked stands at each test.</summary>
public sealed class AcSideCheckTests
{
    private static readonly BoatModel Boat = AcBoat.Whole();

    [Theory]
    [InlineData("protective-conductor", "kettle")]
    [InlineData("ac-earth-joined", "shore")]
    [InlineData("ac-earth-joined", "inverter")]
    [InlineData("shore-earth-isolation", "shore")]
    [InlineData("shore-polarity", "shore")]
    [InlineData("residual-device-type", "residual")]
    [InlineData("residual-current-device", "kettle")]
    [InlineData("one-ac-source", "shore")]
    public void AsDrawn_Holds(string check, string subject) => Assert.Equal(Verdict.Holds, Boat.Worst(check, subject).Verdict);

    /// <summary>Source: Directive 2006/87/EC, Annex II, 9.05.</summary>
    [Theory]
    [InlineData(1.5, false, 1.5)]
    [InlineData(1.5, true, 4)]
    [InlineData(4, true, 4)]
    [InlineData(10, true, 10)]
    [InlineData(16, false, 16)]
    [InlineData(25, false, 16)]
    [InlineData(50, false, 25)]
    [InlineData(120, false, 60)]
    [InlineData(150, false, 70)]
    public void LeastProtectiveConductor_IsTheDirectives(double liveMm2, bool isSeparate, double leastMm2) => Assert.Equal(leastMm2, ProtectiveConductorCheck.LeastMm2(liveMm2, isSeparate));

    [Theory]
    [InlineData(2.5, Verdict.Fails)]
    [InlineData(4, Verdict.Holds)]
    public void SeparateEarth_ByItsSection(double areaMm2, Verdict verdict) => Assert.Equal(verdict, WithoutEarth()
        .With(AcBoat.Cable("own-earth", areaMm2, 3, ("earth", "earth.bar", "kettle.pe"))).Worst("protective-conductor", "kettle").Verdict);

    [Fact]
    public void EarthThroughASwitch_Fails() => Assert.Equal(Verdict.Fails, WithoutEarth().With(
        new IsolatorSwitch { Id = "earth-switch", RatedA = 16 },
        AcBoat.Cable("one", 4, 1, ("earth", "earth.bar", "earth-switch.in")),
        AcBoat.Cable("two", 4, 1, ("earth", "earth-switch.out", "kettle.pe"))).Worst("protective-conductor", "kettle").Verdict);

    [Fact]
    public void EarthBarNotBonded_Fails() => Assert.Equal(Verdict.Fails, Boat.Change<Busbar>("earth", bar => bar with { IsBonded = false }).Worst("ac-earth-joined", "shore").Verdict);

    [Fact]
    public void BatteryMinus_NotBonded_Fails_NotSaid_IsUnknown()
    {
        BoatModel loose = Boat.Change<Busbar>("minus", bar => bar with { IsBonded = false });
        loose.Worst("ac-earth-joined", "inverter").IsUnknownFor("bank", "isMinusBonded");
        Assert.Equal(Verdict.Fails, loose.Change<BatteryBank>("bank", bank => bank with { IsMinusBonded = false }).Worst("ac-earth-joined", "inverter").Verdict);
    }

    [Theory]
    [InlineData(EarthIsolation.None, Verdict.Fails)]
    [InlineData(EarthIsolation.GalvanicIsolator, Verdict.Holds)]
    [InlineData(EarthIsolation.IsolatingTransformer, Verdict.Holds)]
    public void ShoreEarth_ByWhatStandsInIt(EarthIsolation isolation, Verdict verdict) =>
        Assert.Equal(verdict, Boat.Change<ShoreInlet>("shore", inlet => inlet with { EarthIsolation = isolation }).Worst("shore-earth-isolation", "shore").Verdict);

    [Fact]
    public void ShoreEarth_NotSaid_IsUnknown() =>
        Boat.Change<ShoreInlet>("shore", inlet => inlet with { EarthIsolation = null }).Worst("shore-earth-isolation", "shore").IsUnknownFor("shore", "earthIsolation");

    [Fact]
    public void Polarity_OnePole_FailsUnlessShown()
    {
        BoatModel onePole = Boat.With(new IsolatorSwitch { Id = "off", RatedA = 16 })
            .Change<Cable>("kettle-cable", cable => cable with { Cores = [.. cable.Cores.Select(core => core.Id == "live" ? core with { To = new Terminal("off", "in") } : core)] })
            .With(AcBoat.Cable("last", 1.5, 0.2, ("live", "off.out", "kettle.l")));
        Assert.Equal(Verdict.Fails, onePole.Worst("shore-polarity", "shore").Verdict);
        Assert.Equal(Verdict.Holds, onePole.Change<ShoreInlet>("shore", inlet => inlet with { ShowsPolarity = true }).Worst("shore-polarity", "shore").Verdict);
        onePole.Change<ShoreInlet>("shore", inlet => inlet with { ShowsPolarity = null }).Worst("shore-polarity", "shore").IsUnknownFor("shore", "showsPolarity");
    }

    [Fact]
    public void ResidualType_AcWithElectronics_Fails_NotSaid_IsUnknown()
    {
        Assert.Equal(Verdict.Fails, Type(ResidualType.Ac).Worst("residual-device-type", "residual").Verdict);
        Type(null).Worst("residual-device-type", "residual").IsUnknownFor("residual", "residualType");
        Assert.Equal(Verdict.Holds, Type(ResidualType.Ac).Change<ElectricLoad>("kettle", load => load with { Behaviour = LoadBehaviour.Resistance }).Worst("residual-device-type", "residual").Verdict);
        Assert.Equal(Verdict.Holds, Type(null).Change<ElectricLoad>("kettle", load => load with { Behaviour = LoadBehaviour.Resistance }).Worst("residual-device-type", "residual").Verdict);
    }

    [Theory]
    [InlineData(true, Verdict.Holds)]
    [InlineData(false, Verdict.Fails)]
    public void Changeover_ByItsInterlock(bool isInterlocked, Verdict verdict) =>
        Assert.Equal(verdict, Boat.Change<Changeover>("changeover", changeover => changeover with { IsInterlocked = isInterlocked }).Worst("one-ac-source", "shore").Verdict);

    [Fact]
    public void Changeover_InterlockNotSaid_IsUnknown() =>
        Boat.Change<Changeover>("changeover", changeover => changeover with { IsInterlocked = null }).Worst("one-ac-source", "shore").IsUnknownFor("changeover", "isInterlocked");

    // Shore on the first at A and on the second at B, inverter on the second at A, one bar behind both: the first at A and the second at A join the two.
    [Fact]
    public void TwoChangeovers_EachInterlocked_TogetherJoinTwoSources_Fails()
    {
        BoatModel boat = new()
        {
            Things =
            [
                new ShoreInlet { Id = "shore", SupplyV = 230, RatedA = 16 }, new Inverter { Id = "inverter", RatedW = 1000, OutputV = 230 },
                new Changeover { Id = "first", IsInterlocked = true }, new Changeover { Id = "second", IsInterlocked = true },
                Strap("a", "shore.l", "second.b"), Strap("b", "shore.l", "first.a"), Strap("c", "inverter.l", "second.a"), Strap("d", "first.out", "second.out"),
            ],
        };
        Assert.Equal(Verdict.Fails, boat.Worst("one-ac-source", "shore").Verdict);
        Assert.Equal(Verdict.Fails, boat.Worst("one-ac-source", "inverter").Verdict);
        Assert.Equal(Verdict.Holds, boat.Without("b").Worst("one-ac-source", "shore").Verdict);
    }

    private static Link Strap(string id, string from, string to) => new() { Id = id, From = Terminal.Parse(from), To = Terminal.Parse(to) };

    private static BoatModel WithoutEarth() => Boat.Change<Cable>("kettle-cable", cable => cable with { Cores = [.. cable.Cores.Where(core => core.Id != "earth")] });

    private static BoatModel Type(ResidualType? type) => Boat.Change<Protection>("residual", device => device with { ResidualType = type });
}
