using Orlop.Drawings.Paper;
using Orlop.Presentation.Views;
using Orlop.Presentation.Views.Floating;
using Orlop.Work.Paper;

namespace Orlop.Work.Loading;

/// <summary>A loading and stability sheet as one HTML file that prints well and asks nothing of the network.</summary>
public static class LoadingSheetHtml
{
    /// <summary>Name of the file in its folder.</summary>
    public const string FileName = "loading-and-stability.html";

    /// <summary>The sheet on the paper of the options.</summary>
    public static string Render(LoadingSheet sheet, PaperOptions options)
    {
        ArgumentNullException.ThrowIfNull(sheet);
        ArgumentNullException.ThrowIfNull(options);
        HtmlText html = new();
        SheetText text = new(options);
        string title = $"Loading and stability: {sheet.BoatTitle}{(sheet.Alteration is { } alteration ? $", {alteration.Title}" : "")}";
        string date = PaperPage.Date(options);
        string foot = $"{sheet.BoatTitle} · {sheet.Alteration?.Title ?? "as built"} · {date}{PaperPage.Revision(options, " · ")} · {TitleBlock.Caution}";
        PaperPage.Begin(html, title, foot, options, "stability");
        Head(html, sheet, date, options);
        SheetSummary.Write(html, sheet, text);
        SheetBasis.Write(html, sheet, text, options);
        int number = 0;
        foreach (SheetCondition condition in sheet.Conditions)
        {
            SheetConditionPages.Write(html, sheet, condition, ++number, text, options);
        }

        SheetLedger.Write(html, sheet, text, options);
        return PaperPage.End(html);
    }

    /// <summary>Writes the sheet into a folder, which is made if needed. Gives back the file.</summary>
    public static string Write(LoadingSheet sheet, PaperOptions options, string folder) => PaperPage.Write(Render(sheet, options), folder, FileName);

    private static void Head(HtmlText html, LoadingSheet sheet, string date, PaperOptions options)
    {
        html.Put("h1", "Loading and stability");
        PaperPage.Title(
            html,
            ("Boat", sheet.BoatTitle),
            ("For", sheet.Alteration is { } alteration ? $"{alteration.Title}, {AlterationWords.State(alteration)}: as built beside as altered" : "the boat as built"),
            ("Date", $"{date}{PaperPage.Revision(options, ", ")}"),
            ("Mind", TitleBlock.Caution));
        html.Open("div", ("class", "caution"), ("role", "note")).Put("b", "Stability.").Text($" {FloatingWords.Caution} Every condition here is one way of loading her in still water: another load, wind, sea, ice, water on deck or a slack tank that was taken as full are not in it. A weight that hangs acts at the hook it hangs from.").Close();
    }
}
