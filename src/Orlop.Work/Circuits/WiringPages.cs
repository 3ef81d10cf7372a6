using Orlop.Drawings.Circuits.Sheets;
using Orlop.Presentation.Views;
using Orlop.Work.Paper;

namespace Orlop.Work.Circuits;

/// <summary>The whole wiring in one line, on sheets of their own.</summary>
internal static class WiringPages
{
    public static void Write(HtmlText html, ElectricalSheet sheet, PaperOptions options)
    {
        if (sheet.Circuits.IsEmpty)
        {
            return;
        }

        string state = sheet.Alteration is { } alteration ? $"with {alteration.Title}, {AlterationWords.State(alteration)}" : "as built";
        SheetOptions drawn = new()
        {
            Paper = options.DiagramSize ?? options.Size,
            About = $"{state} · {PaperPage.Date(options)}{PaperPage.Revision(options, " · ")}",
            Units = options.Units,
            Culture = options.Culture,
        };
        int number = 0;
        foreach (string svg in OneLineSheets.Draw(sheet.AsBuilt, sheet.Alteration is null ? null : sheet.Boat, drawn))
        {
            html.Open("section", [("class", "sheet diagram"), .. ++number == 1 ? new[] { ("id", "drawing") } : []])
                .Put("h2", number == 1 ? "One-line diagram" : "One-line diagram, continued").Markup(svg).Close();
        }
    }
}
