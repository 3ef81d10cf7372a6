using Orlop.Boat;
using Orlop.Boat.Alterations;
using Orlop.Boat.Things;
using Orlop.Boat.Values;
using Orlop.Review.Findings;
using Orlop.Review.Mending;
using Xunit;
using static Orlop.Review.Tests.Mending.MendBoats;

namespace Orlop.Review.Tests.Mending;

/// <summary>More air for a space that is too warm.</summary>
public sealed class AirMendTests
{
    private static readonly (string, string) Warm = ("space-temperature", "cabin");
    private static readonly CataloguePart Fan = new() { Id = "fan", Use = CatalogueUse.Fan, RatedV = 12, FanM3PerH = 50, RunningW = 3, StartRatio = 2, StartS = 1, MassKg = 0.3, PriceMoney = 25 };
    private static readonly AirVent[] Slots = [new("low slot", 2, 0.2), new("high slot", 2, 1.8)];

    // Stack effect of two openings alike (ASHRAE Fundamentals: Q = Cd Ae √(2 g h ΔT / Ti), Ae = A/√2, Cd 0.65), h = 1.6 m, by hand: 30 W less 2 W/K × 10 K leaves 10 W at 30 °C in air of 20 °C
    // (1.204 kg/m³, 1005 J/kg K): 8.26e-4 m³/s, 17.7 cm² each. At 28 °C 14 W over 8 K: 34.5 cm²; at 26 °C 18 W over 6 K: 68.0 cm².
    [Theory]
    [InlineData(30, 17.7)]
    [InlineData(28, 34.5)]
    [InlineData(26, 68)]
    public void ClosedLocker_GetsTheSmallestPairThatTheDraughtLawAllows(double mostC, double neededCm2)
    {
        BoatModel boat = Locker(mostC);
        Assert.Equal(Verdict.Fails, Verdicts(boat)[Warm]);
        CataloguePart[] parts = [Vent(10, 4), Vent(15, 5), Vent(20, 6), Vent(33, 7), Vent(36, 8), Vent(66, 9), Vent(70, 10)];
        MendResult result = Mend(boat, parts);
        CataloguePart least = parts.First(part => part.AreaCm2!.Value > neededCm2);
        Assert.Equal((MendOutcome.Cleared, true, 2 * least.PriceMoney!.Value), (result.Outcome, result.IsProved, result.Set!.Cost.PriceMoney));
        Assert.Equal([least.AreaCm2!.Value, least.AreaCm2.Value], result.Set.Boat.Find<Space>("cabin")!.Vents.Select(vent => vent.AreaCm2));
        Assert.Equal(2 * least.MassKg!.Value, Assert.Single(result.Set.Boat.All<Gear>()).MassKg!.Value, 9);
        Assert.True(IsMended(result.Set.Boat, boat));
    }

    [Fact]
    public void CheaperPairThatIsLarger_IsTaken() => Assert.Equal(6, Mend(Locker(30), [Vent(20, 6), Vent(300, 3)]).Set!.Cost.PriceMoney);

    // The smaller of two openings throttles: one made larger is tried, and where that is enough it alone is paid.
    [Theory]
    [InlineData(5, 40)]
    [InlineData(14, 60)]
    [InlineData(30, 30)]
    public void OpeningsThatAreThere_NoCheaperChangeOfThemIsGood(double lowCm2, double highCm2)
    {
        BoatModel boat = Locker(27).Change<Space>("cabin", cabin => cabin with { Vents = [new("low", lowCm2, 0.2), new("high", highCm2, 1.8)] });
        CataloguePart[] parts = [Vent(20, 5), Vent(50, 8), Vent(100, 12), Vent(300, 20)];
        Assert.Equal(Verdict.Fails, Verdicts(boat)[Warm]);
        MendResult result = Mend(boat, parts);
        Assert.True(result.IsProved && IsMended(result.Set!.Boat, boat));
        double least = parts.SelectMany(part => Ways(boat, part)).Where(way => IsMended(way.Boat, boat)).Min(way => way.Price);
        Assert.Equal(least, result.Set!.Cost.PriceMoney);
    }

