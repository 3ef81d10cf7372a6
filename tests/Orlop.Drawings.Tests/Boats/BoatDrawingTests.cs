using System.Globalization;
using System.Xml.Linq;
using Orlop.Boat;
using Orlop.Boat.Alterations;
using Orlop.Boat.Things;
using Orlop.Boat.Values;
using Orlop.Drawings.Boats;
using Orlop.Presentation.Quantities;
using Xunit;

namespace Orlop.Drawings.Tests.Boats;

public sealed class BoatDrawingTests
{
    private static readonly BoatModel Small = SampleBoats.Small;

    private static readonly BoatModel Altered = Small.WithThings(
    [
        .. Small.Things.Where(thing => thing.Id != "winch").Select(thing => thing is Gear gear ? gear with { Place = new Place(3, 0, 1) } : thing),
        new Gear { Id = "raft", Name = "Raft", MassKg = 30, Place = new(5, 0, 3.4), Size = new(0.9, 0.5, 0.3) },
    ]);

    [Fact]
    public void All_SmallBoat_HasEveryPlacedThing()
    {
        IReadOnlyList<string> ids = DrawnText.Parse(BoatDrawing.All(Small, null, new BoatDrawingOptions { ShowsSpaces = true })).Ids();

        Assert.Equal(["bank", "bank-minus", "box", "deckhead", "feed", "fuse", "locker", "minus", "winch", "winch-minus"], ids.Order(StringComparer.Ordinal));
    }

    // Two aboard at anchor and none at the berth: drawn faint there, without a name, and said so.
    [Theory]
    [InlineData("at-anchor", false)]
    [InlineData("berth", true)]
    [InlineData(null, false)]
    public void People_NotAboardInTheConditionDrawn_AreFaint(string? condition, bool isFaint)
    {
        BoatModel boat = Small.WithThings([.. Small.Things, new Deadweight { Id = "crew", Name = "Crew", Use = DeadweightUse.People, MassKg = 80, Place = new Place(3, 0, 1.2), Aboard = [new DeadweightCount("at-anchor", 2)] }]);
        XElement drawing = DrawnText.Parse(BoatDrawing.All(boat, null, new BoatDrawingOptions { ConditionId = condition, WidthPx = 1000 }));
        XElement[] drawn = [.. drawing.Descendants().Where(element => ((string?)element.Attribute("class"))?.Contains("ashore", StringComparison.Ordinal) == true)];

        Assert.Equal(isFaint, drawn.Length > 0);
        Assert.Equal(isFaint, drawing.Value.Contains("not aboard in this condition", StringComparison.Ordinal));
        Assert.Equal(!isFaint, drawing.Descendants(DrawnText.Svg + "text").Any(text => text.Value.StartsWith("Crew", StringComparison.Ordinal)));
    }

    // Port 2 m wide, starboard 1 m, drawn port on the left: the outline reaches twice as far to the left of the centre line.
    [Fact]
    public void Section_OfABoatWhoseSidesDiffer_DrawsBoth()
    {
        HullStation Station(string name, double x, double half) => new() { Name = name, IsSharp = true, Points = [new StationPoint(x, 0, 0), new StationPoint(x, half, 0.5), new StationPoint(x, half, 2)] };
        BoatModel boat = new()
        {
            Things =
            [
                new Orlop.Boat.Things.HullLines { Id = "hull-lines", Stations = [Station("aft", 0, 2), Station("fore", 10, 2)], StarboardStations = [Station("aft", 0, 1), Station("fore", 10, 1)] },
                new Gear { Id = "chest", Name = "Chest", MassKg = 20, Place = new Place(5, 0, 1) },
            ],
        };
        XElement view = DrawnText.Parse(BoatDrawing.All(boat, null, new BoatDrawingOptions { SectionsXM = [5] })).Descendants(DrawnText.Svg + "g").Single(group => ((string?)group.Attribute("class"))?.Contains("section", StringComparison.Ordinal) == true);
        double pixelsPerM = view.Number("data-px-per-m"), centre = view.Elements(DrawnText.Svg + "line").Single(line => (string?)line.Attribute("class") == "centre").Number("x1");
        double[] across = [.. ((string)view.Descendants(DrawnText.Svg + "polygon").First(outline => (string?)outline.Attribute("class") == "outline").Attribute("points")!).Split(' ').Select(spot => double.Parse(spot.Split(',')[0], CultureInfo.InvariantCulture))];

        Assert.Equal(2, (centre - across.Min()) / pixelsPerM, 0.02);
        Assert.Equal(1, (across.Max() - centre) / pixelsPerM, 0.02);
    }

    [Theory]
    [InlineData(390)]
    [InlineData(1000)]
    public void Profile_Example_HasEveryPartAndGear(double width)
    {
        IReadOnlyList<string> ids = DrawnText.Parse(BoatDrawing.Profile(SampleBoats.Example, null, new BoatDrawingOptions { WidthPx = width })).Ids();
        string[] placed = [.. SampleBoats.Example.Things.Where(thing => thing is Part { Place: not null } or Gear { Place: not null }).Select(thing => thing.Id)];

        Assert.True(placed.Length > 40);
        Assert.Empty(placed.Except(ids));
    }

