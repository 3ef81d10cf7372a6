using Orlop.Boat;
using Orlop.Boat.Alterations;
using Orlop.Boat.Things;
using Orlop.Hull.Floating;
using Orlop.Hull.Hydrostatics;
using Orlop.Hull.Measuring;
using Orlop.Review.Stability;
using Xunit;

namespace Orlop.Review.Tests.Stability;

/// <summary>What docs/demo-boat.md promises of the demo boat's hull and weights.</summary>
public sealed class DemoStabilityTests
{
    private static readonly BoatModel Boat = ExampleBoats.Read("sandgrouse");

    private static readonly StabilityView AsBuilt = Boat.View();

    public static TheoryData<string> Conditions { get; } = [.. Boat.All<Condition>().Select(condition => condition.Id)];

    [Fact]
    public void Lines_CloseAndAreFair()
    {
        Assert.Empty(AsBuilt.Bodies.Problems);
        Assert.Empty(AsBuilt.Bodies.Doubts);
        Assert.NotNull(AsBuilt.Bodies.Hull);
    }

    // Her sections are straight from point to point: areas below 0.83 m by the trapezoid of each stretch, volume by the trapezoid over the stations.
    [Fact]
    public void Volume_IsThatOfHerSectionsByHand()
    {
        const double level = 0.83;
        (double XM, double AreaM2)[] areas = [.. Boat.All<HullLines>().Single().Stations.Select(station => (station.Points[0].XM, 2 * AreaBelow(station, level)))];
        double byHand = areas.Zip(areas.Skip(1), (a, b) => (b.XM - a.XM) * (a.AreaM2 + b.AreaM2) / 2).Sum();

        double found = HydrostaticTable.Calculate(new HydrostaticInput
        {
            Subject = "by hand",
            Hull = AsBuilt.Bodies.Hull!,
            DraughtsM = [level],
            WaterKgPerM3 = 1004,
            TrimLengthM = 9.5,
        }).Rows[0].VolumeM3;

        Assert.InRange(found / byHand, 1, 1.02);
    }

    [Theory, MemberData(nameof(Conditions))]
    public void AsBuilt_FloatsAsALaunchOfHerSize(string condition)
    {
        FloatingBoat floating = Boat.Floating(condition);
        FloatingPosition at = floating.Rest.Position!;

        Assert.InRange(floating.Rest.MassKg, 8100, 8800);
        Assert.InRange(at.DraughtM(0), 0.80, 0.88);
        Assert.InRange(at.DraughtM(9.4), 0.78, 0.86);
        Assert.InRange(at.Attitude.TrimDeg, -0.05, 0.5);
        Assert.InRange(at.Attitude.HeelDeg, -0.5, 0.5);
        Assert.InRange(at.MetacentricHeightM, 0.85, 1.0);
        Assert.InRange(Math.Abs(floating.Weaker.Features.VanishingDeg!.Value), 80, 90);
        Assert.Empty(AsBuilt.LoadedIn(Boat.Find<Condition>(condition)!).Missing);
    }

    [Theory, MemberData(nameof(Conditions))]
    public void Total_IsTheSumOfItsRows(string condition)
    {
        LoadedBoat loaded = AsBuilt.LoadedIn(Boat.Find<Condition>(condition)!);
        WeightTotal then = AsBuilt.Weight.Total!;
        LedgerItem[] gone = [.. AsBuilt.Weight.Aboard];
        WeightRow[] rows = [.. loaded.Ledger.Rows];

        double mass = then.MassKg - gone.Sum(item => item.MassKg) + rows.Sum(row => row.MassKg);
        double along = (then.MassKg * then.Centre.XM) - gone.Sum(item => item.MassKg * item.Place.XM) + rows.Sum(row => row.MassKg * row.Place.XM);
        double across = (then.MassKg * then.Centre.YM) - gone.Sum(item => item.MassKg * item.Place.YM) + rows.Sum(row => row.MassKg * row.Place.YM);
        double height = (then.MassKg * then.Centre.ZM) - gone.Sum(item => item.MassKg * item.Place.ZM) + rows.Sum(row => row.MassKg * row.Place.ZM);

        Assert.Equal(mass, loaded.Total!.MassKg, 1e-8);
        Assert.Equal(along / mass, loaded.Total.Centre.XM, 1e-9);
        Assert.Equal(across / mass, loaded.Total.Centre.YM, 1e-9);
        Assert.Equal(height / mass, loaded.Total.Centre.ZM, 1e-9);
    }

