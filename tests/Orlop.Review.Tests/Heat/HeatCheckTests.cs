using CsCheck;
using Orlop.Boat;
using Orlop.Boat.Things;
using Orlop.Boat.Values;
using Orlop.Review.Findings;
using Xunit;

namespace Orlop.Review.Tests.Heat;

public sealed class HeatCheckTests
{
    private const string SpaceCheck = "space-temperature";
    private const string GasCheck = "battery-gas";
    private const string ChargeCheck = "charge-temperature";

    // A closed box of 2 W/K around a locker with 30 W in it, air of 20 °C: 35 °C.
    private static readonly BoatModel Locker = SmallBoat.OneLamp()
        .Change<Condition>("in-use", condition => condition with { OutsideC = 20 })
        .Change<ElectricLoad>("lamp", lamp => lamp with { Space = "cabin", HeatFraction = 0.5, MostAmbientC = 50 })
        .Change<Space>("cabin", cabin => cabin with { Walls = [new SpaceWall("all round", 1, 2)] })
        .With(new Space { Id = "passage", Use = SpaceUse.Dry, From = new Place(4, -1, 0), To = new Place(6, 1, 2), AmbientC = 25 })
        .Change<Cable>("lamp-cable", cable => cable with { Run = [new RunLeg { Space = "passage", LengthM = 2 }] });

    private static readonly BoatModel CableInside = Locker.Change<Cable>("lamp-cable", cable => cable with { Run = [new RunLeg { Space = "cabin", LengthM = 2 }] });

    // By hand: 5 A there and back in 2.5 mm² of tinned class 5, 8.21 mΩ/m (IEC 60228), copper at 90 °C: 25 × 2 × 2 × 0.00821 × 324.5/254.5 = 1.0468 W, 0.5234 K of 2 W/K; on for a quarter of the time a quarter of it.
    [Theory]
    [InlineData(2, 0, 1, 35.5234)]
    [InlineData(0.5, 1.5, 1, 35.1309)]
    [InlineData(2, 0, 0.25, 23.8809)]
    [InlineData(0, 2, 1, 35)]
    public void Space_WhatItsCableLoses_CountsByTheShareOfItsRun(double insideM, double outsideM, double duty, double meanC)
    {
        BoatModel boat = Locker.Change<ElectricLoad>("lamp", lamp => lamp with { Uses = [new LoadUse("in-use", duty)] })
            .Change<Cable>("lamp-cable", cable => cable with { Run = [new RunLeg { Space = "cabin", LengthM = insideM }, new RunLeg { Space = "passage", LengthM = outsideM }] });
        Finding finding = boat.Worst(SpaceCheck, "cabin");
        Assert.Equal(meanC, finding.Working.Single(line => line.What == "At rest by the share of the time").Value!.Value, 1e-4);
        Assert.Equal(insideM > 0, finding.Working.Any(line => line.What == "Heat in it" && line.Source.StartsWith("I² R", StringComparison.Ordinal)));
    }

    // Where it runs nobody told: it counts where its lamp stands. Without a length it cannot be told.
    [Fact]
    public void Space_CableWithoutARun_CountsAtItsEnd()
    {
        BoatModel boat = Locker.Change<Cable>("lamp-cable", cable => cable with { Run = [] });
        Assert.Equal(35.5234 / 50, boat.Worst(SpaceCheck, "cabin").UseFraction!.Value, 1e-5);
        boat.Change<Cable>("lamp-cable", cable => cable with { LengthM = null }).Worst(SpaceCheck, "cabin").IsUnknownFor("lamp-cable", "lengthM");
    }

