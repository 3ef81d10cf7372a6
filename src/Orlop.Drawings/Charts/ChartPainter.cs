using Orlop.Drawings.Svg;
using Orlop.Presentation.Quantities;

namespace Orlop.Drawings.Charts;

/// <summary>Draws a chart.</summary>
internal sealed class ChartPainter(Chart chart)
{
    private const double LeftPx = 48;
    private const double RightPx = 16;
    private const double TopPx = 26;
    private const double MarkRowPx = 15;
    private const double EdgePx = 4;
    private const double LegendSignPx = 34;
    private const double LeastWidthPx = 240;
    private const double SignPx = 3.5;
    private const double CrossPx = 5;
    private const double LimitMarginRatio = 0.05;
    private static readonly string[] AskedStyles = ["limit", "limit dots", "limit long"];
    private static readonly string[] DashedStyles = ["outline dashed", "outline dots", "outline long"];
    private readonly SvgWriter _svg = new();

    internal string Draw()
    {
        if (!(chart.WidthPx >= LeastWidthPx) || !(chart.FieldHeightPx >= 40))
        {
            throw new ArgumentOutOfRangeException(nameof(chart), chart.WidthPx, "Chart: width from 240, field height from 40 drawing units.");
        }

        ChartPoint[] points = [.. chart.Series.SelectMany(series => series.Points).Where(IsFinite)];
        AxisUnit across = AxisUnit.For(chart.Across.Suffix, chart.Units), up = AxisUnit.For(chart.Up.Suffix, chart.Units);
        double top = Text(EdgePx, 16, Wrapped(Named(chart.Up.Name, up), chart.WidthPx - (2 * EdgePx)), "soft") - 16 + TopPx;
        Box field = new(LeftPx, top, chart.WidthPx - LeftPx - RightPx, chart.FieldHeightPx);
        double bottom = field.Bottom;
        if (points.Length == 0)
        {
            _svg.Text(field.Centre.X, field.Centre.Y, "Not known: no value to draw.", "soft", "middle");
        }
        else
        {
            ChartScale x = new(across, points.Select(point => point.Across).Concat(chart.Marks.Where(_ => chart.Across.IsByPowers).Select(mark => mark.Across)), field.X, field.Right, 70, isRounded: false, chart.Across.IsByPowers);
            double[] heights =
            [
                .. points.Select(point => point.Up), .. chart.Limits.Select(limit => limit.Up).Where(double.IsFinite),
                .. chart.Bands.SelectMany(band => new[] { band.LeastUp, band.MostUp }).Where(double.IsFinite), .. chart.StartsAtZero ? new[] { 0.0 } : [],
                .. chart.Areas.SelectMany(area => area.Upper.Concat(area.Lower)).Where(IsFinite).Select(point => point.Up),
            ];
            double margin = (heights.Max() - heights.Min()) * LimitMarginRatio;
            heights = [.. heights, .. chart.Limits.SelectMany(limit => new[] { limit.Up - margin, limit.Up + margin })];
            ChartScale y = new(up, heights, field.Bottom, field.Y, 30, isRounded: true, chart.Up.IsByPowers);
            Bands(field, y);
            Areas(x, y);
            bottom = Marks(field, x);
            Axes(field, x, y, heights);
            Lines(field, x, y);
        }

        string[] name = Wrapped(chart.Across.IsOrder ? chart.Across.Name : Named(chart.Across.Name, across), chart.WidthPx - (2 * EdgePx));
        double middle = Math.Clamp(field.Centre.X, EdgePx + (Widest(name) / 2), chart.WidthPx - EdgePx - (Widest(name) / 2));
        double height = Legend(Text(middle, bottom + 36, name, "soft", "middle") + 22);
        SvgWriter frame = new();
        DrawingFrame.Start(frame, new Frame(chart.Id, chart.Title, Description(), chart.WidthPx, height));
        return frame.Insert(_svg).End().ToString();
    }

    private void Bands(Box field, ChartScale y)
    {
        foreach (ChartBand band in chart.Bands.Where(band => double.IsFinite(band.LeastUp) && double.IsFinite(band.MostUp)))
        {
            double top = y.At(Math.Max(band.LeastUp, band.MostUp)), low = y.At(Math.Min(band.LeastUp, band.MostUp));
            _svg.Rect(new Box(field.X, top, field.Width, low - top), "band");
            Text(field.X + EdgePx, top + 11, Wrapped(band.Name, field.Width - (2 * EdgePx)), "soft halo");
        }
    }

