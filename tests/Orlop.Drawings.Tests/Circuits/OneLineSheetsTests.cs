using System.Xml.Linq;
using CsCheck;
using Orlop.Boat;
using Orlop.Boat.Things;
using Orlop.Drawings.Circuits.Sheets;
using Orlop.Drawings.Paper;
using Orlop.Drawings.Svg;
using Orlop.Presentation.Quantities;
using Xunit;

namespace Orlop.Drawings.Tests.Circuits;

public sealed class OneLineSheetsTests
{
    // 11 pt, the least of what is read at work on paper: common practice, no source. A point is 1/72 in, a drawing unit 1/96 in.
    private const double LeastPx = 11 * 96.0 / 72;

    public static TheoryData<PaperSize, DisplayUnits> Papers => new()
    {
        { PaperSize.A4, DisplayUnits.Metric }, { PaperSize.A3, DisplayUnits.Metric }, { PaperSize.Letter, DisplayUnits.Us }, { PaperSize.Tabloid, DisplayUnits.Us },
    };

    // ISO 216: A3 is 297 mm by 420 mm.
    [Fact]
    public void Draw_FortyCircuits_FitOneA3OnItsSide()
    {
        XElement sheet = DrawnText.Parse(Assert.Single(OneLineSheets.Draw(ManyCircuits.Boat, null, new SheetOptions { Paper = PaperSize.A3 })));
        Assert.Equal(("420mm", "297mm"), ((string?)sheet.Attribute("width"), (string?)sheet.Attribute("height")));
    }

    [Theory]
    [MemberData(nameof(Papers))]
    public void Draw_FortyCircuits_IsReadable(PaperSize paper, DisplayUnits units)
    {
        foreach (SheetReader sheet in Read(ManyCircuits.Boat, paper, units))
        {
            Assert.Empty(sheet.Overlaps());
            Assert.Empty(sheet.CrossedSymbols());
            Assert.Empty(sheet.CrossedWords());
            Assert.Empty(sheet.Texts.Where(text => text.Size < LeastPx - 1e-3).Select(text => text.Words));
            Assert.Empty(sheet.OffTheSheet());
            Assert.Empty(from text in sheet.Texts from symbol in sheet.Symbols where text.Element.Ancestors().All(above => (string?)above.Attribute("class") != "symbol") && text.Room.Overlaps(symbol.Room) select text.Words);
        }
    }

    [Theory]
    [MemberData(nameof(Papers))]
    public void Draw_FortyCircuits_HasEachPartAndConductorOnce(PaperSize paper, DisplayUnits units)
    {
        SheetReader[] sheets = Read(ManyCircuits.Boat, paper, units);
        string[] parts = [.. ManyCircuits.Boat.All<Part>().Where(part => part is not Busbar).Select(part => part.Id)];
        string[] conductors = [.. ManyCircuits.Boat.Things.Where(thing => thing is Cable or Link).Select(thing => thing.Id)];
        string[] things = [.. sheets.SelectMany(sheet => sheet.Drawing.Descendants()).Select(element => (string?)element.Attribute("data-id")).OfType<string>()];

        Assert.Equal(ManyCircuits.CircuitCount, parts.Count(id => id.EndsWith("-load", StringComparison.Ordinal)));
        Assert.Equal(parts.Order(), sheets.SelectMany(sheet => sheet.Symbols).Select(symbol => symbol.Id).Order());
        Assert.Equal(conductors.Concat(parts).Order(), things.Where(id => ManyCircuits.Boat.Find(id) is not Busbar).Order());
    }

