using Orlop.Boat;
using Orlop.Boat.Alterations;
using Orlop.Boat.Things;
using Orlop.Review.Findings;
using Orlop.Review.Mending;
using Xunit;

namespace Orlop.Review.Tests.Mending;

/// <summary>The demo's winch draft, mended: what the set is like, not what it says.</summary>
public sealed class DemoMendTests
{
    private static readonly BoatModel Boat = ExampleBoats.Read("sandgrouse");
    private static readonly Alteration Winch = Boat.Find<Alteration>("sampling-winch")!;
    private static readonly BoatModel Draft = AlteredBoat.Of(Boat, Winch).Boat;
    private static readonly Lazy<MendResult> Mended = new(() =>
        Mender.Find(new MendRequest { Draft = Draft, Catalogue = Catalogue.Of(Draft), Cut = MendBoats.Cut }, null, CancellationToken.None));

    [Fact]
    public void WinchDraft_Mended_LeavesNoElectricalFindingThatFails_AndNoneNewlyUnknown()
    {
        Assert.Equal((MendOutcome.Cleared, true, 0), (Mended.Value.Outcome, Mended.Value.IsProved, Mended.Value.Beyond.Length));
        Assert.True(MendBoats.Verdicts(Draft).Values.Count(verdict => verdict == Verdict.Fails) >= 10);
        Assert.True(MendBoats.IsMended(Mended.Value.Set!.Boat, Draft));
        Assert.Equal(0, Mended.Value.Set.After.GetValueOrDefault(Verdict.Fails));
    }

    // A set made by hand (fuse nearer, what lies in stock, a gG link for the solar fuse): 26 for a holder, 16 for the link and 14 for its holder.
    [Fact]
    public void WinchDraft_CostsNoMoreThanASetMadeByHand() => Assert.True(Mended.Value.Set!.Cost.PriceMoney <= 56);

    // The bank has 3.2 ± 0.3 mΩ, so 2.6 mΩ at the least: over 6 kA on the bar that the solar fuse leaves, which a breaker of 6 kA need not break.
    [Fact]
    public void WinchDraft_SolarFuse_BecomesOneThatBreaksTheMostItMayBe()
    {
        Protection fuse = Mended.Value.Set!.Boat.Find<Protection>("solar-fuse")!;
        Assert.True(fuse.BreakingA!.Value > 27.2 / 0.0026);
        BoatModel weak = Mended.Value.Set.Boat.Change<Protection>("solar-fuse", was => was with { BreakingA = 6000 });
        Assert.Equal(Verdict.Unknown, MendBoats.Verdicts(weak)[("breaking-capacity", "solar-fuse")]);
        Termination[] ends = [.. Mended.Value.Set.Boat.All<Cable>().SelectMany(cable => cable.Cores).SelectMany(core => new[] { (core.From, core.FromEnd), (core.To, core.ToEnd) }).Where(end => end.Item1.Part == fuse.Id).Select(end => end.Item2!)];
        Assert.Equal([TerminationMeans.Ferrule, TerminationMeans.Ferrule], ends.Select(end => end.Means));
    }

    // One cable, one length: what the draft has is what is said, cut and weighed. 4.8 m, twice two tails of 0.15 m, a loop and twice the 0.2 m of its ±, to the next 0.1 m.
    [Fact]
    public void WinchDraft_CableThatLeadsOnFromAMovedFuse_HasOneRowAndOneLength()
    {
        Cable feed = Mended.Value.Set!.Boat.Find<Cable>("winch-feed")!;
        double lengthM = feed.LengthM!.Value;
        Assert.Equal(lengthM, feed.Run.Sum(leg => leg.LengthM), 6);
        Sentence what = Assert.Single(Mended.Value.Set.Changes, change => change.ThingId == "winch-feed").What;
        double cutM = 2 * MendBoats.Cut.CutM(lengthM, feed.LengthM.PlusMinus);
        Assert.Contains(what.Parts, part => part.Amount is { Suffix: "M" } amount && Math.Abs(amount.Value - cutM) < 1e-6);
        Assert.Contains(what.Parts, part => part.Amount is { Suffix: "M" } amount && Math.Abs(amount.Value - lengthM) < 1e-6);
    }