    [Fact]
    public void SpaceWithOpenings_GetsAFanWithACircuitOfItsOwn_WhichTheReviewFindsGood()
    {
        BoatModel boat = Locker(30).Change<Space>("cabin", cabin => cabin with { Vents = [.. Slots] }).Change<BatteryBank>("bank", bank => bank with { Place = new Place(0.9, 0, 1) });
        MendResult result = Mend(boat, [Fan, Twin(1.5, 1.4), Fuse(3, 3)]);
        Assert.Equal(MendOutcome.Cleared, result.Outcome);
        Space cabin = result.Set!.Boat.Find<Space>("cabin")!;
        ElectricLoad fan = result.Set.Boat.Find<ElectricLoad>(cabin.Fan!)!;
        Assert.Equal((50, 3, "cabin"), (cabin.FanM3PerH!.Value, fan.RunningW!.Value, fan.Space));
        Assert.Equal(["in-use"], fan.Uses.Select(use => use.Condition));
        Assert.Equal(3, Assert.Single(result.Set.Boat.All<Protection>(), device => device.Id != "fuse").RatedA.Value);
        Assert.True(IsMended(result.Set.Boat, boat));
        Assert.Equal(Verdict.Holds, Verdicts(result.Set.Boat)[("voltage-drop", fan.Id)]);
        Assert.Equal(result.Set.Boat, AlteredBoat.Of(boat, result.Set.PutInto(boat, MendDraft.Of(null, "mended", "Mended"))).Boat);
    }

    [Fact]
    public void FanThatIsThere_BecomesAStrongerOne()
    {
        BoatModel boat = Locker(30).Change<Space>("cabin", cabin => cabin with { Vents = [.. Slots], FanM3PerH = 2, Fan = "lamp" });
        MendResult result = Mend(boat, [Fan, Twin(1.5, 1.4), Fuse(3, 3)]);
        Assert.Equal((MendOutcome.Cleared, 25.0, 50.0), (result.Outcome, result.Set!.Cost.PriceMoney, result.Set.Boat.Find<Space>("cabin")!.FanM3PerH!.Value));
        Assert.Equal(3, result.Set.Boat.Find<ElectricLoad>("lamp")!.RunningW!.Value);
    }

    [Fact]
    public void FanWithNoOpenings_IsNotProposed_AndTheReasonIsSaid()
    {
        MendResult result = Mend(Locker(30), [Fan, Twin(1.5, 1.4), Fuse(3, 3)]);
        Assert.Equal((MendOutcome.NotCleared, Warm), (result.Outcome, (result.Beyond[0].CheckId, result.Beyond[0].SubjectId)));
        Assert.NotNull(MendReasons.Of(Warm.Item1, Warm.Item2, Locker(30)));
    }

    // By hand: 50 m³/h takes 16.8 W/K (1.204 kg/m³, 1005 J/kg K), 33 W over 18.8 W/K is 1.8 K over the 20 °C outside; two openings of 20 cm² let it get past 26 °C (68 cm² are needed there), and a fan alone blows through nothing.
    [Fact]
    public void ClosedLockerThatNoOpeningCools_GetsOpeningsAndAFan()
    {
        BoatModel boat = Locker(22).Change<BatteryBank>("bank", bank => bank with { Place = new Place(0.9, 0, 1) });
        CataloguePart[] circuit = [Twin(1.5, 1.4), Fuse(3, 3)];
        Assert.Equal(MendOutcome.NotCleared, Mend(boat, [Vent(20, 6), .. circuit]).Outcome);
        Assert.Equal(MendOutcome.NotCleared, Mend(boat, [Fan, .. circuit]).Outcome);
        MendResult result = Mend(boat, [Fan, Vent(20, 6), .. circuit]);
        Assert.Equal((MendOutcome.Cleared, true), (result.Outcome, result.IsProved));
        Space cabin = result.Set!.Boat.Find<Space>("cabin")!;
        Assert.Equal((2, 50), (cabin.Vents.Count, cabin.FanM3PerH!.Value));
        Assert.True(IsMended(result.Set.Boat, boat));
        Assert.True(result.Set.Cost.PriceMoney > 25 + (2 * 6) + 3);
    }

