using Orlop.Boat.Alterations;
using Orlop.Boat.Things;
using Orlop.Boat.Values;
using Orlop.Work.Bring;
using Xunit;

namespace Orlop.Work.Tests.Bring;

/// <summary>What stock is, by its name, and what it is not.</summary>
public sealed class StockMatchTests
{
    // 13 clips hold the pump cable and 8 the lamp cable (FixingsTests); a clip of 12 mm holds what is 12 mm thick and no more.
    [Theory]
    [InlineData(11.0, 12.0, 0, 0)]
    [InlineData(21.8, 8.0, 13, 1)]
    [InlineData(21.8, 21.8, 21, 2)]
    [InlineData(null, 8.0, 13, 1)]
    [InlineData(null, null, 21, 2)]
    public void Clips_OfAStatedSize_HoldNoThickerCable(double? pumpMm, double? lampMm, int toBuy, int notCounted)
    {
        BringItem clips = Line(Pack(pumpMm, lampMm, Stock("Cable clips, metal, 12 mm", 80)), "clips");
        Assert.Equal((21, toBuy), (clips.Needed!.Value, clips.ToBuy!.Value));
        Assert.Equal(notCounted, clips.Remarks.Count(remark => remark.ToString().StartsWith("Not counted: Cable clips, metal, 12 mm; ", StringComparison.Ordinal)));
        Assert.Equal(21 - toBuy, clips.Takes.Sum(take => take.Amount!.Value));
    }

    // Ten of 22 mm go to the thick cable first; those of 12 mm hold the thin one.
    [Fact]
    public void Clips_OfSeveralSizes_GoToTheThickestFirst()
    {
        BringItem clips = Line(Pack(21.8, 8, Stock("Clips 16-22 mm", 10), Stock("Clips 12 mm", 8)), "clips");
        Assert.Equal(3, clips.ToBuy!.Value);
        Assert.Equal([8.0, 10.0], clips.Takes.Select(take => take.Amount!.Value).Order());
    }

    [Theory]
    [InlineData("Heat-shrink with glue, lengths", false)]
    [InlineData("Glue, two parts", true)]
    public void Glue_IsNotWhatComesWithGlue(string title, bool isGlue) => Assert.Equal(isGlue, Line(Pack(null, null, Stock(title, 30)), "glue").Takes.Any(take => take.Title == title));

    [Theory]
    [InlineData("Heat gun, 12 V", true)]
    [InlineData("Hot-air blower", true)]
    [InlineData("Grease gun", false)]
    [InlineData("Heat-shrink, black", false)]
    public void HeatSource_IsFoundByName(string title, bool isOne) => Assert.Equal(isOne, Line(Pack(null, null, Stock(title, 1)), "tool:heat").Takes.Any(take => take.Title == title));

    [Fact]
    public void HeatShrink_BringsWhatHeatsIt_AndContactsNeither()
    {
        Assert.Contains(Boats.PumpPack.Bring, item => item is { Key: "tool:heat", Kind: BringKind.Tool });
        WorkPack pack = Boats.Plan(Boats.Small, Ended(TerminationMeans.Contact));
        Assert.DoesNotContain(pack.Bring, item => item.Key is "heat-shrink" or "tool:heat");
        Assert.DoesNotContain("heat-shrink", Words(pack, "make-off:pump-cable"), StringComparison.Ordinal);
    }

    // The other side of a butt is crimped where it is connected, and shrunk after that.
    [Fact]
    public void Butt_IsCrimpedAndShrunkAtConnecting()
    {
        WorkPack pack = Boats.Plan(Boats.Small, Ended(TerminationMeans.Butt));
        Assert.Contains("A butt gets its first crimp here", Words(pack, "make-off:pump-cable"), StringComparison.Ordinal);
        Assert.DoesNotContain("over the barrel", Words(pack, "make-off:pump-cable"), StringComparison.Ordinal);
        string connect = Words(pack, "connect:pump-cable");
        Assert.Contains("crimp the other side of the butt onto the lead there", connect, StringComparison.Ordinal);
        Assert.DoesNotContain("clicks", connect, StringComparison.Ordinal);
        Assert.Contains(pack.Bring, item => item.Key == "heat-shrink");
    }