    [Fact]
    public void WinchDraft_WhatBecomesTight_IsNamed()
    {
        var was = MendBoats.Verdicts(Draft);
        (string, string)[] tight = [.. MendBoats.Verdicts(Mended.Value.Set!.Boat).Where(finding => finding.Value == Verdict.Tight && was.GetValueOrDefault(finding.Key, Verdict.Holds) != Verdict.Tight).Select(finding => finding.Key).Order()];
        Assert.NotEmpty(tight);
        Assert.Equal(tight, Mended.Value.Set.NewlyTight.Select(finding => (finding.CheckId, finding.SubjectId)).Order());
    }

    // The winch hangs on the battery's post; everything else that is changed lies behind the main isolator.
    [Fact]
    public void WinchDraft_FedFromBeforeTheMainIsolator_SaysSoOfTheWinchAlone() =>
        Assert.StartsWith("Winch stays fed", Assert.Single(Mended.Value.Set!.Remarks).ToString(), StringComparison.Ordinal);

    [Fact]
    public void WinchDraft_EveryChange_IsNeeded()
    {
        BoatModel mended = Mended.Value.Set!.Boat;
        Assert.All(Mended.Value.Set.Changes, change =>
        {
            BoatModel without = mended.WithThings(mended.Things.Select(thing => thing.Id == change.ThingId ? Draft.Find(thing.Id)! : thing));
            Assert.NotEqual(mended, without);
            Assert.False(MendBoats.IsMended(without, Draft), change.What.ToString());
        });
    }

    [Fact]
    public void WinchDraft_Cost_IsTheSumOfItsChanges_AndStockIsFreeButForNewHolders()
    {
        MendSet set = Mended.Value.Set!;
        Assert.Equal(set.Changes.Sum(change => change.Cost.PriceMoney), set.Cost.PriceMoney, 9);
        Assert.Equal(set.Cost.PriceMoney, Mended.Value.LeastMoney!.Value, 2);
        Assert.Contains(set.Changes, change => change.StockIds.Length > 0);
        Assert.All(set.Changes.Where(change => change.StockIds.Length > 0), change => Assert.Equal(HolderMoney(change), change.Cost.PriceMoney));
        Assert.All(set.Changes.SelectMany(change => change.StockIds), id => Assert.NotNull(Boat.Find<StockItem>(id)));
    }

    // A fuse of another family than what stands there.
    private static double HolderMoney(MendChange change) => Draft.Find(change.ThingId) is Protection device && Catalogue.Of(Draft).Find(change.CatalogueId!) is { Use: CatalogueUse.Fuse } part && part.Gates != device.Gates ? part.MountPriceMoney!.Value : 0;

    [Fact]
    public void WinchDraft_PutIntoANewDraft_TouchesNeitherTheBoatNorTheDraft()
    {
        Alteration tried = Mended.Value.Set!.PutInto(Boat, MendDraft.Of(Winch, "winch-mended", "Winch, mended"));
        EditOutcome outcome = AlteredBoat.Of(Boat, tried);
        Assert.Empty(outcome.Clashes);
        Assert.True(MendBoats.IsMended(outcome.Boat, Draft));
        Assert.Equal(Winch, Boat.Find<Alteration>("sampling-winch"));
    }

    [Fact]
    public void EveryStockItemThatNamesACataloguePart_NamesOneThatIsThere() => Assert.All(
        Boat.All<StockItem>().Where(item => item.Catalogue is not null), item => Assert.NotNull(Catalogue.Of(Boat).Find(item.Catalogue!)));
}