    // Beside a hold of 60 °C while the engine runs, and with 60 W of its own otherwise, when a fan is on. Both through 1 W/K to the hold and 1 W/K to air of 20 °C, 33 °C at most, by the draught law as above:
    // the engine's heat asks for 1.1 W/K of air, which two openings of 30 cm² give and the slots do not; the lamp's for 2.6 W/K, which they do not and a fan does.
    [Fact]
    public void WhatTheFanDoesNotSeeTo_OpeningsDo_AndTheOtherWayRound_BothAreInOneSet()
    {
        BoatModel boat = Locker(33)
            .Change<ElectricLoad>("lamp", lamp => lamp with { HeatFraction = 1 })
            .Change<Space>("cabin", cabin => cabin with { Vents = [new("low slot", 0.5, 0.2), new("high slot", 0.5, 1.8)], Walls = [new SpaceWall("outside", 1, 1), new SpaceWall("to the hold", 1, 1, Space: "hold")] })
            .Change<BatteryBank>("bank", bank => bank with { Place = new Place(0.9, 0, 1) })
            .With(
                new Space { Id = "hold", Use = SpaceUse.Engine, From = new Place(6, -1, 0), To = new Place(8, 1, 2), AmbientC = 20, EngineRunningC = 60 },
                new Condition { Id = "motoring", OutsideC = 20, EngineRuns = true, ChargeFraction = 0.8, LowestChargeFraction = 0.5 });
        CataloguePart[] circuit = [Twin(1.5, 1.4), Fuse(3, 3)];
        Assert.Equal(MendOutcome.NotCleared, Mend(boat, [Vent(30, 6), .. circuit]).Outcome);
        Assert.Equal(MendOutcome.NotCleared, Mend(boat, [Fan, .. circuit]).Outcome);
        MendResult result = Mend(boat, [Fan, Vent(30, 6), .. circuit]);
        Assert.Equal((MendOutcome.Cleared, true), (result.Outcome, result.IsProved));
        Space cabin = result.Set!.Boat.Find<Space>("cabin")!;
        Assert.Contains(cabin.Vents, vent => vent.AreaCm2 == 30);
        Assert.NotNull(cabin.Fan);
        Assert.True(IsMended(result.Set.Boat, boat));
    }

    // 1 W/K to a hold of 10 °C and 1 W/K to the air. In use, 20 °C outside, 30 W: too warm without air. At noon, 45 °C outside, nothing on: too warm with much of it. 29.5 °C at most leaves, by the draught
    // law as above, 2 to 3.6 cm² for each of two openings. More air is worse than less there, and the search may not take the one for the other.
    [Theory]
    [InlineData(4, 9)]
    [InlineData(9, 4)]
    public void AirThatIsHotterThanTheSpaceAtTimes_TheOpeningBetweenTooLittleAndTooMuchIsFound(double fitting, double large)
    {
        BoatModel boat = Locker(29.5)
            .Change<Space>("cabin", cabin => cabin with { Vents = [new("low slot", 0.2, 0.2), new("high slot", 0.2, 1.8)], Walls = [new SpaceWall("outside", 1, 1), new SpaceWall("to the hold", 1, 1, Space: "hold")] })
            .With(
                new Space { Id = "hold", Use = SpaceUse.Dry, From = new Place(6, -1, 0), To = new Place(8, 1, 2), AmbientC = 10 },
                new Condition { Id = "noon", OutsideC = 45, ChargeFraction = 0.8, LowestChargeFraction = 0.5 });
        CataloguePart[] parts = [Vent(1, 2), Vent(2.7, fitting), Vent(30, large), Vent(100, large + 1)];
        MendResult result = Mend(boat, parts);
        Assert.Equal((MendOutcome.Cleared, true), (result.Outcome, result.IsProved));
        Assert.True(IsMended(result.Set!.Boat, boat));
        Assert.Equal(parts.SelectMany(part => Ways(boat, part)).Where(way => IsMended(way.Boat, boat)).Min(way => way.Price), result.Set.Cost.PriceMoney);
        Assert.DoesNotContain(result.Set.Boat.Find<Space>("cabin")!.Vents, vent => vent.AreaCm2 > 10);
    }

