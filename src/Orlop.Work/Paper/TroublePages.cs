using System.Globalization;
using Orlop.Presentation.Views;
using Orlop.Presentation.Words;
using Orlop.Review.Findings;
using Orlop.Work.Troubles;

namespace Orlop.Work.Paper;

/// <summary>What the review holds against the alteration: all of it on the first page, what fails again at the step and the item that it is about.</summary>
internal static class TroublePages
{
    private const int MostUnknownLines = 12;

    /// <summary>The list of the first page.</summary>
    public static void Write(HtmlText html, PackTroubles troubles, PackText text)
    {
        if (troubles.IsNotToBuild)
        {
            html.Open("div", ("class", "caution"), ("role", "note")).Put("b", "Nothing here is to be built.").Text(" What stands below is not accepted.").Close();
        }

        if (troubles.Findings.IsEmpty)
        {
            return;
        }

        FindingsView view = text.Of(troubles);
        html.Open("section", ("class", "follows troubles"), ("id", "troubles")).Put("h2", "What fails and what cannot be told");
        foreach (FindingsGroup group in view.Groups)
        {
            Group(html, group);
        }

        html.Put("p", view.Caution, ("class", "small")).Close();
    }

    /// <summary>A line for each finding that fails, where its thing is handled.</summary>
    public static void Again(HtmlText html, IEnumerable<PairedFinding> failing, PackTroubles troubles, PackText text)
    {
        foreach (string words in text.Failing(failing, troubles))
        {
            html.Open("div", ("class", "against"));
            Verdict(html, Review.Findings.Verdict.Fails);
            html.Text($": {words}; see page 1.").Close();
        }
    }

    private static void Group(HtmlText html, FindingsGroup group)
    {
        html.Put("h3", group.Title).Open("ul");
        int lines = 0, left = 0;
        foreach (FindingsEntry entry in group.Entries)
        {
            if (entry.Rows[0].Verdict == Review.Findings.Verdict.Unknown && ++lines > MostUnknownLines)
            {
                left += entry.Rows.Count;
                continue;
            }

            html.Open("li");
            Verdict(html, entry.Rows[0].Verdict);
            _ = entry.Missing is null ? Row(html, entry.Rows[0]) : html.Text($" {entry.Title}");
            html.Close();
        }

        _ = left == 0 ? html : html.Put("li", string.Create(CultureInfo.InvariantCulture, $"and {left} more that cannot be told: the review lists them."));
        html.Close();
    }

    private static HtmlText Row(HtmlText html, FindingRow row)
    {
        string beside = string.Join("; ", new[] { row.Condition, row.Use, row.Was }.Where(words => words is { Length: > 0 }));
        html.Text($" {row.Headline}");
        return beside.Length == 0 ? html : html.Put("span", $" ({beside})", ("class", "small"));
    }

    private static void Verdict(HtmlText html, Verdict verdict) => html.Markup(VerdictShape.Svg(verdict)).Put("b", $" {Wording.Of(verdict)}");
}
