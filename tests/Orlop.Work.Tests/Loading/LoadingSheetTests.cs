using System.Net;
using System.Text.RegularExpressions;
using System.Xml.Linq;
using Orlop.Boat;
using Orlop.Boat.Things;
using Orlop.Presentation.Quantities;
using Orlop.Review;
using Orlop.Review.Findings;
using Orlop.Review.Stability;
using Orlop.Work.Loading;
using Orlop.Work.Paper;
using Xunit;

namespace Orlop.Work.Tests.Loading;

/// <summary>The demo boat's sheet with the first sampling winch, whose lifting heels her too far.</summary>
public sealed class LoadingSheetTests(LoadingSheetTests.Lifting made) : IClassFixture<LoadingSheetTests.Lifting>
{
    /// <summary>The sheet of one condition, made once.</summary>
    public sealed class Lifting
    {
        public LoadingSheet Sheet { get; } = Make("sampling-winch", "lifting");

        public string Html => field ??= LoadingSheetHtml.Render(Sheet, new PaperOptions(new DateOnly(2026, 5, 2)));
    }

    private static LoadingSheet Make(string alteration, string condition)
    {
        BoatModel boat = DemoBoat.Read();
        return LoadingSheet.Make(new ReviewEngine([new StabilityDiscipline()]), boat, boat.Find<Alteration>(alteration), [condition]);
    }

    [Fact]
    public void Findings_AreThoseOfTheReviewInThatCondition()
    {
        SheetCondition lifting = Assert.Single(made.Sheet.Conditions);

        Assert.Contains(lifting.Findings, row => row is { Check.Id: "list", Now.Verdict: Verdict.Fails, Was.Verdict: Verdict.Holds });
        Assert.All(lifting.Findings, row => Assert.Equal("lifting", (row.Now ?? row.Was)!.ConditionId));
        Assert.All(made.Sheet.Always, row => Assert.Null((row.Now ?? row.Was)!.ConditionId));
        Assert.Equal(lifting.Findings.Select(row => Verdicts.Weight((row.Now ?? row.Was)!.Verdict)).OrderDescending(), lifting.Findings.Select(row => Verdicts.Weight((row.Now ?? row.Was)!.Verdict)));
    }

    [Fact]
    public void Page_TellsBothBoatsTheirLeversCriteriaAndWhatTheyRestOn()
    {
        foreach (string told in new[]
        {
            "As built", "As altered", "LCG, forward", "KG, above base", "Least freeboard", "Righting levers to", "± two standard deviations", "2008 IS Code part A 2.2", "Does not apply here",
            "stations", "No deckhouse is counted", "Masses only estimated or guessed", "Wheelhouse door, starboard at", "Always aboard", "matter of life", "the deck is closed and watertight from edge to edge",
        })
        {
            Assert.Contains(told, made.Html.Replace('\u00A0', ' '), StringComparison.Ordinal);
        }
    }

    // The demo boat states a motion under way and none while lifting.
    [Fact]
    public void Motions_StandWhereOneIsStated_AsThePageTellsThem()
    {
        BoatModel boat = DemoBoat.Read();
        Condition moving = boat.All<Condition>().First(condition => condition.Motion is not null);
        LoadingSheet sheet = LoadingSheet.Make(new ReviewEngine([new StabilityDiscipline()]), boat, null, [moving.Id], hasLevers: false, token: TestContext.Current.CancellationToken);
        string html = WebUtility.HtmlDecode(LoadingSheetHtml.Render(sheet, new PaperOptions(new DateOnly(2026, 5, 2)))).Replace('\u00A0', ' ');
        WeightRow heaviest = sheet.Shown.LoadedIn(moving).Ledger.Rows.Where(row => row.Kind is WeightKind.Gear or WeightKind.Part or WeightKind.Deadweight).MaxBy(row => row.MassKg)!;
        MotionAt motion = MotionAt.Of(sheet.Shown, moving, heaviest.Place, heaviest.Title);

        Assert.Contains(QuantityText.Shown(motion.Result!.AcrossMPerS2, "MPerS2", DisplayUnits.Metric, System.Globalization.CultureInfo.InvariantCulture).Replace('\u00A0', ' '), html, StringComparison.Ordinal);
        Assert.Contains(MotionAt.Range, html, StringComparison.Ordinal);
        Assert.Contains("rigid-body mechanics, harmonic motion", html, StringComparison.Ordinal);
        Assert.Contains(MotionAt.Caution, html, StringComparison.Ordinal);
        Assert.DoesNotContain("Accelerations and tilt", made.Html, StringComparison.Ordinal);
        Assert.Contains("No motion is stated for these conditions", made.Html, StringComparison.Ordinal);
    }

    [Fact]
    public void Glance_WithoutRules_SaysSo_AndCountsNoOtherCheckAsACriterion()
    {
        BoatModel demo = DemoBoat.Read();
        BoatModel boat = demo.WithThings(demo.Things.Where(thing => thing is not (StabilityBasis or PracticeChoice)));
        LoadingSheet sheet = LoadingSheet.Make(new ReviewEngine([new StabilityDiscipline()]), boat, null, ["lifting"], hasLevers: false, token: TestContext.Current.CancellationToken);
        string cell = Regex.Match(LoadingSheetHtml.Render(sheet, new PaperOptions(new DateOnly(2026, 5, 2))), "no stability rules are chosen[^<]*").Value;

        Assert.Equal("no stability rules are chosen", cell);
        Assert.Contains(sheet.Conditions[0].Findings, row => row is { Check.Id: "floats-at-rest", Now.Verdict: Verdict.Holds });
        Assert.Contains(sheet.Always, row => row is { Check.Id: "stability-rules-chosen", Now.Verdict: Verdict.Unknown });
    }

