using Orlop.Boat.Topology;
using Xunit;

namespace Orlop.Boat.Tests.Topology;

public sealed class KeyingWordsTests
{
    [Theory]
    [InlineData("two-pole 120 A housing, red", "Two-pole 120A housing red")]
    [InlineData("CEE 16 A", "cee-16a")]
    public void OtherSpelling_IsTheSame(string one, string other)
    {
        Assert.True(KeyingWords.AreSame(one, other));
        Assert.False(KeyingWords.MayBeSame(one, other));
    }

    [Theory]
    [InlineData("two-pole 120 A housing, red", "two-pole 120 A housng, red")]
    [InlineData("two-pole 120 A housing, red", "two-pole 120 A housing, rde")]
    public void SlipOfThePen_MayBeTheSame(string one, string other)
    {
        Assert.False(KeyingWords.AreSame(one, other));
        Assert.True(KeyingWords.MayBeSame(one, other));
        Assert.True(KeyingWords.MayBeSame(other, one));
    }

    [Theory]
    [InlineData("two-pole 120 A housing, red", "two-pole 50 A housing, red")]
    [InlineData("two-pole 120 A housing, red", "two-pole 120 A housing, grey")]
    [InlineData("housing of type A", "housing of type B")]
    [InlineData("red", "rod")]
    [InlineData("red", null)]
    public void AnotherKey_IsNeither(string one, string? other)
    {
        Assert.False(KeyingWords.AreSame(one, other));
        Assert.False(KeyingWords.MayBeSame(one, other));
    }
}
