using Orlop.Boat;
using Orlop.Boat.Things;
using Orlop.Review.Findings;
using Orlop.Review.Mending;
using Xunit;
using static Orlop.Review.Tests.Mending.MendBoats;

namespace Orlop.Review.Tests.Mending;

/// <summary>What a proposal says of names, and which are not worth showing.</summary>
public sealed class ProposalTests
{
    [Theory]
    [InlineData(ProtectionMeans.Fuse, "Fuse of the lamp", "Breaker of the lamp")]
    [InlineData(ProtectionMeans.Fuse, "fuse, lamp", "breaker, lamp")]
    [InlineData(ProtectionMeans.Fuse, "Fused lamp", "Fused lamp")]
    [InlineData(ProtectionMeans.Fuse, "Lamp fuse", "Lamp breaker")]
    [InlineData(ProtectionMeans.Breaker, "Breaker 3", "Fuse 3")]
    [InlineData(ProtectionMeans.Fuse, "Lamp", "Lamp")]
    public void DeviceOfTheOtherKind_HasNoFalseName(ProtectionMeans was, string name, string becomes)
    {
        BoatModel boat = Lamp(breakingA: 100).Change<Protection>("fuse", fuse => fuse with { Name = name, Means = was, Gates = was == ProtectionMeans.Fuse ? fuse.Gates : "breaker-c" });
        CataloguePart breaker = Fuse(10, 5) with { Id = "breaker", Use = CatalogueUse.Breaker, Gates = "breaker-c" };
        MendSet set = Mend(boat, [was == ProtectionMeans.Fuse ? breaker : Fuse(10, 5)]).Set!;
        Assert.Equal(becomes, set.Boat.Find<Protection>("fuse")!.Name);
        Assert.Contains(name == becomes ? "its name stays" : becomes, Assert.Single(set.Changes).What.ToString(), StringComparison.Ordinal);
    }

    [Fact]
    public void ProposalsThatAreNoBetterThanACheaperOne_AreNotShown()
    {
        BoatModel boat = Lamp(areaMm2: 1, lengthM: 12, fuseA: 7.5);
        var sets = Mender.Proposals(Request(boat, [Twin(2.5, 1), Twin(4, 2), Twin(6, 3), Twin(10, 5)]) with { Only = [("voltage-drop", "lamp")] }, null, TestContext.Current.CancellationToken).Sets;
        Assert.NotEmpty(sets);
        for (int later = 1; later < sets.Length; later++)
        {
            Assert.All(sets.Take(later), cheaper => Assert.Contains(Verdicts(sets[later].Boat), finding => RankOf(finding.Value) < RankOf(Verdicts(cheaper.Boat).GetValueOrDefault(finding.Key, Verdict.Holds))));
        }
    }

    private static int RankOf(Verdict verdict) => verdict switch { Verdict.Holds => 0, Verdict.Tight => 1, Verdict.Unknown => 2, _ => 3 };
}