    // A charger that stands elsewhere sends 20 A through 1 m of 6 mm² in the cabin: 3.39 ohm/km of tinned class 5 (IEC 60228), copper at 90 °C. On the lamp's own cable 5 A drawn; nothing is shared.
    [Fact]
    public void Space_WhatAChargersLeadsLose_CountsWithTheLampsOwn()
    {
        BoatModel boat = CableInside.Change<Condition>("in-use", condition => condition with { EngineRuns = true }).With(
            new Charger { Id = "charger", Drive = ChargerDrive.Engine, LimitA = 20, SetpointV = 14.4, Space = "passage" },
            SmallBoat.LampCable("charger-cable", "charger") with
            {
                AreaMm2 = 6,
                LengthM = 1,
                Cores = [SmallBoat.Core("plus", "charger.+", "bank.+"), SmallBoat.Core("minus", "charger.-", "bank.-")],
                Run = [new RunLeg { Space = "cabin", LengthM = 1 }],
            });
        double leadsW = 20 * 20 * 2 * 3.39e-3 * 324.5 / 254.5, lampsW = 25 * 4 * 8.21e-3 * 324.5 / 254.5;
        Assert.Equal((20 + ((30 + leadsW + lampsW) / 2)) / 50, boat.Worst(SpaceCheck, "cabin").UseFraction!.Value, 1e-6);
        Assert.Equal((20 + ((30 + lampsW) / 2)) / 50, boat.Change<Condition>("in-use", condition => condition with { EngineRuns = false }).Worst(SpaceCheck, "cabin").UseFraction!.Value, 1e-6);
    }

    // More current, a longer stretch inside, thinner copper: never cooler; and what the space comes to feeds nothing back into the loss, so that reckoning it again changes nothing.
    [Fact]
    public void Properties_CableHeat_IsMonotone_AndNeedsNoSecondPass()
    {
        double MostC(double insideM, double areaMm2, double runningA, bool isReckoned) => CableInside
            .Change<Cable>("lamp-cable", cable => cable with { AreaMm2 = areaMm2, Run = [new RunLeg { Space = "cabin", LengthM = insideM }, new RunLeg { Space = "passage", LengthM = 2 - insideM }] })
            .Change<ElectricLoad>("lamp", lamp => lamp with { RunningA = runningA, HeatFraction = 0 }).Change<Space>("cabin", cabin => cabin with { IsReckoned = isReckoned })
            .Worst(SpaceCheck, "cabin").Working.Single(line => line.What == "At rest").Value!.Value;
        Gen.Select(Gen.Double[0.1, 1.9], Gen.Double[1, 10], Gen.Double[0.5, 8], Gen.Double[1.1, 2]).Sample((insideM, areaMm2, runningA, more) =>
        {
            double had = MostC(insideM, areaMm2, runningA, false);
            Assert.True(had > 20 && MostC(Math.Min(2, insideM * more), areaMm2, runningA, false) >= had, "longer inside");
            Assert.True(MostC(insideM, areaMm2 / more, runningA, false) >= had, "thinner");
            Assert.True(MostC(insideM, areaMm2, runningA * more, false) >= had, "more current");
            Assert.Equal(had, MostC(insideM, areaMm2, runningA, true), 1e-9);
        }, iter: 15);
    }

    [Fact]
    public void Space_HalfOfSixtyWatts_IsAtThirtyFive()
    {
        Finding finding = Locker.Worst(SpaceCheck, "cabin");
        Assert.Equal(Verdict.Holds, finding.Verdict);
        Assert.Equal(35.0 / 50, finding.UseFraction!.Value, 1e-9);
    }

    [Theory]
    [InlineData(38.5, 1, Verdict.Tight)]
    [InlineData(34.5, 1, Verdict.Fails)]
    [InlineData(34.5, 0.5, Verdict.Tight)]
    [InlineData(27, 0.5, Verdict.Fails)]
    public void Space_NearOrBeyond_IsTightOrFails_ByTheShareOfTheTime(double most, double duty, Verdict verdict) => Assert.Equal(verdict, Locker
        .Change<ElectricLoad>("lamp", lamp => lamp with { MostAmbientC = most, Uses = [new LoadUse("in-use", duty)] }).Worst(SpaceCheck, "cabin").Verdict);

    [Fact]
    public void Space_WithoutDescription_IsJudgedAsTyped()
    {
        BoatModel boat = Locker.Change<Space>("cabin", cabin => cabin with { Walls = [] });
        Assert.Equal(25.0 / 50, boat.Worst(SpaceCheck, "cabin").UseFraction!.Value, 1e-9);
        boat.Change<Space>("cabin", cabin => cabin with { AmbientC = null }).Worst(SpaceCheck, "cabin").IsUnknownFor("cabin", "ambientC");
        Assert.DoesNotContain(SmallBoat.OneLamp().Findings(), finding => finding.CheckId == SpaceCheck);
    }