    // What holds a gallows is its maker's or designer's to say: no count, no size, nothing out of stock.
    [Theory]
    [InlineData("Gallows")]
    [InlineData("Anchor windlass")]
    public void LiftingGear_IsHeldByWhatItsMakerSays(string name)
    {
        Gear gallows = new() { Id = "gallows", Name = name, MassKg = 12, Place = new Place(1, 1, 2), Space = "locker" };
        WorkPack pack = Boats.Plan(Boats.Small.WithThings([.. Boats.Small.Things, Stock("Bolts M6 × 30, nuts and washers", 40)]), new Alteration { Id = "lift", Edits = [BoatEdits.Add(gallows)] });
        BringItem line = Line(pack, "lifting-fixings");
        Assert.Equal((StockState.Look, null, null), (line.State, line.Needed, line.ToBuy));
        Assert.Empty(line.Takes);
        Assert.Equal(["gallows"], line.For);
        Assert.Contains(line.Remarks, remark => remark.ToString().Contains("as its maker, or whoever designs it, says", StringComparison.Ordinal));
        Assert.DoesNotContain(pack.Bring, item => item.Key is "bolts" or "screws" || item.Takes.Any(take => take.Title.StartsWith("Bolts", StringComparison.Ordinal)));
    }

    [Theory]
    [InlineData(1, -0.5, 2, "Its centre goes 1 M forward of the after perpendicular, 0.5 M to starboard, 2 M above the base line.")]
    [InlineData(-0.2, 0.5, -0.1, "Its centre goes 0.2 M abaft the after perpendicular, 0.5 M to port, 0.1 M below the base line.")]
    public void Fit_TellsThePlace(double xM, double yM, double zM, string words)
    {
        Gear bench = new() { Id = "bench", Name = "Bench", MassKg = 12, Place = new Place(xM, yM, zM), Space = "locker" };
        Assert.Contains(words, Words(Boats.Plan(Boats.Small, new Alteration { Id = "work", Edits = [BoatEdits.Add(bench)] }), "fit:bench"), StringComparison.Ordinal);
        Assert.Contains("Where in its space it goes is not given.", Words(Boats.Plan(Boats.Small, new Alteration { Id = "work", Edits = [BoatEdits.Add(bench with { Place = null })] }), "fit:bench"), StringComparison.Ordinal);
    }

    private static WorkPack Pack(double? pumpMm, double? lampMm, params StockItem[] stock) => Boats.Plan(
        Boats.Small.WithThings([.. Boats.Small.Things, .. stock]),
        Boats.Pump with
        {
            Edits = Boats.Pump.Edits.Select(edit => edit.Becomes is Cable cable ? edit with { Becomes = cable with { OuterDiameterMm = (cable.Id == "pump-cable" ? pumpMm : lampMm) is { } mm ? new Quantity(mm, Knowledge.Measured) : null } } : edit).ToValueList(),
        });

    private static Alteration Ended(TerminationMeans means) => Boats.Pump with
    {
        Edits =
        [
            .. Boats.Pump.Edits.Where(edit => edit.Id is "pump" or "pump-fuse" or "pump-strap"),
            BoatEdits.Add(Boats.PumpCable with { Cores = Boats.PumpCable.Cores.Select(core => core with { FromEnd = new Termination(means), ToEnd = new Termination(means) }).ToValueList() }),
        ],
    };

    private static string Words(WorkPack pack, string key) => string.Join(' ', pack.Steps.Single(step => step.Key == key).Details);

    private static StockItem Stock(string title, int count) => new() { Id = $"stock-{count}", Name = title, Use = StockUse.Fastening, PieceCount = count, Where = "home" };

    private static BringItem Line(WorkPack pack, string key) => Assert.Single(pack.Bring, item => item.Key == key);
}
