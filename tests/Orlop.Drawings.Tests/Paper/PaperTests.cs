using System.Globalization;
using System.Xml.Linq;
using Orlop.Drawings.Paper;
using Xunit;

namespace Orlop.Drawings.Tests.Paper;

public sealed class PaperTests
{
    private const double CapitalHeightRatio = 0.7; // capital height over em of common sans-serifs; from memory

    private static readonly CableLabel[] Labels =
        [.. Enumerable.Range(1, 25).Select(index => new CableLabel($"winch-feed-{index}", "winch-fuse.out", "winch-plug.in <port>", "35 mm²", "fuse 150 A"))];

    [Theory]
    [InlineData(PaperSize.A4, "210mm", "297mm")]
    [InlineData(PaperSize.Letter, "215.9mm", "279.4mm")]
    public void Labels_Page_IsTrueToSize(PaperSize paper, string width, string height)
    {
        IReadOnlyList<string> pages = LabelSheet.Draw("Small", Labels, paper);
        XElement[] drawings = [.. pages.Select(DrawnText.Parse)];

        Assert.All(drawings, drawing => Assert.Equal((width, height), ((string)drawing.Attribute("width")!, (string)drawing.Attribute("height")!)));
        Assert.Equal(Labels.Select(label => label.Id), drawings.SelectMany(drawing => drawing.Ids()));
    }

    [Fact]
    public void Ruler_Measures100Millimetres()
    {
        XElement drawing = DrawnText.Parse(LabelSheet.Draw("Small", Labels, PaperSize.A4)[0]);
        double unitsPerMm = double.Parse(((string)drawing.Attribute("viewBox")!).Split(' ')[2], CultureInfo.InvariantCulture) / 210;
        XElement bar = drawing.Descendants().Single(element => (string?)element.Attribute("class") == "ruler").Elements(DrawnText.Svg + "line").First();

        Assert.Equal(100, (bar.Number("x2") - bar.Number("x1")) / unitsPerMm, 0.01);
    }

    [Fact]
    public void Labels_Text_IsLargeEnoughAndInsideItsLabel()
    {
        XElement drawing = DrawnText.Parse(LabelSheet.Draw("Small", [new(new string('w', 30), new string('m', 60), "winch.+", "35 mm²", "")], PaperSize.A4)[0]);
        XElement label = drawing.Descendants().Single(element => (string?)element.Attribute("class") == "cable-label");
        XElement frame = label.Element(DrawnText.Svg + "rect")!;

        Assert.All(label.Elements(DrawnText.Svg + "text"), text =>
        {
            Assert.True(text.Number("font-size") * 25.4 / 96 * CapitalHeightRatio >= 2.5);
            Assert.True(DrawnText.RoomOf(text).Right <= frame.Number("x") + frame.Number("width"));
            Assert.True(DrawnText.RoomOf(text).Bottom <= frame.Number("y") + frame.Number("height"));
        });
    }

    [Fact]
    public void TitleBlock_SaysWhatAPaperDrawingMust()
    {
        string text = DrawnText.Parse(new TitleBlock { Boat = "A & B", Drawing = "Plan", Date = new(2026, 11, 25), Revision = "41", Scale = "1:50" }.Draw("block")).Value;

        foreach (string part in (string[])["A & B", "Plan", "2026-11-25", "41", "1:50", "Check against local rules; not a survey."])
        {
            Assert.Contains(part, text, StringComparison.Ordinal);
        }
    }
}