    // What tells how sure a line is lies under what is measured.
    private void Areas(ChartScale x, ChartScale y)
    {
        foreach (ChartArea area in chart.Areas.OrderByDescending(area => area.IsDoubt))
        {
            Spot[] edge = [.. area.Upper.Where(IsFinite).Concat(area.Lower.Where(IsFinite).Reverse()).Select(point => new Spot(x.At(point.Across), y.At(point.Up)))];
            _svg.Polyline(edge, AreaStyle(area), isClosed: true);
            if (!area.IsDoubt && area.Upper.Count > 0 && IsFinite(area.Upper[^1]))
            {
                _svg.Line(x.At(area.Upper[^1].Across), y.At(area.Upper[^1].Up), x.At(area.Lower[^1].Across), y.At(area.Lower[^1].Up), "water-line");
            }
        }
    }

    private static string AreaStyle(ChartArea area) => area.IsDoubt ? "band" : "water";

    private void Axes(Box field, ChartScale x, ChartScale y, double[] heights)
    {
        foreach ((double number, double at) in y.Ticks())
        {
            _svg.Line(field.X, at, field.Right, at, "grid");
            _svg.Text(field.X - 6, at + 4, number.ToString("0.######", chart.Culture), "soft", "end", TextSize.Small);
        }

        foreach ((double number, double at) in chart.Across.IsOrder ? [] : x.Ticks())
        {
            _svg.Line(at, field.Bottom, at, field.Bottom + 5, "axis");
            _svg.Text(at, field.Bottom + 17, number.ToString("0.######", chart.Culture), "soft halo", "middle", TextSize.Small);
        }

        double floor = heights.Min() < 0 && heights.Max() > 0 ? y.At(0) : field.Bottom;
        _svg.Line(field.X, floor, field.Right, floor, "axis");
    }

    private void Lines(Box field, ChartScale x, ChartScale y)
    {
        foreach (ChartSeries series in chart.Series)
        {
            if (series.Sign != ChartSign.Line)
            {
                foreach (ChartPoint point in series.Points.Where(IsFinite))
                {
                    Sign(series, new Spot(x.At(point.Across), y.At(point.Up)));
                }

                continue;
            }

            List<Spot> line = [];
            foreach (ChartPoint point in series.Points.Append(new ChartPoint(double.NaN, double.NaN)))
            {
                if (IsFinite(point))
                {
                    line.Add(new(x.At(point.Across), y.At(point.Up)));
                }
                else if (line.Count > 0)
                {
                    _svg.Polyline(line, StyleOf(series));
                    line = [];
                }
            }
        }

        NamesOnLines(field, x, y);
        foreach (ChartLimit limit in chart.Limits.Where(limit => double.IsFinite(limit.Up)))
        {
            double from = limit.FromAcross is { } begin ? x.At(begin) : field.X, to = Math.Min(field.Right, limit.ToAcross is { } end ? x.At(end) : field.Right);
            _svg.Line(from, y.At(limit.Up), to, y.At(limit.Up), "limit");
            string value = QuantityText.Format(limit.Told ?? limit.Up, chart.Up.Suffix, chart.Units, chart.Culture);
            string[] name = Wrapped($"{limit.Name} {value}", field.Width - (2 * EdgePx));
            double right = Math.Max(to - EdgePx, field.X + EdgePx + Widest(name)), above = y.At(limit.Up) - EdgePx - ((name.Length - 1) * MarkRowPx);
            Text(right, above - TextSize.Small < field.Y && name.Length > 1 ? y.At(limit.Up) + MarkRowPx : above, name, "limit halo", "end");
        }
    }

    // Each at a height of its own, where its line comes nearest to that.
    private void NamesOnLines(Box field, ChartScale x, ChartScale y)
    {
        ChartSeries[] named = [.. chart.Series.Where(series => series.IsNamedOnLine && series.Points.Any(IsFinite))];
        for (int k = 0; k < named.Length; k++)
        {
            double height = field.Y + (field.Height * (k + 1) / (named.Length + 1));
            Spot at = named[k].Points.Where(IsFinite).Select(point => new Spot(x.At(point.Across), y.At(point.Up))).MinBy(spot => Math.Abs(spot.Y - height));
            string[] name = Wrapped(named[k].Name, field.Width / 2);
            double first = Math.Max(height - ((name.Length - 1) * MarkRowPx / 2), field.Y + TextSize.Small);
            Text(Math.Clamp(at.X + EdgePx, field.X, field.Right - Widest(name)), first, name, "label halo");
        }
    }

