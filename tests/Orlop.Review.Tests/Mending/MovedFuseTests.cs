using Orlop.Boat;
using Orlop.Boat.Things;
using Orlop.Boat.Values;
using Orlop.Review.Mending;
using Xunit;
using static Orlop.Review.Tests.Mending.MendBoats;

namespace Orlop.Review.Tests.Mending;

/// <summary>A fuse moved nearer together with other changes of the cable that leads on: held against every set tried by the test itself.</summary>
public sealed class MovedFuseTests
{
    // 0.88 of the 1.8 m that 16 mm² without a guard may be long before its fuse; the fuse comes nearer by the rest of the 2.2 m along the sides.
    private static readonly Place Post = new(0.2, 0, 0.5);
    private static readonly CataloguePart[] Singles = [Single(6, 1), Single(10, 1.5), Single(16, 3)];

    [Theory]
    [InlineData(MendAim.Cost, 12)]
    [InlineData(MendAim.Cost, 5)]
    [InlineData(MendAim.Mass, 12)]
    public void BestSet_IsNoMoreThanThatOfTryingEverySet(MendAim aim, double runningA)
    {
        BoatModel boat = Boat(runningA);
        MendResult result = Mend(boat, aim, Singles);
        Assert.Equal((MendOutcome.Cleared, true), (result.Outcome, result.IsProved));
        MendSet set = result.Set!;
        Protection moved = set.Boat.Find<Protection>("fuse")!;
        Assert.True(IsMended(set.Boat, boat));
        Assert.NotEqual(boat.Find<Protection>("fuse")!.Place, moved.Place);
        double tailM = set.Boat.Find<Cable>("tail")!.LengthM!.Value, moreM = SquareM(moved.Place!, boat.Find<Protection>("fuse")!.Place!);
        Assert.Equal(LeastByTrying(boat, aim, moved.Place!, tailM, moreM)!.Value, aim == MendAim.Cost ? set.Cost.PriceMoney : set.Cost.AddedKg, 6);
        Assert.Equal(boat.Find<Cable>("feed")!.LengthM!.Value + moreM, set.Boat.Find<Cable>("feed")!.LengthM!.Value, 3);
    }

    // Each size of tail, moved to or not, with each size of feed.
    private static double? LeastByTrying(BoatModel boat, MendAim aim, Place near, double tailM, double moreM)
    {
        double? least = null;
        foreach (bool isMoved in new[] { false, true })
        {
            foreach (CataloguePart? tail in Singles.Prepend(null))
            {
                foreach (CataloguePart? feed in Singles.Prepend(null).Where(part => part is not null || !isMoved))
                {
                    double feedM = 4 + (isMoved ? moreM : 0), length = isMoved ? tailM : 2.2;
                    BoatModel tried = boat.Change<Protection>("fuse", fuse => isMoved ? fuse with { Place = near } : fuse)
                        .Change<Cable>("tail", cable => Of(cable, tail, length)).Change<Cable>("feed", cable => Of(cable, feed, feedM));
                    double cost = CostOf(aim, boat.Find<Cable>("tail")!, tail, length) + CostOf(aim, boat.Find<Cable>("feed")!, feed, feedM);
                    least = IsMended(tried, boat) && !(cost >= least) ? cost : least;
                }
            }
        }

        return least;
    }

    private static double CostOf(MendAim aim, Cable was, CataloguePart? part, double lengthM) => part is null ? 0
        : aim == MendAim.Cost ? Cut.CutM(lengthM, null) * part.PriceMoneyPerM!.Value : Math.Max(0, (part.MassKgPerM!.Value * lengthM) - (was.MassKgPerM!.Value * was.LengthM!.Value));

    private static Cable Of(Cable cable, CataloguePart? part, double lengthM)
    {
        Cable laid = cable with { LengthM = lengthM, Run = [new RunLeg { Space = "cabin", LengthM = lengthM }] };
        return part is null ? laid : laid with { AreaMm2 = part.AreaMm2!, InsulationC = part.InsulationC, OuterDiameterMm = part.OuterDiameterMm, MassKgPerM = part.MassKgPerM, Strands = part.Strands };
    }

    // The lamp's fuse at the end of 2.2 m from the post, and a feed that may be too thin.
    private static BoatModel Boat(double runningA) => SmallBoat.OneLamp(runningA, 15).Without("strap").Without("lamp-cable")
        .Change<BatteryBank>("bank", bank => bank with { Place = Post })
        .Change<Protection>("fuse", fuse => fuse with { Place = new Place(1.4, 0.4, 1.1) })
        .With(Line("tail", 2.2, "bank.+", "fuse.in"), Line("feed", 4, "fuse.out", "lamp.+"),
            Line("return", 2, "minus.bar", "lamp.-") with { AreaMm2 = 16 });

    private static Cable Line(string id, double lengthM, string from, string to) => new()
    {
        Id = id,
        AreaMm2 = 2.5,
        InsulationC = 90,
        LengthM = lengthM,
        MassKgPerM = 0.03,
        Cores = [SmallBoat.Core("plus", from, to)],
        Run = [new RunLeg { Space = "cabin", LengthM = lengthM }],
    };

    private static CataloguePart Single(double areaMm2, double pricePerM) => Twin(areaMm2, pricePerM) with { Id = FormattableString.Invariant($"single-{areaMm2 * 10:0}"), CoreCount = 1 };

    private static double SquareM(Place a, Place b) => Math.Abs(a.XM - b.XM) + Math.Abs(a.YM - b.YM) + Math.Abs(a.ZM - b.ZM);
}
