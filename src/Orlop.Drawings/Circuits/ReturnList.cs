using Orlop.Boat.Things;
using Orlop.Drawings.Svg;

namespace Orlop.Drawings.Circuits;

/// <summary>The parts of the return side, in rows below the diagram.</summary>
internal static class ReturnList
{
    private const double LeftPx = 12;
    private const double WordsPx = 38;
    private const double BetweenPx = 16;
    private const double RowPx = 28;

    /// <summary>Draws them; returns the next free line.</summary>
    internal static double Draw(SvgWriter svg, IReadOnlyList<ReturnPart> parts, OneLineOptions options, double width, double y)
    {
        if (parts.Count == 0)
        {
            return y;
        }

        svg.Text(LeftPx, y, "Return side", "strong");
        double x = LeftPx;
        y += 24;
        foreach (ReturnPart part in parts)
        {
            string title = part.Change.Shown.Title, count = string.Create(options.Culture, $": {part.ConductorCount} {(part.ConductorCount == 1 ? "conductor" : "conductors")}");
            string text = TextSize.Fitted(title, TextSize.Small, width - LeftPx - WordsPx - TextSize.Width(count, TextSize.Small) - LeftPx) + count;
            double wordsWidth = TextSize.Width(text, TextSize.Small);
            if (x > LeftPx && x + WordsPx + wordsWidth > width)
            {
                (x, y) = (LeftPx, y + RowPx);
            }

            svg.StartThing(part.Change.Id, $"{title}{count}{part.Change.Remark}", options.IsInteractive);
            svg.Rect(new Box(x, y - 16, WordsPx + wordsWidth, 24), "hit");
            if (part.Change.Shown is Busbar)
            {
                svg.Line(x + 2, y - 4, x + 30, y - 4, $"bar {part.Change.Style}".TrimEnd());
            }
            else
            {
                CircuitSymbol.Draw(svg, (Part)part.Change.Shown, new(x + 16, y - 4), part.Change.Style);
            }

            svg.Text(x + WordsPx, y, text, part.Change.Style, size: TextSize.Small).End();
            x += WordsPx + wordsWidth + BetweenPx;
        }

        return y + RowPx;
    }
}