    [Theory]
    [MemberData(nameof(Papers))]
    public void Draw_WhereARowGoesOn_BothEndsNameEachOther(PaperSize paper, DisplayUnits units)
    {
        SheetReader[] sheets = Read(ManyCircuits.Boat, paper, units);
        var marks = sheets.SelectMany((sheet, index) => sheet.Drawing.Descendants(DrawnText.Svg + "g").Where(group => (string?)group.Attribute("class") == "goes-on").Select(mark => (Sheet: index + 1, Mark: mark))).ToArray();

        // Battery, two chargers and a converter come to their bars, the main bar leads to two panels.
        Assert.Equal(6, marks.Length);
        foreach ((int at, XElement mark) in marks)
        {
            string to = (string)mark.Attribute("data-to")!;
            (int sheet, string zone) = Assert.Single(SheetReader.Named(string.Join(' ', mark.Elements(DrawnText.Svg + "text").Select(text => text.Value))));
            XElement head = sheets[sheet - 1].Drawing.Descendants(DrawnText.Svg + "g").First(group => (string?)group.Attribute("data-id") == to);
            (string _, Box room, double _, XElement _) = sheets[sheet - 1].Texts.First(text => text.Element.Parent == head);
            Assert.Equal(zone, sheets[sheet - 1].ZoneOf(new Spot(room.X, room.Y)));
            XElement arrow = mark.Element(DrawnText.Svg + "path")!;
            double[] start = [.. ((string)arrow.Attribute("d")!).TrimStart('M').Split('h')[0].Split(' ').Select(number => double.Parse(number, System.Globalization.CultureInfo.InvariantCulture))];
            Assert.Contains((at, sheets[at - 1].ZoneOf(new Spot(start[0], start[1] + 8))), head.Elements(DrawnText.Svg + "text").SelectMany(text => SheetReader.Named(text.Value)));
        }
    }

    // A bar whose rows go over to another column or sheet: it says where, and there where from.
    [Fact]
    public void Draw_LongBarOnA4_GoesOnBothWays()
    {
        SheetReader[] sheets = Read(ManyCircuits.Boat, PaperSize.A4, DisplayUnits.Metric);
        string[] words = [.. sheets.SelectMany(sheet => sheet.Texts).Select(text => text.Words)];
        Assert.True(sheets.Length > 1);
        Assert.Contains(words, text => text.StartsWith("Port panel bar goes on: sheet", StringComparison.Ordinal));
        Assert.Contains(words, text => text.StartsWith("Port panel bar goes on, from sheet", StringComparison.Ordinal));
    }

    [Fact]
    public void Draw_AnyNetwork_HasEveryPartOnceAndNoWordsOverlap() => OneLineDiagramTests.Networks.Sample(boat =>
    {
        SheetReader[] sheets = Read(boat, PaperSize.A4, DisplayUnits.Metric);
        string[] symbols = [.. sheets.SelectMany(sheet => sheet.Symbols).Select(symbol => symbol.Id)];
        HashSet<string> ids = [.. sheets.SelectMany(sheet => sheet.Drawing.Ids())];
        return boat.All<Part>().All(part => ids.Contains(part.Id) && (part is Busbar || symbols.Count(id => id == part.Id) == 1))
            && sheets.All(sheet => !sheet.Overlaps().Any() && !sheet.CrossedSymbols().Any() && !sheet.CrossedWords().Any());
    }, iter: 300);

    [Fact]
    public void Draw_Drafts_MarkWhatTheyAdd()
    {
        foreach (BoatModel? draft in SampleBoats.ExampleDrafts)
        {
            foreach (string svg in OneLineSheets.Draw(SampleBoats.Example, draft, new SheetOptions()))
            {
                SheetReader sheet = new(svg);
                Assert.Empty(sheet.Overlaps());
                Assert.Equal(draft is not null, sheet.Texts.Any(text => text.Words.Contains("Heavy, bold", StringComparison.Ordinal)));
            }
        }
    }

    [Fact]
    public void Draw_NoWiring_IsOneEmptySheet() => Assert.Single(OneLineSheets.Draw(new BoatModel(), null, new SheetOptions()));

    private static SheetReader[] Read(BoatModel boat, PaperSize paper, DisplayUnits units) =>
        [.. OneLineSheets.Draw(boat, null, new SheetOptions { Paper = paper, Units = units, About = "as built · 2026-11-30 · revision 7" }).Select(svg => new SheetReader(svg))];
}
