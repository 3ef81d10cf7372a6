using Orlop.Boat;
using Orlop.Boat.Alterations;
using Orlop.Boat.Things;
using Orlop.Boat.Values;
using Orlop.Review.Mending;
using Xunit;
using static Orlop.Review.Tests.Mending.MendBoats;

namespace Orlop.Review.Tests.Mending;

/// <summary>What is proposed for a cable too long before its fuse.</summary>
public sealed class ReachMendTests
{
    private static readonly BoatModel Demo = ExampleBoats.Read("sandgrouse");
    private static readonly BoatModel Winch = AlteredBoat.Of(Demo, Demo.Find<Alteration>("sampling-winch")!).Boat;

    // Bank to fuse: 1.05, 0.45 and 0.65 m along the axes make 1.31 m straight and 2.15 m along the sides.
    [Fact]
    public void CableTooLongBeforeItsFuse_IsNotLaidShorterThanTheDrawingLeavesRoomFor_TheFuseIsMoved()
    {
        MendRequest request = new() { Draft = Winch, Catalogue = Catalogue.Of(Winch), Cut = Cut, Only = [("conductor-protection", "winch-tail.plus")] };
        var sets = Mender.Proposals(request, null, TestContext.Current.CancellationToken).Sets;
        Assert.NotEmpty(sets);
        Place source = Winch.Find<BatteryBank>("bank")!.Place!, was = Winch.Find<Protection>("winch-fuse")!.Place!;
        Assert.All(sets, set =>
        {
            Place at = set.Boat.Find<Protection>("winch-fuse")!.Place!;
            double lengthM = set.Boat.Find<Cable>("winch-tail")!.LengthM!.Value;
            Assert.True(lengthM >= 1.2 * source.DistanceM(at), set.Changes[0].What.ToString());
            if (at != was)
            {
                // Along the sides the shorter cable reaches, to half a centimetre along each axis.
                Assert.True(lengthM + 0.015 >= SquareM(source, at));
                Assert.Equal(Winch.Find<Cable>("winch-feed")!.LengthM!.Value + SquareM(was, at), set.Boat.Find<Cable>("winch-feed")!.LengthM!.Value, 3);
            }
        });
        Assert.Contains(sets, set => set.Boat.Find<Protection>("winch-fuse")!.Place != was);
    }

    private static double SquareM(Place a, Place b) => Math.Abs(a.XM - b.XM) + Math.Abs(a.YM - b.YM) + Math.Abs(a.ZM - b.ZM);
}
