using Orlop.Boat;
using Orlop.Drawings.Svg;

namespace Orlop.Drawings.Circuits.Sheets;

/// <summary>
/// The boat's wiring in one line on sheets of paper in true size: each bar and branching part with the rows that leave it, in columns; a row that leads to another says on which sheet and in
/// which zone that is drawn, and there it says where the row comes from.
/// </summary>
public static class OneLineSheets
{
    internal const double SpineX = 20;
    internal const double SymbolHeadX = 46;

    /// <summary>One SVG a sheet; with an alteration, what it adds or changes is heavy, what it takes out dashed.</summary>
    public static IReadOnlyList<string> Draw(BoatModel asBuilt, BoatModel? altered, SheetOptions options)
    {
        ArgumentNullException.ThrowIfNull(asBuilt);
        ArgumentNullException.ThrowIfNull(options);
        CircuitGraph graph = CircuitGraph.Of(asBuilt, altered);
        CircuitWording wording = new(options.Units, options.Culture);
        SheetPaper paper = new(options.Paper);
        IReadOnlyList<PlacedStretch> placed = SheetFlow.Of(CircuitSections.Of(graph).Select(section => Measured(section, graph, wording, paper.Columns[0].Width)), paper);
        SheetPlaces places = new(placed, paper);
        int count = placed.Select(stretch => stretch.Sheet).DefaultIfEmpty(1).Max();
        string boat = asBuilt.Particulars?.Title ?? "Boat";
        return [.. Enumerable.Range(1, count).Select(sheet => Sheet(sheet))];

        string Sheet(int number)
        {
            PlacedStretch[] here = [.. placed.Where(stretch => stretch.Sheet == number)];
            SvgWriter svg = new();
            string title = FormattableString.Invariant($"{boat}: one-line diagram, sheet {number} of {count}");
            string holds = string.Join("; ", here.Where(stretch => stretch.IsFirst).Select(stretch => stretch.Measured.Section.Heading));
            DrawingFrame.Start(svg, new Frame(FormattableString.Invariant($"one-line-sheet-{number}"), title, holds.Length == 0 ? "No wiring." : $"On this sheet: {holds}.", paper.Width, paper.Height, IsTrueSize: true));
            string legend = altered is null ? "" : " Heavy, bold: added or changed. Dashed: taken out.";
            string[] about = [boat, "one-line diagram, supply side", .. options.About.Length == 0 ? Array.Empty<string>() : [options.About]];
            paper.Draw(svg, string.Join(" · ", about), $"{Orlop.Drawings.Paper.TitleBlock.Caution} Print at 100 %.{legend}", FormattableString.Invariant($"Sheet {number} of {count}"));
            foreach (PlacedStretch stretch in here)
            {
                new StretchDrawing(svg, graph, wording, places, stretch).Draw();
            }

            return svg.End().ToString();
        }
    }

    private static MeasuredSection Measured(SheetSection section, CircuitGraph graph, CircuitWording wording, double width)
    {
        bool hasSymbol = section.Head is { IsBar: false };
        double room = width - (hasSymbol ? SymbolHeadX : 0);
        string rating = section.Head is null ? "" : wording.Rating(section.Head.Part);
        (CircuitEdge, IReadOnlyList<string>)[] from = section.Head is null ? [] : [.. graph.Edges.Where(edge => edge.To == section.Head.Index)
            .Select(edge => (edge, (IReadOnlyList<string>)[.. RowCell.Wrapped($"from {graph.Nodes[edge.From].Part.Title}: {SheetSpot.Unknown}", room)]))];
        return new MeasuredSection(
            section,
            [.. RowCell.Wrapped(rating.Length == 0 ? section.Heading : $"{section.Heading} · {rating}", room)],
            from,
            [.. section.Rows.Select(row => RowLayout.Of(row, graph, wording, width - (section.Head is null ? 0 : SpineX), SheetSpot.Unknown))]);
    }
}
