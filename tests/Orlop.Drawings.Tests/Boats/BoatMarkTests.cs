using System.Xml.Linq;
using Orlop.Boat.Values;
using Orlop.Drawings.Boats;
using Xunit;

namespace Orlop.Drawings.Tests.Boats;

public sealed class BoatMarkTests
{
    [Fact]
    public void Marks_StandToScale_AndAWeightsAreaGoesWithItsMass()
    {
        XElement drawing = Draw(new(MarkKind.Weight, "Ballast, 400 kg", new Place(4, 0, 0.2), "ballast", 1), new(MarkKind.Weight, "Anchor, 100 kg", new Place(6, 0, 0.6), "anchor", 0.25));
        XElement[] discs = [.. drawing.Descendants(DrawnText.Svg + "circle").Where(circle => ((string?)circle.Attribute("class"))!.Contains("weight", StringComparison.Ordinal))];
        double perM = double.Parse((string)drawing.Descendants(DrawnText.Svg + "g").First(group => group.Attribute("data-px-per-m") is not null).Attribute("data-px-per-m")!, System.Globalization.CultureInfo.InvariantCulture);

        Assert.Equal(["Ballast, 400 kg", "Anchor, 100 kg"], discs.Select(disc => (string)disc.Parent!.Attribute("aria-label")!));
        Assert.Equal(0.5, discs[1].Number("r") / discs[0].Number("r"), 1e-9);
        Assert.Equal(2 * perM, discs[1].Number("cx") - discs[0].Number("cx"), 0.2);
        Assert.Equal(0.4 * perM, discs[0].Number("cy") - discs[1].Number("cy"), 0.2);
    }

    [Fact]
    public void Centres_AreNamedOverTheWeights()
    {
        XElement drawing = Draw(new(MarkKind.Gravity, "Centre of gravity", new Place(5, 0, 0.9)), new(MarkKind.Buoyancy, "Centre of buoyancy", new Place(5, 0, 0.4)), new(MarkKind.Weight, "Ballast", new Place(5, 0, 0.9), "ballast", 1));
        string[] names = [.. drawing.Descendants(DrawnText.Svg + "g").Where(group => (string?)group.Attribute("class") == "mark").Select(group => group.Element(DrawnText.Svg + "title")!.Value)];

        Assert.Equal(["Centre of gravity", "Centre of buoyancy"], names);
        Assert.Equal("mark", (string?)drawing.Descendants(DrawnText.Svg + "circle").Last().Parent!.Attribute("class"));
    }

    // Higher than anything of the hull: the frame reaches over it, and the grid with it.
    [Fact]
    public void Mark_OverTheHull_IsInsideTheFrame()
    {
        XElement low = Draw(), high = Draw(new BoatMark(MarkKind.Weight, "Winch", new Place(5, 0, HighestM + 1.2), "winch", 1));

        Assert.Contains(high.Descendants(DrawnText.Svg + "circle"), circle => ((string?)circle.Attribute("class"))!.Contains("weight", StringComparison.Ordinal) && circle.Number("cy") > 0);
        Assert.True(HeightOf(high) > HeightOf(low));
    }

    private static double HighestM => SampleBoats.Example.Things.OfType<Orlop.Boat.Things.HullLines>().SelectMany(lines => lines.Stations).SelectMany(station => station.Points).Max(point => point.HeightM);

    private static double HeightOf(XElement drawing) => double.Parse(((string)drawing.Attribute("viewBox")!).Split(' ')[3], System.Globalization.CultureInfo.InvariantCulture);

    [Fact]
    public void Mark_FarOutside_IsLeftOut() =>
        Assert.DoesNotContain(Draw(new BoatMark(MarkKind.Gravity, "Centre of gravity", new Place(500, 0, 0))).Descendants(DrawnText.Svg + "title"), title => title.Value == "Centre of gravity");

    private static XElement Draw(params BoatMark[] marks) =>
        DrawnText.Parse(BoatDrawing.Profile(SampleBoats.Example, null, new BoatDrawingOptions { Marks = [.. marks], IsInteractive = true, ShowsGear = false, ShowsParts = false }));
}
