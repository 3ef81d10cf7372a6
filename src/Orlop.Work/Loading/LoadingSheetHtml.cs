using System.Globalization;
using Orlop.Drawings.Paper;
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
        string date = options.On.ToString("yyyy-MM-dd", CultureInfo.InvariantCulture);
        string foot = $"{sheet.BoatTitle} · {sheet.Alteration?.Title ?? "as built"} · {date}{(options.Revision is { Length: > 0 } revision ? $" · revision {revision}" : "")} · {TitleBlock.Caution}";
        html.Markup("<!doctype html>\n").Open("html", ("lang", "en")).Open("head")
            .Void("meta", ("charset", "utf-8")).Void("meta", ("name", "viewport"), ("content", "width=device-width, initial-scale=1"))
            .Put("title", title)
            .Open("style").Markup(PackStyle.For(options, foot)).Close().Close()
            .Open("body").Open("main", ("class", "stability"));
        Head(html, sheet, date, options);
        SheetSummary.Write(html, sheet, text);
        SheetBasis.Write(html, sheet, text, options);
        int number = 0;
        foreach (SheetCondition condition in sheet.Conditions)
        {
            SheetConditionPages.Write(html, sheet, condition, ++number, text, options);
        }

        SheetLedger.Write(html, sheet, text, options);
        return html.Close().Close().Close().ToString();
    }

    /// <summary>Writes the sheet into a folder, which is made if needed. Gives back the file.</summary>
    public static string Write(LoadingSheet sheet, PaperOptions options, string folder)
    {
        ArgumentException.ThrowIfNullOrWhiteSpace(folder);
        string html = Render(sheet, options);
        Directory.CreateDirectory(folder);
        string file = Path.Combine(folder, FileName);
        File.WriteAllText(file, html);
        return file;
    }

    private static void Head(HtmlText html, LoadingSheet sheet, string date, PaperOptions options)
    {
        html.Put("h1", "Loading and stability").Open("table", ("class", "title")).Open("tbody");
        (string Name, string Value)[] rows =
        [
            ("Boat", sheet.BoatTitle),
            ("For", sheet.Alteration is { } alteration ? $"{alteration.Title}, drafted: as built beside as altered" : "the boat as built"),
            ("Date", $"{date}{(options.Revision is { Length: > 0 } revision ? $", revision {revision}" : "")}"),
            ("Mind", TitleBlock.Caution),
        ];
        foreach ((string name, string value) in rows)
        {
            html.Open("tr").Put("th", name, ("scope", "row")).Put("td", value).Close();
        }

        html.Close().Close();
        html.Open("div", ("class", "caution"), ("role", "note")).Put("b", "Stability.").Text($" {FloatingWords.Caution} Every condition here is one way of loading her in still water: another load, wind, sea, ice, water on deck or a slack tank that was taken as full are not in it. A weight that hangs acts at the hook it hangs from.").Close();
    }
}