    // The readings were made by floating a boat of 8317.8 kg with KG 1.225 m and adding some millimetres; the list alone says 8557 kg.
    [Fact]
    public void Tests_TellMoreThanTheListAlone()
    {
        BareBoat bare = Boat.All<BareBoat>().Single();
        WeightTotal list = WeightTotal.Of(
            [
                new LedgerItem(bare.Id, bare.MassKg!.Value, bare.MassKg.PlusMinus!.Value, new(bare.LcgM!.Value, bare.TcgM!.Value, bare.KgM!.Value), new(bare.LcgM.PlusMinus!.Value, bare.TcgM.PlusMinus!.Value, bare.KgM.PlusMinus!.Value)),
                .. AsBuilt.Weight.Aboard,
            ])!;
        WeightTotal all = AsBuilt.Weight.Total!;

        Assert.Empty(AsBuilt.Weight.Trouble);
        Assert.All(AsBuilt.Weight.Fits, fit => Assert.InRange(fit.StandardisedRatio, -2, 2));
        Assert.True(all.MassDeviationKg < list.MassDeviationKg / 5);
        Assert.True(all.LcgDeviationM < list.LcgDeviationM / 5);
        Assert.True(all.TcgDeviationM < list.TcgDeviationM / 5);
        Assert.True(all.KgDeviationM < list.KgDeviationM);
        Assert.InRange(all.MassKg - 8317.8, -2 * all.MassDeviationKg, 2 * all.MassDeviationKg);
        Assert.InRange(all.Centre.ZM - 1.225, -2 * all.KgDeviationM, 2 * all.KgDeviationM);
    }

    // Small angles: a mass m moved d across heels her m d / (Δ GM) rad (closed form for a heel change of less than a degree).
    [Fact]
    public void GearMovedToStarboard_HeelsHerToStarboard_ByMomentOverStiffness()
    {
        FloatingBoat before = Boat.Floating("at-berth");
        BoatModel moved = Boat.Change<Gear>("tool-chests", gear => gear with { Place = gear.Place! with { YM = gear.Place.YM - 0.8 } });
        double expectedDeg = 64 * 0.8 / (before.Rest.MassKg * before.Rest.Position!.MetacentricHeightM) * 180 / Math.PI;

        double step = moved.Rest("at-berth").Attitude.HeelDeg - before.Rest.Position.Attitude.HeelDeg;

        Assert.InRange(step / expectedDeg, 0.98, 1.02);
    }

    [Fact]
    public void Gear_PutAboardAndTakenOff_LeavesEveryBitAsItWas()
    {
        Memo memo = new();
        FloatingBoat before = Boat.Floating("under-way", memo);
        BoatModel with = Boat.With(StableBoats.Gear("anvil", 120, new(1, -1, 1.8)));
        FloatingBoat laden = with.Floating("under-way", memo);
        FloatingBoat fresh = with.Without("anvil").Floating("under-way");

        Assert.Equal(before.Rest.MassKg + 120, laden.Rest.MassKg, 1e-8);
        Assert.Equal(before.Rest, fresh.Rest);
        Assert.Equal(before.Port.At(-37.5), fresh.Port.At(-37.5));
    }

    [Fact]
    public void Range_AtTheBerth_IsShorterToStarboard_WhereTheDoorIs()
    {
        FloatingBoat floating = Boat.Floating("at-berth");

        Assert.Equal(63.6, floating.Starboard.Features.RangeDeg!.Value, 0.05);
        Assert.Equal("wheelhouse-door", floating.Starboard.Features.DownfloodingOpening);
        Assert.Equal(84.3, floating.Port.Features.RangeDeg!.Value, 0.05);
    }

    [Fact]
    public void FirstWinchDraft_HeelsHerWhileLifting() =>
        Assert.InRange(Altered("sampling-winch").Rest("lifting").Attitude.HeelDeg, 5, 7);

    [Fact]
    public void SecondWinchDraft_HeelsHerLittle() =>
        Assert.InRange(Altered("sampling-winch-second").Rest("lifting").Attitude.HeelDeg, 0.5, 2.5);

    [Theory]
    [InlineData("sampling-winch")]
    [InlineData("sampling-winch-second")]
    [InlineData("drying-locker")]
    public void Draft_LeavesNoWeightUnknown(string alteration)
    {
        BoatModel boat = Altered(alteration);
        Assert.All(boat.All<Condition>(), condition => Assert.Empty(boat.View().LoadedIn(condition).Missing));
    }

    private static BoatModel Altered(string id) => AlteredBoat.Of(Boat, Boat.Find<Alteration>(id)!).Boat;

    private static double AreaBelow(HullStation station, double level) => station.Points.Zip(station.Points.Skip(1), (a, b) =>
    {
        double low = Math.Min(a.HeightM, level), high = Math.Min(b.HeightM, level), rise = b.HeightM - a.HeightM;
        double At(double height) => rise == 0 ? b.HalfBreadthM : a.HalfBreadthM + ((height - a.HeightM) / rise * (b.HalfBreadthM - a.HalfBreadthM));
        return (high - low) * (At(low) + At(high)) / 2;
    }).Sum();
}
