using Orlop.Drawings.Svg;
using Orlop.Presentation.Quantities;

namespace Orlop.Drawings.Charts;

/// <summary>Draws a chart.</summary>
internal sealed class ChartPainter
{
    private const double LeftPx = 48;
    private const double RightPx = 16;
    private const double TopPx = 26;
    private const double LeastWidthPx = 240;
    private const double LimitMarginRatio = 0.05;
    private readonly Chart _chart;
    private readonly SvgWriter _svg = new();
    private readonly ChartText _text;
    private readonly ChartStrokes _strokes;

    internal ChartPainter(Chart chart)
    {
        if (!(chart.WidthPx >= LeastWidthPx) || !(chart.FieldHeightPx >= 40))
        {
            throw new ArgumentOutOfRangeException(nameof(chart), chart.WidthPx, "Chart: width from 240, field height from 40 drawing units.");
        }

        _chart = chart;
        _text = new ChartText(_svg);
        _strokes = new ChartStrokes(chart, _svg);
    }

    internal string Draw()
    {
        ChartPoint[] points = [.. _chart.Series.SelectMany(series => series.Points).Where(IsFinite)];
        AxisUnit across = AxisUnit.For(_chart.Across.Suffix, _chart.Units), up = AxisUnit.For(_chart.Up.Suffix, _chart.Units);
        double top = _text.Write(ChartText.EdgePx, 16, ChartText.Wrapped(Named(_chart.Up.Name, up), _chart.WidthPx - (2 * ChartText.EdgePx)), "soft") - 16 + TopPx;
        Box field = new(LeftPx, top, _chart.WidthPx - LeftPx - RightPx, _chart.FieldHeightPx);
        double bottom = field.Bottom;
        if (points.Length == 0)
        {
            _svg.Text(field.Centre.X, field.Centre.Y, "Not known: no value to draw.", "soft", "middle");
        }
        else
        {
            ChartScale x = new(across, points.Select(point => point.Across).Concat(_chart.Marks.Where(_ => _chart.Across.IsByPowers).Select(mark => mark.Across)), field.X, field.Right, 70, isRounded: false, _chart.Across.IsByPowers);
            double[] heights =
            [
                .. points.Select(point => point.Up), .. _chart.Limits.Select(limit => limit.Up).Where(double.IsFinite),
                .. _chart.Bands.SelectMany(band => new[] { band.LeastUp, band.MostUp }).Where(double.IsFinite), .. _chart.StartsAtZero ? new[] { 0.0 } : [],
                .. _chart.Areas.SelectMany(area => area.Upper.Concat(area.Lower)).Where(IsFinite).Select(point => point.Up),
            ];
            double margin = (heights.Max() - heights.Min()) * LimitMarginRatio;
            heights = [.. heights, .. _chart.Limits.SelectMany(limit => new[] { limit.Up - margin, limit.Up + margin })];
            ChartScale y = new(up, heights, field.Bottom, field.Y, 30, isRounded: true, _chart.Up.IsByPowers);
            Bands(field, y);
            Areas(x, y);
            bottom = new ChartMarkRows(_chart, _svg, _text).Draw(field, x);
            Axes(field, x, y, heights);
            Lines(field, x, y);
        }

        string[] name = ChartText.Wrapped(_chart.Across.IsOrder ? _chart.Across.Name : Named(_chart.Across.Name, across), _chart.WidthPx - (2 * ChartText.EdgePx));
        double middle = Math.Clamp(field.Centre.X, ChartText.EdgePx + (ChartText.Widest(name) / 2), _chart.WidthPx - ChartText.EdgePx - (ChartText.Widest(name) / 2));
        double height = new ChartLegend(_chart, _text, _strokes).Draw(LeftPx, _text.Write(middle, bottom + 36, name, "soft", "middle") + 22);
        SvgWriter frame = new();
        DrawingFrame.Start(frame, new Frame(_chart.Id, _chart.Title, Description(), _chart.WidthPx, height));
        return frame.Insert(_svg).End().ToString();
    }

    private void Bands(Box field, ChartScale y)
    {
        foreach (ChartBand band in _chart.Bands.Where(band => double.IsFinite(band.LeastUp) && double.IsFinite(band.MostUp)))
        {
            double top = y.At(Math.Max(band.LeastUp, band.MostUp)), low = y.At(Math.Min(band.LeastUp, band.MostUp));
            _svg.Rect(new Box(field.X, top, field.Width, low - top), "band");
            _text.Write(field.X + ChartText.EdgePx, top + 11, ChartText.Wrapped(band.Name, field.Width - (2 * ChartText.EdgePx)), "soft halo");
        }
    }

