using Orlop.Boat.Alterations;
using Orlop.Boat.Things;
using Orlop.Boat.Values;
using Orlop.Work.Bring;
using Xunit;

namespace Orlop.Work.Tests.Bring;

/// <summary>Nothing is cut from a reel that is not known to be what was reviewed: three singles of 6 mm² for 105 °C, 7.1 m together.</summary>
public class WantedCableTests
{
    private static readonly StockItem Single = new() { Id = "reel", Name = "Reel 6", Use = StockUse.Cable, AreaMm2 = 6, CoreCount = 1, InsulationC = 105, Strands = StrandClass.FlexibleTinned5, LengthM = 20 };

    [Fact]
    public void KnownToBeIt_IsTaken_AndNothingIsBought()
    {
        BringItem line = Line(Single);
        Assert.Equal((StockState.InStock, 0.0), (line.State, line.ToBuy!.Value));
    }

    // The built-in part: a sheathed twin for 90 °C.
    [Fact]
    public void TwinOfLessInsulationByItsCataloguePart_IsNotTaken_AndAllIsBought()
    {
        BringItem line = Line(new StockItem { Id = "reel", Name = "Twin 6 mm², tinned", Use = StockUse.Cable, AreaMm2 = 6, LengthM = 20, Catalogue = "twin-6-90" });
        Assert.Equal((StockState.ToBuy, line.Needed), (line.State, line.ToBuy));
        Assert.Empty(line.Takes);
        Assert.Contains(line.Remarks, remark => remark.ToString().StartsWith("Not taken: Twin 6 mm², tinned (twin, where single was reviewed; insulated for 90 C, where 105 C was reviewed)", StringComparison.Ordinal));
    }

    [Theory]
    [InlineData("insulation")]
    [InlineData("cores")]
    [InlineData("stranding")]
    public void NotGiven_MayDo_AndAllIsBought(string missing)
    {
        StockItem item = missing switch { "insulation" => Single with { InsulationC = null }, "cores" => Single with { CoreCount = null }, _ => Single with { Strands = null } };
        BringItem line = Line(item);
        Assert.Equal((StockState.ToBuy, line.Needed), (line.State, line.ToBuy));
        Assert.Contains(line.Remarks, remark => remark.ToString().StartsWith("May do: Reel 6", StringComparison.Ordinal) && remark.ToString().Contains($"{missing} not given", StringComparison.Ordinal));
    }

    // Reviewed with 105 °C: what bears more may do, what bears less is another cable; neither is taken without a word.
    [Theory]
    [InlineData(125, "May do")]
    [InlineData(90, "Not taken")]
    public void AnotherInsulation_IsNeverTaken(double insulationC, string said)
    {
        BringItem line = Line(Single with { InsulationC = insulationC });
        Assert.Empty(line.Takes);
        Assert.Contains(line.Remarks, remark => remark.ToString().StartsWith(said, StringComparison.Ordinal));
    }

    [Fact]
    public void PlainForTinned_IsNotTaken() => Assert.Empty(Line(Single with { Strands = StrandClass.Flexible5 }).Takes);

    [Fact]
    public void AnotherCrossSection_IsNotSpokenOf() =>
        Assert.DoesNotContain(Line(Single with { AreaMm2 = 10 }).Remarks, remark => remark.ToString().Contains("Reel 6", StringComparison.Ordinal));

    private static BringItem Line(StockItem reel)
    {
        Cable feed = Boats.Pair("feed", "isolator.out", "lamp", 6, 1.8) with { IsSheathed = false, InsulationC = 105, Run = [] };
        feed = feed with { Cores = [.. feed.Cores, new Core { Id = "third", From = new Terminal("isolator", "out"), To = new Terminal("lamp", "+") }] };
        WorkPack pack = Boats.Plan(Boats.Small.WithThings([.. Boats.Small.Things, reel]), new Alteration { Id = "work", Edits = [BoatEdits.Add(feed)] });
        return pack.Bring.Single(item => item.Kind == BringKind.Cable);
    }
}
