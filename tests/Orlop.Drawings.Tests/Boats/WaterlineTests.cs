using System.Globalization;
using System.Xml.Linq;
using Orlop.Drawings.Boats;
using Xunit;

namespace Orlop.Drawings.Tests.Boats;

public sealed class WaterlineTests
{
    [Fact]
    public void Profile_AtATrim_HasASlopingWaterlineToScale()
    {
        XElement drawing = DrawnText.Parse(BoatDrawing.Profile(SampleBoats.Example, null, new BoatDrawingOptions { Waterline = new Waterline(0.7, 0.02, 0) }));
        XElement line = WaterlineOf(drawing, "water-line");

        // Up on the drawing is less; forward is to the right. The scale is the same both ways.
        Assert.Equal(0.02, (line.Number("y1") - line.Number("y2")) / (line.Number("x2") - line.Number("x1")), 1e-3);
    }

    [Fact]
    public void Section_AtAHeelToPort_HasTheWaterHigherToPort()
    {
        XElement drawing = DrawnText.Parse(BoatDrawing.Sections(SampleBoats.Example, null, new BoatDrawingOptions { Waterline = new Waterline(0.7, 0, 0.05), SectionsXM = [4] }));
        XElement line = WaterlineOf(drawing, "water-line");

        // Looking forward, port is to the left.
        Assert.Equal(0.05, (line.Number("y2") - line.Number("y1")) / (line.Number("x2") - line.Number("x1")), 1e-3);
    }

    [Fact]
    public void Profile_WithADraft_HasTheWaterlineAsBuiltDashed()
    {
        XElement drawing = DrawnText.Parse(BoatDrawing.Profile(SampleBoats.Example, null, new BoatDrawingOptions { Waterline = Waterline.Level(0.75), WaterlineAsBuilt = Waterline.Level(0.7) }));

        Assert.True(WaterlineOf(drawing, "water-line dashed").Number("y1") > WaterlineOf(drawing, "water-line").Number("y1"));
    }

    [Fact]
    public void Section_WaterlineThatLeavesTheFrame_EndsAtItsEdge()
    {
        XElement drawing = DrawnText.Parse(BoatDrawing.Sections(SampleBoats.Example, null, new BoatDrawingOptions { Waterline = new Waterline(1, 0, 3), SectionsXM = [4] }));
        XElement line = WaterlineOf(drawing, "water-line"), water = drawing.Descendants(DrawnText.Svg + "path").Single(shape => (string?)shape.Attribute("class") == "water");
        double[] heights = [.. ((string)water.Attribute("d")!).Trim('M', 'Z').Split('L').Select(spot => double.Parse(spot.Split(',')[1], CultureInfo.InvariantCulture))];

        Assert.Equal((heights.Min(), heights.Max()), (line.Number("y1"), line.Number("y2")));
    }

    [Theory]
    [InlineData(false, true, "draught as typed")]
    [InlineData(true, true, "waterline")]
    [InlineData(false, false, null)]
    public void Profile_WaterIsNamedForWhatItIs_OrNotDrawn(bool isKnown, bool showsTyped, string? label)
    {
        XElement drawing = DrawnText.Parse(BoatDrawing.Profile(
            SampleBoats.Example, null, new BoatDrawingOptions { Waterline = isKnown ? Waterline.Level(0.7) : null, ShowsTypedDraught = showsTyped, ShowsGear = false, ShowsParts = false, ShowsRuns = false }));

        string[] waters = [.. drawing.Descendants(DrawnText.Svg + "line").Select(line => (string?)line.Attribute("class")).OfType<string>().Where(style => style.StartsWith("water-line", StringComparison.Ordinal))];
        Assert.Equal(label is null ? [] : isKnown ? ["water-line"] : ["water-line dashed"], waters);
        // Water is filled in only where she is known to lie.
        Assert.Equal(isKnown ? 1 : 0, drawing.Descendants(DrawnText.Svg + "path").Count(path => (string?)path.Attribute("class") == "water"));
        // The name is left out where there is no room for it; another name never stands there.
        Assert.All(drawing.Descendants(DrawnText.Svg + "text").Select(text => text.Value).Where(text => text is "waterline" or "draught as typed"), text => Assert.Equal(label, text));
    }

    private static XElement WaterlineOf(XElement drawing, string style) =>
        drawing.Descendants(DrawnText.Svg + "line").Single(line => (string?)line.Attribute("class") == style);
}
