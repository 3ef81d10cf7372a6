using Orlop.Boat;
using Orlop.Boat.Things;
using Orlop.Boat.Values;
using Orlop.Review.Findings;
using Orlop.Review.Mending;
using Xunit;
using static Orlop.Review.Tests.Mending.MendBoats;

namespace Orlop.Review.Tests.Mending;

/// <summary>A device of another family or kind is paid and weighed with its holder or place in a panel.</summary>
public sealed class MountingTests
{
    private static readonly CataloguePart Alike = Fuse(10, 9) with { Id = "alike", Mount = "small", MountPriceMoney = 4, MountMassKg = 0.05 };
    private static readonly CataloguePart Strip = Fuse(30, 6) with { Id = "strip", Gates = "strip-sf30", Mount = "bolted", MountPriceMoney = 5, MountMassKg = 0.1 };
    private static readonly CataloguePart Breaker = Fuse(10, 6) with { Id = "breaker", Use = CatalogueUse.Breaker, Gates = "breaker-c", Mount = "panel", MountPriceMoney = 2.5, MountMassKg = 0.2 };

    // Each alone: what it costs is its piece, and its holder where none of its family stands.
    [Theory]
    [InlineData("alike", 9)]
    [InlineData("breaker", 6 + 2.5)]
    public void Device_OfAnotherKind_CostsItsPlaceToo(string id, double price)
    {
        MendSet set = Mend(Weak(), [Made(id), Known]).Set!;
        Assert.Equal((id, price), (set.Changes[0].CatalogueId!, set.Cost.PriceMoney));
    }

    [Fact]
    public void WithItsPlace_TheCheaperPieceIsTheDearerChange() =>
        Assert.Equal("alike", Mend(Weak(), [Known, Alike, Breaker with { MountPriceMoney = 3.5 }]).Set!.Changes[0].CatalogueId, StringComparer.Ordinal);

    [Fact]
    public void FuseOfAnotherFamily_CostsAndWeighsItsHolder()
    {
        BoatModel boat = Weak(areaMm2: 10).Change<Protection>("fuse", fuse => fuse with { MassKg = 0.06 });
        MendSet set = Mend(boat, [Known, Strip]).Set!;
        Assert.Equal((11.0, 0.02 + 0.1), (set.Cost.PriceMoney, set.Boat.Find<Protection>("fuse")!.MassKg!.Value));
        Assert.Equal(0.12 - 0.06, set.Cost.AddedKg, 9);
        Assert.True(IsMended(set.Boat, boat));
    }

    [Fact]
    public void FuseOfTheSameFamily_WeighsWithItsHolderAsBefore()
    {
        MendSet set = Mend(Weak().Change<Protection>("fuse", fuse => fuse with { MassKg = 0.06 }), [Known, Alike]).Set!;
        Assert.Equal((0.06, 0.0), (set.Boat.Find<Protection>("fuse")!.MassKg!.Value, set.Cost.AddedKg));
    }

    [Fact]
    public void DeviceFromStock_OfAnotherKind_LeavesItsPlaceToPay()
    {
        MendSet set = Mend(Weak().With(new StockItem { Id = "spare", Use = StockUse.Device, Catalogue = "breaker", PieceCount = 1 }), [Known, Breaker]).Set!;
        Assert.Equal((1, 2.5), (set.Changes[0].StockIds.Length, set.Cost.PriceMoney));
    }

    [Fact]
    public void FuseMore_ComesWithItsHolder()
    {
        BoatModel boat = Lamp().Without("fuse").Without("strap").Change<Cable>("lamp-cable", cable => cable with { Cores = [SmallBoat.Core("plus", "bank.+", "lamp.+"), SmallBoat.Core("minus", "minus.bar", "lamp.-")] })
            .Change<BatteryBank>("bank", bank => bank with { Place = new Place(1, 0, 1), Size = new BoxSize(0.3, 0.2, 0.2) });
        MendSet set = Mend(boat, [Alike]).Set!;
        Assert.Equal((13.0, 0.02 + 0.05), (set.Cost.PriceMoney, Assert.Single(set.Boat.All<Protection>()).MassKg!.Value));
    }

