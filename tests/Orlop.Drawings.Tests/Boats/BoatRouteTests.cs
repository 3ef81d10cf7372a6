using System.Globalization;
using System.Xml.Linq;
using Orlop.Drawings.Boats;
using Xunit;

namespace Orlop.Drawings.Tests.Boats;

/// <summary>Ways a cable may take stand over all else, told apart by number and stroke; a compass stands at its place.</summary>
public sealed class BoatRouteTests
{
    private static readonly XNamespace Svg = "http://www.w3.org/2000/svg";

    private static readonly BoatDrawingOptions Options = new()
    {
        SectionsXM = [2],
        Routes = [new DrawnRoute("Way 1: high", [new(1, 0.5, 1.5), new(4, 0.5, 1.5)]), new DrawnRoute("Way 2: low", [new(1, 0, 0.2), new(4, 0, 0.2)])],
    };

    [Fact]
    public void Routes_AreDrawnInProfileAndPlan_EachWithNumberNameAndStroke()
    {
        XElement drawing = XElement.Parse(BoatDrawing.All(SampleBoats.Example, null, Options));
        XElement[] lines = [.. drawing.Descendants(Svg + "polyline").Where(line => ((string?)line.Attribute("class"))?.StartsWith("route", StringComparison.Ordinal) == true)];

        Assert.Equal(["route next", "route", "route next", "route"], lines.Select(line => (string)line.Attribute("class")!));
        Assert.Equal(["Way 2: low", "Way 1: high", "Way 2: low", "Way 1: high"], lines.Select(line => line.Parent!.Element(Svg + "title")!.Value));
        Assert.Equal(["2", "1", "2", "1"], lines.Select(line => line.Parent!.Element(Svg + "text")!.Value));
    }

    [Fact]
    public void Route_UpAMast_IsInsideThePicture()
    {
        BoatDrawingOptions options = Options with { Routes = [new DrawnRoute("Way 1: up the mast", [new(1, 0.5, 1.5), new(2, 0, 9)])] };
        XElement drawing = XElement.Parse(BoatDrawing.All(SampleBoats.Example, null, options));
        double[] heights = [.. drawing.Descendants(Svg + "polyline").Where(line => (string?)line.Attribute("class") == "route")
            .SelectMany(line => ((string)line.Attribute("points")!).Split(' ')).Select(point => double.Parse(point.Split(',')[1], CultureInfo.InvariantCulture))];
        Assert.NotEmpty(heights);
        Assert.All(heights, height => Assert.True(height > 0, $"{height} px from the top"));
    }

    [Fact]
    public void Compass_StandsAtItsPlace() =>
        Assert.Contains("data-id=\"steering-compass\"", BoatDrawing.Plan(SampleBoats.Example, null, new BoatDrawingOptions { IsInteractive = true }), StringComparison.Ordinal);
}
