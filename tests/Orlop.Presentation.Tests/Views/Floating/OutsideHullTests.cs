using System.Globalization;
using Orlop.Boat.Things;
using Orlop.Hull.Surfaces;
using Orlop.Presentation.Quantities;
using Orlop.Presentation.Views.Floating;
using Xunit;

namespace Orlop.Presentation.Tests.Views.Floating;

/// <summary>A box of a hull, 10 m by 3 m by 1 m: what of another box lies outside is told by its sides alone.</summary>
public sealed class OutsideHullTests
{
    private static readonly TriangleMesh Hull = Solids.Box(new(0, -1.5, 0), new(10, 1.5, 1));

    [Theory]
    [InlineData(5, 0, 0.5, 0)]
    [InlineData(5, 1.5, 0.5, 0.5)]
    [InlineData(5, -1.6, 0.5, 0.75)]
    [InlineData(10, 1.5, 0.5, 0.75)]
    [InlineData(5, 0, 0, 0.5)]
    [InlineData(5, 0, 2, 0)]
    [InlineData(5, 2.5, 2, 1)]
    [InlineData(5, 0, -2, 1)]
    public void Share_IsThatOfTheBoxesSides(double xM, double yM, double zM, double share)
    {
        Gear gear = new() { Id = "chest", Place = new(xM, yM, zM), Size = new(0.4, 0.4, 0.4) };
        Assert.Equal(share, OutsideHull.Of(Hull, gear, DisplayUnits.Metric, CultureInfo.GetCultureInfo("en"))?.ShareFraction ?? 0, 0.051);
    }

    [Fact]
    public void Words_SayHowMuch_AndWithoutASizeWhetherItIsOutside()
    {
        CultureInfo culture = CultureInfo.GetCultureInfo("en");
        Assert.StartsWith("About 50\u00A0% of it lies outside the hull at its height.", OutsideHull.Of(Hull, new Gear { Id = "chest", Place = new(5, 1.5, 0.5), Size = new(0.4, 0.4, 0.4) }, DisplayUnits.Metric, culture)!.Words, StringComparison.Ordinal);
        Assert.StartsWith("All of it lies outside", OutsideHull.Of(Hull, new Gear { Id = "lamp", Place = new(5, 2, 0.5) }, DisplayUnits.Metric, culture)!.Words, StringComparison.Ordinal);
        Assert.Null(OutsideHull.Of(Hull, new Gear { Id = "anywhere" }, DisplayUnits.Metric, culture));
    }
}
