using Orlop.Boat;
using Orlop.Boat.Things;
using Orlop.Boat.Values;
using Orlop.Review.Ways;
using Xunit;

namespace Orlop.Review.Tests.Ways;

public sealed class RouteFinderTests
{
    private static readonly WayPreferences NoDrill = WayBoat.Preferences with { NewHoleM = 10 };

    [Fact]
    public void Find_ThreeWays_BestFirst_ByWhatTheOwnerPrefers()
    {
        CableRoutes found = WayBoat.Make(NoDrill).Routes();

        Assert.Equal(["high", "straight", "low"], found.Routes.Select(MainWay));
        Assert.Equal(found.Routes.Select(route => route.CostM).Order(), found.Routes.Select(route => route.CostM));
        Assert.All(found.Routes, route => Assert.Equal(route.CostM, route.Costs.Sum(cost => cost.WorthM), 1e-9));
        Assert.Equal(1, found.Routes[1].NewHoleCount);
        Assert.True(found.Routes[2].WetM > 6);
    }

    [Fact]
    public void Find_DrillingIsCheap_GoesStraight() => Assert.Equal("straight", MainWay(WayBoat.Make(NoDrill with { NewHoleM = 0.5 }).Routes().Routes[0]));

    [Fact]
    public void Find_NobodyMindsTheBilge_GoesLow() => Assert.Equal("low", MainWay(WayBoat.Make(NoDrill with { BilgeFactor = 1 }).Routes().Routes[0]));

    // From (1, 0, 1) 0.2 m loose, 5.6 m along, 0.2 m loose, each with a slack of 5 %; what is loose counts three times; a hole is worth half a metre.
    [Fact]
    public void Find_StraightWay_LengthAndCostAreAsByHand()
    {
        CableRoute route = WayBoat.Make(NoDrill with { NewHoleM = 0.5 }).Routes().Routes[0];

        Assert.Equal(["aft", "straight", "fore"], route.Stretches.Select(stretch => stretch.Way?.Id ?? stretch.Space!.Id));
        Assert.Equal([0.21, 5.88, 0.21], route.Stretches.Select(stretch => stretch.LengthM));
        Assert.Equal(6.3 + (2 * 0.42) + 0.5, route.CostM, 1e-9);
        Assert.Equal((6.3 + 0.5, 13.6), (Math.Round(route.CutM, 9), Math.Round(route.OutAndBackM, 9)));
        // Every 0.45 m: 13 on 5.88 m, one on each short end.
        Assert.Equal(16, route.SupportCount);
        Assert.Equal(90, route.LeastBendMm);
    }

    [Fact]
    public void Taken_Cable_IsAsLongAsItsRun_AndIsFoundAgainWhereItRuns()
    {
        BoatModel boat = WayBoat.Make(NoDrill);
        CableRoute route = boat.Routes().Routes[0];
        Cable taken = route.Taken(boat.Find<Cable>("lamp-cable")!);

        Assert.Equal(taken.Run.Sum(leg => leg.LengthM), taken.LengthM!.Value, 1e-9);
        Assert.Equal(Knowledge.Estimated, taken.LengthM.Known);
        Assert.Equal(["aft", "high", "fore"], taken.Run.Select(leg => leg.Way ?? leg.Space));
    }

    /// <summary>Along the ways it is never shorter to go by way of a third part: lengths from part to part obey the triangle inequality where every part stands on a way.</summary>
    [Fact]
    public void Find_ByWayOfAThirdPart_IsNeverShorter()
    {
        BoatModel boat = WayBoat.Make(WayBoat.Preferences with { BilgeFactor = 1, LooseFactor = 1, NewHoleM = 0, MadeHoleM = 0, SlackFraction = 0 });
        Place[] places = [new(1, 0, 1), new(1, 0, 0.4), new(3, 0, 0.05), new(5.2, 0, 0.05), new(7, 0, 0.6)];
        double[,] far = new double[places.Length, places.Length];
        for (int a = 0; a < places.Length; a++)
        {
            for (int b = 0; b < places.Length; b++)
            {
                BoatModel ends = boat.Change<Protection>("fuse", fuse => fuse with { Place = places[a], Space = SpaceOf(a) }).Change<ElectricLoad>("lamp", lamp => lamp with { Place = places[b], Space = SpaceOf(b) });
                far[a, b] = a == b ? 0 : ends.Routes().Routes[0].CostM;
            }
        }

        for (int a = 0; a < places.Length; a++)
        {
            for (int b = 0; b < places.Length; b++)
            {
                Assert.Equal(far[a, b], far[b, a], 1e-9);
                Assert.All(Enumerable.Range(0, places.Length), c => Assert.True(far[a, b] <= far[a, c] + far[c, b] + 1e-9, $"{a} to {b} by way of {c}"));
            }
        }

        static string SpaceOf(int index) => index < 2 ? "aft" : index < 4 ? "sump" : "fore";
    }

