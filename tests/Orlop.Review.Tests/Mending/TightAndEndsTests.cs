using Orlop.Boat;
using Orlop.Boat.Things;
using Orlop.Boat.Values;
using Orlop.Review.Findings;
using Orlop.Review.Mending;
using Xunit;
using static Orlop.Review.Tests.Mending.MendBoats;

namespace Orlop.Review.Tests.Mending;

/// <summary>What is tight, a fuse for a breaker, and what is crimped on.</summary>
public sealed class TightAndEndsTests
{
    private static readonly CataloguePart[] Cables = [Twin(1.5, 1), Twin(2.5, 1.7), Twin(4, 2.4), Twin(6, 3.9), Twin(10, 6.2)];
    private static readonly CataloguePart[] Fuses = [Fuse(7.5, 2, 1000), Fuse(10, 2.5, 1000), Fuse(15, 3), Fuse(20, 3.5)];

    private static CataloguePart Breaker(double ratedA, double price, double breakingA = 5000) => new()
    {
        Id = FormattableString.Invariant($"breaker-{ratedA * 10:0}"),
        Use = CatalogueUse.Breaker,
        RatedA = ratedA,
        RatedV = 60,
        BreakingA = breakingA,
        Gates = "breaker-c",
        ResistanceOhm = 0.06 / ratedA,
        MassKg = 0.13,
        PriceMoney = price,
    };

    /// <summary>Every set of these choices is tried by the test itself: what is least of those that leave nothing tight of what was asked, and nothing newly tight.</summary>
    [Theory]
    [InlineData(1)]
    [InlineData(2)]
    public void RandomBoats_TightToo_IsThatOfTryingEverySet(int seed)
    {
        Random random = new(seed);
        int mended = 0, dearer = 0;
        for (int k = 0; k < 8; k++)
        {
            BoatModel boat = Lamp(runningA: 2 + (6 * random.NextDouble()), areaMm2: 1.5, lengthM: 2 + (8 * random.NextDouble()), fuseA: 15, breakingA: random.Next(2) == 0 ? 5000 : 1000);
            CataloguePart[] parts = [.. Cables.Concat(Fuses)];
            MendResult result = Mender.Find(Request(boat, parts) with { IsTightToo = true }, null, TestContext.Current.CancellationToken);
            if (result.Set is not { } set || result.Outcome != MendOutcome.Cleared)
            {
                continue;
            }

            var held = result.Targets.Where(target => !result.Beyond.Contains(target)).Select(target => (target.CheckId, target.SubjectId)).ToHashSet();
            double? least = LeastByTrying(boat, parts, held, [.. result.Beyond.Select(finding => (finding.CheckId, finding.SubjectId))]);
            Assert.Equal(least!.Value, set.Cost.PriceMoney, 6);
            Assert.True(result.IsProved);
            mended += set.Changes.Length > 0 ? 1 : 0;
            dearer += Mend(boat, parts).Set is not { } lax || lax.Cost.PriceMoney < set.Cost.PriceMoney - 1e-9 ? 1 : 0;
        }

        Assert.True(mended > 1 && dearer > 0, $"{mended} mended, {dearer} dearer than without what is tight");
    }

    [Fact]
    public void OneTightFinding_Proposals_MakeItHold()
    {
        BoatModel boat = TightDrop();
        (string, string) tight = Assert.Single(Verdicts(boat), finding => finding.Key.Item1 == "voltage-drop" && finding.Value == Verdict.Tight).Key;
        var sets = Mender.Proposals(Request(boat, Cables) with { IsTightToo = true, Only = [tight] }, null, TestContext.Current.CancellationToken).Sets;
        Assert.NotEmpty(sets);
        Assert.All(sets, set => Assert.Equal(Verdict.Holds, Verdicts(set.Boat)[tight]));
        Assert.Equal(MendOutcome.NothingFails, Mend(boat, Cables).Outcome);
    }

    [Fact]
    public void TightThatNothingMakesHold_IsBeyond_AndTheRestIsMended()
    {
        MendResult result = Mender.Find(Request(TightDrop().Change<Protection>("fuse", fuse => fuse with { BreakingA = 100 }), [Fuse(10, 1)]) with { IsTightToo = true }, null, TestContext.Current.CancellationToken);
        Assert.Equal(MendOutcome.Cleared, result.Outcome);
        Assert.Contains(result.Beyond, finding => finding is { CheckId: "voltage-drop", Verdict: Verdict.Tight });
        Assert.NotEqual(Verdict.Fails, Verdicts(result.Set!.Boat)[("breaking-capacity", "fuse")]);
    }

    [Fact]
    public void BreakingCapacity_NoFuseIsStrongEnough_ABreakerIs_AndTheOtherWayRound()
    {
        BoatModel weak = Lamp(breakingA: 100);
        MendSet set = Mend(weak, [Fuse(10, 1, 300), Breaker(10, 20)]).Set!;
        Assert.Equal("breaker-100", Assert.Single(set.Changes).CatalogueId);
        Assert.Equal(ProtectionMeans.Breaker, set.Boat.Find<Protection>("fuse")!.Means);
        Assert.True(IsMended(set.Boat, weak));

        BoatModel breaker = weak.Change<Protection>("fuse", fuse => fuse with { Means = ProtectionMeans.Breaker, Gates = "breaker-c" });
        MendSet back = Mend(breaker, [Fuse(10, 1), Breaker(10, 20, 300)]).Set!;
        Assert.Equal(ProtectionMeans.Fuse, back.Boat.Find<Protection>("fuse")!.Means);
        // A breaker of two poles is not what stands there.
        Assert.Null(Mend(weak, [Breaker(10, 20) with { IsTwoPole = true }]).Set);
    }

