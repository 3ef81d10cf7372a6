using System.Collections.Immutable;
using Orlop.Boat;
using Orlop.Boat.Alterations;
using Orlop.Boat.Things;
using Orlop.Boat.Topology;
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
            html.Markup(Diagram(pack, options)).Close();
        }

        int number = 0;
        foreach (string sheet in LabelSheets(pack, options))
        {
            html.Open("section", ("class", "sheet")).Put("h2", ++number == 1 ? "Labels, in true size" : "Labels, continued").Markup(sheet).Close();
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

    private static string Diagram(WorkPack pack, PaperOptions options)
    {
        BoatModel before = BoatEdits.Apply(pack.AsBuilt, pack.Alteration.Edits.Where(edit => edit.BuiltOn is not null).Reverse().Select(BoatEdits.Inverse)).Boat;
        HashSet<string> touched = CircuitsTouched(pack);
        return OneLineDiagram.Draw(Only(before, touched), Only(pack.AsAltered, touched), new OneLineOptions { Units = options.Units, Culture = options.Culture });
    }

    // Everything on the chain of each taker that something of the alteration lies on or is.
    private static HashSet<string> CircuitsTouched(WorkPack pack)
    {
        HashSet<string> edited = [.. pack.Alteration.Edits.Select(edit => edit.Id)];
        HashSet<string> touched = [.. edited];
        foreach (BoatModel boat in new[] { pack.AsBuilt, pack.AsAltered })
        {
            Wiring wiring = Wiring.Of(boat);
            foreach (Chain chain in boat.All<Part>().Select(part => Chain.Trace(boat, wiring, part)).OfType<Chain>())
            {
                ImmutableArray<string> along = [.. chain.Out.Concat(chain.Back).SelectMany(item => item.Edges).SelectMany(edge => new[] { edge.Owner.Id, ElementIds.ThingOf(edge.A), ElementIds.ThingOf(edge.B) })];
                if (edited.Contains(chain.Taker.Id) || along.Any(edited.Contains))
                {
                    touched.UnionWith(along.Add(chain.Taker.Id));
                }
            }
        }

        return touched;
    }

    private static BoatModel Only(BoatModel boat, HashSet<string> ids) => boat.WithThings(boat.Things.Where(thing => thing is not (Part or Cable or Link) || ids.Contains(thing.Id)));
}
