using System.Globalization;
using System.Text.Json.Nodes;
using System.Text.RegularExpressions;
using System.Xml.Linq;
using Orlop.Boat;
using Orlop.Boat.Alterations;
using Orlop.Boat.Things;
using Orlop.Presentation.Quantities;
using Orlop.Presentation.Words;
using Orlop.Review;
using Orlop.Review.Findings;
using Orlop.Work.Bring;
using Orlop.Work.Paper;
using Orlop.Work.Steps;
using Orlop.Work.Troubles;
using Xunit;

namespace Orlop.Work.Tests.Troubles;

/// <summary>A pack is carried away from the screen: what the review holds against the work must go with it.</summary>
public partial class PackTroublesTests
{
    private static readonly PaperOptions Options = new(Boats.Day, "7");

    /// <summary>12.8 V over 5 mΩ inside and some 2 mΩ of leads drive well over 1 kA (Ohm's law); a fuse that breaks 100 A fails.</summary>
    private static readonly Alteration Weak = Boats.Pump with
    {
        Edits = [.. Boats.Pump.Edits.Select(edit => edit.Id == "pump-fuse" ? BoatEdits.Add((Protection)edit.Becomes! with { BreakingA = 100 }) : edit)],
    };

    private static readonly WorkPack Pack = Boats.Plan(Boats.Small, Weak);
    private static readonly ReviewEngine Engine = WholeReview.NewEngine();
    private static readonly PackTroubles Troubles = PackTroubles.Of(Pack, Engine, TestContext.Current.CancellationToken);
    private static readonly string Html = WorkPackHtml.Render(Pack, Options, Engine);
    private static readonly PairedFinding Breaking = Troubles.Findings.Single(pair => pair is { CheckId: "breaking-capacity", SubjectId: "pump-fuse" });

    [Fact]
    public void Findings_AreThoseOfTheReviewThatTheAlterationBringsOrTouches_InItsOrder()
    {
        ReviewResult review = Engine.Review(Boats.Small, Weak, TestContext.Current.CancellationToken);
        HashSet<string> edited = [.. Weak.Edits.Select(edit => edit.Id)];
        string[] wanted =
        [
            .. review.Findings.Where(pair => pair.After is { Worst.Verdict: Verdict.Fails } && (pair.Change is Change.NewTrouble or Change.Worse || edited.Contains(pair.SubjectId.Split('.')[0]) || edited.Contains(pair.Shown.OtherSubjectId ?? "")) || pair.Change == Change.Unknown)
                .Select(pair => $"{pair.CheckId} {pair.SubjectId}"),
        ];
        Assert.NotEmpty(wanted);
        Assert.Equal(wanted, Troubles.Findings.Select(pair => $"{pair.CheckId} {pair.SubjectId}"));
        Assert.Equal(Verdict.Fails, Breaking.Shown.Verdict);
    }

    [Fact]
    public void Findings_WhatFailsAsBefore_IsTheirsOnlyWhereTheAlterationTouchesIt()
    {
        BoatModel boat = Boats.Small.WithThings([.. Boats.Small.Things.Select(thing => thing is Protection { Id: "main-fuse" } fuse ? fuse with { BreakingA = 100 } : thing)]);
        Protection was = boat.Find<Protection>("main-fuse")!;
        Assert.Contains(Of(BoatEdits.Replace(was, was with { Note = "looked at" })).Findings, IsMain);
        Assert.DoesNotContain(Of(BoatEdits.Remove(boat.Find("old-shelf")!)).Findings, IsMain);

        bool IsMain(PairedFinding pair) => pair is { CheckId: "breaking-capacity", SubjectId: "main-fuse", Shown.Verdict: Verdict.Fails };
        PackTroubles Of(Edit edit) => PackTroubles.Of(Boats.Plan(boat, new Alteration { Id = "small", Name = "Small", Edits = [edit] }), Engine, TestContext.Current.CancellationToken);
    }

    [Theory]
    [InlineData(AlterationStatus.Draft, "Draft, not accepted: nothing here is to be built yet.", true)]
    [InlineData(AlterationStatus.Dropped, "Dropped: nothing here is to be built.", true)]
    [InlineData(AlterationStatus.Accepted, "Accepted.", false)]
    [InlineData(AlterationStatus.UnderWay, "Accepted and under way.", false)]
    [InlineData(AlterationStatus.Built, "Built.", false)]
    public void Render_FirstPage_SaysHowFarItHasComeAndCountsWhatFails(AlterationStatus status, string words, bool isBoxed)
    {
        string html = WorkPackHtml.Render(Boats.Plan(Boats.Small, Weak with { Status = status }), Options, Engine), first = html[..html.IndexOf("id=\"bring\"", StringComparison.Ordinal)];
        int fails = Troubles.Findings.Count(pair => pair.Shown.Verdict == Verdict.Fails), unknown = Troubles.Findings.Count(pair => pair.Shown.Verdict == Verdict.Unknown);
        Assert.StartsWith(words, Row(first, "Status"), StringComparison.Ordinal);
        Assert.Matches($@"\b{fails} findings? fails?\b", Row(first, "Status"));
        Assert.Equal(unknown > 0, Row(first, "Status").Contains($"{unknown} cannot be told", StringComparison.Ordinal));
        Assert.Equal(isBoxed, first.Contains("<b>Nothing here is to be built.</b>", StringComparison.Ordinal));
    }

