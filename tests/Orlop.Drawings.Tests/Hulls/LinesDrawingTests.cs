using System.Globalization;
using System.Xml.Linq;
using Orlop.Boat.Things;
using Orlop.Drawings.Boats;
using Orlop.Drawings.Hulls;
using Orlop.Hull.Surfaces;
using Orlop.Presentation.Views.Hulls;
using Xunit;

namespace Orlop.Drawings.Tests.Hulls;

public sealed class LinesDrawingTests
{
    private static readonly Orlop.Boat.Things.HullLines Lines = HullEdit.Of(StartingForm.Create("hull", StartingShape.SingleChine, 10, 3, 1.5), null, 3);

    private static XElement[] Elements(string svg) => [.. XDocument.Parse(svg).Root!.Descendants()];

    private static Orlop.Boat.Things.HullLines Displaced()
    {
        HullSpot spot = new(false, 5, 1);
        StationPoint right = HullEdit.At(Lines, spot)!;
        return HullEdit.WithPoint(Lines, spot, right with { HalfBreadthM = right.HalfBreadthM + 0.06 });
    }

    // 10 m long and 3 m wide: the chosen station's points stand where the scale puts them.
    [Fact]
    public void BodyPlan_PutsPointsToScale_ForeBodyRight()
    {
        XElement[] drawn = Elements(BodyPlanDrawing.Draw(HullFacts.Of(Lines, 0.7, 1025), new LinesOptions { ChosenStation = 7 }));
        double perM = Number(drawn.First(element => (string?)element.Attribute("class") == "view section"), "data-px-per-m");
        XElement deck = drawn.First(element => (string?)element.Attribute("data-id") == "p7.2").Elements().First(element => (string?)element.Attribute("class") == "hit");
        XElement keel = drawn.First(element => (string?)element.Attribute("data-id") == "p7.0").Elements().First(element => (string?)element.Attribute("class") == "hit");
        Assert.Equal(Lines.Stations[7].Points[2].HalfBreadthM * perM, Number(deck, "cx") - Number(keel, "cx"), 0.02);
        Assert.Equal((Lines.Stations[7].Points[2].HeightM - Lines.Stations[7].Points[0].HeightM) * perM, Number(keel, "cy") - Number(deck, "cy"), 0.02);
        Assert.Equal(Lines.Stations.Count, drawn.Count(element => ((string?)element.Attribute("data-id"))?.StartsWith('s') == true));
    }

    [Theory]
    [InlineData(360)]
    [InlineData(800)]
    public void Drawings_MarkADoubtfulPoint_ByShapeAndWords_InEveryView(double widthPx)
    {
        HullFacts facts = HullFacts.Of(Displaced(), 0.7, 1025);
        LinesOptions options = new() { ChosenStation = 5, WidthPx = widthPx, Kept = HullFacts.Of(Lines, 0.7, 1025) };
        XElement[] body = Elements(BodyPlanDrawing.Draw(facts, options)), plan = Elements(LinesPlanDrawing.Draw(facts, options));
        XElement mark = Assert.Single(body, element => (string?)element.Attribute("data-doubt") == "5.1");
        Assert.Matches(@"^\d\d mm wide(, \d+ mm (high|low))?$", mark.Elements().First(element => element.Name.LocalName == "text").Value);
        Assert.Contains(mark.Elements(), element => element.Name.LocalName == "polygon");
        Assert.Equal(2, plan.Count(element => (string?)element.Attribute("data-doubt") == "5.1"));
        Assert.Contains(body, element => (string?)element.Attribute("class") == "was");
    }

    [Fact]
    public void Drawings_OfFaultyLines_AreDrawnAllTheSame()
    {
        Orlop.Boat.Things.HullLines faulty = HullEdit.WithPoint(Lines, new HullSpot(false, 3, 1), Lines.Stations[3].Points[0]);
        HullFacts facts = HullFacts.Of(faulty, 0.7, 1025);
        Assert.NotEmpty(facts.Bodies.Problems);
        Assert.NotEmpty(Elements(BodyPlanDrawing.Draw(facts, new LinesOptions())));
        Assert.NotEmpty(Elements(LinesPlanDrawing.Draw(facts, new LinesOptions())));
    }

    [Fact]
    public void BodyPlan_OfSidesThatDiffer_ShowsTheChosenOne()
    {
        HullFacts facts = HullFacts.Of(HullEdit.SplitSides(Lines), 0.7, 1025);
        Assert.Contains("Body plan, starboard side", BodyPlanDrawing.Draw(facts, new LinesOptions { IsStarboard = true }), StringComparison.Ordinal);
        Assert.Contains("Plan, port side up", LinesPlanDrawing.Draw(facts, new LinesOptions()), StringComparison.Ordinal);
    }

    [Fact]
    public void DrawnOutline_OfLinesAlone_FollowsKeelStemAndDeckEdge()
    {
        HullOutline outline = DrawnOutline.Of(new Orlop.Boat.BoatModel { Things = [Lines] })!;
        Assert.Equal(Lines.Stations.Count, outline.Sheer.Count);
        Assert.Equal(Lines.Stations[^1].Points[^1].XM, outline.Keel[^1].XM);
        Assert.Equal(Lines.Stations[5].Points[1].HalfBreadthM, outline.Chine[5].HalfBreadthM);
    }

    private static double Number(XElement element, string attribute) => double.Parse(element.Attribute(attribute)!.Value, CultureInfo.InvariantCulture);
}
