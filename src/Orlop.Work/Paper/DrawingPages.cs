using System.Globalization;
using Orlop.Boat;
using Orlop.Boat.Alterations;
using Orlop.Boat.Things;
using Orlop.Drawings.Circuits;
using Orlop.Drawings.Paper;
using Orlop.Work.Labels;

namespace Orlop.Work.Paper;

/// <summary>The one-line diagram of the circuits touched, and the labels in true size.</summary>
internal static class DrawingPages
{
    public static void Write(HtmlText html, WorkPack pack, PaperOptions options)
    {
        if (!pack.Ends.IsEmpty)
        {
            html.Open("section", ("class", "wide"), ("id", "drawing")).Put("h2", "One-line diagram of the circuits touched");
            Diagrams(html, pack, options);
            html.Close();
        }

        int number = 0;
        foreach (string sheet in LabelSheets(pack, options))
        {
            html.Open("section", [("class", "sheet"), .. ++number == 1 ? new[] { ("id", "labels") } : []]).Put("h2", number == 1 ? "Labels, in true size" : "Labels, continued").Markup(sheet).Close();
        }
    }

    /// <summary>The label sheets as SVG, one a page.</summary>
    public static IReadOnlyList<string> LabelSheets(WorkPack pack, PaperOptions options) => pack.Labels.IsEmpty
        ? []
        : LabelSheet.Draw(pack.BoatTitle, [.. pack.Labels.Select(label => Printed(label, new PackText(options)))], options.Size);

    private static CableLabel Printed(WorkLabel label, PackText text)
    {
        string[] ends = label.Line.Split(" → ");
        return new CableLabel(label.Id, ends[0], ends.Length > 1 ? ends[1] : "", text.Of(label.Facts), "");
    }

    private static void Diagrams(HtmlText html, WorkPack pack, PaperOptions options)
    {
        BoatModel before = BoatEdits.Apply(pack.AsBuilt, pack.Alteration.Edits.Where(edit => edit.BuiltOn is not null).Reverse().Select(BoatEdits.Inverse)).Boat;
        int number = 0;
        foreach (CircuitRow row in CircuitRows.Touched(before, pack.AsAltered, [.. pack.Alteration.Edits.Select(edit => edit.Id)]))
        {
            OneLineOptions drawn = new() { Id = string.Create(CultureInfo.InvariantCulture, $"one-line-{++number}"), AreNamesWhole = true, Units = options.Units, Culture = options.Culture };
            html.Open("div", ("class", "row")).Put("h3", $"{Title(row.FromId)} → {Title(row.ToId)}")
                .Markup(OneLineDiagram.Draw(Only(before, row.Ids), Only(pack.AsAltered, row.Ids), drawn)).Close();
        }

        string Title(string id) => (pack.AsAltered.Find(id) ?? before.Find(id))?.Title ?? id;
    }

    private static BoatModel Only(BoatModel boat, HashSet<string> ids) => boat.WithThings(boat.Things.Where(thing => thing is not (Part or Cable or Link) || ids.Contains(thing.Id)));
}
