using Orlop.Drawings.Svg;

namespace Orlop.Drawings.Charts;

/// <summary>Writes the names of a chart's marks under its axis, in as many rows as they need, over the lines that lead to them.</summary>
internal sealed class ChartMarkRows(Chart chart, SvgWriter svg, ChartText text)
{
    private const double FirstRowPx = 32;

    /// <summary>Draws them; returns how far down they reach.</summary>
    public double Draw(Box field, ChartScale x)
    {
        List<double> rowEnds = [];
        List<(string[] Name, double Middle, double Y)> names = [];
        foreach (ChartMark mark in chart.Marks.Where(mark => double.IsFinite(mark.Across)).OrderBy(mark => mark.Across))
        {
            string[] name = ChartText.Wrapped(mark.Name, chart.WidthPx - (2 * ChartText.EdgePx));
            double width = ChartText.Widest(name) + (2 * ChartText.EdgePx);
            double left = Math.Clamp(x.At(mark.Across) - (width / 2), 0, Math.Max(0, chart.WidthPx - width));
            int row = FreeRow(rowEnds, name.Length, left);
            for (int line = row; line < row + name.Length; line++)
            {
                rowEnds[line] = left + width;
            }

            double y = field.Bottom + FirstRowPx + (row * ChartText.RowPx);
            svg.Line(x.At(mark.Across), field.Y, x.At(mark.Across), field.Bottom, "grid").Line(x.At(mark.Across), field.Bottom, x.At(mark.Across), y - TextSize.Small, "leader");
            names.Add((name, left + (width / 2), y));
        }

        foreach ((string[] name, double middle, double y) in names)
        {
            text.Write(middle, y, name, "label halo", "middle");
        }

        return field.Bottom + (rowEnds.Count * ChartText.RowPx);
    }

    // The first row from which on there is room for so many lines; rows are added where there is none.
    private static int FreeRow(List<double> rowEnds, int lineCount, double left)
    {
        int row = Enumerable.Range(0, rowEnds.Count + 1).First(from => rowEnds.Skip(from).Take(lineCount).All(end => end <= left));
        while (rowEnds.Count < row + lineCount)
        {
            rowEnds.Add(0);
        }

        return row;
    }
}
