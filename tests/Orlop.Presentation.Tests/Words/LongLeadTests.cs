using Orlop.Boat;
using Orlop.Boat.Things;
using Orlop.Boat.Values;
using Orlop.Presentation.Words;
using Xunit;

namespace Orlop.Presentation.Tests.Words;

/// <summary>Two probes reach 1.5 m (common practice, no source); what is further, or in another space, wants a long lead.</summary>
public sealed class LongLeadTests
{
    private static readonly BoatModel Boat = new()
    {
        Things =
        [
            new Space { Id = "after", Name = "After locker", Use = SpaceUse.Dry, From = new(0, -1, 0), To = new(2, 1, 1) },
            new Space { Id = "fore", Name = "Forepeak", Use = SpaceUse.Dry, From = new(6, -1, 0), To = new(8, 1, 1) },
            Bar("fuse-bar", "after", 1), Bar("near", "after", 2), Bar("far", "fore", 7), Bar("placeless", null, null), Bar("beyond", "after", 3),
        ],
    };

    [Theory]
    [InlineData("near", "")]
    [InlineData("placeless", "")]
    [InlineData("beyond", " A long lead is needed: the two points are about 2\u00A0m apart.")]
    [InlineData("far", " A long lead is needed: the two points are about 6\u00A0m apart, in after locker and forepeak.")]
    public void LongLead_BeyondTheReachOrInTwoSpaces(string other, string text) => Assert.Equal(text, new PartWords(Boat).LongLead("fuse-bar.bar", $"{other}.bar"));

    [Fact]
    public void NearerTo_OffersTheNearestOfThose()
    {
        PartWords words = new(Boat);
        Assert.Equal("near.bar", words.NearerTo("fuse-bar.bar", "far.bar", ["beyond.bar", "near.bar", "far.bar"]));
        Assert.Null(words.NearerTo("fuse-bar.bar", "near.bar", ["beyond.bar"]));
        Assert.Null(words.NearerTo("fuse-bar.bar", "far.bar", ["placeless.bar"]));
    }

    private static Busbar Bar(string id, string? space, double? xM) => new() { Id = id, Space = space, Place = xM is { } x ? new Place(x, 0, 0) : null };
}
