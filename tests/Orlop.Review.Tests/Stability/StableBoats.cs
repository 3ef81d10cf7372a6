using Orlop.Boat;
using Orlop.Boat.Things;
using Orlop.Boat.Values;
using Orlop.Hull.Floating;
using Orlop.Hull.Surfaces;
using Orlop.Review.Stability;
using Xunit;

namespace Orlop.Review.Tests.Stability;

/// <summary>A box of 10 × 4 × 2 m, 32.8 t at G 1.2 m, and what the tests of stability ask of a boat.</summary>
internal static class StableBoats
{
    public static BoatModel Box(params Thing[] more) => new()
    {
        Things =
        [
            new Particulars { Id = "particulars", LengthOverAllM = 10, BeamM = 4, Deck = DeckKind.Closed, WaterDensityKgPerM3 = 1025 },
            new Condition { Id = "in-use", Name = "In use" },
            new HullLines { Id = "hull-lines", Stations = [Station("after end", 0), Station("fore end", 10)] },
            .. more,
        ],
    };

    public static BareBoat Bare(double massKg = 32_800, double massDeviationKg = 2000, double kgM = 1.2, double kgDeviationM = 0.2) => new()
    {
        Id = "bare-boat",
        MassKg = Known(massKg, massDeviationKg),
        LcgM = Known(5, 0.3),
        TcgM = Known(0, 0.05),
        KgM = Known(kgM, kgDeviationM),
    };

    public static Gear Gear(string id, double massKg, Place place) => new() { Id = id, MassKg = Known(massKg, 0), Place = place, PlaceDeviationM = 0 };

    public static Quantity Known(double value, double plusMinus) => new(value, Knowledge.Measured, plusMinus);

    public static StabilityView View(this BoatModel boat, Memo? memo = null) => new(boat, null, memo ?? new Memo());

    public static LoadedBoat Loaded(this BoatModel boat, string condition = "in-use") => View(boat).LoadedIn(boat.Find<Condition>(condition)!);

    public static FloatingBoat Floating(this BoatModel boat, string condition = "in-use", Memo? memo = null)
    {
        FloatingBoat? floating = View(boat, memo).FloatingIn(boat.Find<Condition>(condition)!);
        Assert.NotNull(floating);
        return floating;
    }

    public static FloatingPosition Rest(this BoatModel boat, string condition = "in-use")
    {
        FloatingPosition? position = Floating(boat, condition).Rest.Position;
        Assert.NotNull(position);
        return position;
    }

    public static double DraughtM(this FloatingPosition at, double xM) => -at.Attitude.HeightAboveWaterM(new Point3(xM, 0, 0));

    private static HullStation Station(string name, double x) =>
        new() { Name = name, IsSharp = true, Points = [new StationPoint(x, 2, 0), new StationPoint(x, 2, 2)] };
}
