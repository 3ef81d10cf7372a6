using Orlop.Boat.Alterations;
using Orlop.Boat.Things;
using Orlop.Work.Bring;
using Orlop.Work.Paper;
using Xunit;

namespace Orlop.Work.Tests.Bring;

/// <summary>Plus is cut from red and minus from black where a reel's name says so; what is cut from another is marked.</summary>
public class CoreColourTests
{
    [Fact]
    public void Cuts_RedAndBlackReels_PlusComesOffTheRedThoughTheBlackIsShorter()
    {
        WorkPack pack = With(Reel("a", "Single 16 mm² black, 105 °C", 8), Reel("b", "Single 16 mm² red, 105 °C", 20));
        Assert.Equal([("feed.plus", "b"), ("feed.minus", "a")], pack.Cuts.OrderByDescending(cut => cut.Key, StringComparer.Ordinal).Select(cut => (cut.Key, cut.StockId)));
        Assert.All(pack.Cuts, cut => Assert.Null(cut.Colour));
    }

    [Fact]
    public void Cuts_OnlyBlackIsLeft_PlusIsMarkedRedOnCutBringAndMakeUpLists()
    {
        WorkPack pack = With(Reel("a", "Single 16 mm² black", 20));
        CableCut plus = pack.Cuts.Single(cut => cut.CoreId == "plus");
        Assert.Equal(("a", "red"), (plus.StockId, plus.MarkAs));
        Assert.Null(pack.Cuts.Single(cut => cut.CoreId == "minus").MarkAs);
        Assert.Contains(pack.Bring.Single(item => item.Kind == BringKind.Cable).Remarks, remark => remark.ToString().EndsWith("plus core is cut from black: mark both ends red (common practice, no source).", StringComparison.Ordinal));
        string html = WorkPackHtml.Render(pack, new PaperOptions(Boats.Day, "1"));
        Assert.Equal(2, html.Split("Mark this end red.").Length - 1);
    }

    [Theory]
    [InlineData("Single 16 mm²")]
    [InlineData("Single 16 mm², red or black")]
    [InlineData("Single 16 mm², shredded")]
    public void Cuts_ColourNotSaid_IsToBeLookedAt(string name)
    {
        CableCut plus = With(Reel("a", name, 20)).Cuts.Single(cut => cut.CoreId == "plus");
        Assert.Null(plus.MarkAs);
        Assert.Equal("Look at the colour: plus is never black unmarked.", plus.Colour!.ToString());
    }

    [Fact]
    public void Cuts_SheathedTwin_SaysNothingOfColour() => Assert.Null(Boats.PumpPack.Cuts.Single(cut => cut.CableId == "pump-cable").Colour);

    private static StockItem Reel(string id, string name, double lengthM) => new() { Id = id, Name = name, Use = StockUse.Cable, AreaMm2 = 16, CoreCount = 1, InsulationC = 90, Strands = StrandClass.FlexibleTinned5, LengthM = lengthM };

    private static WorkPack With(params StockItem[] reels)
    {
        Cable feed = Boats.Pair("feed", "isolator.out", "lamp", 16, 5) with { IsSheathed = false };
        return Boats.Plan(Boats.Small.WithThings([.. Boats.Small.Things, .. reels]), new Alteration { Id = "work", Edits = [BoatEdits.Add(feed)] });
    }
}
