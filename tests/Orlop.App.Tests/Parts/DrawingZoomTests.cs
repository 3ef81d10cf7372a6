using Orlop.App.Parts;
using Xunit;

namespace Orlop.App.Tests.Parts;

public sealed class DrawingZoomTests
{
    [Fact]
    public void Grown_GoesThroughTheStepsAndStopsAtTheLargest()
    {
        DrawingZoom zoom = new(1, 1);
        List<double> factors = [];
        while (zoom.CanGrow && factors.Count < 20)
        {
            zoom = zoom.Grown();
            factors.Add(zoom.Factor);
        }

        Assert.Equal([1.5, 2, 3, 4, 6], factors);
        Assert.Equal(zoom, zoom.Grown());
    }

    [Theory]
    [InlineData(1, 1, 1)] // the boat never becomes narrower than its room
    [InlineData(1.5, 1, 1)]
    [InlineData(1, 0.42, 0.7)]
    [InlineData(0.5, 0.42, 0.42)]
    [InlineData(0.42, 0.42, 0.42)]
    public void Shrunk_EndsWhereTheWholeWidthIsSeen(double factor, double least, double expected) =>
        Assert.Equal(expected, new DrawingZoom(factor, least).Shrunk().Factor);

    [Fact]
    public void FromAFit_TheNextStepIsARoundOne() => Assert.Equal(0.5, new DrawingZoom(0.42, 0.42).Grown().Factor);

    [Theory]
    [InlineData(1, 1, false, true)]
    [InlineData(6, 1, true, false)]
    public void Ends_AreKnown(double factor, double least, bool canShrink, bool canGrow) =>
        Assert.Equal((canShrink, canGrow), (new DrawingZoom(factor, least).CanShrink, new DrawingZoom(factor, least).CanGrow));
}
