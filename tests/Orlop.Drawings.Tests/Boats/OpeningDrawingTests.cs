using System.Xml.Linq;
using Orlop.Boat;
using Orlop.Boat.Things;
using Orlop.Boat.Values;
using Orlop.Drawings.Boats;
using Xunit;

namespace Orlop.Drawings.Tests.Boats;

/// <summary>Openings on the drawing of a boat: to scale where their size is told, else a cross or a ring at their place.</summary>
public sealed class OpeningDrawingTests
{
    private static readonly BoatModel Boat = SampleBoats.Small.WithThings(
    [
        .. SampleBoats.Small.Things,
        new HullOpening { Id = "well", Name = "Well", Use = OpeningUse.Well, Place = new Place(3, 0.1, 1.5), ClearLengthM = 2, ClearBreadthM = 1.2 },
        new HullOpening { Id = "hatch", Name = "Hatch", Use = OpeningUse.Hatch, Place = new Place(5, 0.2, 1.6) },
        new HullOpening { Id = "drain", Name = "Drain", Use = OpeningUse.ThroughHull, Place = new Place(2, -0.5, 0.4) },
        new HullOpening { Id = "unplaced", Name = "Vent", Use = OpeningUse.Vent },
    ]);

    [Fact]
    public void Plan_WellWithItsSize_IsARectangleToScale_AtItsPlace()
    {
        XElement view = View("plan");
        XElement well = Shape(view, "well", "rect");
        double scale = view.Number("data-px-per-m"), middle = well.Number("x") + (well.Number("width") / 2);

        Assert.Equal(2 * scale, well.Number("width"), 0.1);
        Assert.Equal(1.2 * scale, well.Number("height"), 0.1);
        Assert.Equal(3, (middle - view.Number("data-x-origin")) / scale, 0.01);
    }

    [Theory]
    [InlineData("profile", "well", "path")]
    [InlineData("profile", "hatch", "path")]
    [InlineData("plan", "hatch", "path")]
    [InlineData("profile", "drain", "circle")]
    [InlineData("plan", "drain", "circle")]
    public void Opening_HasTheShapeOfWhatIsTold(string view, string id, string shape) => Assert.NotNull(Shape(View(view), id, shape));

    [Fact]
    public void LayerOff_OrNoPlace_DrawsNone()
    {
        Assert.DoesNotContain("unplaced", DrawnText.Parse(BoatDrawing.All(Boat, null, new BoatDrawingOptions())).Ids());
        Assert.Empty(DrawnText.Parse(BoatDrawing.All(Boat, null, new BoatDrawingOptions { ShowsOpenings = false })).Ids().Intersect(["well", "hatch", "drain"]));
    }

    private static XElement View(string kind) => DrawnText.Parse(BoatDrawing.All(Boat, null, new BoatDrawingOptions { IsInteractive = true }))
        .Descendants(DrawnText.Svg + "g").Single(group => ((string?)group.Attribute("class"))?.StartsWith($"view {kind}", StringComparison.Ordinal) == true);

    private static XElement Shape(XElement view, string id, string shape) => view.Descendants(DrawnText.Svg + "g").Single(group => (string?)group.Attribute("data-id") == id)
        .Elements(DrawnText.Svg + shape).Single(element => ((string?)element.Attribute("class"))?.Contains("opening", StringComparison.Ordinal) == true);
}
