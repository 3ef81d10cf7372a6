using System.Globalization;
using Orlop.Drawings.Charts;
using Orlop.Presentation.Views.Floating;
using Orlop.Review.Findings;
using Orlop.Review.Stability;
using Orlop.Work.Paper;

namespace Orlop.Work.Loading;

/// <summary>One condition: how she floats, her levers, what she is held against, what is aboard.</summary>
internal static class SheetConditionPages
{
    private const double ChartPx = 690;

    public static void Write(HtmlText html, LoadingSheet sheet, SheetCondition condition, int number, SheetText text, PaperOptions options)
    {
        html.Open("section", ("class", number == 1 ? "condition follows" : "condition")).Put("h2", condition.Condition.Title);
        if (FloatingWords.Trouble(sheet.Shown, condition.Now, text.Units, text.Culture) is { } trouble)
        {
            html.Open("div", ("class", "caution")).Put("b", trouble).Close();
        }

        Floats(html, sheet, condition, text);
        Levers(html, sheet, condition, number, options);
        Marks(html, sheet, condition, text);
        SheetMotions.Write(html, sheet, condition, text);
        Criteria(html, sheet, condition, text);
        Draws(html, condition, options);
        SheetLedger.Differs(html, sheet, condition, text, options);
        html.Close();
    }

    private static void Floats(HtmlText html, LoadingSheet sheet, SheetCondition condition, SheetText text)
    {
        html.Put("h3", "How she floats");
        if (condition.Was is null)
        {
            SheetTables.Open(html, "floats", "", sheet.AsBuilt is null ? "As built" : "As altered");
        }
        else
        {
            SheetTables.Open(html, "floats", "", "As built", "As altered");
        }

        foreach ((string name, Func<StabilityView, FloatingFacts, string> told) in text.FloatingLines())
        {
            html.Open("tr").Put("th", name, ("scope", "row"));
            if (condition.Was is { } was)
            {
                SheetTables.Cell(html, "As built", told(sheet.AsBuilt!, was));
            }

            SheetTables.Cell(html, sheet.AsBuilt is null ? "" : "As altered", told(sheet.Shown, condition.Now)).Close();
        }

        SheetTables.Close(html);
        html.Put("p", "± is two standard deviations, from the errors of her weight alone; errors of the lines are not in it. Forward is from the after perpendicular; draughts are from the base line at the place x along it; the lever is of the side where it is smaller, the range of the side where it is shorter, each criterion below of the side that is worse for it. GM is where she rests, free surfaces taken off; the criterion asks for it upright.", ("class", "small"));
    }

    private static void Marks(HtmlText html, LoadingSheet sheet, SheetCondition condition, SheetText text)
    {
        IReadOnlyList<MarkFreeboard> now = MarkFreeboard.Of(sheet.Shown, condition.Condition);
        if (now.Count == 0)
        {
            return;
        }

        IReadOnlyList<MarkFreeboard> was = condition.Was is null ? [] : MarkFreeboard.Of(sheet.AsBuilt!, condition.Was.Condition);
        html.Put("h3", "Freeboards at the marks of the survey");
        if (was.Count == 0)
        {
            SheetTables.Open(html, "marks", "Mark", "Where", "Over the water");
        }
        else
        {
            SheetTables.Open(html, "marks", "Mark", "Where", "As built", "As altered");
        }

        foreach (MarkFreeboard mark in now)
        {
            SheetTables.Cell(html.Open("tr").Put("th", mark.Name, ("scope", "row")), "Where", text.At(mark.Mark));
            if (was.Count > 0)
            {
                SheetTables.Cell(html, "As built", was.FirstOrDefault(other => other.Name == mark.Name) is { } before ? text.Freeboard(before) : "");
            }

            SheetTables.Cell(html, was.Count == 0 ? "Over the water" : "As altered", text.Freeboard(mark)).Close();
        }

        SheetTables.Close(html);
    }

    private static void Levers(HtmlText html, LoadingSheet sheet, SheetCondition condition, int number, PaperOptions options)
    {
        if (condition.Levers is not { } levers)
        {
            return;
        }

        string id = string.Create(CultureInfo.InvariantCulture, $"levers-{number}");
        html.Open("div", ("class", "levers")).Put("h3", $"Righting levers {levers.Title}")
            .Markup(RightingChart.Draw(id, condition.Condition.Title, levers, condition.LeversWere, showsBothSides: false, ChartPx, options.Units, options.Culture)).Close();
        if (FloodedLevers.Text(sheet.Shown.Boat, condition.Now, options.Units, options.Culture) is { } flooded)
        {
            html.Put("p", flooded, ("class", "small"));
        }
    }

    private static void Criteria(HtmlText html, LoadingSheet sheet, SheetCondition condition, SheetText text)
    {
        html.Put("h3", "What she is held against");
        CriteriaTable(html, sheet, condition.Condition, condition.Findings, text);
        string[] without = [.. sheet.Checks.Where(check => condition.Findings.Concat(sheet.Always).All(row => row.Check.Id != check.Id)).Select(check => check.Title)];
        if (without.Length > 0)
        {
            html.Open("p", ("class", "small")).Put("b", "Does not apply here: ")
                .Text($"{string.Join("; ", without)}. Its rule is not chosen, no limit of it is set, or there is nothing in this condition that it is about.").Close();
        }
    }

    private static void Draws(HtmlText html, SheetCondition condition, PaperOptions options)
    {
        if (condition.Draws is null)
        {
            return;
        }

        DrawsView draws = DrawsView.Of(condition.Now, condition.Draws, options.Units, options.Culture);
        html.Put("h3", "How sure the criteria are");
        if (draws.Lines.Count > 0)
        {
            SheetTables.Open(html, "draws", "Criterion", "At least", "Of 10 000 draws of her weight", "Mean ± two deviations");
            foreach (DrawnLine line in draws.Lines)
            {
                html.Open("tr").Put("th", line.Subject, ("scope", "row"));
                SheetTables.Cell(html, "At least", line.Least);
                SheetTables.Cell(html, "Of 10 000 draws of her weight", line.Holds);
                SheetTables.Cell(html, "Mean ± two deviations", line.Mean).Close();
            }

            SheetTables.Close(html);
        }

        html.Open("p").Put("b", draws.All).Text($" {DrawsView.Limits}").Close();
    }

    /// <summary>Findings with verdict, number and source.</summary>
    public static void CriteriaTable(HtmlText html, LoadingSheet sheet, Orlop.Boat.Things.Condition? condition, IReadOnlyList<SheetFinding> findings, SheetText text)
    {
        if (findings.Count == 0)
        {
            html.Put("p", "Nothing is checked here.");
            return;
        }

        if (sheet.AsBuilt is null)
        {
            SheetTables.Open(html, "criteria", "Verdict", "What was found", "Limit from");
        }
        else
        {
            SheetTables.Open(html, "criteria", "As built", "As altered", "What was found", "Limit from");
        }

        foreach (SheetFinding row in findings)
        {
            Finding told = (row.Now ?? row.Was)!;
            html.Open("tr");
            if (sheet.AsBuilt is not null)
            {
                SheetTables.Verdict(html, "As built", row.Was, "new");
            }

            SheetTables.Verdict(html, sheet.AsBuilt is null ? "" : "As altered", row.Now, "gone");
            html.Open("td", ("class", "found")).Put("div", text.Headline(told, condition));
            foreach (string remark in SheetText.Remarks(told))
            {
                html.Put("div", remark, ("class", "small"));
            }

            SheetTables.Cell(html.Close(), "Limit from", SheetText.Source(told), "small").Close();
        }

        SheetTables.Close(html);
    }
}
