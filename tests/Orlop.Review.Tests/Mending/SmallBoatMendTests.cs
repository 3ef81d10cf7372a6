using Orlop.Boat;
using Orlop.Boat.Things;
using Orlop.Review.Findings;
using Orlop.Review.Mending;
using Xunit;
using static Orlop.Review.Tests.Mending.MendBoats;

namespace Orlop.Review.Tests.Mending;

/// <summary>Mending of boats so small that every set can be reviewed by the test itself.</summary>
public sealed class SmallBoatMendTests
{
    private static readonly CataloguePart[] Cables = [Twin(1.5, 1), Twin(2.5, 1.7), Twin(4, 2.4), Twin(6, 3.9), Twin(10, 6.2)];
    private static readonly CataloguePart[] Fuses = [Fuse(7.5, 2, 1000), Fuse(10, 2.5, 1000), Fuse(15, 3), Fuse(20, 3.5), Fuse(30, 6)];

    // Twin of 8 mm does not go through a gland for 7 mm, however much less it would lose.
    [Theory]
    [InlineData(7.0, false)]
    [InlineData(9.0, true)]
    public void CableThickerThanItsGland_IsNoChoice(double boreMm, bool isMended)
    {
        BoatModel boat = Lamp(areaMm2: 1, lengthM: 12, fuseA: 7.5).With(new Way { Id = "through", Means = WayKind.Gland, Space = "cabin", Holes = [new WayHole { Where = "Deck", Guard = EdgeGuard.Gland, BoreMm = boreMm, LeastClampedMm = 3 }] })
            .Change<Cable>("lamp-cable", cable => cable with { OuterDiameterMm = 6, Run = [new RunLeg { Space = "cabin", LengthM = 11.5 }, new RunLeg { Way = "through", LengthM = 0.5 }] });
        Assert.Equal(isMended, Mend(boat, [Twin(2.5, 2), Twin(4, 3), Twin(6, 4)]).Set is not null);
    }

    [Theory]
    [InlineData(1, MendAim.Cost)]
    [InlineData(2, MendAim.Cost)]
    [InlineData(3, MendAim.Mass)]
    public void RandomBoats_BestSet_IsThatOfTryingEverySet(int seed, MendAim aim)
    {
        Random random = new(seed);
        int mended = 0;
        for (int k = 0; k < 8; k++)
        {
            BoatModel boat = Random(random);
            CataloguePart[] parts = [.. Cables.Concat(Fuses).Where(_ => random.Next(4) > 0).Select(part => Priced(part, random))];
            MendResult result = Mend(boat, aim, parts);
            double? best = LeastByTrying(boat, aim, parts);
            mended += result.Set?.Changes.Length > 0 ? 1 : 0;
            Assert.Equal(best is null, result.Set is null && result.Outcome != MendOutcome.NothingFails);
            if (best is { } least && result.Set is { } set)
            {
                Assert.True(result.IsProved);
                Assert.Equal(least, aim == MendAim.Cost ? set.Cost.PriceMoney : set.Cost.AddedKg, 6);
                Assert.True(IsMended(set.Boat, boat));
            }
        }

        Assert.True(mended > 2, "too few of the boats have anything to mend");
    }

    [Theory]
    [InlineData(4)]
    public void RandomBoats_LargerCatalogue_NeverCostsMore(int seed)
    {
        Random random = new(seed);
        for (int k = 0; k < 10; k++)
        {
            BoatModel boat = Random(random);
            CataloguePart[] few = [.. Cables.Concat(Fuses).Where(_ => random.Next(2) > 0)];
            // With fewer parts there may be findings that nothing clears, and the set is without them.
            if (Mend(boat, few) is { Set: { } dear, Beyond.IsEmpty: true })
            {
                Assert.True(Mend(boat, Cables.Concat(Fuses)).Set!.Cost.PriceMoney <= dear.Cost.PriceMoney + 1e-9);
            }
        }
    }

    [Fact]
    public void Stock_ThatServes_IsTakenAndCostsNothing()
    {
        BoatModel boat = Lamp(areaMm2: 1, lengthM: 12, fuseA: 7.5).With(Reel(lengthM: 20));
        MendSet set = Mend(boat, Cables.Concat(Fuses)).Set!;
        MendChange change = Assert.Single(set.Changes, change => change.CatalogueId == "twin-60");
        Assert.Equal(["reel"], change.StockIds);
        Assert.Equal(0, set.Cost.PriceMoney);
    }

