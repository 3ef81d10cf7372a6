using Orlop.Drawings.Paper;
using Orlop.Work.Labels;

namespace Orlop.Work.Paper;

/// <summary>The labels in true size.</summary>
internal static class LabelPages
{
    public static void Write(HtmlText html, WorkPack pack, PaperOptions options)
    {
        int number = 0;
        foreach (string sheet in Sheets(pack, options))
        {
            html.Open("section", [("class", "sheet"), .. ++number == 1 ? new[] { ("id", "labels") } : []]).Put("h2", number == 1 ? "Labels, in true size" : "Labels, continued").Markup(sheet).Close();
        }
    }

    /// <summary>The label sheets as SVG, one a page.</summary>
    public static IReadOnlyList<string> Sheets(WorkPack pack, PaperOptions options) => pack.Labels.IsEmpty
        ? []
        : LabelSheet.Draw($"{pack.BoatTitle}, {pack.Alteration.Title}", [.. pack.Labels.Select(label => Printed(label, new PackText(options)))], options.Size);

    private static CableLabel Printed(WorkLabel label, PackText text) => new(label.Name, label.From, label.To, text.Of(label.Facts), "");
}
