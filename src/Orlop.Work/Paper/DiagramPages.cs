using System.Collections.Immutable;
using System.Globalization;
using Orlop.Boat;
using Orlop.Boat.Things;
using Orlop.Drawings.Circuits;
using Orlop.Drawings.Svg;
using Orlop.Work.Scope;

namespace Orlop.Work.Paper;

/// <summary>The one-line diagram of the circuits touched.</summary>
internal static class DiagramPages
{
    // Drawing units (1/96 in) between the margins of an upright page.
    private const double UprightWidth = 690;

    // A wider drawing is made smaller there down to this, which leaves its letters (10.5 units) 2.2 mm; beyond, it gets a page on its side.
    private const double LeastScale = 0.8;

    // A small drawing is not blown up beyond this.
    private const double MostScale = 1.6;

    /// <summary>Writes the diagrams, on pages on their side where one needs it.</summary>
    public static void Write(HtmlText html, WorkPack pack, PaperOptions options)
    {
        Drawn[] rows = [.. Diagrams(pack, options)];
        if (rows.Length == 0)
        {
            return;
        }

        bool isOnItsSide = rows.Any(row => row.Width * LeastScale > UprightWidth);
        html.Open("section", ("class", isOnItsSide ? "wide" : "follows"), ("id", "drawing")).Put("h2", "One-line diagram of the circuits touched");
        foreach (Drawn row in rows)
        {
            string most = string.Create(CultureInfo.InvariantCulture, $"max-width:{row.Width * MostScale:0}px");
            html.Open("div", ("class", "row"), ("style", most)).Put("h3", row.Title).Markup(row.Svg).Close();
        }

        html.Close();
    }

    /// <summary>Something of the alteration stands in a circuit that hands work on.</summary>
    public static bool Has(WorkPack pack) => !Rows(pack).IsEmpty;

    // Where only what is known of things changes, or things without a wire, no circuit is touched.
    private static ImmutableArray<CircuitRow> Rows(WorkPack pack) => pack.Alteration.Edits.Select(WorkChange.Of).Any(change => change.Thing is Part or Cable or Link && change.Kind is not (ChangeKind.Record or ChangeKind.Move))
        ? CircuitRows.Touched(PackScope.BeforeWork(pack.AsBuilt, pack.Alteration), pack.AsAltered, [.. pack.Alteration.Edits.Select(edit => edit.Id)])
        : [];

    private static IEnumerable<Drawn> Diagrams(WorkPack pack, PaperOptions options)
    {
        int number = 0;
        (BoatModel before, BoatModel after) = (PackScope.BeforeWork(pack.AsBuilt, pack.Alteration), pack.AsAltered);
        foreach (CircuitRow row in Rows(pack))
        {
            OneLineOptions drawn = new() { Id = string.Create(CultureInfo.InvariantCulture, $"one-line-{++number}"), AreNamesWhole = true, Units = options.Units, Culture = options.Culture };
            string svg = OneLineDiagram.Draw(Only(before, row.Ids), Only(after, row.Ids), drawn);
            yield return new Drawn($"{Title(row.FromId)} → {Title(row.ToId)}", svg, DrawingSize.WidthPx(svg) ?? UprightWidth);
        }

        string Title(string id) => (after.Find(id) ?? before.Find(id))?.Title ?? id;
    }

    private static BoatModel Only(BoatModel boat, HashSet<string> ids) => boat.WithThings(boat.Things.Where(thing => thing is not (Part or Cable or Link) || ids.Contains(thing.Id)));

    private sealed record Drawn(string Title, string Svg, double Width);
}