    [Fact]
    public void Stock_TooShort_IsNotTaken()
    {
        // 12 m, two tails of 0.15 m and a loop of 0.2 m: 12.5 m.
        Assert.Equal(0, Mend(Lamp(areaMm2: 1, lengthM: 12, fuseA: 7.5).With(Reel(lengthM: 12.5)), [Twin(6, 3.9)]).Set!.Cost.PriceMoney);
        MendSet bought = Mend(Lamp(areaMm2: 1, lengthM: 12, fuseA: 7.5).With(Reel(lengthM: 12.4)), [Twin(6, 3.9)]).Set!;
        Assert.Equal(12.5 * 3.9, bought.Cost.PriceMoney, 6);
        Assert.Empty(Assert.Single(bought.Changes).StockIds);
    }

    [Fact]
    public void SameRequest_IsAnsweredAlike()
    {
        BoatModel boat = Lamp(runningA: 9, areaMm2: 1, lengthM: 10, breakingA: 500);
        MendResult first = Mend(boat, Cables.Concat(Fuses)), second = Mend(boat, Cables.Concat(Fuses).Reverse());
        Assert.True(first.Set!.Changes.Length > 1);
        Assert.Equal(first.Set.Boat, second.Set!.Boat);
        Assert.Equal((first.ReviewedCount, first.SetCount), (second.ReviewedCount, second.SetCount));
    }

    [Fact]
    public void NothingThatClears_IsRefusedAndNamesWhatStands()
    {
        MendResult result = Mend(Lamp(breakingA: 100), [Fuse(10, 1, 300), .. Cables]);
        Assert.Equal((MendOutcome.NotCleared, true), (result.Outcome, result.Set is null));
        Assert.Equal(("breaking-capacity", "fuse"), Assert.Single(result.Beyond.Select(finding => (finding.CheckId, finding.SubjectId))));
    }

    [Fact]
    public void OneThatNothingClears_LeavesTheOthersToBeMended()
    {
        MendResult result = Mend(Lamp(areaMm2: 1, lengthM: 12, fuseA: 7.5, breakingA: 100), Cables);
        Assert.Equal(MendOutcome.Cleared, result.Outcome);
        Assert.Equal("breaking-capacity", Assert.Single(result.Beyond).CheckId);
        Assert.DoesNotContain(Verdicts(result.Set!.Boat), finding => finding.Value == Verdict.Fails && finding.Key.Item1 != "breaking-capacity");
    }

    [Fact]
    public void NothingFails_NothingIsProposed() => Assert.Equal((MendOutcome.NothingFails, null), (Mend(Lamp(), Cables).Outcome, Mend(Lamp(), Cables).Set));

    [Fact]
    public void PartWithoutAPrice_IsNotBought() =>
        Assert.Equal(MendOutcome.NotCleared, Mend(Lamp(areaMm2: 1, lengthM: 12, fuseA: 7.5), [Twin(6, 1) with { PriceMoneyPerM = null }]).Outcome);

    [Fact]
    public void Limit_OnReviews_EndsTheSearchAndSaysSo()
    {
        MendResult result = Mender.Find(Request(Lamp(runningA: 9, areaMm2: 1, lengthM: 10, breakingA: 500), Cables.Concat(Fuses)) with { MostReviewCount = 2 }, null, TestContext.Current.CancellationToken);
        Assert.Equal((MendOutcome.NotFound, false), (result.Outcome, result.IsProved));
        Assert.NotNull(result.LeastMoney);
    }

    [Fact]
    public void Stopped_KeepsTheBestFoundUntilThen()
    {
        using CancellationTokenSource stop = new();
        BoatModel boat = Lamp(runningA: 9, areaMm2: 1, lengthM: 10, breakingA: 500);
        StopsWhenFound told = new(stop);
        MendResult result = Mender.Find(Request(boat, Cables.Concat(Fuses)), told, stop.Token);

        Assert.True(stop.IsCancellationRequested);
        Assert.Equal((MendOutcome.Cleared, true), (result.Outcome, result.IsStopped));
        Assert.True(IsMended(result.Set!.Boat, boat));
        Assert.True(told.Last!.Least <= told.Last.Most);
        Assert.True(result.IsProved || result.LeastMoney <= result.Set.Cost.PriceMoney);
    }

    private sealed class StopsWhenFound(CancellationTokenSource stop) : IProgress<MendProgress>
    {
        public MendProgress? Last { get; private set; }

        public void Report(MendProgress value)
        {
            Last = value;
            if (value.HasFound)
            {
                stop.Cancel();
            }
        }
    }

