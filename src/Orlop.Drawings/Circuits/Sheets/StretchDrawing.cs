using Orlop.Drawings.Changes;
using Orlop.Drawings.Svg;

namespace Orlop.Drawings.Circuits.Sheets;

/// <summary>Draws the rows of a section that stand in one column.</summary>
internal sealed class StretchDrawing(SvgWriter svg, CircuitGraph graph, CircuitWording wording, SheetPlaces places, PlacedStretch stretch)
{
    private const double BarBeyondPx = 9;
    private const double TurnPx = 5;
    private const double ConductorGapPx = 5;
    private readonly MeasuredSection _measured = stretch.Measured;
    private readonly SheetSection _section = stretch.Measured.Section;

    private double Spine => stretch.Room.X + OneLineSheets.SpineX;

    private double Left => LeftOf(stretch);

    internal void Draw()
    {
        if (_section.Head is { } head)
        {
            svg.StartThing(head.Change.Id, wording.NameOf(head), isInteractive: false);
            DrawSpine(head);
            Heading(head);
            svg.End();
        }
        else
        {
            Heading(null);
        }

        for (int row = stretch.First; row < stretch.First + stretch.Count; row++)
        {
            Row(_measured.Rows[row], stretch.TopOf(row));
        }

        if (!stretch.IsLast)
        {
            Reference(stretch.Room.X, stretch.Room.Bottom - 6, $"{_section.Heading} goes on: {places.After(stretch)}");
        }
    }

    /// <summary>Where the last symbol of a row stands.</summary>
    internal static Spot EndOf(PlacedStretch stretch, RowLayout layout, double top)
    {
        int last = layout.Lines.Count - 1;
        return new(Starts(layout.Lines[last], LeftOf(stretch) + IndentOf(last))[^1], top + layout.MiddleOf(last));
    }

    private static double LeftOf(PlacedStretch stretch) => stretch.Room.X + (stretch.Measured.Section.Head is null ? 0 : OneLineSheets.SpineX);

    // The left side of each symbol of a line.
    private static double[] Starts(IReadOnlyList<RowCell> line, double left)
    {
        double[] starts = new double[line.Count];
        for (int index = 0; index < line.Count; index++)
        {
            starts[index] = left + line[index].LeadWidth;
            left += RowLayout.WidthOf(line[index]);
        }

        return starts;
    }

    private void DrawSpine(CircuitNode head)
    {
        double top = stretch.Room.Y + stretch.HeadHeight - (stretch.IsFirst && _measured.HasSymbol ? stretch.HeadHeight - RowCell.SymbolPx : 0);
        double last = stretch.Count == 0 ? top + BarBeyondPx : stretch.TopOf(stretch.First + stretch.Count - 1) + _measured.Rows[stretch.First + stretch.Count - 1].MiddleOf(0);
        if (head.IsBar)
        {
            svg.Line(Spine, top, Spine, last + BarBeyondPx, $"bar {head.Change.Style}".TrimEnd());
        }
        else if (last > top)
        {
            svg.Line(Spine, top, Spine, last, $"run {head.Change.Style}".TrimEnd());
        }
    }

    private void Heading(CircuitNode? head)
    {
        double x = stretch.Room.X, y = stretch.Room.Y + SheetPaper.TextPx;
        if (!stretch.IsFirst)
        {
            Reference(x, y, $"{_section.Heading} goes on, from {places.Before(stretch)}");
            return;
        }

        if (head is { IsBar: false })
        {
            Symbol(head, new Spot(Spine, stretch.Room.Y + (RowCell.SymbolPx / 2)), isDownward: true);
            x += OneLineSheets.SymbolHeadX;
        }

        foreach (string line in _measured.HeadLines)
        {
            svg.Text(x, y, line, $"strong {head?.Change.Style}".TrimEnd(), size: SheetPaper.TextPx);
            y += SheetPaper.LinePx;
        }

        foreach ((CircuitEdge edge, IReadOnlyList<string> lines) in _measured.FromLines)
        {
            foreach (string line in lines)
            {
                Reference(x, y, line.Replace(SheetSpot.Unknown, places.EndOf(edge).ToString(), StringComparison.Ordinal));
                y += SheetPaper.LinePx;
            }
        }
    }

