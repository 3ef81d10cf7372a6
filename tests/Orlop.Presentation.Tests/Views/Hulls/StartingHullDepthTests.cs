using Orlop.Hull.Surfaces;
using Orlop.Presentation.Views.Hulls;
using Xunit;

namespace Orlop.Presentation.Tests.Views.Hulls;

public sealed class StartingHullDepthTests
{
    // A depth typed as 10 m is the height of the deck edge at the stations that the hint names, within a hundredth.
    [Theory]
    [InlineData(StartingShape.FlatBottom)]
    [InlineData(StartingShape.SingleChine)]
    [InlineData(StartingShape.RoundBilge)]
    [InlineData(StartingShape.DoubleEnder)]
    public void Depth_IsThatOfTheStationsWhichTheHintNames(StartingShape shape)
    {
        Assert.Contains("at 40 to 50 % of her length", StartingHull.DepthHint, StringComparison.Ordinal);
        HullSection[] amidships = [.. StartingForm.Create("form", shape, 10, 10, 10).Sections.Where(section => section.Points[0].XM is >= 4 and <= 5)];
        Assert.Equal(2, amidships.Length);
        Assert.All(amidships, section => Assert.Equal(10, section.Points[^1].HeightM, 0.1));
    }
}
