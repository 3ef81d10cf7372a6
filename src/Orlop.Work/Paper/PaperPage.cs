using System.Globalization;

namespace Orlop.Work.Paper;

/// <summary>What every page on paper begins and ends with: its head and style, the table under its title, its file.</summary>
internal static class PaperPage
{
    /// <summary>Opens the page up to its main part; <see cref="End"/> closes it.</summary>
    /// <param name="foot">What runs along the bottom of each sheet.</param>
    /// <param name="style">Class of the main part; empty for none.</param>
    public static void Begin(HtmlText html, string title, string foot, PaperOptions options, string style = "")
    {
        html.Markup("<!doctype html>\n").Open("html", ("lang", "en")).Open("head")
            .Void("meta", ("charset", "utf-8")).Void("meta", ("name", "viewport"), ("content", "width=device-width, initial-scale=1"))
            .Put("title", title)
            .Open("style").Markup(PackStyle.For(options, foot)).Close().Close()
            .Open("body");
        _ = style.Length == 0 ? html.Open("main") : html.Open("main", ("class", style));
    }

    /// <summary>The finished page.</summary>
    public static string End(HtmlText html) => html.Close().Close().Close().ToString();

    /// <summary>The table under the title.</summary>
    public static void Title(HtmlText html, params IEnumerable<(string Name, string Value)> rows)
    {
        html.Open("table", ("class", "title")).Open("tbody");
        foreach ((string name, string value) in rows)
        {
            html.Open("tr").Put("th", name, ("scope", "row")).Put("td", value).Close();
        }

        html.Close().Close();
    }

    /// <summary>The day on the page, as written everywhere: 2026-11-29.</summary>
    public static string Date(PaperOptions options) => options.On.ToString("yyyy-MM-dd", CultureInfo.InvariantCulture);

    /// <summary>The revision of the store after a separator; empty for a boat file, which has none.</summary>
    public static string Revision(PaperOptions options, string separator) => options.Revision is { Length: > 0 } revision ? $"{separator}revision {revision}" : "";

    /// <summary>Writes a page into a folder, which is made if needed. Gives back the file.</summary>
    public static string Write(string page, string folder, string fileName)
    {
        ArgumentException.ThrowIfNullOrWhiteSpace(folder);
        Directory.CreateDirectory(folder);
        string file = Path.Combine(folder, fileName);
        File.WriteAllText(file, page);
        return file;
    }
}
