using Orlop.Boat;
using Orlop.Boat.Things;
using Orlop.Boat.Values;
using Orlop.Review.Findings;
using Xunit;

namespace Orlop.Review.Tests.Electrics.Checks;

/// <summary>Whether a bolted link reaches, by the theorem of Pythagoras on whole-number triangles; 0.15 m is common practice, no source.</summary>
public sealed class LinkReachCheckTests
{
    private const string Check = "link-reaches";

    // Two bars as points, so far apart along x and y.
    private static BoatModel Bars(double xM, double yM, BoxSize? size = null, double? lengthM = null) => SmallBoat.OneLamp().With(
        new Busbar { Id = "one", RatedA = 100, Place = new Place(1, 0, 1), Size = size },
        new Busbar { Id = "other", RatedA = 100, Place = new Place(1 + xM, yM, 1) },
        new Link { Id = "bolt", From = new Terminal("one", "bar"), To = new Terminal("other", "bar"), LengthM = lengthM is { } length ? new Quantity(length, Knowledge.Estimated) : null });

    // 0.09 and 0.12 make 0.15; 0.3 and 0.4 make 0.5.
    [Theory]
    [InlineData(0.09, 0.119, null, false)]
    [InlineData(0.09, 0.121, null, true)]
    [InlineData(0.3, 0.4, null, true)]
    [InlineData(0.3, 0.4, 0.05, true)]
    [InlineData(0.3, 0.4, 0.501, false)]
    public void FartherThanAStrapBridges_AndNotGivenAsLong_IsUnknown(double xM, double yM, double? lengthM, bool isFound)
    {
        Finding[] found = [.. Found(Bars(xM, yM, null, lengthM))];
        Assert.Equal(isFound, found.Length == 1);
        Assert.All(found, finding => Assert.Equal((Verdict.Unknown, "bolt"), (finding.Verdict, finding.SubjectId)));
        Assert.All(found, finding => Assert.Equal(Math.Sqrt((xM * xM) + (yM * yM)), finding.Working.Single(line => line.What == "Straight between them").Value!.Value, 1e-12));
    }

    // A box of 0.6 m by 0.8 m about its centre reaches as far as the other.
    [Fact]
    public void BoxThatReachesTheOther_IsNotFound() => Assert.Empty(Found(Bars(0.3, 0.4, new BoxSize(0.6, 0.8, 0.1))));

    [Fact]
    public void PlaceNotGiven_SaysNothing() => Assert.Empty(Found(Bars(0.3, 0.4).Change<Busbar>("other", bar => bar with { Place = null })));

    [Fact]
    public void DemoBoat_HasNoLinkThatDoesNotReach() => Assert.Empty(Found(ExampleBoats.Read("sandgrouse")));

    private static IEnumerable<Finding> Found(BoatModel boat) => new ReviewEngine([new Review.Electrics.ElectricsDiscipline()]).Review(boat, TestContext.Current.CancellationToken)
        .Findings.Select(pair => pair.Shown).Where(finding => finding.CheckId == Check);
}
