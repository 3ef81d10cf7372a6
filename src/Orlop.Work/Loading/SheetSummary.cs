using Orlop.Presentation.Quantities;
using Orlop.Presentation.Views.Floating;
using Orlop.Presentation.Words;
using Orlop.Review;
using Orlop.Review.Findings;
using Orlop.Review.Stability;
using Orlop.Work.Paper;

namespace Orlop.Work.Loading;

/// <summary>All conditions at a glance: how she floats, and how many of the criteria fail, are tight, unknown and hold.</summary>
internal static class SheetSummary
{
    public static void Write(HtmlText html, LoadingSheet sheet, SheetText text)
    {
        html.Put("h2", "At a glance");
        Table(html, sheet, text);
        html.Put("p", "Trim is the draught at the hull's after end less that at her forward end. A verdict on one line: what fails, what is tight (within a tenth of its limit), what cannot be told, what holds; each stands with its number and source under its condition.", ("class", "small"));
    }

    /// <summary>The table alone.</summary>
    public static void Table(HtmlText html, LoadingSheet sheet, SheetText text)
    {
        bool isCompared = sheet.AsBuilt is not null;
        SheetTables.Open(html, "glance", ["Condition", .. isCompared ? new[] { "" } : [], "Displacement", "Trim", "Heel", "Least freeboard", "GM", "Range", "Criteria"]);
        foreach (SheetCondition condition in sheet.Conditions)
        {
            html.Open("tr");
            if (condition.Was is { } was)
            {
                html.Put("th", condition.Condition.Title, ("scope", "row"), ("rowspan", "2")).Put("td", "as built", ("class", "state"));
                Cells(html, sheet.AsBuilt!, was, condition.Findings.Where(row => row.Was is not null).Select(row => (row.Check, row.Was!)), text);
                html.Close().Open("tr").Put("td", "as altered", ("class", "state"));
            }
            else
            {
                html.Put("th", condition.Condition.Title, ("scope", "row"));
                _ = isCompared ? html.Put("td", "new", ("class", "state")) : html;
            }

            Cells(html, sheet.Shown, condition.Now, condition.Findings.Where(row => row.Now is not null).Select(row => (row.Check, row.Now!)), text);
            html.Close();
        }

        SheetTables.Close(html);
    }

    private static void Cells(HtmlText html, StabilityView view, FloatingFacts facts, IEnumerable<(CheckDescription Check, Finding Told)> findings, SheetText text)
    {
        string Known(string? words) => words ?? QuantityText.Unknown;
        SheetTables.Cell(html, "Displacement", Known(facts.MassKg is { } mass ? string.Join(", ", new[] { text.Kg(mass), FloatingWords.Nobody(view.Boat, facts) }.Where(words => words.Length > 0)) : null));
        SheetTables.Cell(html, "Trim", Known(facts.TrimM is { } trim ? text.Trim(trim) : null));
        SheetTables.Cell(html, "Heel", Known(facts.Position is { } at ? $"{text.Heel(at.Attitude.HeelDeg)}{(facts.Under is null ? "" : facts.Fills ? ": she fills" : ": she may fill")}" : facts.CapsizedHeelDeg is { } over ? $"{text.Heel(over)}: she capsizes" : null));
        SheetTables.Cell(html, "Least freeboard", Known(view.LeastFreeboardIn(facts.Condition) is { } least ? text.M(least.HeightM) : null));
        SheetTables.Cell(html, "GM", facts.GmM is { } gm ? text.M(gm) : FloatingWords.NotTold(facts));
        SheetTables.Cell(html, "Range", $"{FloatingWords.Range(view.Boat, facts, text.Units, text.Culture).Value}{(OpeningsGiven.IsAny(view.Boat) ? "" : ", where she floods is not known")}");
        SheetTables.Cell(html, "Criteria", Counted(view, [.. findings]));
    }

    // Criteria are the rules chosen and the owner's limits; of the rest only what fails is told here.
    private static string Counted(StabilityView view, (CheckDescription Check, Finding Told)[] findings)
    {
        Finding[] criteria = [.. findings.Where(found => found.Check.IsCriterion).Select(found => found.Told)];
        int others = findings.Count(found => !found.Check.IsCriterion && found.Told.Verdict == Verdict.Fails);
        string[] counts =
        [
            .. view.HasRules ? Array.Empty<string>() : ["no stability rules are chosen"],
            .. new[] { Verdict.Fails, Verdict.Tight, Verdict.Unknown, Verdict.Holds }
                .Select(verdict => (verdict, Count: criteria.Count(finding => finding.Verdict == verdict))).Where(group => group.Count > 0)
                .Select(group => $"{group.Count} {Wording.Of(group.verdict)}"),
            .. others == 0 ? Array.Empty<string>() : [$"beside them {others} {(others == 1 ? "check fails" : "checks fail")}"],
        ];
        return counts.Length == 0 ? "nothing checked" : string.Join(", ", counts);
    }
}