    [Theory]
    [InlineData(null, 1000)]
    [InlineData(null, 390)]
    [InlineData(50.0, 0)]
    public void Box_OfOneMetre_MeasuresOneMetreInTheScale(double? denominator, double width)
    {
        BoatDrawingOptions options = denominator is null ? new() { WidthPx = width } : new() { ScaleDenominatorRatio = denominator };
        XElement drawing = DrawnText.Parse(BoatDrawing.Profile(Small, null, options));
        double pixelsPerM = drawing.Descendants(DrawnText.Svg + "g").First(group => group.Attribute("data-px-per-m") is not null).Number("data-px-per-m");
        XElement box = drawing.Descendants().Single(element => (string?)element.Attribute("data-id") == "box").Element(DrawnText.Svg + "rect")!;
        XElement bar = drawing.Descendants().Single(element => (string?)element.Attribute("class") == "scale-bar");

        Assert.Equal(pixelsPerM, box.Number("width"), 0.02);
        Assert.Equal(pixelsPerM * 0.5, box.Number("height"), 0.02);
        int parts = bar.Elements(DrawnText.Svg + "text").Count() - 1;
        Assert.Equal(bar.Number("data-metres") * pixelsPerM, bar.Elements(DrawnText.Svg + "rect").First().Number("width"), 0.02 * parts);
    }

    [Fact]
    public void Paper_AtOneToFifty_IsTwentyMillimetresAMetre()
    {
        XElement drawing = DrawnText.Parse(BoatDrawing.Profile(Small, null, new BoatDrawingOptions { ScaleDenominatorRatio = 50 }));
        double widthMm = double.Parse(((string)drawing.Attribute("width")!).Replace("mm", "", StringComparison.Ordinal), CultureInfo.InvariantCulture);
        double widthUnits = double.Parse(((string)drawing.Attribute("viewBox")!).Split(' ')[2], CultureInfo.InvariantCulture);
        double box = drawing.Descendants().Single(element => (string?)element.Attribute("data-id") == "box").Element(DrawnText.Svg + "rect")!.Number("width");

        Assert.Equal(20, box * widthMm / widthUnits, 0.01);
    }

    [Theory]
    [InlineData(277, 50)] // A4 across, 10 mm margins
    [InlineData(190, 75)]
    public void ScaleFor_Paper_IsTheLargestThatFits(double widthMm, double expected)
    {
        double denominator = BoatDrawing.ScaleDenominatorRatioFor(Small, widthMm);
        XElement drawing = DrawnText.Parse(BoatDrawing.Profile(Small, null, new BoatDrawingOptions { ScaleDenominatorRatio = denominator }));

        Assert.Equal(expected, denominator);
        Assert.True(double.Parse(((string)drawing.Attribute("width")!).Replace("mm", "", StringComparison.Ordinal), CultureInfo.InvariantCulture) <= widthMm);
    }

    [Fact]
    public void Altered_Things_AreBlueGreyAndMovedWithAnArrow()
    {
        XElement drawing = DrawnText.Parse(BoatDrawing.Profile(Small, Altered, new BoatDrawingOptions { ShowsOnlyChanges = true }));
        XElement Of(string id) => drawing.Descendants().Single(element => (string?)element.Attribute("data-id") == id);

        Assert.Equal(["box", "raft", "winch"], drawing.Ids().Order(StringComparer.Ordinal));
        Assert.Contains("added", (string)Of("raft").Element(DrawnText.Svg + "rect")!.Attribute("class")!, StringComparison.Ordinal);
        Assert.Contains("gone", (string)Of("winch").Element(DrawnText.Svg + "rect")!.Attribute("class")!, StringComparison.Ordinal);
        Assert.Single(Of("box").Elements(DrawnText.Svg + "polygon"), arrow => (string?)arrow.Attribute("class") == "arrow");
        Assert.Equal(2, Of("box").Elements(DrawnText.Svg + "rect").Count());
        Assert.Contains("Taken out: Winch.", drawing.Element(DrawnText.Svg + "desc")!.Value, StringComparison.Ordinal);
    }