    // What tells how sure a line is lies under what is measured.
    private void Areas(ChartScale x, ChartScale y)
    {
        foreach (ChartArea area in _chart.Areas.OrderByDescending(area => area.IsDoubt))
        {
            Spot[] edge = [.. area.Upper.Where(IsFinite).Concat(area.Lower.Where(IsFinite).Reverse()).Select(point => new Spot(x.At(point.Across), y.At(point.Up)))];
            _svg.Polyline(edge, ChartStrokes.Of(area), isClosed: true);
            if (!area.IsDoubt && area.Upper.Count > 0 && IsFinite(area.Upper[^1]))
            {
                _svg.Line(x.At(area.Upper[^1].Across), y.At(area.Upper[^1].Up), x.At(area.Lower[^1].Across), y.At(area.Lower[^1].Up), "water-line");
            }
        }
    }

    private void Axes(Box field, ChartScale x, ChartScale y, double[] heights)
    {
        foreach ((double number, double at) in y.Ticks())
        {
            _svg.Line(field.X, at, field.Right, at, "grid");
            _svg.Text(field.X - 6, at + 4, number.ToString("0.######", _chart.Culture), "soft", "end", TextSize.Small);
        }

        foreach ((double number, double at) in _chart.Across.IsOrder ? [] : x.Ticks())
        {
            _svg.Line(at, field.Bottom, at, field.Bottom + 5, "axis");
            _svg.Text(at, field.Bottom + 17, number.ToString("0.######", _chart.Culture), "soft halo", "middle", TextSize.Small);
        }

        double floor = heights.Min() < 0 && heights.Max() > 0 ? y.At(0) : field.Bottom;
        _svg.Line(field.X, floor, field.Right, floor, "axis");
    }

    private void Lines(Box field, ChartScale x, ChartScale y)
    {
        foreach (ChartSeries series in _chart.Series)
        {
            if (series.Sign != ChartSign.Line)
            {
                foreach (ChartPoint point in series.Points.Where(IsFinite))
                {
                    _strokes.Sign(series, new Spot(x.At(point.Across), y.At(point.Up)));
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
                    _svg.Polyline(line, _strokes.Of(series));
                    line = [];
                }
            }
        }

        NamesOnLines(field, x, y);
        foreach (ChartLimit limit in _chart.Limits.Where(limit => double.IsFinite(limit.Up)))
        {
            double from = limit.FromAcross is { } begin ? x.At(begin) : field.X, to = Math.Min(field.Right, limit.ToAcross is { } end ? x.At(end) : field.Right);
            _svg.Line(from, y.At(limit.Up), to, y.At(limit.Up), "limit");
            string value = QuantityText.Format(limit.Told ?? limit.Up, _chart.Up.Suffix, _chart.Units, _chart.Culture);
            string[] name = ChartText.Wrapped($"{limit.Name} {value}", field.Width - (2 * ChartText.EdgePx));
            double right = Math.Max(to - ChartText.EdgePx, field.X + ChartText.EdgePx + ChartText.Widest(name)), above = y.At(limit.Up) - ChartText.EdgePx - ((name.Length - 1) * ChartText.RowPx);
            _text.Write(right, above - TextSize.Small < field.Y && name.Length > 1 ? y.At(limit.Up) + ChartText.RowPx : above, name, "limit halo", "end");
        }
    }

    // Each at a height of its own, where its line comes nearest to that.
    private void NamesOnLines(Box field, ChartScale x, ChartScale y)
    {
        ChartSeries[] named = [.. _chart.Series.Where(series => series.IsNamedOnLine && series.Points.Any(IsFinite))];
        for (int k = 0; k < named.Length; k++)
        {
            double height = field.Y + (field.Height * (k + 1) / (named.Length + 1));
            Spot at = named[k].Points.Where(IsFinite).Select(point => new Spot(x.At(point.Across), y.At(point.Up))).MinBy(spot => Math.Abs(spot.Y - height));
            string[] name = ChartText.Wrapped(named[k].Name, field.Width / 2);
            double first = Math.Max(height - ((name.Length - 1) * ChartText.RowPx / 2), field.Y + TextSize.Small);
            _text.Write(Math.Clamp(at.X + ChartText.EdgePx, field.X, field.Right - ChartText.Widest(name)), first, name, "label halo");
        }
    }

    private string Description() => string.Join(' ', _chart.Series.Where(series => series.Name.Length > 0).Select(series =>
    {
        double[] values = [.. series.Points.Where(IsFinite).Select(point => point.Up)];
        return values.Length == 0
            ? $"{series.Name}: not known."
            : $"{series.Name}: from {Shown(values[0])} to {Shown(values[^1])}, least {Shown(values.Min())}, most {Shown(values.Max())}.";
    }).Concat(_chart.Limits.Select(limit => $"{limit.Name}: {Shown(limit.Told ?? limit.Up)}.")));

    private string Shown(double value) => QuantityText.Format(value, _chart.Up.Suffix, _chart.Units, _chart.Culture);

    private static string Named(string name, AxisUnit unit) => unit.Symbol.Length == 0 ? name : $"{name}, {unit.Symbol}";

    private static bool IsFinite(ChartPoint point) => double.IsFinite(point.Across) && double.IsFinite(point.Up);
}