    // In another holder the end at it is another, the old one's studs are gone, and where the new one goes nobody knows yet.
    [Fact]
    public void DeviceOfAnotherKind_BringsItsTerminals_AndTheEndsOfTheCablesOnIt()
    {
        BoatModel boat = Weak().Change<Protection>("fuse", fuse => fuse with { Studs = [new Stud("out", 6)] })
            .Change<Cable>("lamp-cable", cable => cable with { Cores = cable.Cores.Select(core => core with { FromEnd = new Termination(TerminationMeans.Ring, 6, new Quantity(0.0003, Knowledge.Measured)) }).ToValueList() });
        MendSet set = Mend(boat, [Known, Breaker with { EndMeans = TerminationMeans.Ferrule, TerminalMm2 = 25 }]).Set!;
        Protection device = set.Boat.Find<Protection>("fuse")!;
        Assert.Equal((25.0, 0), (device.TerminalMm2!.Value, device.Studs.Count));
        Assert.Contains("place in the panel is not known", device.Note, StringComparison.Ordinal);

        Core plus = Assert.Single(set.Boat.Find<Cable>("lamp-cable")!.Cores, core => core.From.Part == "fuse"), was = Assert.Single(boat.Find<Cable>("lamp-cable")!.Cores, core => core.From.Part == "fuse");
        Assert.Equal((TerminationMeans.Ferrule, null, null), (plus.FromEnd!.Means, plus.FromEnd.StudMm, plus.FromEnd.ResistanceOhm));
        Assert.Equal(was.ToEnd, plus.ToEnd);
        string what = set.Changes[0].What.ToString();
        Assert.Contains("1 cable end made off anew there: ferrules", what, StringComparison.Ordinal);
        Assert.Contains("place in the panel is not known", what, StringComparison.Ordinal);
    }

    // Where the other lugs of the cable are told, so is the new one.
    [Theory]
    [InlineData(null)]
    [InlineData(10.0)]
    public void BiggerHolder_HasStuds_AndRingsMadeForThem(double? lugMm2)
    {
        BoatModel boat = Weak(areaMm2: 10).Change<Cable>("lamp-cable", cable => cable with { Cores = cable.Cores.Select(core => core with { FromEnd = new Termination(TerminationMeans.Ring, 6, LugMm2: lugMm2), ToEnd = new Termination(TerminationMeans.Ring, 6, LugMm2: lugMm2) }).ToValueList() });
        MendSet set = Mend(boat, [Known, Strip with { EndMeans = TerminationMeans.Ring, StudMm = 5 }]).Set!;
        Assert.Equal([("in", 5.0), ("out", 5.0)], set.Boat.Find<Protection>("fuse")!.Studs.Select(stud => (stud.Terminal, stud.SizeMm)));
        Termination end = Assert.Single(set.Boat.Find<Cable>("lamp-cable")!.Cores, core => core.From.Part == "fuse").FromEnd!;
        Assert.Equal((TerminationMeans.Ring, 5, lugMm2), (end.Means, end.StudMm, end.LugMm2));
        Assert.True(IsMended(set.Boat, boat));
    }

    [Fact]
    public void SameHolder_LeavesEndsAsTheyAre()
    {
        BoatModel boat = Weak();
        MendSet set = Mend(boat, [Known, Alike with { EndMeans = TerminationMeans.Blade, TerminalMm2 = 6 }]).Set!;
        Assert.Equal(boat.Find<Cable>("lamp-cable"), set.Boat.Find<Cable>("lamp-cable"));
        Assert.DoesNotContain("not known", set.Changes[0].What.ToString(), StringComparison.Ordinal);
    }

    [Fact]
    public void PartWhoseEndsAreNotTold_SaysSo()
    {
        BoatModel boat = Weak();
        MendSet set = Mend(boat, [Known, Breaker]).Set!;
        Assert.Equal(boat.Find<Cable>("lamp-cable"), set.Boat.Find<Cable>("lamp-cable"));
        Assert.Contains("how cables are made off at it is not told", set.Changes[0].What.ToString(), StringComparison.Ordinal);
    }

    // 2.5 mm² does not go into a clamp for 1.5 mm²: nobody can build that.
    [Fact]
    public void CableThickerThanTheNewTerminalsTake_RulesTheDeviceOut()
    {
        CataloguePart narrow = Breaker with { EndMeans = TerminationMeans.Ferrule, TerminalMm2 = 1.5 };
        Assert.Null(Mend(Weak(), [Known, narrow]).Set);
        Assert.Equal("breaker", Mend(Weak(), [Known, narrow with { TerminalMm2 = 2.5 }]).Set!.Changes[0].CatalogueId, StringComparer.Ordinal);
        Assert.Empty(Mender.Proposals(Request(Weak(), [Known, narrow]), null, TestContext.Current.CancellationToken).Sets);
    }

    // What stands there, as the catalogue knows it; it breaks too little to be a remedy.
    private static CataloguePart Known => Fuse(10, 1, breakingA: 100) with { Id = "known", Mount = "small", MountPriceMoney = 4, MountMassKg = 0.05 };

    private static CataloguePart Made(string id) => id == Alike.Id ? Alike : Breaker;

    // Its fuse stands at a place and breaks less than its battery can drive.
    private static BoatModel Weak(double areaMm2 = 2.5)
    {
        BoatModel boat = Lamp(areaMm2: areaMm2, breakingA: 100).Change<Protection>("fuse", fuse => fuse with { Gates = "blade-type-c" });
        Assert.Equal(Verdict.Fails, Verdicts(boat)[("breaking-capacity", "fuse")]);
        return boat;
    }
}
