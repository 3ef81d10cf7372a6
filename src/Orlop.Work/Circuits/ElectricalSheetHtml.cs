using Orlop.Drawings.Paper;
using Orlop.Presentation.Views;
using Orlop.Presentation.Words;
using Orlop.Review.Findings;
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
        string date = PaperPage.Date(options);
        string about = sheet.Alteration is { } alteration ? $"with {alteration.Title}, {AlterationWords.State(alteration)}" : "as built";
        string foot = $"{sheet.BoatTitle} · {about} · {date}{PaperPage.Revision(options, " · ")} · {TitleBlock.Caution}";
        PaperPage.Begin(html, $"Electrical pages: {sheet.BoatTitle}, {about}", foot, options, "stability electrical");
        Head(html, sheet, about, date, options);
        PackText text = new(options);
        Readings(html, sheet, options);
        CircuitListPages.Write(html, sheet, text);
        FuseSchedulePages.Write(html, sheet, text);
        AcSidePages.Write(html, sheet, text);
        WiringPages.Write(html, sheet, options);
        ProtectionPages.Write(html, sheet, options);
        HeatPages.Write(html, sheet, text, options);
        IsolationSheetPages.Write(html, sheet);
        return PaperPage.End(html);
    }

    /// <summary>Writes the pages into a folder, which is made if needed. Gives back the file.</summary>
    public static string Write(ElectricalSheet sheet, PaperOptions options, string folder) => PaperPage.Write(Render(sheet, options), folder, FileName);

    // Whoever opens the panel reads first what a meter has shown to be wrong.
    private static void Readings(HtmlText html, ElectricalSheet sheet, PaperOptions options)
    {
        foreach (Finding finding in sheet.ReadingsOutside)
        {
            html.Open("div", ("class", "caution"), ("role", "note")).Put("b", "A reading on record is outside what it should be.")
                .Text($" {SentenceText.Of(finding.Headline, options.Units, options.Culture)}. {finding.Caution}").Close();
        }
    }

    private static void Head(HtmlText html, ElectricalSheet sheet, string about, string date, PaperOptions options)
    {
        html.Put("h1", "Electrical pages");
        PaperPage.Title(
            html,
            ("Boat", sheet.BoatTitle),
            ("Is", about),
            ("In", sheet.Conditions.Length > 1 ? $"currents, voltages and faults: the extreme of all {sheet.Conditions.Length} conditions; heat: {sheet.Condition!.Title}" : sheet.Condition is { } condition ? $"currents, voltages and faults: {condition.Title}" : "no condition: currents, voltages and faults cannot be told"),
            ("Date", $"{date}{PaperPage.Revision(options, ", ")}"),
            ("Mind", TitleBlock.Caution));
        html.Open("div", ("class", "caution"), ("role", "note")).Put("b", "Electric shock, fire.").Text($" {Caution}").Close();
    }
}