    [Fact]
    public void Space_MissingInput_IsUnknownAndNamed()
    {
        Locker.Change<Condition>("in-use", condition => condition with { OutsideC = null }).Worst(SpaceCheck, "cabin").IsUnknownFor("in-use", "outsideC");
        Locker.Change<Space>("cabin", cabin => cabin with { Walls = [new SpaceWall("all round", 1)] }).Worst(SpaceCheck, "cabin").IsUnknownFor("cabin", "walls");
        Locker.Change<Space>("cabin", cabin => cabin with { Walls = [new SpaceWall("roof", 1, 2, SunWPerM2: 800)] }).Change<Condition>("in-use", condition => condition with { SunShines = true })
            .Worst(SpaceCheck, "cabin").IsUnknownFor("cabin", "walls");
        Locker.Change<ElectricLoad>("lamp", lamp => lamp with { RunningA = null }).Worst(SpaceCheck, "cabin").IsUnknownFor("lamp", "runningW");
        Locker.Change<ElectricLoad>("lamp", lamp => lamp with { MostAmbientC = null }).Worst(SpaceCheck, "cabin").IsUnknownFor("lamp", "mostAmbientC");
        BoatModel aft = Locker.With(new Space { Id = "aft", Use = SpaceUse.Dry, From = new Place(-2, -1, 0), To = new Place(0, 1, 2) });
        aft.Change<Space>("cabin", cabin => cabin with { Walls = [new SpaceWall("bulkhead", 1, 2, Space: "aft")] }).Worst(SpaceCheck, "cabin").IsUnknownFor("aft", "ambientC");
    }

    [Fact]
    public void Space_ClosedWithoutWalls_HasNoWayOut()
    {
        Finding finding = Locker.Change<Space>("cabin", cabin => cabin with { Walls = [], Vents = [new AirVent("hole", 20, 1)] }).Worst(SpaceCheck, "cabin");
        Assert.Equal(Verdict.Fails, finding.Verdict);
        Assert.Contains("no heat can leave", finding.Headline.ToString(), StringComparison.Ordinal);
    }

    // Sol-air: 0.9 × 850 / 17 = 45 K over the air on one of two walls alike: the box is at (20 + 65)/2 without heat of its own.
    [Fact]
    public void Space_DarkRoofInTheSun_IsBetweenBoth()
    {
        BoatModel boat = Locker.Change<ElectricLoad>("lamp", lamp => lamp with { HeatFraction = 0 })
            .Change<Space>("cabin", cabin => cabin with { Walls = [new SpaceWall("side", 1, 2), new SpaceWall("roof", 1, 2, SunWPerM2: 850, AbsorbedFraction: 0.9)] });
        Assert.Equal(20.0 / 50, boat.Worst(SpaceCheck, "cabin").UseFraction!.Value, 1e-9);
        Assert.Equal(42.5 / 50, boat.Change<Condition>("in-use", condition => condition with { SunShines = true }).Worst(SpaceCheck, "cabin").UseFraction!.Value, 1e-9);
    }

    // ISO 6946 (from memory): 1/(0.13 + 0.012/0.13 + 0.04).
    [Fact]
    public void Space_PlywoodToTheOpen_HasItsTransmittance()
    {
        BoatModel boat = Locker.Change<Space>("cabin", cabin => cabin with { Walls = [new SpaceWall("all round", 1, ThicknessMm: 12, ConductivityWPerMK: 0.13)] });
        Assert.Equal((20 + (30 * (0.17 + (0.012 / 0.13)))) / 50, boat.Worst(SpaceCheck, "cabin").UseFraction!.Value, 1e-9);
    }