    [Fact]
    public void SpaceThatIsNotDescribed_IsBeyondMending_AndTheReasonIsAnother()
    {
        BoatModel typed = Locker(30).Change<Space>("cabin", cabin => cabin with { Walls = [], AmbientC = 35 });
        Assert.Equal(Verdict.Fails, Verdicts(typed)[Warm]);
        MendResult result = Mend(typed, [Vent(300, 3)]);
        Assert.Equal((MendOutcome.NotCleared, 0), (result.Outcome, result.SlotCount));
        Assert.NotEqual(MendReasons.Of(Warm.Item1, Warm.Item2, Locker(30)), MendReasons.Of(Warm.Item1, Warm.Item2, typed));
    }

    // A fuse that may not stand in 35 °C carries nothing there; only a temperature that is reckoned is changed by an opening.
    [Theory]
    [InlineData(true, MendOutcome.Cleared)]
    [InlineData(false, MendOutcome.NotCleared)]
    public void DeviceThatItsSpaceMakesTooWarm_IsClearedByAir_WhereThatIsReckoned(bool isReckoned, MendOutcome outcome)
    {
        BoatModel boat = Locker(60).Change<Space>("cabin", cabin => cabin with { IsReckoned = isReckoned, AmbientC = 35 }).Change<Protection>("fuse", fuse => fuse with { Space = "cabin", MostAmbientC = 30 });
        Assert.Equal(Verdict.Fails, Verdicts(boat)[("device-carries-load", "fuse")]);
        MendResult result = Mender.Find(Request(boat, [Vent(100, 6)]) with { Only = [("device-carries-load", "fuse")] }, null, TestContext.Current.CancellationToken);
        Assert.Equal(outcome, result.Outcome);
    }

    private static CataloguePart Vent(double areaCm2, double price) => new() { Id = FormattableString.Invariant($"vent-{areaCm2:000}"), Use = CatalogueUse.Vent, AreaCm2 = areaCm2, MassKg = 0.1, PriceMoney = price };

    // A closed box of 2 W/K with 30 W in it, air of 20 °C: 35 °C. Its lamp's cable runs elsewhere.
    private static BoatModel Locker(double mostC) => SmallBoat.OneLamp()
        .Change<Condition>("in-use", condition => condition with { OutsideC = 20 })
        .Change<ElectricLoad>("lamp", lamp => lamp with { Space = "cabin", HeatFraction = 0.5, MostAmbientC = mostC })
        .Change<Space>("cabin", cabin => cabin with { Walls = [new SpaceWall("all round", 1, 2)] })
        .With(new Space { Id = "passage", Use = SpaceUse.Dry, From = new Place(4, -1, 0), To = new Place(6, 1, 2), AmbientC = 25 })
        .Change<Cable>("lamp-cable", cable => cable with { Run = [new RunLeg { Space = "passage", LengthM = 2 }] });

    private static IEnumerable<(BoatModel Boat, double Price)> Ways(BoatModel boat, CataloguePart part)
    {
        double area = part.AreaCm2!.Value, price = part.PriceMoney!.Value;
        AirVent[] was = [.. boat.Find<Space>("cabin")!.Vents];
        BoatModel With(params AirVent[] vents) => boat.Change<Space>("cabin", cabin => cabin with { Vents = vents.ToValueList() });
        AirVent Larger(AirVent vent) => vent with { AreaCm2 = Math.Max(area, vent.AreaCm2) };
        yield return (With(Larger(was[0]), was[1]), price);
        yield return (With(was[0], Larger(was[1])), price);
        yield return (With(Larger(was[0]), Larger(was[1])), 2 * price);
        yield return (With([.. was, was[0] with { AreaCm2 = area }, was[1] with { AreaCm2 = area }]), 2 * price);
    }
}
