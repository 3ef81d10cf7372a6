using Orlop.Boat.Things;
using Orlop.Work.Bring;
using Xunit;

namespace Orlop.Work.Tests.Bring;

/// <summary>What holds cables and things, counted by hand: a support every so far along a stretch and one clip at its end.</summary>
public sealed class FixingsTests
{
    // Pump cable 5 m, lamp cable 3 m in the tray, whose supports nobody has told: every 0.45 m (common practice, no source) is 12 and 7, with one each at the end 13 and 8.
    [Fact]
    public void Clips_SupportsNotTold_GoByCommonPracticeAndSaySo()
    {
        BringItem clips = Line(Boats.PumpPack, "clips");
        Assert.Equal(21, clips.Needed!.Value);
        Assert.Contains(clips.Remarks, remark => remark.ToString().Contains("13 for Pump cable", StringComparison.Ordinal));
        Assert.Contains(clips.Remarks, remark => remark.ToString().Contains("no source", StringComparison.Ordinal));
    }

    // Every 0.5 m: 10 and 6, and one each at the end.
    [Fact]
    public void Clips_SupportsTold_AreCountedFromThem()
    {
        BringItem clips = Line(With<Way>("tray", tray => tray with { SupportM = 0.5 }), "clips");
        Assert.Equal(18, clips.Needed!.Value);
        Assert.DoesNotContain(clips.Remarks, remark => remark.ToString().Contains("no source", StringComparison.Ordinal));
    }

    [Theory]
    [InlineData(WayKind.Conduit)]
    [InlineData(WayKind.Gland)]
    public void Clips_InAConduitOrAGland_AreNone(WayKind means) =>
        Assert.DoesNotContain(With<Way>("tray", tray => tray with { Means = means }).Bring, item => item.Key is "clips" or "glue");

    // 21 clips, and 4 for the fuse that is fitted; the fuse that is exchanged stays in its holder.
    [Fact]
    public void Screws_AreOneForEachClipAndFourForEachLightThing()
    {
        BringItem screws = Line(Boats.PumpPack, "screws");
        Assert.Equal(25, screws.Needed!.Value);
        Assert.Equal(["pump-fuse"], screws.For);
    }

    [Fact]
    public void Bolts_HoldWhatIsHeavy_WithPlatesBehindIt()
    {
        BringItem bolts = Line(Boats.PumpPack, "bolts");
        Assert.Equal(["chest", "pump"], bolts.For.Order(StringComparer.Ordinal));
        Assert.Equal(8, bolts.Needed!.Value);
        Assert.Contains("Chest", Line(Boats.PumpPack, "backing-plates").What.ToString(), StringComparison.Ordinal);
    }

    [Fact]
    public void Stock_OfThatName_IsTakenFirst()
    {
        WorkPack pack = Boats.Plan(Boats.Small.WithThings([.. Boats.Small.Things, new StockItem { Id = "clips-home", Name = "Clips", Use = StockUse.Fastening, PieceCount = 20, Where = "home" }]), Boats.Pump);
        Assert.Equal(1, Line(pack, "clips").ToBuy!.Value);
    }

    [Theory]
    [InlineData(EdgeGuard.Grommet, "grommets")]
    [InlineData(EdgeGuard.Gland, "glands")]
    [InlineData(null, "edge-guards")]
    public void Holes_ThatAreToBeMade_HaveWhatGuardsThemAndSealant(EdgeGuard? guard, string key)
    {
        WorkPack pack = With<Way>("tray", tray => tray with { Holes = [new WayHole { Where = "Bulkhead", Guard = guard, IsMade = false }, new WayHole { Where = "Frame", Guard = EdgeGuard.Grommet }] });
        BringItem line = Line(pack, key);
        Assert.Contains("Bulkhead", string.Join(' ', line.Remarks.Append(line.What)), StringComparison.Ordinal);
        Assert.DoesNotContain("Frame", string.Join(' ', line.Remarks.Append(line.What)), StringComparison.Ordinal);
        Line(pack, "sealant");
    }

    private static BringItem Line(WorkPack pack, string key) => Assert.Single(pack.Bring, item => item.Key == key);

    private static WorkPack With<T>(string id, Func<T, T> change)
        where T : Thing => Boats.Plan(Boats.Small.WithThings(Boats.Small.Things.Select(thing => thing.Id == id ? change((T)thing) : thing)), Boats.Pump);
}
