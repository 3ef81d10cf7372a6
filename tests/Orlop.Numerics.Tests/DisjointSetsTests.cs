using Xunit;

namespace Orlop.Numerics.Tests;

public sealed class DisjointSetsTests
{
    [Fact]
    public void Merge_ChainOfItems_MakesOneSetNamedByItsLowest()
    {
        var sets = new DisjointSets(6);
        Assert.True(sets.Merge(5, 4));
        Assert.True(sets.Merge(3, 4));
        Assert.False(sets.Merge(5, 3));
        Assert.All(new[] { 3, 4, 5 }, k => Assert.Equal(3, sets.Find(k)));
        Assert.All(new[] { 0, 1, 2 }, k => Assert.Equal(k, sets.Find(k)));
    }
}