    private void Row(RowLayout layout, double top)
    {
        Spot from = new(_section.Head is null ? Left : Spine, top + layout.MiddleOf(0));
        double words = from.X;
        for (int number = 0; number < layout.Lines.Count; number++)
        {
            IReadOnlyList<RowCell> line = layout.Lines[number];
            double y = top + layout.MiddleOf(number), turnY = number == 0 ? y : top + layout.TurnOf(number), turnX = Left + (RowLayout.IndentPx / 2);
            double[] starts = Starts(line, Left + IndentOf(number));
            for (int index = 0; index < line.Count; index++)
            {
                RowCell cell = line[index];
                Spot to = new(starts[index], y);
                if (cell.Before is { } edge)
                {
                    Spot[] way = index == 0 && number > 0
                        ? [from, new(words + TurnPx, from.Y), new(words + TurnPx, turnY), new(turnX, turnY), new(turnX, y), to]
                        : [from, to];
                    Conductor(edge, cell, way, to);
                }

                (from, words) = (new(to.X + RowCell.SymbolPx, y), to.X + RowCell.SymbolPx + cell.WordsWidth);
                if (cell.Item is { } item)
                {
                    Part(item, cell, to);
                }
                else
                {
                    Onward(cell, to);
                }
            }
        }
    }

    private static double IndentOf(int line) => line == 0 ? 0 : RowLayout.IndentPx;

    private void Conductor(CircuitEdge edge, RowCell cell, Spot[] way, Spot to)
    {
        svg.StartThing(edge.Change.Id, CircuitWording.NameOf(edge, cell.Conductor), isInteractive: false);
        svg.Polyline(way, $"run {edge.Change.Style}".TrimEnd());
        if (cell.Conductor.Length > 0)
        {
            svg.Text(to.X - ConductorGapPx, to.Y + SheetPaper.TextPx + 2, cell.Conductor, edge.Change.Kind == ChangeKind.Kept ? "" : edge.Change.Style, "end", SheetPaper.TextPx);
        }

        svg.End();
    }

    private void Part(SheetItem item, RowCell cell, Spot at)
    {
        string style = item.Node.Change.Style;
        svg.StartThing(item.Node.Change.Id, wording.NameOf(item.Node), isInteractive: false);
        if (item.Node.IsBar)
        {
            svg.Line(at.X + 3, at.Y, at.X + RowCell.SymbolPx - 3, at.Y, $"bar {style}".TrimEnd());
        }
        else
        {
            Symbol(item.Node, new Spot(at.X + (RowCell.SymbolPx / 2), at.Y), isDownward: false);
        }

        Words(cell, at, style);
        if (!cell.IsLast && cell.Rating.Length > 0)
        {
            svg.Text(at.X + RowCell.WordsLeftPx, at.Y + cell.RatingSize + (cell.IsCritical ? -1 : 2), cell.Rating, $"strong {style}".TrimEnd(), size: cell.RatingSize);
        }

        svg.End();
    }

    private void Words(RowCell cell, Spot at, string style)
    {
        double last = cell.IsLast ? at.Y + ((cell.Above.Count - 1) * SheetPaper.LinePx / 2) + (SheetPaper.TextPx * 0.36) : at.Y - 4;
        for (int line = 0; line < cell.Above.Count; line++)
        {
            svg.Text(at.X + RowCell.WordsLeftPx, last - ((cell.Above.Count - 1 - line) * SheetPaper.LinePx), cell.Above[line], style, size: SheetPaper.TextPx);
        }
    }

    private void Onward(RowCell cell, Spot at)
    {
        CircuitEdge edge = cell.Before!;
        svg.Start("g", ("class", "goes-on"), ("data-to", graph.Nodes[edge.To].Change.Id)).Path(FormattableString.Invariant($"M{at.X} {at.Y - 8}h24l12 8l-12 8h-24z"), "kept");
        double last = at.Y + ((cell.Above.Count - 1) * SheetPaper.LinePx / 2) + (SheetPaper.TextPx * 0.36);
        for (int line = 0; line < cell.Above.Count; line++)
        {
            string words = cell.Above[line].Replace(SheetSpot.Unknown, places.HeadOf(edge.To).ToString(), StringComparison.Ordinal);
            svg.Text(at.X + RowCell.WordsLeftPx, last - ((cell.Above.Count - 1 - line) * SheetPaper.LinePx), words, size: SheetPaper.TextPx);
        }

        svg.End();
    }

    private void Symbol(CircuitNode node, Spot middle, bool isDownward)
    {
        string scale = SvgValue.Number(RowCell.SymbolScale);
        svg.Start("g", ("transform", $"translate({SvgValue.Number(middle.X)} {SvgValue.Number(middle.Y)}) scale({scale})"), ("class", "symbol"));
        CircuitSymbol.Draw(svg, node.Part, new Spot(0, 0), node.Change.Style, isDownward);
        svg.End();
    }

    private void Reference(double x, double y, string words) => svg.Text(x, y, words, "reference", size: SheetPaper.TextPx);
}