    // Two lockers that stand in each other: the inner one's heat goes through the outer one.
    [Fact]
    public void Space_ReckonedInAReckonedOne_IsSolvedTogether()
    {
        BoatModel boat = Locker.With(new Space { Id = "aft", Use = SpaceUse.Dry, From = new Place(-2, -1, 0), To = new Place(0, 1, 2), IsReckoned = true, Walls = [new SpaceWall("hull", 1, 3)] })
            .Change<Space>("cabin", cabin => cabin with { IsReckoned = true, Walls = [new SpaceWall("bulkhead", 1, 2, Space: "aft")] });
        Assert.Equal((20 + (30 / 3.0) + (30 / 2.0)) / 50, boat.Worst(SpaceCheck, "cabin").UseFraction!.Value, 1e-9);
        boat.Change<Space>("aft", aft => aft with { Walls = [] }).Worst(SpaceCheck, "cabin").IsUnknownFor("aft", "walls");
    }

    // What is reckoned replaces what is typed, for the cable and for the device: 35.52 °C with what the cable loses, up to a tenth 35.6 °C, where 25 °C is typed.
    [Fact]
    public void Reckoned_IsWhatCablesAndDevicesSee()
    {
        BoatModel reckoned = CableInside.Change<Space>("cabin", cabin => cabin with { IsReckoned = true });
        double Ampacity(BoatModel boat) => 1 / boat.Worst("conductor-ampacity", "lamp-cable").UseFraction!.Value;
        Assert.Equal(Math.Sqrt((90.0 - 35.6) / (90 - 25)), Ampacity(reckoned) / Ampacity(CableInside), 2e-3);
        double Device(BoatModel boat) => 1 / boat.Change<Protection>("fuse", fuse => fuse with { Space = "cabin", FullRatingC = 25, LostPerKFraction = 0.01 }).Worst("device-carries-load", "fuse").UseFraction!.Value;
        Assert.Equal(0.894, Device(reckoned) / Device(CableInside), 1e-3);
    }

    [Fact]
    public void Reckoned_ThatCannotBe_LeavesTheCableUnknown_AndNamesWhatIsMissing() => CableInside
        .Change<Space>("cabin", cabin => cabin with { IsReckoned = true }).Change<Condition>("in-use", condition => condition with { OutsideC = null })
        .Worst("conductor-ampacity", "lamp-cable").IsUnknownFor("in-use", "outsideC");

    [Theory]
    [InlineData(null, null, "lostPerKFraction")]
    [InlineData(0.01, "elsewhere", "space")]
    public void Device_HotterThanItsFullRating_WithoutTheRest_IsUnknown(double? lost, string? space, string field) => Locker
        .Change<Protection>("fuse", fuse => fuse with { Space = space is null ? "cabin" : null, FullRatingC = 20, LostPerKFraction = lost is { } share ? share : (Quantity?)null })
        .Worst("device-carries-load", "fuse").IsUnknownFor("fuse", field);

    [Fact]
    public void Device_BeyondWhatItMayStandIn_CarriesNothing() => Assert.Equal(Verdict.Fails, Locker
        .Change<Protection>("fuse", fuse => fuse with { Space = "cabin", MostAmbientC = 20 }).Worst("device-carries-load", "fuse").Verdict);

    // 12 V of glass mat, 100 Ah: 0.05 × 6 × 8 × 100 / 1000 = 0.24 m³/h, 28 × 0.24 = 6.72 cm² low and high.
    private static readonly BoatModel Charged = SmallBoat.OneLamp()
        .Change<BatteryBank>("bank", bank => bank with { CapacityAh = 100, Space = "cabin" })
        .Change<Space>("cabin", cabin => cabin with { Vents = [new AirVent("low", 8, 0.1), new AirVent("high", 9, 1.5)], LeastAmbientC = 5 })
        .With(
            new Charger { Id = "charger", Drive = ChargerDrive.Sun, LimitA = 10, SetpointV = 14.4, EfficiencyFraction = 0.9 },
            new Link { Id = "charger-plus", From = new Terminal("charger", "+"), To = new Terminal("bank", "+"), LengthM = 0.05, ResistanceOhm = 0.0002 },
            new Link { Id = "charger-minus", From = new Terminal("charger", "-"), To = new Terminal("bank", "-"), LengthM = 0.05, ResistanceOhm = 0.0002 });

