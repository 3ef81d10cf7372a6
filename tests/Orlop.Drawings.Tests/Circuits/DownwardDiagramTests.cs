using System.Globalization;
using System.Xml.Linq;
using CsCheck;
using Orlop.Boat;
using Orlop.Boat.Things;
using Orlop.Drawings.Circuits;
using Orlop.Drawings.Svg;
using Orlop.Presentation.Quantities;
using Xunit;

namespace Orlop.Drawings.Tests.Circuits;

public sealed class DownwardDiagramTests
{
    private static readonly OneLineOptions Phone = new() { DownwardWidthPx = 364, IsInteractive = true };

    [Theory]
    [InlineData(240, DisplayUnits.Metric)]
    [InlineData(364, DisplayUnits.Metric)]
    [InlineData(364, DisplayUnits.Us)]
    public void Words_ExampleAndItsDrafts_NeitherOverlapNorLeaveTheSheet(double width, DisplayUnits units)
    {
        foreach (BoatModel? draft in SampleBoats.ExampleDrafts)
        {
            XElement drawing = DrawnText.Parse(OneLineDiagram.Draw(SampleBoats.Example, draft, Phone with { DownwardWidthPx = width, Units = units }));

            Assert.Empty(DrawnText.Overlaps(drawing.Descendants(DrawnText.Svg + "text").Where(text => (string?)text.Attribute("aria-hidden") != "true")));
            Assert.Empty(DrawnText.OffTheSheet(drawing));
        }
    }

    [Fact]
    public void Draw_Example_HasTheSameThingsAsFromLeftToRight() =>
        Assert.Equal(Ids(Phone with { DownwardWidthPx = null }), Ids(Phone));

    [Fact]
    public void Draw_AnyNetwork_HasEveryPartAndConductorAndNoWordsOverlap() => OneLineDiagramTests.Networks.Sample(boat =>
    {
        XElement drawing = DrawnText.Parse(OneLineDiagram.Draw(boat, null, Phone));
        return Ids(boat, Phone).SequenceEqual(Ids(boat, Phone with { DownwardWidthPx = null }))
            && DrawnText.Overlaps(drawing.Descendants(DrawnText.Svg + "text").Where(text => (string?)text.Attribute("aria-hidden") != "true")).Count == 0
            && DrawnText.OffTheSheet(drawing).Count == 0;
    }, iter: 300);

    [Fact]
    public void Flow_FromSourceToLoad_RunsDownwards()
    {
        XElement drawing = DrawnText.Parse(OneLineDiagram.Draw(SampleBoats.Example, null, Phone));
        double Y(string title) => drawing.Descendants(DrawnText.Svg + "text").First(text => text.Value.StartsWith(title, StringComparison.Ordinal)).Number("y");

        Assert.True(Y("House bank") < Y("Main fuse"));
        Assert.True(Y("Main fuse") < Y("Main isolator"));
        Assert.True(Y("Main isolator") < Y("Main plus bar"));
        Assert.True(Y("Inverter 1.6") < Y("Kettle"));
    }

    [Theory]
    [InlineData(null)]
    [InlineData(364.0)]
    public void Names_OfThings_HoldTheTextDrawnInThem(double? downwardWidth) =>
        Assert.Empty(DrawnText.NamesWithoutTheirText(DrawnText.Parse(OneLineDiagram.Draw(SampleBoats.Example, SampleBoats.ExampleDrafts[^1], Phone with { DownwardWidthPx = downwardWidth }))));

    [Theory]
    [InlineData(null)]
    [InlineData(364.0)]
    public void EveryThing_HasALargeEnoughPlaceToHit(double? downwardWidth)
    {
        XElement drawing = DrawnText.Parse(OneLineDiagram.Draw(SampleBoats.Example, null, Phone with { DownwardWidthPx = downwardWidth }));
        string[] parts = [.. SampleBoats.Example.All<Part>().Where(part => part is not Busbar).Select(part => part.Id)];
        string[] returns = [.. SampleBoats.Example.All<Busbar>().Select(part => part.Id)];

        Assert.All(parts, id => Assert.Contains(Hits(id), hit => hit.Number("height") >= 15 && hit.Number("width") >= 24));
        Assert.Contains(returns, id => Hits(id).Any(hit => hit.Number("height") >= 24 && hit.Number("width") >= 24));

        IEnumerable<XElement> Hits(string id) => drawing.Descendants(DrawnText.Svg + "g").Where(group => (string?)group.Attribute("data-id") == id)
            .Elements(DrawnText.Svg + "rect").Where(rect => (string?)rect.Attribute("class") == "hit");
    }

    [Fact]
    public void Scale_MakesTheDrawingLargerAndNotItsUnits()
    {
        string own = OneLineDiagram.Draw(SampleBoats.Small, null, Phone), half = OneLineDiagram.Draw(SampleBoats.Small, null, Phone with { ScaleFactor = 0.5 });

        Assert.Equal(364, DrawingSize.WidthPx(half));
        Assert.Equal(182, DrawnText.Parse(half).Number("width"), 0.01);
        Assert.Equal((string?)DrawnText.Parse(own).Attribute("viewBox"), (string?)DrawnText.Parse(half).Attribute("viewBox"));
    }

    [Theory]
    [InlineData(100.0, 1)]
    [InlineData(double.NaN, 1)]
    [InlineData(null, 0)]
    [InlineData(null, double.NaN)]
    public void Options_OutOfRange_AreRefused(double? width, double scale) =>
        Assert.Throws<ArgumentOutOfRangeException>(() => OneLineDiagram.Draw(SampleBoats.Small, null, new OneLineOptions { DownwardWidthPx = width, ScaleFactor = scale }));

    [Fact]
    public void Conductors_FromLeftToRight_DoNotRunThroughWords()
    {
        foreach (BoatModel? draft in SampleBoats.ExampleDrafts)
        {
            XElement drawing = DrawnText.Parse(OneLineDiagram.Draw(SampleBoats.Example, draft, new OneLineOptions()));
            Segment[] lines = [.. drawing.Descendants(DrawnText.Svg + "polyline").SelectMany(line => Segment.Along([.. ((string)line.Attribute("points")!).Split(' ').Select(Spot)]))];
            XElement[] words = [.. drawing.Descendants(DrawnText.Svg + "text").Where(text => (string?)text.Attribute("aria-hidden") != "true")];

            Assert.NotEmpty(lines);
            Assert.Empty(words.Where(text => lines.Any(line => line.Crosses(DrawnText.RoomOf(text)))).Select(text => text.Value));
        }

        static Spot Spot(string pair) => new(double.Parse(pair.Split(',')[0], CultureInfo.InvariantCulture), double.Parse(pair.Split(',')[1], CultureInfo.InvariantCulture));
    }

    private static string[] Ids(OneLineOptions options) => Ids(SampleBoats.Example, options);

    private static string[] Ids(BoatModel boat, OneLineOptions options) => [.. DrawnText.Parse(OneLineDiagram.Draw(boat, null, options)).Ids().Order(StringComparer.Ordinal)];
}