    [Theory]
    [InlineData(AlterationStatus.Accepted, "Accepted on 2026-11-20.")]
    [InlineData(AlterationStatus.UnderWay, "Accepted on 2026-11-20 and under way.")]
    [InlineData(AlterationStatus.Built, "Built; accepted on 2026-11-20.")]
    public void Render_FirstPage_SaysWhenItWasAccepted_WhereThatIsRecorded(AlterationStatus status, string words)
    {
        WorkPack pack = Boats.Plan(Boats.Small, Weak with { Status = status, AcceptedOn = new DateOnly(2026, 11, 20) });
        Assert.StartsWith(words, Row(WorkPackHtml.Render(pack, Options, Engine), "Status"), StringComparison.Ordinal);
        Assert.Equal("2026-11-20", (string?)JsonNode.Parse(PackJson.Write(pack, Options, Engine))!["acceptedOn"]);
        Assert.Null(JsonNode.Parse(PackJson.Write(Pack, Options, Engine))!["acceptedOn"]);
    }

    [Fact]
    public void Status_WhereNothingIsAgainstIt_SaysSoAndClaimsNoMore()
    {
        Alteration shelf = new() { Id = "shelf", Name = "Shelf", Status = AlterationStatus.Accepted, Edits = [BoatEdits.Remove(Boats.Small.Find("old-shelf")!)] };
        WorkPack pack = Boats.Plan(Boats.Small, shelf);
        Assert.Equal("Accepted. The review has no finding that fails or cannot be told about what it touches.", PackTroubles.Of(pack, Engine, TestContext.Current.CancellationToken).Status);
        Assert.DoesNotContain("id=\"troubles\"", WorkPackHtml.Render(pack, Options, Engine), StringComparison.Ordinal);
    }

    [Fact]
    public void Render_FirstPage_ListsAllThatFails_WithWordAndShape()
    {
        string[] lines = [.. Page(Html).Descendants("section").Single(section => section.Attribute("id")?.Value == "troubles").Descendants("li").Select(line => line.ToString())];
        Assert.All(Troubles.Findings.Where(pair => pair.Shown.Verdict == Verdict.Fails), pair => Assert.Contains(lines, line =>
            line.Contains("<rect", StringComparison.Ordinal) && line.Contains("> fails<", StringComparison.Ordinal) && Plain(XElement.Parse(line).Value).Contains(Words(pair), StringComparison.Ordinal)));
    }

    [Fact]
    public void Render_Step_NamesWhatFailsAboutWhatItFits()
    {
        int at = Pack.Steps.ToList().FindIndex(step => step.Key == "fit:pump-fuse");
        XElement[] steps = [.. Page(Html).Descendants().Where(element => element.Attribute("class")?.Value.Split(' ')[0] == "step")];
        Assert.Contains(steps[at].Elements(), line => line.Attribute("class")?.Value == "against" && Plain(line.Value).Contains($"fails: {Words(Breaking)}", StringComparison.Ordinal) && Plain(line.Value).EndsWith("see page 1.", StringComparison.Ordinal));
        Assert.All(Pack.Steps.Where(step => step.Kind is StepKind.Isolate or StepKind.ProveDead or StepKind.Energise), step => Assert.Empty(Troubles.FailingAt(step, Pack)));
    }

    /// <summary>Whoever works begins a cable by running it and ends it by connecting it: both say what is against it.</summary>
    [Fact]
    public void FailingAt_Cable_IsSaidWhereItIsBegunAndWhereItIsBuilt()
    {
        Alteration thin = Boats.Pump with { Edits = [.. Boats.Pump.Edits.Select(edit => edit.Id == "pump-cable" ? BoatEdits.Add(Boats.PumpCable with { AreaMm2 = 0.5 }) : edit)] };
        WorkPack pack = Boats.Plan(Boats.Small, thin);
        PackTroubles troubles = PackTroubles.Of(pack, Engine, TestContext.Current.CancellationToken);
        string[] saying = [.. pack.Steps.Where(step => troubles.FailingAt(step, pack).Any(pair => pair.IsAbout("pump-cable"))).Select(step => step.Key)];
        Assert.Equal(["run:pump-cable", "connect:pump-cable"], saying);
    }

