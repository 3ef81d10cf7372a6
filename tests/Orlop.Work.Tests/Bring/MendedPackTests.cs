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
    [Fact]
    public void PartThatIsBought_StandsOnTheBringList()
    {
        BoatModel boat = DemoBoat.Read();
        MendSet set = Mender.Find(
            new MendRequest { Draft = boat, Catalogue = Catalogue.Of(boat), Cut = Allowances.Cut(RouteRules.Of(boat)), Only = [("breaking-capacity", "solar-fuse")] }, null, TestContext.Current.CancellationToken).Set!;
        Assert.Empty(Assert.Single(set.Changes).StockIds);
        Alteration draft = set.PutInto(boat, MendDraft.Of(null, "solar", "Solar fuse"));
        BringItem bought = Assert.Single(Pack(boat, draft).Bring, item => item.Kind is BringKind.Fuse or BringKind.Device && item.For.Contains("solar-fuse"));
        Assert.True(bought.ToBuy!.Value > 0);
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