    [Fact]
    public void Section_BetweenStations_IsInterpolated()
    {
        XElement drawing = DrawnText.Parse(BoatDrawing.Sections(Small, null, new BoatDrawingOptions { SectionsXM = [2.5], WidthPx = 800 }));
        XElement view = drawing.Descendants(DrawnText.Svg + "g").Single(group => group.Attribute("data-px-per-m") is not null);
        string[] points = ((string)view.Elements(DrawnText.Svg + "polygon").First().Attribute("points")!).Split(' ');
        double[] across = [.. points.Select(point => (double.Parse(point.Split(',')[0], CultureInfo.InvariantCulture) - view.Number("data-x-origin")) / view.Number("data-px-per-m"))];
        double[] up = [.. points.Select(point => (view.Number("data-up-origin") - double.Parse(point.Split(',')[1], CultureInfo.InvariantCulture)) / view.Number("data-px-per-m"))];

        Assert.Equal([-1.5, -1.3, 0, 0, 1.3, 1.5], across, (a, b) => Math.Abs(a - b) < 0.001); // half way from 1.4 to 1.6 and 1.2 to 1.4; port left
        Assert.Equal([1.8, 0.55, 0.175, 0.175, 0.55, 1.8], up, (a, b) => Math.Abs(a - b) < 0.001);
    }

    [Fact]
    public void Sections_BeyondTheHull_SaySo() =>
        Assert.Contains("does not reach", BoatDrawing.Sections(Small, null, new BoatDrawingOptions { SectionsXM = [20] }), StringComparison.Ordinal);

    [Fact]
    public void Interactive_Things_AreButtonsWithNames()
    {
        XElement drawing = DrawnText.Parse(BoatDrawing.Plan(Small, null, new BoatDrawingOptions { IsInteractive = true }));
        XElement winch = drawing.Descendants().Single(element => (string?)element.Attribute("data-id") == "winch");

        Assert.Equal("group", (string?)drawing.Attribute("role"));
        Assert.Equal("button", (string?)winch.Attribute("role"));
        Assert.Equal("0", (string?)winch.Attribute("tabindex"));
        Assert.StartsWith("Winch, load", (string?)winch.Attribute("aria-label"), StringComparison.Ordinal);
    }

    [Fact]
    public void EmptyBoat_SaysWhatToGive()
    {
        string svg = BoatDrawing.All(new BoatModel(), null, new BoatDrawingOptions());

        Assert.Equal("img", (string?)DrawnText.Parse(svg).Attribute("role"));
        Assert.Contains("Give the hull lines or a place to something.", svg, StringComparison.Ordinal);
    }

    [Fact]
    public void Thing_FarFromTheHull_IsNamedAndDoesNotShrinkTheBoat()
    {
        BoatModel slipped = Small.WithThings([.. Small.Things, new Gear { Id = "lost", Name = "Lost box", Place = new(58, 0, 1) }]);

        Assert.Contains("Too far from the hull to be drawn: Lost box.", BoatDrawing.Profile(slipped, null, new BoatDrawingOptions()), StringComparison.Ordinal);
    }

    [Fact]
    public void Thing_PlaceNotFinite_IsNotDrawn()
    {
        BoatModel broken = Small.WithThings([.. Small.Things, new Gear { Id = "nan", Place = new(double.NaN, 0, 1) }]);

        Assert.DoesNotContain("nan", DrawnText.Parse(BoatDrawing.All(broken, null, new BoatDrawingOptions())).Ids());
    }

    [Theory]
    [InlineData(100, null)]
    [InlineData(double.NaN, null)]
    [InlineData(1000, 0.0)]
    [InlineData(1000, double.NaN)]
    public void Options_OutOfRange_AreRefused(double width, double? denominator) =>
        Assert.Throws<ArgumentOutOfRangeException>(() => BoatDrawing.Profile(Small, null, new BoatDrawingOptions { WidthPx = width, ScaleDenominatorRatio = denominator }));

    [Fact]
    public void Drawing_UnderACommaDecimalCulture_IsTheSame()
    {
        CultureInfo before = CultureInfo.CurrentCulture;
        string expected = BoatDrawing.All(Small, Altered, new BoatDrawingOptions());
        try
        {
            CultureInfo.CurrentCulture = CultureInfo.GetCultureInfo("de-DE");
            Assert.Equal(expected, BoatDrawing.All(Small, Altered, new BoatDrawingOptions()));
        }
        finally
        {
            CultureInfo.CurrentCulture = before;
        }
    }

    [Fact]
    public void Labels_UsUnits_AreInPoundsAndFeet()
    {
        string svg = BoatDrawing.Profile(Small, null, new BoatDrawingOptions { Units = DisplayUnits.Us });

        Assert.Contains("Box, 88.2 lb", svg, StringComparison.Ordinal);
        Assert.Contains("0 ft", svg, StringComparison.Ordinal);
    }

    [Fact]
    public void Draft_OfTheExample_DrawsItsEdits()
    {
        Alteration draft = SampleBoats.Example.All<Alteration>().First(alteration => alteration.Status == AlterationStatus.Draft);
        BoatModel altered = AlteredBoat.Of(SampleBoats.Example, draft).Boat;
        IReadOnlyList<string> ids = DrawnText.Parse(BoatDrawing.All(SampleBoats.Example, altered, new BoatDrawingOptions { ShowsOnlyChanges = true })).Ids();

        Assert.NotEmpty(ids);
        Assert.Empty(ids.Except(draft.Edits.Select(edit => edit.Id)));
    }
}
