using Orlop.Boat;
using Orlop.Boat.Things;
using Orlop.Boat.Values;
using Orlop.Review.Findings;
using Orlop.Review.Mending;
using Xunit;
using static Orlop.Review.Tests.Mending.MendBoats;

namespace Orlop.Review.Tests.Mending;

/// <summary>Rings on a stud whose order is told lie in order after mending too: links, then the greatest current nearest the face (common practice, no source).</summary>
public sealed class StudOrderTests
{
    // 5 A on the face, 2 A over it.
    private static readonly BoatModel Draft = Placed(Placed(
        SmallBoat.OneLamp(fuseA: 30).With(SmallBoat.Lamp("second", 2), SmallBoat.LampCable("second-cable", "second"))
            .Change<Protection>("fuse", fuse => fuse with { Studs = [new Stud("out", 5, HasWasherUnder: false)] }),
        "lamp-cable", 1), "second-cable", 2);

    [Fact]
    public void RingThatIsAdded_LiesWhereItsCurrentBelongs()
    {
        BoatModel boat = Draft.With(SmallBoat.Lamp("third", 3.9), SmallBoat.LampCable("third-cable", "third"));
        StudOrder order = StudOrder.Of(Draft, boat);
        Assert.Equal((1, 2, 3), (PlaceOf(order.Boat, "lamp-cable"), PlaceOf(order.Boat, "third-cable"), PlaceOf(order.Boat, "second-cable")));
        Assert.Contains("from the face outward lamp-cable, plus, third-cable, plus, second-cable, plus", Assert.Single(order.Remarks).ToString(), StringComparison.Ordinal);
        Assert.Equal(Verdict.Holds, Verdicts(order.Boat)[("stud-stack", "fuse.out")]);
    }

    [Fact]
    public void LinkThatIsAdded_LiesOnTheFace()
    {
        BoatModel boat = Draft.With(new Busbar { Id = "more" }, new Link { Id = "bridge", From = new Terminal("fuse", "out"), To = new Terminal("more", "bar"), LengthM = 0.05, ResistanceOhm = 0.0001 });
        StudOrder order = StudOrder.Of(Draft, boat);
        Assert.Equal((2, 3), (PlaceOf(order.Boat, "lamp-cable"), PlaceOf(order.Boat, "second-cable")));
    }

    [Fact]
    public void CurrentsThatChangePlaces_ChangeTheOrder()
    {
        StudOrder order = StudOrder.Of(Draft, Draft.Change<ElectricLoad>("second", load => load with { RunningA = 9 }));
        Assert.Equal((2, 1), (PlaceOf(order.Boat, "lamp-cable"), PlaceOf(order.Boat, "second-cable")));
    }

    [Fact]
    public void RingsInOrder_StayWhereTheyAre()
    {
        BoatModel boat = Draft.Change<Cable>("second-cable", cable => cable with { AreaMm2 = 6 });
        StudOrder order = StudOrder.Of(Draft, boat);
        Assert.Same(boat, order.Boat);
        Assert.Empty(order.Remarks);
    }

    // What lay in no order before, and is not touched, is a finding of its own.
    [Fact]
    public void WrongBefore_AndNotTouched_StaysSo()
    {
        BoatModel wrong = Placed(Placed(Draft, "lamp-cable", 2), "second-cable", 1), boat = wrong.Change<Cable>("lamp-cable", cable => cable with { LengthM = 3 });
        Assert.Same(boat, StudOrder.Of(wrong, boat).Boat);
    }

    // A pump of 1 A starts with 25 A and lies on the face; with a soft start it takes 2 A, and the lamp's 5 A belong there.
    [Fact]
    public void SetThatTurnsTheOrder_IsNotRefused_AndTellsTheNewOne()
    {
        BoatModel boat = Placed(Placed(Draft, "second-cable", 1), "lamp-cable", 2)
            .Change<ElectricLoad>("second", load => load with { RunningA = 1, StartRatio = 25, StartS = 5 }).Change<Protection>("fuse", fuse => fuse with { RatedA = 10 });
        var before = Verdicts(boat);
        Assert.Equal((Verdict.Fails, Verdict.Holds), (before[("start-opens-device", "fuse")], before[("stud-stack", "fuse.out")]));

        MendSet set = Mend(boat, [new CataloguePart { Id = "soft", Use = CatalogueUse.SoftStart, RatedA = 5, StartRatio = 2, StartS = 1, MassKg = 0.5, PriceMoney = 50 }]).Set!;
        Assert.Equal((1, 2), (PlaceOf(set.Boat, "lamp-cable"), PlaceOf(set.Boat, "second-cable")));
        Assert.Contains(set.Remarks, remark => remark.ToString().Contains("from the face outward lamp-cable", StringComparison.Ordinal));
        Assert.True(IsMended(set.Boat, boat));
    }

    private static BoatModel Placed(BoatModel boat, string cableId, int place) => boat.Change<Cable>(cableId, cable => cable with
    {
        Cores = cable.Cores.Select(core => core.Id == "plus" ? core with { FromEnd = core.FromEnd! with { FromFaceCount = place } } : core).ToValueList(),
    });

    private static int? PlaceOf(BoatModel boat, string cableId) => boat.Find<Cable>(cableId)!.Cores[0].FromEnd!.FromFaceCount;
}
