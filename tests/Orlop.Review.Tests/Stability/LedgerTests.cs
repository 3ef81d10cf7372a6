using Orlop.Boat;
using Orlop.Boat.Things;
using Orlop.Boat.Values;
using Orlop.Review.Stability;
using Xunit;

namespace Orlop.Review.Tests.Stability;

public sealed class LedgerTests
{
    // 2 × 2.5 mm² of copper at 8.89 g/cm³ (IEC 60028) is 0.04445 kg/m; 60 % more for what covers it (from memory), over 2 m; its centre is the middle of the cabin.
    [Fact]
    public void Cable_WithoutMass_IsCopperAndCoveringAlongItsRun()
    {
        WeightRow row = Row(SmallBoat.OneLamp(), "lamp-cable");

        Assert.Equal(2 * 2.5e-6 * 8890 * 1.6 * 2, row.MassKg, 1e-12);
        Assert.Equal(0.15 * row.MassKg, row.DeviationKg, 1e-12);
        Assert.Equal(new Place(2, 0, 1), row.Place);
    }

    // Legs of 2 m and 1 m: way of two equal stretches with their middle at (1.5, 0.5, 0), then the cabin's middle at (2, 0, 1).
    [Fact]
    public void Cable_WithMassAndLegs_LiesInProportionToItsLegs()
    {
        BoatModel boat = SmallBoat.OneLamp()
            .With(new Way { Id = "bend", Means = WayKind.Lining, Points = [new Place(0, 0, 0), new Place(2, 0, 0), new Place(2, 2, 0)] })
            .Change<Cable>("lamp-cable", cable => cable with
            {
                MassKgPerM = new Quantity(0.09, Knowledge.Sheet),
                LengthM = 3,
                Run = [new RunLeg { Way = "bend", LengthM = 2 }, new RunLeg { Space = "cabin", LengthM = 1 }],
            });

        WeightRow row = Row(boat, "lamp-cable");

        Assert.Equal(0.27, row.MassKg, 1e-12);
        Assert.Equal(0.05 * 0.27, row.DeviationKg, 1e-12);
        Assert.Equal((2 * 1.5 + 2) / 3, row.Place.XM, 1e-12);
        Assert.Equal((2 * 0.5 + 0) / 3, row.Place.YM, 1e-12);
        Assert.Equal(1.0 / 3, row.Place.ZM, 1e-12);
    }

    // Weighed 1 %, estimated 15 %, guessed 30 %: shares of the mass, from memory. A bare number is no knowledge of a mass: as guessed.
    [Theory]
    [InlineData(Knowledge.Exact, 30)]
    [InlineData(Knowledge.Measured, 1)]
    [InlineData(Knowledge.Sheet, 5)]
    [InlineData(Knowledge.Estimated, 15)]
    [InlineData(Knowledge.Guessed, 30)]
    public void Gear_WithoutDeviation_IsAsSureAsItsKnowledge(Knowledge known, double deviationKg) =>
        Assert.Equal(deviationKg, Row(StableBoats.Box(new Gear { Id = "chest", MassKg = new Quantity(100, known), Place = new Place(5, 0, 1) }), "chest").DeviationKg, 1e-12);

    [Fact]
    public void Deadweight_IsAboardOnlyWhereCounted()
    {
        BoatModel boat = StableBoats.Box(
            new Condition { Id = "laid-up" },
            new Deadweight { Id = "crew", Use = DeadweightUse.People, MassKg = StableBoats.Known(82.5, 8), Place = new Place(4, 0, 2), Aboard = [new DeadweightCount("in-use", 2)] });

        WeightRow crew = Row(boat, "crew");

        Assert.Equal((165, 16), (crew.MassKg, crew.DeviationKg));
        Assert.DoesNotContain(WeightLedger.Of(boat, boat.Find<Condition>("laid-up")!).Rows, row => row.ThingId == "crew");
    }

    [Fact]
    public void MassOrPlace_NotGiven_IsNamedAndNotInTheRows()
    {
        BoatModel boat = StableBoats.Box(
            new Gear { Id = "no-mass", Place = new Place(5, 0, 1) },
            new Gear { Id = "no-place", MassKg = 20 });

        WeightLedger ledger = Of(boat);

        Assert.Empty(ledger.Rows);
        Assert.Equal([("no-mass", "massKg"), ("no-place", "place")], ledger.Missing.Select(input => (input.ThingId, input.Field)));
        Assert.All(ledger.Missing, input => Assert.True(input.IsMissing));
    }

    [Fact]
    public void Cable_OfWhichNobodyKnowsTheLength_IsNamed()
    {
        BoatModel boat = SmallBoat.OneLamp().Change<Cable>("lamp-cable", cable => cable with { LengthM = null, Run = [] });

        Assert.Contains(Of(boat).Missing, input => input is { ThingId: "lamp-cable", Field: "lengthM", IsMissing: true });
    }

    private static WeightLedger Of(BoatModel boat) => WeightLedger.Of(boat, boat.Find<Condition>("in-use")!);

    private static WeightRow Row(BoatModel boat, string id) => Assert.Single(Of(boat).Rows, row => row.ThingId == id);
}
