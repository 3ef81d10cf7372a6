using System.Xml.Linq;
using Orlop.Boat.Things;
using Orlop.Work.Paper;
using Orlop.Work.Steps;
using Xunit;

namespace Orlop.Work.Tests.Paper;

/// <summary>What stands together on paper, what may part, and the room there is to write.</summary>
public class PaperFlowTests
{
    private static readonly PaperOptions Options = new(Boats.Day, "7");
    private static readonly string Html = WorkPackHtml.Render(Boats.PumpPack, Options);

    [Fact]
    public void Render_StepThatIsRead_HasRoomToWriteInItsUnit()
    {
        XElement[] steps = Steps(Html);
        Assert.Contains(Boats.PumpPack.Steps, step => step.WriteDown is not null);
        foreach ((WorkStep step, XElement drawn) in Boats.PumpPack.Steps.Zip(steps))
        {
            string[] units = [.. With(drawn, "room").Select(room => room.Value[^(step.WriteDown?.Unit.Length ?? 0)..])];
            Assert.Equal(step.WriteDown is null, units.Length == 0);
            Assert.All(units, unit => Assert.Equal(step.WriteDown!.Unit, unit));
        }
    }

    [Fact]
    public void Json_StepThatIsRead_CarriesWhatIsWrittenDown()
    {
        System.Text.Json.Nodes.JsonArray steps = System.Text.Json.Nodes.JsonNode.Parse(PackJson.Write(Boats.PumpPack, Options))!["steps"]!.AsArray();
        Assert.Equal(Boats.PumpPack.Steps.Select(step => step.WriteDown?.Unit), steps.Select(step => (string?)step!["writeDown"]?["unit"]));
        Assert.Equal(Boats.PumpPack.Steps.Select(step => step.WriteDown?.What), steps.Select(step => (string?)step!["writeDown"]?["what"]));
    }

    [Fact]
    public void Render_Sources_ComeBeforeTheDiagramsThatMayLieOnTheirSide() =>
        Assert.InRange(Html.IndexOf("id=\"sources\"", StringComparison.Ordinal), Html.IndexOf("id=\"readings\"", StringComparison.Ordinal), Html.IndexOf("id=\"drawing\"", StringComparison.Ordinal));

    [Fact]
    public void Render_WithoutARevision_SaysNothingOfOne() => Assert.DoesNotContain("revision", WorkPackHtml.Render(Boats.PumpPack, new PaperOptions(Boats.Day)), StringComparison.Ordinal);

    /// <summary>A page of boxes on a screen looks as if it could be ticked; it says where that is done, and leads there where it is served.</summary>
    [Fact]
    public void Render_OnAScreen_SaysWhereItIsTypedIn()
    {
        string served = WorkPackHtml.Render(Boats.PumpPack, Options with { RecordHref = "/record?alteration=pump&part=steps" });

        Assert.Contains("Nothing can be typed or ticked on this page", Html, StringComparison.Ordinal);
        Assert.DoesNotContain("href=\"/record", Html, StringComparison.Ordinal);
        Assert.Contains("href=\"/record?alteration=pump&amp;part=steps\"", served, StringComparison.Ordinal);
        Assert.Matches("@media print\\{[^}]*\\.screen\\{display:none\\}", Html);
    }

    [Fact]
    public void Render_LabelSheet_NamesBoatAndAlteration() => Assert.Contains("Sandpiper, Pump: cable labels", Html, StringComparison.Ordinal);

    [Fact]
    public void Render_ProveDead_HasOneFieldForEachLimit()
    {
        int index = Boats.PumpPack.Steps.ToList().FindIndex(step => step.Kind == StepKind.ProveDead && step.WriteDown is { What: null });
        Assert.True(index >= 0);
        int limits = Boats.PumpPack.Steps[index].Details.Count(detail => detail.Parts.Any(part => part.Amount is not null));
        Assert.True(limits > 0);
        Assert.Equal(limits, With(Steps(Html)[index], "room").Count());
    }

    [Fact]
    public void Render_WorkBehind_IsOneLine_AndItsCautionIsSaidWhereWorkIsLeft()
    {
        int index = Boats.PumpPack.Steps.ToList().FindIndex(step => step.Kind == StepKind.Fit && step.Cautions.Any(caution => caution.Kind == CautionKind.Drilling));
        Assert.True(index >= 0);
        WorkPack pack = Boats.PumpPack with { Steps = Boats.PumpPack.Steps.SetItem(index, Boats.PumpPack.Steps[index] with { Tick = new StepTick(Boats.PumpPack.Steps[index].Key, Boats.Day.AddDays(-1)) }) };
        XElement[] steps = Steps(WorkPackHtml.Render(pack, Options));
        Assert.Empty(With(steps[index], "caution"));
        Assert.DoesNotContain(steps, step => step.Value.Contains($"as in step {index + 1}.", StringComparison.Ordinal));
        Assert.Contains("Before drilling", string.Concat(steps.Select(step => step.Value)), StringComparison.Ordinal);
    }

    [Fact]
    public void Render_StepOfOneDay_IsPrintedWholeThoughTicked()
    {
        WorkPack pack = Boats.PumpPack with { Steps = [.. Boats.PumpPack.Steps.Select(step => step with { Tick = new StepTick(step.Key, Boats.Day) })] };
        foreach ((WorkStep step, XElement drawn) in pack.Steps.Zip(Steps(WorkPackHtml.Render(pack, Options))))
        {
            Assert.Equal(step.IsForOneDay || step.Kind == StepKind.Weigh ? step.Details.Length : 0, drawn.Descendants("li").Count());
        }
    }

    [Fact]
    public void Render_LongStep_MayBreakBetweenItsParts_ButNotAfterItsHeadOrCaution()
    {
        Assert.DoesNotMatch(@"(?m)^\s*\.step\{[^}]*break-inside", Html);
        Assert.Contains(".step:not(.long),.head{break-inside:avoid}", Html, StringComparison.Ordinal);
        Assert.Contains(".step>:not(:first-child){break-before:avoid}", Html, StringComparison.Ordinal);
        Assert.All(Steps(Html), step => Assert.Equal("head", step.Elements().First().Attribute("class")?.Value));
    }

    [Fact]
    public void Render_OnlyDiagramsOnTheirSideAndLabels_StartAPage()
    {
        string[] starts = [.. Page(Html).Descendants("section").Where(section => section.Attribute("class")?.Value.Split(' ').Contains("follows") != true).Select(section => section.Attribute("id")!.Value)];
        Assert.Subset(new HashSet<string> { "drawing", "labels" }, starts.ToHashSet());
        Assert.Contains("labels", starts);
    }

    [Fact]
    public void Render_Foot_NamesBoatAlterationDayAndPage()
    {
        string style = Html[..Html.IndexOf("</style>", StringComparison.Ordinal)];
        Assert.Contains($"{Boats.PumpPack.BoatTitle} · {Boats.PumpPack.Alteration.Title} · 2026-11-25", style, StringComparison.Ordinal);
        Assert.Contains("\"Page \" counter(page) \" of \" counter(pages)", style, StringComparison.Ordinal);
    }

    private static XElement[] Steps(string html) => [.. Page(html).Descendants().Where(element => element.Attribute("class")?.Value.Split(' ')[0] == "step")];

    private static IEnumerable<XElement> With(XElement within, string style) => within.Descendants().Where(element => element.Attribute("class")?.Value.Split(' ').Contains(style) == true);

    private static XElement Page(string html) => XElement.Parse(html[html.IndexOf("<main", StringComparison.Ordinal)..(html.IndexOf("</main>", StringComparison.Ordinal) + "</main>".Length)]);
}