    /// <summary>Names under the axis, in as many rows as they need, over the lines that lead to them; returns how far down they reach.</summary>
    private double Marks(Box field, ChartScale x)
    {
        List<double> rowEnds = [];
        List<(string[] Name, double Middle, double Y)> names = [];
        foreach (ChartMark mark in chart.Marks.Where(mark => double.IsFinite(mark.Across)).OrderBy(mark => mark.Across))
        {
            string[] name = Wrapped(mark.Name, chart.WidthPx - (2 * EdgePx));
            double width = Widest(name) + (2 * EdgePx);
            double left = Math.Clamp(x.At(mark.Across) - (width / 2), 0, Math.Max(0, chart.WidthPx - width));
            int row = FreeRow(rowEnds, name.Length, left);
            for (int line = row; line < row + name.Length; line++)
            {
                rowEnds[line] = left + width;
            }

            double y = field.Bottom + 32 + (row * MarkRowPx);
            _svg.Line(x.At(mark.Across), field.Y, x.At(mark.Across), field.Bottom, "grid").Line(x.At(mark.Across), field.Bottom, x.At(mark.Across), y - TextSize.Small, "leader");
            names.Add((name, left + (width / 2), y));
        }

        foreach ((string[] name, double middle, double y) in names)
        {
            Text(middle, y, name, "label halo", "middle");
        }

        return field.Bottom + (rowEnds.Count * MarkRowPx);
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

    private double Legend(double y)
    {
        (string Name, Action<double, double> Sign)[] entries =
        [
            .. chart.Series.Where(series => chart.Series.Count > 1 && series.Name.Length > 0 && !series.IsNamedOnLine).Select(series => (series.Name, (Action<double, double>)((x, at) => Example(series, x, at)))),
            .. chart.Areas.Where(area => area.Name.Length > 0).Select(area => (area.Name, (Action<double, double>)((x, at) => _svg.Rect(new Box(x, at - 10, 28, 11), AreaStyle(area))))),
        ];
        double x = LeftPx;
        foreach ((string words, Action<double, double> sign) in entries)
        {
            string[] name = Wrapped(words, chart.WidthPx - LeftPx - LegendSignPx - EdgePx);
            double width = Widest(name) + LegendSignPx;
            if (x > LeftPx && (name.Length > 1 || x + width > chart.WidthPx - EdgePx))
            {
                x = LeftPx;
                y += 16;
            }

            sign(x, y);
            double last = Text(x + LegendSignPx, y, name, "");
            (x, y) = last > y ? (chart.WidthPx, last) : (x + width + 18, y);
        }

        return entries.Length > 0 ? y + 10 : y - 12;
    }

    // A name that is too long for its room goes on in a line below: nothing of it is cut off.
    private static string[] Wrapped(string text, double mostWidth) => TextSize.Wrapped(text, TextSize.Small, mostWidth) is { } lines && lines.Any() ? [.. lines] : [text];

    private static double Widest(string[] lines) => lines.Max(line => TextSize.Width(line, TextSize.Small));

    /// <summary>Lines below each other; returns where the last one stands.</summary>
    private double Text(double x, double y, string[] lines, string style, string anchor = "start")
    {
        for (int line = 0; line < lines.Length; line++)
        {
            _svg.Text(x, y + (line * MarkRowPx), lines[line], style, anchor, TextSize.Small);
        }

        return y + ((lines.Length - 1) * MarkRowPx);
    }

    private void Sign(ChartSeries series, Spot at)
    {
        if (series.Sign == ChartSign.Dot)
        {
            _svg.Circle(at, SignPx, "solid");
            return;
        }

        _svg.Line(at.X - CrossPx, at.Y - CrossPx, at.X + CrossPx, at.Y + CrossPx, "cross").Line(at.X - CrossPx, at.Y + CrossPx, at.X + CrossPx, at.Y - CrossPx, "cross");
    }

    private void Example(ChartSeries series, double x, double at)
    {
        if (series.Sign == ChartSign.Line)
        {
            _svg.Line(x, at - 4, x + 28, at - 4, StyleOf(series));
        }
        else
        {
            Sign(series, new Spot(x + 14, at - 4));
        }
    }

    // Curves of a kind differ in their strokes, without colour.
    private string StyleOf(ChartSeries series) => series.IsAsked ? OfItsKind(series, AskedStyles, one => one.IsAsked)
        : series.IsDashed ? OfItsKind(series, DashedStyles, one => one.IsDashed)
        : "outline";

    private string OfItsKind(ChartSeries series, string[] styles, Func<ChartSeries, bool> isOfKind) =>
        styles[chart.Series.Where(isOfKind).TakeWhile(one => one != series).Count() % styles.Length];

    private string Description() => string.Join(' ', chart.Series.Where(series => series.Name.Length > 0).Select(series =>
    {
        double[] values = [.. series.Points.Where(IsFinite).Select(point => point.Up)];
        return values.Length == 0
            ? $"{series.Name}: not known."
            : $"{series.Name}: from {Shown(values[0])} to {Shown(values[^1])}, least {Shown(values.Min())}, most {Shown(values.Max())}.";
    }).Concat(chart.Limits.Select(limit => $"{limit.Name}: {Shown(limit.Told ?? limit.Up)}.")));

    private string Shown(double value) => QuantityText.Format(value, chart.Up.Suffix, chart.Units, chart.Culture);

    private static string Named(string name, AxisUnit unit) => unit.Symbol.Length == 0 ? name : $"{name}, {unit.Symbol}";

    private static bool IsFinite(ChartPoint point) => double.IsFinite(point.Across) && double.IsFinite(point.Up);
}
