namespace Orlop.Drawings.Charts;

/// <summary>Tells under a chart what its strokes and areas are.</summary>
internal sealed class ChartLegend(Chart chart, ChartText text, ChartStrokes strokes)
{
    private const double SignPx = 34;
    private const double GapPx = 18;
    private const double RowPx = 16;

    /// <summary>Draws it; returns the height of the drawing.</summary>
    /// <param name="leftPx">Where it begins.</param>
    /// <param name="y">Where its first words stand.</param>
    public double Draw(double leftPx, double y)
    {
        (string Name, Action<double, double> Sign)[] entries =
        [
            .. chart.Series.Where(series => chart.Series.Count > 1 && series.Name.Length > 0 && !series.IsNamedOnLine).Select(series => (series.Name, (Action<double, double>)((x, at) => strokes.Example(series, x, at)))),
            .. chart.Areas.Where(area => area.Name.Length > 0).Select(area => (area.Name, (Action<double, double>)((x, at) => strokes.Example(area, x, at)))),
        ];
        double x = leftPx;
        foreach ((string words, Action<double, double> sign) in entries)
        {
            string[] name = ChartText.Wrapped(words, chart.WidthPx - leftPx - SignPx - ChartText.EdgePx);
            double width = ChartText.Widest(name) + SignPx;
            if (x > leftPx && (name.Length > 1 || x + width > chart.WidthPx - ChartText.EdgePx))
            {
                x = leftPx;
                y += RowPx;
            }

            sign(x, y);
            double last = text.Write(x + SignPx, y, name, "");
            (x, y) = last > y ? (chart.WidthPx, last) : (x + width + GapPx, y);
        }

        return entries.Length > 0 ? y + 10 : y - 12;
    }
}
