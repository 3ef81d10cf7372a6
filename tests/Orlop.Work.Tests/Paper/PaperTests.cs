using System.Text.Json;
using System.Text.RegularExpressions;
using System.Xml.Linq;
using Orlop.Boat.Alterations;
using Orlop.Boat.Things;
using Orlop.Boat.Values;
using Orlop.Work.Paper;
using Xunit;

namespace Orlop.Work.Tests.Paper;

public partial class PaperTests
{
    private static readonly PaperOptions Options = new(Boats.Day, "7");
    private static readonly string Html = WorkPackHtml.Render(Boats.PumpPack, Options);

    [Fact]
    public void Render_Twice_IsTheSame() => Assert.Equal(Html, WorkPackHtml.Render(Boats.Plan(Boats.Small, Boats.Pump), Options));

    [Fact]
    public void Render_AsksNothingOfTheNetwork()
    {
        Assert.DoesNotMatch(@"src\s*=|href\s*=\s*""[^#]", Html);
        Assert.DoesNotContain("@import", Html, StringComparison.Ordinal);
        Assert.DoesNotContain("url(", Html, StringComparison.Ordinal);
        Assert.DoesNotContain("<script", Html, StringComparison.Ordinal);
        Assert.All(Addresses().Matches(Html), address => Assert.StartsWith("http://www.w3.org/", address.Value, StringComparison.Ordinal));
    }

    [Fact]
    public void Render_IsWellFormed_WithOneLanguageAndUniqueIds()
    {
        XElement page = Page(Html);
        Assert.Equal("en", page.Attribute("lang")!.Value);
        Assert.Distinct(page.Descendants().Attributes("id").Select(id => id.Value));
    }

    [Fact]
    public void Render_LinksAtTheTop_LeadToPartsOfThePage()
    {
        XElement page = Page(Html);
        string[] targets = [.. page.Descendants("nav").Single().Elements("a").Select(link => link.Attribute("href")!.Value[1..])];
        Assert.Equal(["bring", "cut", "ways", "steps", "ends", "readings", "drawing", "labels"], targets);
        Assert.Subset(page.Descendants().Attributes("id").Select(id => id.Value).ToHashSet(), targets.ToHashSet());
        Assert.Contains("@media print{.parts,.screen{display:none}}", Html, StringComparison.Ordinal);
    }

    /// <summary>10.5 drawing units at 96 in an inch are 2.78 mm, and larger on an upright page up to 690 units wide; a wider one is made smaller there down to 0.8, which leaves 2.2 mm; beyond, it lies on its side, where 272 mm between the margins keep 2.2 mm up to 1298 units.</summary>
    [Fact]
    public void Render_Diagrams_AreLargeEnoughToReadAndCutNoName()
    {
        XElement[] drawings = [.. Page(Html).Descendants().Where(element => element.Attribute("id")?.Value == "drawing").Descendants().Where(element => element.Name.LocalName == "svg")];
        Assert.True(drawings.Length > 1);
        Assert.All(drawings, drawing => Assert.InRange(double.Parse(drawing.Attribute("width")!.Value, System.Globalization.CultureInfo.InvariantCulture), 100, 1298));
        Assert.All(drawings, drawing => Assert.DoesNotContain("…", drawing.Value, StringComparison.Ordinal));
        string words = string.Concat(drawings.Select(drawing => drawing.Value));
        Assert.All(["Pump fuse", "Pump", "Lamp", "Main fuse", "Plus bar"], name => Assert.Contains(name, words, StringComparison.Ordinal));
    }

    [Fact]
    public void Render_Number_IsNotPartedFromItsUnit()
    {
        Assert.Contains("0.5\u00a0V", System.Net.WebUtility.HtmlDecode(Html), StringComparison.Ordinal);
        Assert.DoesNotMatch(@"\d (?:mm²|V|A|kΩ|mΩ|N·m)[ .,;<)]", Html[Html.IndexOf("<main", StringComparison.Ordinal)..Html.IndexOf("id=\"drawing\"", StringComparison.Ordinal)]);
    }

    [Fact]
    public void Render_Headings_SkipNoLevel()
    {
        int[] levels = [.. Headings().Matches(Html).Select(match => match.Groups[1].Value[0] - '0')];
        Assert.Equal(1, levels[0]);
        Assert.Single(levels, 1);
        Assert.All(levels.Zip(levels.Skip(1)), pair => Assert.True(pair.Second <= pair.First + 1));
    }

    [Fact]
    public void Render_EveryStep_HasABoxAndASignature()
    {
        XElement[] steps = [.. Page(Html).Descendants().Where(element => element.Attribute("class")?.Value.Split(' ')[0] == "step")];
        Assert.Equal(Boats.PumpPack.Steps.Length, steps.Length);
        Assert.All(steps, step => Assert.Contains(step.Descendants(), part => part.Attribute("class")?.Value == "box"));
        Assert.All(steps, step => Assert.Contains(step.Descendants(), part => part.Attribute("class")?.Value == "sign"));
    }

