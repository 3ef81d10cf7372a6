using Orlop.Boat;
using Orlop.Boat.Alterations;
using Orlop.Boat.Things;
using Orlop.Boat.Values;
using Orlop.Work.Bring;
using Orlop.Work.Paper;
using Xunit;

namespace Orlop.Work.Tests.Bring;

/// <summary>Reels and offcuts: nothing is thrown away that need not be, and a reel that need not be cut into stays whole.</summary>
public class CutPlanTests
{
    // Each piece is cut 0.5 m longer than its run: two tails of 0.15 m and a loop of 0.2 m.
    [Fact]
    public void Reels_OffcutOfTheRightLength_IsUsedUp_AndTheReelKept()
    {
        WorkPack pack = With([3.5], Reel("whole", 30), Reel("offcut", 4));
        ReelPlan reel = Assert.Single(pack.Cutting.Reels);
        Assert.Equal(("offcut", 0.0, false), (reel.StockId, Math.Round(reel.LeftM, 9), reel.IsKept));
        Assert.True(pack.Cutting.IsLeastWaste);
    }

    [Fact]
    public void Reels_OffcutThatWouldLeaveAStub_IsLeft_WhereTheReelKeepsAUsefulRest()
    {
        WorkPack pack = With([3.1], Reel("whole", 30), Reel("offcut", 4));
        ReelPlan reel = Assert.Single(pack.Cutting.Reels);
        Assert.Equal(("whole", true), (reel.StockId, reel.IsKept));
        Assert.Equal(26.4, reel.LeftM, 9);
    }

    // Longest first into the shortest that holds it: 5.0 into 9, 4.0 into 9 — and the two of 3.0 leave one over. Shared out rightly all fit.
    [Fact]
    public void Reels_PiecesThatFitOnlyWhenSharedOutRightly_AllFit()
    {
        WorkPack pack = With([4.5, 3.5, 3.5, 2.5, 2.5], Reel("ten", 10), Reel("nine", 9));
        Assert.DoesNotContain(pack.Cuts, cut => cut.StockId is null);
        Assert.All(pack.Cutting.Reels, reel => Assert.Equal(0, reel.LeftM, 9));
    }

    [Fact]
    public void Reels_OwnersTailsAndLoop_StandBeforeTheUsual()
    {
        BoatModel boat = Boats.Small.WithThings([.. Boats.Small.Things, new WayPreferences { Id = "way-preferences", TailM = 0.3, LoopM = 0 }]);
        Assert.Equal(0.6, Boats.Plan(boat, new Alteration { Id = "work", Edits = [BoatEdits.Add(Piece(0, 3))] }).Cuts[0].AllowanceM, 9);
    }

    [Fact]
    public void Paper_TellsReelsWaysHolesAndOpenings()
    {
        Way tray = Boats.Small.Find<Way>("tray")! with { Opened = "Locker floor", Holes = [new WayHole { Where = "Frame 4", Guard = EdgeGuard.Grommet, IsMade = false }] };
        BoatModel boat = Boats.Small.WithThings([.. Boats.Small.Things.Where(thing => thing.Id != "tray"), tray, Reel("offcut", 4)]);
        WorkPack pack = Boats.Plan(boat, new Alteration { Id = "work", Edits = [BoatEdits.Add(Piece(0, 3.5) with { Run = [new RunLeg { Way = "tray", LengthM = 3.5 }] })] });
        string html = WorkPackHtml.Render(pack, new PaperOptions(Boats.Day, "1"));

        Assert.Contains("From each reel and offcut", html, StringComparison.Ordinal);
        Assert.Contains("Frame 4 (to be made, grommet)", html, StringComparison.Ordinal);
        Assert.Contains("Locker floor", html, StringComparison.Ordinal);
        Assert.Contains("Before drilling", html, StringComparison.Ordinal);
    }

    private static StockItem Reel(string id, double lengthM) => new() { Id = id, Use = StockUse.Cable, AreaMm2 = 16, CoreCount = 2, InsulationC = 90, Strands = StrandClass.FlexibleTinned5, LengthM = lengthM };

    private static Cable Piece(int index, double lengthM) => Boats.Pair($"piece-{index}", "isolator.out", "lamp", 16, lengthM) with { Run = [] };

    private static WorkPack With(double[] lengthsM, params StockItem[] reels) => Boats.Plan(
        Boats.Small.WithThings([.. Boats.Small.Things, .. reels]),
        new Alteration { Id = "work", Edits = lengthsM.Select((lengthM, index) => BoatEdits.Add(Piece(index, lengthM))).ToValueList() });
}
