using Orlop.Electrics.Protection;
using Xunit;

namespace Orlop.Electrics.Tests.Protection;

/// <summary>
/// What can feed a piece of metal, against sums by hand (Kirchhoff's current law: what flows in is the sum over any closed boundary) and against trying
/// every set of devices. Piece 0 carries the battery unless said.
/// </summary>
public sealed class GreatestFeedTests
{
    private static readonly FeedSource Battery = new("bank", 0, double.PositiveInfinity);

    [Fact]
    public void NothingReachesIt() => Assert.Equal(0, GreatestFeed.Of(2, [], [Battery], 1).MostA);

    [Fact]
    public void BatteryOnIt_IsUnlimited()
    {
        FeedLimit feed = GreatestFeed.Of(2, [Device("f", 0, 1, 100)], [Battery], 0);
        Assert.Equal(double.PositiveInfinity, feed.MostA);
        Assert.Equal("bank", Assert.Single(feed.LimitedBy).Id);
    }

    [Fact]
    public void InSeries_TheSmallestLimits()
    {
        FeedLimit feed = GreatestFeed.Of(3, [Device("main", 0, 1, 200), Device("branch", 1, 2, 30)], [Battery], 2);
        Assert.Equal(30, feed.MostA);
        Assert.Equal("branch", Assert.Single(feed.LimitedBy).Id);
    }

    [Fact]
    public void SideBySide_TheyCountTogether()
    {
        FeedLimit feed = GreatestFeed.Of(2, [Device("one", 0, 1, 100), Device("two", 0, 1, 100)], [Battery], 1);
        Assert.Equal(200, feed.MostA);
        Assert.True(feed.IsKnown);
        Assert.Equal(["one", "two"], feed.LimitedBy.Select(part => part.Id));
    }

    [Fact]
    public void SideBySideBehindASmallerMain_TheMainLimits() =>
        Assert.Equal("main", Assert.Single(GreatestFeed.Of(3, [Device("main", 0, 1, 150), Device("one", 1, 2, 100), Device("two", 1, 2, 100)], [Battery], 2).LimitedBy).Id);

    // A ring of three 50 A breakers: two ways into each piece.
    [Fact]
    public void Ring_BothWaysCount() =>
        Assert.Equal(100, GreatestFeed.Of(3, [Device("a", 0, 1, 50), Device("b", 1, 2, 50), Device("c", 2, 0, 50)], [Battery], 1).MostA);

    [Fact]
    public void ChargerBesideAFuse_AddsItsOwnLimit() =>
        Assert.Equal(130, GreatestFeed.Of(2, [Device("f", 0, 1, 100)], [Battery, new FeedSource("charger", 1, 30)], 1).MostA);

    [Fact]
    public void UnknownRatingOnTheWay_IsUnknown()
    {
        FeedLimit feed = GreatestFeed.Of(2, [Device("one", 0, 1, 100), Device("two", 0, 1, null)], [Battery], 1);
        Assert.False(feed.IsKnown);
        Assert.Equal((100, double.PositiveInfinity), (feed.LeastA, feed.MostA));
    }

    [Fact]
    public void UnknownRatingBehindASmallerOne_LeavesTheGreatestKnown()
    {
        FeedLimit feed = GreatestFeed.Of(3, [Device("main", 0, 1, null), Device("branch", 1, 2, 30)], [Battery], 2);
        Assert.Equal((0, 30), (feed.LeastA, feed.MostA));
    }

    [Theory]
    [InlineData(0)]
    [InlineData(-5)]
    [InlineData(double.NaN)]
    public void ImpossibleRating_IsRefusedByName(double ratedA)
    {
        var refused = Assert.Throws<ArgumentOutOfRangeException>(() => GreatestFeed.Of(2, [Device("fuse", 0, 1, ratedA)], [Battery], 1));
        Assert.Contains("fuse", refused.Message, StringComparison.Ordinal);
    }

    public static TheoryData<int> Seeds { get; } = [.. Enumerable.Range(0, 300)];

    [Theory, MemberData(nameof(Seeds))]
    public void IsTheLeastOverEverySetOfDevices(int seed)
    {
        Random random = new(seed);
        const int pieceCount = 5;
        FeedDevice[] devices = [.. Enumerable.Range(0, 3 + random.Next(6)).Select(k => Device($"d{k}", random.Next(pieceCount), random.Next(pieceCount), 0.1 * (1 + random.Next(900))))];
        FeedSource[] sources = [Battery, new("bank-2", random.Next(pieceCount), double.PositiveInfinity), new("charger", random.Next(pieceCount), 7.3)];
        int piece = random.Next(pieceCount);
        FeedLimit feed = GreatestFeed.Of(pieceCount, devices, sources, piece);
        Assert.Equal(ByTryingEverySet(devices, sources, piece), feed.MostA, 1e-5);
    }

    private static double ByTryingEverySet(FeedDevice[] devices, FeedSource[] sources, int piece)
    {
        double least = double.PositiveInfinity;
        for (int set = 0; set < 1 << devices.Length; set++)
        {
            HashSet<int> joined = [piece];
            for (int round = 0; round < devices.Length; round++)
            {
                foreach (FeedDevice device in devices.Where((device, k) => (set >> k & 1) == 0 && (joined.Contains(device.A) || joined.Contains(device.B))))
                {
                    joined.Add(device.A);
                    joined.Add(device.B);
                }
            }

            least = Math.Min(least, devices.Where((_, k) => (set >> k & 1) == 1).Sum(device => device.RatedA!.Value)
                + sources.Where(source => joined.Contains(source.At)).Sum(source => source.LimitA!.Value));
        }

        return least;
    }

    private static FeedDevice Device(string id, int a, int b, double? ratedA) => new(id, a, b, ratedA);
}