    [Fact]
    public void Find_PartWithoutAPlace_NamesIt()
    {
        CableRoutes found = WayBoat.Make().Change<ElectricLoad>("lamp", lamp => lamp with { Place = null }).Routes();
        Assert.Empty(found.Routes);
        Assert.Contains(found.Missing, missing => (missing.ThingId, missing.Field, missing.IsMissing) == ("lamp", "place", true));
    }

    [Fact]
    public void Find_WayInASpaceThatNobodyNamed_CountsAsTheWorst_AndIsTold()
    {
        CableRoute route = WayBoat.Make(NoDrill with { NewHoleM = 0 }).Change<Way>("straight", way => way with { Space = null }).Routes().Routes.Single(route => MainWay(route) == "straight");
        Assert.Contains(route.Costs, cost => cost.Kind == CostKind.NotKnown && cost.WorthM > 9 * 5.8);
        Assert.Contains(route.Missing, missing => (missing.ThingId, missing.Field) == ("straight", "space"));
    }

    [Fact]
    public void Find_ConduitTooFull_IsLeftOut_AndToldWhy()
    {
        BoatModel boat = WayBoat.Make(NoDrill with { NewHoleM = 0 }).Change<Way>("straight", way => way with { Means = WayKind.Conduit, InnerDiameterMm = 12, Holes = [] });
        Assert.DoesNotContain(boat.Routes().Routes, route => MainWay(route) == "straight");
        Assert.Contains("56 % full", Assert.Single(boat.Routes().LeftOut).Why, StringComparison.Ordinal);

        BoatModel wide = boat.Change<Way>("straight", way => way with { InnerDiameterMm = 20 });
        RouteFill fill = Assert.Single(wide.Routes().Routes[0].Fills);
        Assert.Equal(81.0 / 400, fill.FillFraction!.Value, 1e-12);
        Assert.Equal(0.53, fill.MostFraction);

        CableRoute unknown = wide.Change<Way>("straight", way => way with { InnerDiameterMm = null }).Routes().Routes[0];
        Assert.Contains(unknown.Missing, missing => (missing.ThingId, missing.Field) == ("straight", "innerDiameterMm"));
    }

    [Fact]
    public void Find_WayForAlternatingCurrent_IsNotForThisCable() =>
        Assert.Contains(WayBoat.Make().Change<Way>("high", way => way with { Share = WayShare.AcOnly }).Routes().LeftOut, left => left.Way.Id == "high" && left.Why.Contains("alternating", StringComparison.Ordinal));

    [Fact]
    public void Find_BareHole_IsAChafePoint_AndOneNobodyLookedAtToo()
    {
        BoatModel boat = WayBoat.Make(NoDrill).Change<Way>("high", way => way with { Holes = [new WayHole { Where = "a", Guard = EdgeGuard.Bare }, new WayHole { Where = "b" }, new WayHole { Where = "c", Guard = EdgeGuard.Gland }], Opened = "Lining" });
        CableRoute route = boat.Routes().Routes.Single(route => MainWay(route) == "high");
        Assert.Equal(["a", "b"], route.Chafes.Select(hole => hole.Hole.Where));
        Assert.Equal("Lining", Assert.Single(route.ToOpen).Opened);
        Assert.Contains(route.Costs, cost => cost.Kind == CostKind.Opening);
    }