    [Fact]
    public void Page_SaysSideAndHeelOfEveryLeverAndGm()
    {
        string html = WebUtility.HtmlDecode(made.Html).Replace('\u00A0', ' ');

        Assert.Contains("GM where she rests", html, StringComparison.Ordinal);
        Assert.Matches(new Regex(@"Greatest lever</th><td[^>]*>[^<]* at [^<]*° to (port|starboard)"), html);
        Assert.Matches(new Regex("Heel of the greatest lever, to (port|starboard), is "), html);
        Assert.Contains("Initial GM, free surfaces taken off, upright, is ", html, StringComparison.Ordinal);
        Assert.Matches(new Regex("off GM where she rests, heeled [^<]*° to (port|starboard), and leave"), html);
    }

    // A hatch 0.2 m over the base line is some 0.6 m under water: no GM, range or lever of that boat stands anywhere.
    [Fact]
    public void Page_OfABoatThatFills_TellsNoGm()
    {
        BoatModel demo = DemoBoat.Read();
        BoatModel boat = demo.WithThings([.. demo.Things, new HullOpening { Id = "sill", Name = "Low hatch", Use = OpeningUse.Hatch, Place = new Orlop.Boat.Values.Place(4, 0, 0.2) }]);
        LoadingSheet sheet = LoadingSheet.Make(new ReviewEngine([new StabilityDiscipline()]), boat, null, ["lifting"], hasLevers: false, token: TestContext.Current.CancellationToken);
        string html = WebUtility.HtmlDecode(LoadingSheetHtml.Render(sheet, new PaperOptions(new DateOnly(2026, 5, 2))));

        Assert.Contains("She fills: Low hatch", html, StringComparison.Ordinal);
        Assert.Contains("<td data-head=\"GM\">fills</td>", html, StringComparison.Ordinal);
        Assert.Matches(new Regex("GM where she rests</th><td[^>]*>fills<"), html);
        Assert.Matches(new Regex("Greatest lever</th><td[^>]*>fills<"), html);
        Assert.Matches(new Regex("Range</th><td[^>]*>fills where she comes to rest"), html);
    }

    [Fact]
    public void Page_OfAHullThatNobodyMeasured_SaysSoOnceAmongWhatItRestsOn()
    {
        BoatModel demo = DemoBoat.Read();
        BoatModel boat = demo.WithThings(demo.Things.Select(thing => thing is HullLines lines ? lines with { Stations = [.. lines.Stations.Select((station, index) => station with { Origin = index == 0 ? StationOrigin.Measured : StationOrigin.Form })] } : thing));
        LoadingSheet sheet = LoadingSheet.Make(new ReviewEngine([new StabilityDiscipline()]), boat, null, ["lifting"], hasLevers: false, token: TestContext.Current.CancellationToken);
        string html = WebUtility.HtmlDecode(LoadingSheetHtml.Render(sheet, new PaperOptions(new DateOnly(2026, 5, 2))));
        int count = boat.All<HullLines>().Single().Stations.Count;

        Assert.Single(Regex.Matches(html, $"<li>{count - 1} of {count} stations are the form's, not measured"));
        Assert.DoesNotContain("the form's", made.Html, StringComparison.Ordinal);
    }

    [Fact]
    public void Page_CallsNothingSafe() => Assert.DoesNotMatch(new Regex(@"\b(un)?safe(ly|ty)?\b", RegexOptions.IgnoreCase), made.Html);

    [Fact]
    public void Page_AsksNothingOfTheNetworkAndIsWellFormed()
    {
        Assert.DoesNotContain("http", Regex.Replace(made.Html, "http://www.w3.org/2000/svg", ""), StringComparison.Ordinal);
        string body = made.Html[made.Html.IndexOf("<body>", StringComparison.Ordinal)..made.Html.LastIndexOf("</html>", StringComparison.Ordinal)];
        Assert.NotEmpty(XElement.Parse(body.Replace("&nbsp;", " ", StringComparison.Ordinal)).Descendants("table"));
    }

    [Fact]
    public void Page_InUsUnits_HasPoundsAndFeet()
    {
        string html = LoadingSheetHtml.Render(made.Sheet, new PaperOptions(new DateOnly(2026, 5, 2)) { Units = DisplayUnits.Us });

        Assert.Contains("\u00A0lb", html.Replace("&#160;", "\u00A0", StringComparison.Ordinal), StringComparison.Ordinal);
        Assert.DoesNotContain("8532", html, StringComparison.Ordinal);
    }

    [Fact]
    public void Page_OfABoatWithoutLines_SaysUnknown()
    {
        BoatModel boat = DemoBoat.Read();
        BoatModel bare = boat.WithThings(boat.Things.Where(thing => thing is not HullLines));
        LoadingSheet sheet = LoadingSheet.Make(new ReviewEngine([new StabilityDiscipline()]), bare, null, ["lifting"], token: TestContext.Current.CancellationToken);
        string html = LoadingSheetHtml.Render(sheet, new PaperOptions(new DateOnly(2026, 5, 2)));

        Assert.Contains("no lines are given", html, StringComparison.Ordinal);
        Assert.Contains("unknown", html, StringComparison.Ordinal);
        Assert.Null(Assert.Single(sheet.Conditions).Levers);
        Assert.DoesNotContain(sheet.Conditions[0].Findings, row => row.Now?.Verdict == Verdict.Holds && row.Check.Id is "general-intact" or "least-gm" or "freeboard");
    }
}
