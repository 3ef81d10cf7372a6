using Orlop.Presentation.Words;
using Orlop.Review.Findings;
using Orlop.Work.Paper;

namespace Orlop.Work.Loading;

/// <summary>Pieces of tables that every page of a sheet writes alike.</summary>
internal static class SheetTables
{
    /// <summary>Opens a table with its heads; its body is open after this.</summary>
    public static void Open(HtmlText html, string style, params ReadOnlySpan<string> heads)
    {
        html.Open("table", ("class", $"named {style}")).Open("thead").Open("tr");
        foreach (string head in heads)
        {
            html.Put("th", head, ("scope", "col"));
        }

        html.Close().Close().Open("tbody");
    }

    /// <summary>Closes what <see cref="Open"/> has opened.</summary>
    public static void Close(HtmlText html) => html.Close().Close();

    /// <summary>A cell that carries its column's head, for a window too narrow for columns.</summary>
    public static HtmlText Cell(HtmlText html, string head, string text, string style = "") =>
        html.Put("td", text, [("data-head", head), .. style.Length > 0 ? new[] { ("class", style) } : []]);

    /// <summary>A verdict by shape and word; a dash where there is none.</summary>
    public static void Verdict(HtmlText html, string head, Finding? finding, string none)
    {
        html.Open("td", ("class", "verdicts"), ("data-head", head));
        _ = finding is null ? html.Text(none) : html.Markup(VerdictShape.Svg(finding.Verdict)).Put("b", $" {Wording.Of(finding.Verdict)}");
        html.Close();
    }
}