    [Fact]
    public void Plan_TwoCables_ShareTheHoleThatNeitherWouldDrillAlone_AndNoPairOfOffersIsCheaper()
    {
        BoatModel boat = WayBoat.Make(WayBoat.Preferences with { NewHoleM = 8 });
        WaysView view = boat.View();
        Cable[] cables = [boat.Find<Cable>("lamp-cable")!, boat.Find<Cable>("second-cable")!];
        JointRoutes plan = JointRoutes.Plan(view, cables)!;

        Assert.All(cables, cable => Assert.Equal("high", MainWay(RouteFinder.Find(view, cable).Routes[0])));
        Assert.All(plan.Routes, pair => Assert.Equal("straight", MainWay(pair.Route)));
        Assert.Single(plan.NewHoles);
        Assert.True(plan.TogetherM < plan.ApartM - 1);
        double best = cables.Select(cable => RouteFinder.Find(view, cable).Routes).Aggregate(
            new[] { Array.Empty<CableRoute>() }.AsEnumerable(), (sets, routes) => sets.SelectMany(set => routes.Select(route => set.Append(route).ToArray()))).Min(set => OnceM(view, set));
        Assert.Equal(best, plan.TogetherM, 1e-9);
        Assert.True(plan.IsProved);
        Assert.Equal(plan.TogetherM, plan.Routes.Sum(pair => pair.Route.CostM), 1e-9);
    }

    [Fact]
    public void Plan_ConduitThatHoldsOneOnly_IsNotSharedByTwo()
    {
        BoatModel boat = WayBoat.Make(WayBoat.Preferences with { NewHoleM = 8 }).Change<Way>("straight", way => way with { Means = WayKind.Conduit, InnerDiameterMm = 14, Holes = [] });
        JointRoutes plan = JointRoutes.Plan(boat.View(), [boat.Find<Cable>("lamp-cable")!, boat.Find<Cable>("second-cable")!])!;
        Assert.Equal(["high", "straight"], plan.Routes.Select(pair => MainWay(pair.Route)).Order());
    }

    [Fact]
    public void Plan_WhereTheCablesRunNow_MakesNoDifference()
    {
        BoatModel boat = WayBoat.Make(WayBoat.Preferences with { NewHoleM = 8 }).Change<Way>("straight", way => way with { Means = WayKind.Conduit, InnerDiameterMm = 14, Holes = [] });
        BoatModel inIt = boat.Change<Cable>("second-cable", cable => cable with { Run = [new RunLeg { Way = "straight", LengthM = 6 }] });
        JointRoutes plan = Plan(boat), again = Plan(inIt);
        Assert.Equal(plan.TogetherM, again.TogetherM, 1e-9);
        // One of 9 mm in 14 mm, as laid.
        Assert.Equal(81.0 / 196, Assert.Single(again.Routes.SelectMany(pair => pair.Route.Fills)).FillFraction!.Value, 1e-12);

        static JointRoutes Plan(BoatModel boat) => JointRoutes.Plan(boat.View(), [boat.Find<Cable>("lamp-cable")!, boat.Find<Cable>("second-cable")!])!;
    }

    [Theory]
    [InlineData(2)]
    [InlineData(5)]
    [InlineData(9)]
    public void Plan_AnyPriceOfAHole_IsProved_AndNeverDearerThanApart(double newHoleM)
    {
        BoatModel boat = WayBoat.Make(WayBoat.Preferences with { NewHoleM = newHoleM }).Change<Way>("high", way => way with { Opened = "Lining" });
        JointRoutes plan = JointRoutes.Plan(boat.View(), [boat.Find<Cable>("lamp-cable")!, boat.Find<Cable>("second-cable")!])!;
        Assert.True(plan.IsProved && plan.TogetherM <= plan.ApartM + 1e-9 && plan.MostAboveFraction == 0);
    }

    // What routes cost together: lengths and made holes each, new holes and openings once.
    private static double OnceM(WaysView view, CableRoute[] routes) =>
        routes.Sum(route => route.Costs.Where(cost => cost.Kind is not (CostKind.NewHoles or CostKind.Opening)).Sum(cost => cost.WorthM))
        + (routes.SelectMany(route => route.Holes).Where(hole => !hole.Hole.IsMade).Distinct().Count() * view.Rules.NewHoleM)
        + (routes.SelectMany(route => route.ToOpen).Distinct().Count() * view.Rules.OpeningM);

    // The way that holds most of it.
    private static string MainWay(CableRoute route) => route.Stretches.Where(stretch => stretch.Way is not null).MaxBy(stretch => stretch.LengthM)!.Way!.Id;
}