    // A reel is of a part by what is known of it: 60 °C is not the 90 °C of the part it names.
    [Fact]
    public void Stock_KnownToBeAnother_IsNotTaken()
    {
        BoatModel boat = Lamp(areaMm2: 1, lengthM: 12, fuseA: 7.5);
        Assert.NotEqual(0, Mend(boat.With(Reel(20) with { InsulationC = 60 }), [Twin(6, 3.9)]).Set!.Cost.PriceMoney);
        Assert.Equal(0, Mend(boat.With(Reel(20) with { Catalogue = null, CoreCount = 2, InsulationC = 90, Strands = StrandClass.FlexibleTinned5 }), [Twin(6, 3.9)]).Set!.Cost.PriceMoney);
        Assert.NotEqual(0, Mend(boat.With(Reel(20) with { Catalogue = null }), [Twin(6, 3.9)]).Set!.Cost.PriceMoney);
    }

    // 16 mm² does not go into the holder of a fuse of 7.5 A; where its sheet says that it does, it is proposed.
    [Fact]
    public void CableThickerThanItsTerminalsTake_IsNotProposed()
    {
        BoatModel boat = Lamp(areaMm2: 1, lengthM: 12, fuseA: 7.5);
        Assert.Null(Mend(boat, [Twin(16, 9)]).Set);
        BoatModel typed = boat.Change<Protection>("fuse", fuse => fuse with { TerminalMm2 = 16 }).Change<ElectricLoad>("lamp", lamp => lamp with { TerminalMm2 = 25 });
        Assert.NotNull(Mend(typed, [Twin(16, 9)]).Set);
        Assert.Null(Mend(typed.Change<ElectricLoad>("lamp", lamp => lamp with { TerminalMm2 = 10 }), [Twin(16, 9)]).Set);
    }

    [Theory]
    [InlineData(20.0, 10)]
    [InlineData(30.0, 10)]
    [InlineData(31.0, 16)]
    [InlineData(301.0, double.PositiveInfinity)]
    [InlineData(null, double.PositiveInfinity)]
    [InlineData(double.NaN, double.PositiveInfinity)]
    public void Terminals_AtARating_TakeWhatIsCommon(double? ratedA, double mostMm2) => Assert.Equal(mostMm2, TerminalSizes.AtRatingMm2(ratedA));

    [Fact]
    public void Proposals_EachClearTheFindingAlone()
    {
        BoatModel boat = Lamp(areaMm2: 1, lengthM: 12, fuseA: 7.5);
        var sets = Mender.Proposals(Request(boat, Cables) with { Only = [("voltage-drop", "lamp")] }, null, TestContext.Current.CancellationToken).Sets;
        Assert.NotEmpty(sets);
        Assert.All(sets, set =>
        {
            Assert.Single(set.Changes);
            Assert.NotEqual(Verdict.Fails, Verdicts(set.Boat)[("voltage-drop", "lamp")]);
        });
        Assert.Equal(sets.Select(set => set.Cost.PriceMoney).Order(), sets.Select(set => set.Cost.PriceMoney));
    }

    private static StockItem Reel(double lengthM) => new() { Id = "reel", Use = StockUse.Cable, AreaMm2 = 6, LengthM = lengthM, Catalogue = "twin-60" };

    private static BoatModel Random(Random random) => Lamp(
        runningA: random.Next(2, 14), areaMm2: new[] { 1, 1.5, 2.5, 4 }[random.Next(4)], lengthM: random.Next(2, 14), fuseA: new[] { 7.5, 10, 15, 20 }[random.Next(4)], breakingA: new[] { 300, 2000 }[random.Next(2)]);

    private static CataloguePart Priced(CataloguePart part, Random random) => part.Use == CatalogueUse.Cable
        ? part with { PriceMoneyPerM = random.Next(1, 60) / 10.0 }
        : part with { PriceMoney = random.Next(1, 60) / 10.0 };

    // Every cable with every fuse, each judged by a review of its own.
    private static double? LeastByTrying(BoatModel boat, MendAim aim, CataloguePart[] parts)
    {
        Cable cable = boat.Find<Cable>("lamp-cable")!;
        Protection fuse = boat.Find<Protection>("fuse")!;
        double? least = null;
        foreach (CataloguePart? size in parts.Where(part => part.Use == CatalogueUse.Cable && part.AreaMm2!.Value > cable.AreaMm2.Value).Prepend(null))
        {
            foreach (CataloguePart? rating in parts.Where(part => part.Use == CatalogueUse.Fuse && part.RatedA!.Value <= 4 * fuse.RatedA.Value).Prepend(null))
            {
                BoatModel tried = Exchanged(boat, size, rating);
                double cost = aim == MendAim.Cost
                    ? ((size?.PriceMoneyPerM?.Value ?? 0) * Cut.CutM(cable.LengthM!.Value, null)) + (rating?.PriceMoney?.Value ?? 0)
                    : ((size?.MassKgPerM?.Value ?? 0) * cable.LengthM!.Value) + (rating?.MassKg?.Value ?? 0);
                least = IsMended(tried, boat) && !(cost >= least) ? cost : least;
            }
        }

        return least;
    }
}