    [Fact]
    public void BringListAndShopping_SayWhatFails()
    {
        BringItem fuse = Pack.Bring.Single(item => item.Kind == BringKind.Fuse && item.For.Contains("pump-fuse"));
        Assert.Contains(Breaking, Troubles.FailingFor(fuse));
        XElement bring = Page(Html).Descendants("section").Single(section => section.Attribute("id")?.Value == "bring");
        Assert.Contains(bring.Descendants("tr"), row => Plain(row.Value).Contains($"fails: {Words(Breaking)}", StringComparison.Ordinal));
        Assert.Contains($"Fails: {Words(Breaking)}", Plain(PackTables.Shopping(Pack with { Bring = [fuse with { State = StockState.ToBuy }] }, Troubles, new PackText(Options))), StringComparison.Ordinal);
        Assert.All(Pack.Bring.Where(item => item.Kind is BringKind.Tool or BringKind.Consumable or BringKind.Label), item => Assert.Empty(Troubles.FailingFor(item)));
    }

    [Fact]
    public void Json_HoldsStatusFindingsAndWhatFailsAtEachStep()
    {
        JsonNode json = JsonNode.Parse(PackJson.Write(Pack, Options, Engine))!;
        Assert.Equal(Troubles.Status, (string?)json["status"]);
        Assert.Equal(Troubles.Findings.Select(pair => (pair.CheckId, pair.SubjectId)), json["findings"]!.AsArray().Select(found => ((string)found!["check"]!, (string)found["subject"]!)));
        JsonNode step = json["steps"]!.AsArray().Single(step => (string?)step!["key"] == "fit:pump-fuse")!;
        Assert.Contains(step["fails"]!.AsArray(), words => Plain((string)words!).StartsWith(Words(Breaking), StringComparison.Ordinal));
    }

    /// <summary>Twelve lines of what cannot be told are printed, the rest is counted: none is lost.</summary>
    [Fact]
    public void Render_ManyUnknown_AreCutWithACount()
    {
        Alteration lamps = new()
        {
            Id = "lamps",
            Name = "Lamps",
            Edits =
            [
                .. Enumerable.Range(1, 20).SelectMany(number => new[]
                {
                    BoatEdits.Add(new ElectricLoad { Id = $"lamp-{number}", Name = $"Lamp {number}", Behaviour = LoadBehaviour.Power, NominalV = 12, RunningW = 5, Uses = [new("at-anchor", 1)] }),
                    BoatEdits.Add(Boats.Pair($"lamp-{number}-cable", "plus.bar", $"lamp-{number}", 1.5, 3) with { LengthM = null, Run = [] }),
                }),
            ],
        };
        WorkPack pack = Boats.Plan(Boats.Small, lamps);
        PackTroubles troubles = PackTroubles.Of(pack, Engine, TestContext.Current.CancellationToken);
        string[] lines = [.. Page(WorkPackHtml.Render(pack, Options, Engine)).Descendants("section").Single(section => section.Attribute("id")?.Value == "troubles").Descendants("li").Select(line => line.Value)];
        string[] unknown = [.. lines.Where(line => line.StartsWith("unknown", StringComparison.Ordinal))];
        Match left = More().Match(Assert.Single(lines, line => More().IsMatch(line)));
        Assert.Equal(12, unknown.Length);
        Assert.Equal(troubles.UnknownCount, unknown.Sum(line => Waiting().Match(line) is { Success: true } many ? Number(many) : 1) + Number(left));
    }

    private static int Number(Match match) => int.Parse(match.Groups[1].Value, CultureInfo.InvariantCulture);

    private static string Words(PairedFinding pair) => Plain(SentenceText.Of(pair.Shown.Headline, DisplayUnits.Metric, CultureInfo.InvariantCulture));

    private static string Plain(string words) => words.Replace('\u00a0', ' ');

    private static string Row(string html, string name) => Regex.Match(html, $"<th scope=\"row\">{name}</th><td>([^<]*)</td>").Groups[1].Value;

    private static XElement Page(string html) => XElement.Parse(VoidElements().Replace(html[html.IndexOf("<html", StringComparison.Ordinal)..], "<meta $1/>"));

    [GeneratedRegex(@"^and (\d+) more")]
    private static partial Regex More();

    [GeneratedRegex(@"(\d+) checks wait")]
    private static partial Regex Waiting();

    [GeneratedRegex("<meta ([^>]*)>")]
    private static partial Regex VoidElements();
}
