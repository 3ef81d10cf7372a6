using Orlop.Boat;
using Orlop.Boat.Alterations;
using Orlop.Boat.Things;
using Orlop.Review.Mending;
using Orlop.Review.Ways;
using Orlop.Work.Bring;
using Orlop.Work.Tables;
using Xunit;

namespace Orlop.Work.Tests.Bring;

/// <summary>What a mended draft asks to be brought.</summary>
public sealed class MendedPackTests
{
    // A gG link in place of a blade fuse: itself, its holder, a ferrule for each of the two ends on it.
    [Fact]
    public void PartThatIsBought_StandsOnTheBringList_WithItsHolderAndEnds()
    {
        BoatModel boat = DemoBoat.Read();
        MendSet set = Mender.Find(
            new MendRequest { Draft = boat, Catalogue = Catalogue.Of(boat), Cut = Allowances.Cut(RouteRules.Of(boat)), Only = [("breaking-capacity", "solar-fuse")] }, null, TestContext.Current.CancellationToken).Set!;
        Assert.Empty(Assert.Single(set.Changes).StockIds);
        Alteration draft = set.PutInto(boat, MendDraft.Of(null, "solar", "Solar fuse"));
        WorkPack pack = Pack(boat, draft);
        BringItem[] bought = [.. pack.Bring.Where(item => item.Kind is BringKind.Fuse or BringKind.Device && item.For.Contains("solar-fuse"))];
        Assert.Equal([BringKind.Fuse, BringKind.Device], bought.Select(item => item.Kind));
        Assert.All(bought, item => Assert.True(item.ToBuy!.Value > 0));
        Assert.True(Assert.Single(pack.Bring, item => item.Key.StartsWith("termination:Ferrule:6", StringComparison.Ordinal)).Needed!.Value >= 2);
        Assert.Contains(pack.Steps, step => step.Text.ToString().StartsWith("Make off the end of Plus bar to solar fuse", StringComparison.Ordinal));
    }

    [Fact]
    public void CableFromStock_IsCutFromTheReelOfTheProposal()
    {
        BoatModel boat = DemoBoat.Read();
        MendSet set = Mender.Find(
            new MendRequest { Draft = boat, Catalogue = Catalogue.Of(boat), Cut = Allowances.Cut(RouteRules.Of(boat)), Only = [("voltage-drop", "stern-light")] }, null, TestContext.Current.CancellationToken).Set!;
        MendChange cable = Assert.Single(set.Changes);
        CableCut cut = Assert.Single(Pack(boat, set.PutInto(boat, MendDraft.Of(null, "stern", "Stern light"))).Cuts, cut => cut.CableId == cable.ThingId);
        Assert.NotEmpty(cable.StockIds);
        Assert.Contains(cut.StockId, cable.StockIds);
    }

    private static WorkPack Pack(BoatModel boat, Alteration draft) => WorkPacks.Plan(BoatEdits.Apply(boat, [BoatEdits.Add(draft)]).Boat, draft);
}
