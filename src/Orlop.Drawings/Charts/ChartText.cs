using Orlop.Drawings.Svg;

namespace Orlop.Drawings.Charts;

/// <summary>Writes the words of a chart, in as many lines as they need: nothing of a name is cut off.</summary>
internal sealed class ChartText(SvgWriter svg)
{
    /// <summary>From a line of words to the one below it.</summary>
    public const double RowPx = 15;

    /// <summary>Kept free at the edges of the drawing and of its field.</summary>
    public const double EdgePx = 4;

    /// <summary>The lines of a text that is too long for its room.</summary>
    public static string[] Wrapped(string text, double mostWidth) => TextSize.Wrapped(text, TextSize.Small, mostWidth) is { } lines && lines.Any() ? [.. lines] : [text];

    /// <summary>Width of the longest line.</summary>
    public static double Widest(string[] lines) => lines.Max(line => TextSize.Width(line, TextSize.Small));

    /// <summary>Lines below each other; returns where the last one stands.</summary>
    public double Write(double x, double y, string[] lines, string style, string anchor = "start")
    {
        for (int line = 0; line < lines.Length; line++)
        {
            svg.Text(x, y + (line * RowPx), lines[line], style, anchor, TextSize.Small);
        }

        return y + ((lines.Length - 1) * RowPx);
    }
}