    [Fact]
    public void Gas_GlassMat_NeedsWhatTheFormulaSays()
    {
        Finding finding = Charged.Worst(GasCheck, "bank");
        Assert.Equal(Verdict.Holds, finding.Verdict);
        Assert.Equal(6.72 / 8, finding.UseFraction!.Value, 1e-9);
        Assert.NotNull(finding.Caution);
    }

    [Fact]
    public void Gas_FloodedNeedsMore_AndSharesItsSpace()
    {
        BoatModel flooded = Charged.Change<BatteryBank>("bank", bank => bank with { Chemistry = BatteryChemistry.FloodedLeadAcid });
        Assert.Equal(Verdict.Fails, flooded.Worst(GasCheck, "bank").Verdict);
        Assert.Equal(2.5 * 6.72 / 8, flooded.Worst(GasCheck, "bank").UseFraction!.Value, 1e-9);
    }

    [Fact]
    public void Gas_OpeningsAtOneHeight_Fail_AndOpenDeckHolds()
    {
        Assert.Equal(Verdict.Fails, Charged.Change<Space>("cabin", cabin => cabin with { Vents = [new AirVent("one", 500, 1)] }).Worst(GasCheck, "bank").Verdict);
        Assert.Equal(Verdict.Holds, Charged.Change<Space>("cabin", cabin => cabin with { Use = SpaceUse.OpenDeck, Vents = [] }).Worst(GasCheck, "bank").Verdict);
    }

    [Fact]
    public void Gas_MissingInput_IsUnknownAndNamed()
    {
        Charged.Change<BatteryBank>("bank", bank => bank with { CapacityAh = null }).Worst(GasCheck, "bank").IsUnknownFor("bank", "capacityAh");
        Charged.Change<BatteryBank>("bank", bank => bank with { Space = null }).Worst(GasCheck, "bank").IsUnknownFor("bank", "space");
        Charged.Change<Space>("cabin", cabin => cabin with { Vents = [] }).Worst(GasCheck, "bank").IsUnknownFor("cabin", "vents");
    }

    [Fact]
    public void Gas_Lithium_HasNone() => Assert.DoesNotContain(Lithium.Findings(), finding => finding.CheckId == GasCheck);

    private static readonly BoatModel Lithium = Charged
        .Change<Condition>("in-use", condition => condition with { SunShines = true })
        .Change<BatteryBank>("bank", bank => bank with { Chemistry = BatteryChemistry.LithiumIronPhosphate, LeastChargeC = 0, MostChargeC = 45 });

    [Theory]
    [InlineData(45, 25, 5, null, Verdict.Holds)]
    [InlineData(27, 25, 5, null, Verdict.Tight)]
    [InlineData(24, 25, 5, null, Verdict.Fails)]
    [InlineData(24, 25, 5, true, Verdict.Tight)]
    [InlineData(45, 25, -1, false, Verdict.Fails)]
    [InlineData(45, 25, -1, true, Verdict.Tight)]
    public void Charge_TooWarmOrTooCold_IsToldByItsGuard(double most, double air, double cold, bool? stops, Verdict verdict) => Assert.Equal(verdict, Lithium
        .Change<BatteryBank>("bank", bank => bank with { MostChargeC = most, StopsCharge = stops })
        .Change<Space>("cabin", cabin => cabin with { AmbientC = air, LeastAmbientC = cold }).Worst(ChargeCheck, "bank").Verdict);

    [Fact]
    public void Charge_MissingInput_IsUnknownAndNamed()
    {
        Lithium.Change<BatteryBank>("bank", bank => bank with { MostChargeC = null }).Worst(ChargeCheck, "bank").IsUnknownFor("bank", "mostChargeC");
        Lithium.Change<BatteryBank>("bank", bank => bank with { LeastChargeC = null }).Worst(ChargeCheck, "bank").IsUnknownFor("bank", "leastChargeC");
        Lithium.Change<BatteryBank>("bank", bank => bank with { Space = null }).Worst(ChargeCheck, "bank").IsUnknownFor("bank", "space");
        Lithium.Change<Space>("cabin", cabin => cabin with { LeastAmbientC = null }).Worst(ChargeCheck, "bank").IsUnknownFor("cabin", "leastAmbientC");
    }
}
