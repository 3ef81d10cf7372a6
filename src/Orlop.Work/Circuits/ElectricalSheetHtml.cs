using System.Globalization;
using Orlop.Drawings.Paper;
using Orlop.Work.Paper;

namespace Orlop.Work.Circuits;

/// <summary>The owner's electrical pages as one HTML file that prints well and asks nothing of the network.</summary>
public static class ElectricalSheetHtml
{
    /// <summary>Name of the file in its folder.</summary>
    public const string FileName = "electrical-pages.html";

    private const string Caution = "Before anything is opened the circuit is made dead and proved dead. A battery cannot be switched off: its short circuit burns and blinds. At 230 V, and where local rules ask for it, the work is for a licensed electrician.";

    /// <summary>The pages on the paper of the options.</summary>
    public static string Render(ElectricalSheet sheet, PaperOptions options)
    {
        ArgumentNullException.ThrowIfNull(sheet);
        ArgumentNullException.ThrowIfNull(options);
        HtmlText html = new();
        string date = options.On.ToString("yyyy-MM-dd", CultureInfo.InvariantCulture);
        string about = sheet.Alteration is { } alteration ? $"with {alteration.Title}, drafted" : "as built";
        string foot = $"{sheet.BoatTitle} · {about} · {date}{(options.Revision is { Length: > 0 } revision ? $" · revision {revision}" : "")} · {TitleBlock.Caution}";
        html.Markup("<!doctype html>\n").Open("html", ("lang", "en")).Open("head")
            .Void("meta", ("charset", "utf-8")).Void("meta", ("name", "viewport"), ("content", "width=device-width, initial-scale=1"))
            .Put("title", $"Electrical pages: {sheet.BoatTitle}, {about}")
            .Open("style").Markup(PackStyle.For(options, foot)).Close().Close()
            .Open("body").Open("main", ("class", "stability electrical"));
        Head(html, sheet, about, date, options);
        PackText text = new(options);
        CircuitListPages.Write(html, sheet, text);
        FuseSchedulePages.Write(html, sheet, text);
        WiringPages.Write(html, sheet, options);
        ProtectionPages.Write(html, sheet, options);
        IsolationSheetPages.Write(html, sheet);
        return html.Close().Close().Close().ToString();
    }

    /// <summary>Writes the pages into a folder, which is made if needed. Gives back the file.</summary>
    public static string Write(ElectricalSheet sheet, PaperOptions options, string folder)
    {
        ArgumentException.ThrowIfNullOrWhiteSpace(folder);
        string html = Render(sheet, options);
        Directory.CreateDirectory(folder);
        string file = Path.Combine(folder, FileName);
        File.WriteAllText(file, html);
        return file;
    }

    private static void Head(HtmlText html, ElectricalSheet sheet, string about, string date, PaperOptions options)
    {
        html.Put("h1", "Electrical pages").Open("table", ("class", "title")).Open("tbody");
        (string Name, string Value)[] rows =
        [
            ("Boat", sheet.BoatTitle),
            ("Is", about),
            ("In", sheet.Condition is { } condition ? $"currents, voltages and faults: {condition.Title}" : "no condition: currents, voltages and faults cannot be told"),
            ("Date", $"{date}{(options.Revision is { Length: > 0 } revision ? $", revision {revision}" : "")}"),
            ("Mind", TitleBlock.Caution),
        ];
        foreach ((string name, string value) in rows)
        {
            html.Open("tr").Put("th", name, ("scope", "row")).Put("td", value).Close();
        }

        html.Close().Close();
        html.Open("div", ("class", "caution"), ("role", "note")).Put("b", "Electric shock, fire.").Text($" {Caution}").Close();
    }
}