    [Fact]
    public void MadeDeadByPullingAFuse_TightToo_ABreakerIsPutThere()
    {
        BoatModel boat = Lamp();
        (string, string) dead = ("can-be-made-dead", "lamp");
        Assert.Equal(Verdict.Tight, Verdicts(boat)[dead]);
        MendSet set = Assert.Single(Mender.Proposals(Request(boat, [Breaker(10, 20), Fuse(15, 1)]) with { IsTightToo = true, Only = [dead] }, null, TestContext.Current.CancellationToken).Sets);
        Assert.Equal("breaker-100", Assert.Single(set.Changes).CatalogueId);
        Assert.Equal(Verdict.Holds, Verdicts(set.Boat)[dead]);
    }

    [Fact]
    public void WrongLug_IsMadeOffAnew()
    {
        BoatModel boat = Lugged(Lamp(), lugMm2: 6);
        Assert.Equal(Verdict.Fails, Verdicts(boat)[("lug-fits-cable", "lamp-cable")]);
        MendSet set = Mend(boat, Cables).Set!;
        Assert.Equal(0, set.Cost.PriceMoney);
        Assert.All(set.Boat.Find<Cable>("lamp-cable")!.Cores, core => Assert.Equal(2.5, core.FromEnd!.LugMm2));
        Assert.True(IsMended(set.Boat, boat));
    }

    /// <summary>A lug belongs to its conductor: a thicker cable comes with lugs for it, and is not refused for the old ones.</summary>
    [Fact]
    public void ThickerCable_ComesWithLugsForIt()
    {
        BoatModel boat = Lugged(Lamp(areaMm2: 1, lengthM: 12, fuseA: 7.5), lugMm2: 1);
        MendSet set = Mend(boat, Cables.Concat(Fuses)).Set!;
        Cable cable = set.Boat.Find<Cable>("lamp-cable")!;
        Assert.True(cable.AreaMm2.Value > 1);
        Assert.All(cable.Cores, core => Assert.Equal(cable.AreaMm2.Value, core.FromEnd!.LugMm2));
        Assert.True(IsMended(set.Boat, boat));
    }

    [Fact]
    public void RingForAnotherThread_IsMadeOffAnew()
    {
        BoatModel boat = Lugged(Lamp(), lugMm2: 2.5, studMm: 6);
        Terminal at = boat.Find<Cable>("lamp-cable")!.Cores[0].From;
        boat = boat.WithThings(boat.Things.Select(thing => thing is Part part && part.Id == at.Part ? part with { Studs = [new Stud(at.Name, 8)] } : thing));
        Assert.Equal(Verdict.Fails, Verdicts(boat)[("ring-fits-stud", at.ToString())]);
        MendSet set = Mend(boat, []).Set!;
        Assert.Equal(8, set.Boat.Find<Cable>("lamp-cable")!.Cores[0].FromEnd!.StudMm);
        Assert.True(IsMended(set.Boat, boat));
    }

    private static BoatModel Lugged(BoatModel boat, double lugMm2, double? studMm = null) => boat.Change<Cable>("lamp-cable", cable => cable with
    {
        Cores = cable.Cores.Select(core => core with { FromEnd = new Termination(TerminationMeans.Ring, StudMm: studMm, LugMm2: lugMm2) }).ToValueList(),
    });

    // The longest cable by half metres whose loss is tight and nothing fails.
    private static BoatModel TightDrop() => Enumerable.Range(4, 60).Select(half => Lamp(lengthM: half / 2.0, fuseA: 15))
        .First(boat => Verdicts(boat) is var of && of.Any(finding => finding.Key.Item1 == "voltage-drop" && finding.Value == Verdict.Tight) && of.All(finding => finding.Value != Verdict.Fails));

    // The cable as it is or another, the fuse as it is or another.
    private static double? LeastByTrying(BoatModel boat, CataloguePart[] parts, HashSet<(string, string)> held, HashSet<(string, string)> given)
    {
        var was = Verdicts(boat);
        double? least = null;
        foreach (CataloguePart? cable in parts.Where(part => part.Use == CatalogueUse.Cable).Prepend(null))
        {
            foreach (CataloguePart? fuse in parts.Where(part => part.Use == CatalogueUse.Fuse).Prepend(null))
            {
                double price = ((cable?.PriceMoneyPerM?.Value ?? 0) * Cut.CutM(boat.Find<Cable>("lamp-cable")!.LengthM!.Value, null)) + (fuse?.PriceMoney?.Value ?? 0);
                bool isGood = Verdicts(Exchanged(boat, cable, fuse)).All(finding => given.Contains(finding.Key) || finding.Value switch
                {
                    Verdict.Fails => false,
                    Verdict.Unknown => was.GetValueOrDefault(finding.Key, Verdict.Holds) == Verdict.Unknown && !held.Contains(finding.Key),
                    Verdict.Tight => !held.Contains(finding.Key) && was.TryGetValue(finding.Key, out Verdict before) && before != Verdict.Holds,
                    _ => true,
                });
                least = isGood && !(least <= price) ? price : least;
            }
        }

        return least;
    }
}