    [Fact]
    public void Render_TickBoxes_AreAtLeastSixMillimetres() =>
        Assert.All(BoxSizes().Matches(Html), size => Assert.True(double.Parse(size.Groups[1].Value, System.Globalization.CultureInfo.InvariantCulture) >= 6));

    [Fact]
    public void Render_SaysDayRevisionAndThatItIsNoSurvey()
    {
        Assert.Contains("2026-11-25", Html, StringComparison.Ordinal);
        Assert.Contains("Check against local rules; not a survey.", Html, StringComparison.Ordinal);
        Assert.Contains("data-mm=\"100\"", Html, StringComparison.Ordinal);
        Assert.DoesNotMatch(@"(?i)\bsafe\b", Html);
    }

    [Fact]
    public void Render_HostileNames_AreTextEverywhere()
    {
        const string Hostile = "</style><script>alert(1)</script>\" onload=\"x' & \\";
        Alteration work = Boats.Pump with
        {
            Name = Hostile,
            Edits = Boats.Pump.Edits.Select(edit => edit.Id == "pump" ? BoatEdits.Add(((ElectricLoad)edit.Becomes!) with { Name = Hostile, Note = Hostile }) : edit).ToValueList(),
        };
        string html = WorkPackHtml.Render(Boats.Plan(Boats.Small, work), Options with { Revision = Hostile });
        Assert.DoesNotContain("<script", html, StringComparison.Ordinal);
        XElement page = Page(html);
        Assert.Contains(page.Descendants("h1"), heading => heading.Value.Contains(Hostile, StringComparison.Ordinal));
        Assert.Empty(page.Descendants().Attributes("onload"));
    }

    [Fact]
    public void Render_ClashingEdits_SaysNotToStart()
    {
        WorkPack pack = Boats.PumpPack with { Clashes = [new Clash("chest", null, null, null)] };
        Assert.Contains("Do not start.", WorkPackHtml.Render(pack, Options), StringComparison.Ordinal);
    }

    [Fact]
    public void Tables_FormulaInACell_IsDefused()
    {
        Alteration work = Boats.Pump with { Edits = Boats.Pump.Edits.Select(edit => edit.Id == "pump-cable" ? BoatEdits.Add(Boats.PumpCable with { Name = "=1+1,\"x\"" }) : edit).ToValueList() };
        Assert.Contains("\"'=1+1,\"\"x\"\"\"", PackTables.Cables(Boats.Plan(Boats.Small, work)), StringComparison.Ordinal);
    }

    [Fact]
    public void Folder_HoldsEveryFile_AndTheJsonReads()
    {
        string folder = Directory.CreateTempSubdirectory("pack-").FullName;
        try
        {
            IReadOnlyList<string> names = PackFolder.Write(Boats.PumpPack, Options, folder);
            Assert.Equal(["pack.html", "pack.json", "cables.csv", "shopping.csv", "labels-1.svg"], names);
            Assert.All(names, name => Assert.True(new FileInfo(Path.Combine(folder, name)).Length > 100));
            using JsonDocument json = JsonDocument.Parse(File.ReadAllText(Path.Combine(folder, "pack.json")));
            Assert.Equal(Boats.PumpPack.Steps.Length, json.RootElement.GetProperty("steps").GetArrayLength());
        }
        finally
        {
            Directory.Delete(folder, recursive: true);
        }
    }

    [Fact]
    public async Task Pdf_WithoutABrowser_SaysHowToPrint()
    {
        PdfResult result = await PdfPrinter.PrintAsync(PdfPrinter.FindBrowser("", _ => false), "pack.html", "pack.pdf", TestContext.Current.CancellationToken);
        Assert.Null(result.File);
        Assert.Contains("print it", result.WhyNot, StringComparison.Ordinal);
    }

    [Fact]
    public void Pdf_BrowserOnThePath_IsFoundFirst() =>
        Assert.EndsWith("chromium", PdfPrinter.FindBrowser($"here{Path.PathSeparator}there", file => file.Contains("there", StringComparison.Ordinal))!.Replace(".exe", "", StringComparison.Ordinal), StringComparison.Ordinal);

    // The page is written so that it is XML too, but for its void elements.
    private static XElement Page(string html) => XElement.Parse(VoidElements().Replace(html[html.IndexOf("<html", StringComparison.Ordinal)..], "<meta $1/>"));

    [GeneratedRegex(@"https?://[^\s""'<]*")]
    private static partial Regex Addresses();

    [GeneratedRegex("<h([1-6])[ >]")]
    private static partial Regex Headings();

    [GeneratedRegex(@"\.box\{display:inline-block;width:(\d+)mm;height:\1mm")]
    private static partial Regex BoxSizes();

    [GeneratedRegex("<meta ([^>]*)>")]
    private static partial Regex VoidElements();
}
