using Orlop.Boat;
using Orlop.Drawings.Svg;
using Orlop.Presentation.Quantities;

namespace Orlop.Drawings.Boats;

/// <summary>Stacks the views of a boat on one drawing, all at one scale.</summary>
internal sealed class BoatSheet
{
    private const double LeftPx = 30;
    private const double RightPx = 12;
    private const double HeadPx = 38;
    private const double GapPx = 14;
    private const double SectionGapPx = 40;
    private const double LeastWidthPx = 240;
    private static readonly double[] UsualScales = [10, 20, 25, 40, 50, 75, 100, 150, 200, 250, 500];
    private static readonly double[] EvenFractions = [0.15, 0.38, 0.62, 0.85];
    private readonly BoatDrawingOptions _options;
    private readonly SheetContent _content;
    private readonly BoatViewPainter _views;
    private readonly double _pixelsPerM;
    private readonly double _width;
    private readonly SvgWriter _svg = new();

    internal BoatSheet(BoatModel asBuilt, BoatModel? altered, BoatDrawingOptions options)
    {
        if (!(options.WidthPx >= LeastWidthPx) || options.ScaleDenominatorRatio is { } ratio && !(ratio >= 1 && ratio <= 1000))
        {
            throw new ArgumentOutOfRangeException(nameof(options), options, "Boat drawing: width from 240 units, scale from 1:1 to 1:1000.");
        }

        _options = options;
        _content = new SheetContent(asBuilt, altered, options);
        double lengthM = _content.ExtentOf(ViewKind.Profile)?.WidthM ?? 1;
        _pixelsPerM = options.ScaleDenominatorRatio is { } denominator
            ? 1000 / denominator * DrawingFrame.UnitsPerMm
            : (options.WidthPx - LeftPx - RightPx) / lengthM;
        _views = new BoatViewPainter(_content, _svg, _pixelsPerM);
        _width = options.ScaleDenominatorRatio is null ? options.WidthPx : Math.Max(LeastWidthPx, (lengthM * _pixelsPerM) + LeftPx + RightPx);
    }

    /// <summary>The largest usual scale at which the boat's length fits a width on paper.</summary>
    internal double ScaleFor(double widthMm)
    {
        double lengthMm = (_content.ExtentOf(ViewKind.Profile)?.WidthM ?? 1) * 1000;
        double roomMm = widthMm - ((LeftPx + RightPx) / DrawingFrame.UnitsPerMm);
        return UsualScales.FirstOrDefault(denominator => lengthMm / denominator <= roomMm, UsualScales[^1]);
    }

    internal string Draw(string views, bool showsProfile = false, bool showsPlan = false, bool showsSections = false)
    {
        string boat = _content.AsBuilt.Particulars?.Title ?? "Boat";
        double y = 0;
        if (showsProfile)
        {
            y = View(ViewKind.Profile, "Profile, seen from starboard", new Spot(LeftPx, y + HeadPx), null).Bottom;
        }

        if (showsPlan)
        {
            y = View(ViewKind.Plan, "Plan, port side up", new Spot(LeftPx, y + (y > 0 ? GapPx : 0) + HeadPx), null).Bottom;
        }

        if (showsSections)
        {
            y = Sections(y);
        }

        double height = Foot(y + GapPx);
        string title = $"{boat}: {char.ToLowerInvariant(views[0])}{views[1..]}, {(_content.HasAlteration ? "as built and as altered" : "as built")}";
        SvgWriter frame = new();
        DrawingFrame.Start(frame, new Frame(_options.Id, title, _content.Description(), _width, height, _options.IsInteractive, _options.ScaleDenominatorRatio is not null));
        return frame.Insert(_svg).End().ToString();
    }

    private double Sections(double y)
    {
        double top = y + (y > 0 ? GapPx : 0) + TextSize.Height(TextSize.Body);
        List<(double CutXM, Extent Extent)> sections =
        [
            .. (_options.SectionsXM ?? EvenCuts()).Select(cutXM => (cutXM, _content.ExtentOf(ViewKind.Section, cutXM)))
                .Where(section => section.Item2 is not null).Select(section => (section.cutXM, section.Item2!)),
        ];
        if (sections.Count == 0)
        {
            return y;
        }

        _svg.Text(LeftPx, top, "Sections, looking forward", "strong");
        List<(double CutXM, Extent Extent)> row = [];
        double x = LeftPx;
        foreach ((double cutXM, Extent extent) in sections)
        {
            double width = CellWidth(extent);
            if (row.Count > 0 && x + width > _width)
            {
                top = SectionRow(row, top);
                row.Clear();
                x = LeftPx;
            }

            row.Add((cutXM, extent));
            x += width;
        }

        return SectionRow(row, top);
    }

    /// <summary>Sections side by side on one base line; returns how far down they reach.</summary>
    private double SectionRow(List<(double CutXM, Extent Extent)> row, double top)
    {
        double highestM = row.Max(section => section.Extent.MostUpM), x = LeftPx, bottom = top;
        foreach ((double cutXM, Extent extent) in row)
        {
            Spot corner = new(x, top + HeadPx + ((highestM - extent.MostUpM) * _pixelsPerM));
            string at = QuantityText.Format(cutXM, "M", _options.Units, _options.Culture);
            bottom = Math.Max(bottom, View(ViewKind.Section, $"At {at}", corner, cutXM).Bottom);
            x += CellWidth(extent);
        }

        return bottom + GapPx;
    }

    private double CellWidth(Extent extent) => (extent.WidthM * _pixelsPerM) + SectionGapPx;

    /// <summary>Four cuts along the hull, at whole metres or feet.</summary>
    private IEnumerable<double> EvenCuts()
    {
        if (_content.Hull is null)
        {
            return [];
        }

        AxisUnit unit = AxisUnit.For("M", _options.Units);
        double least = _content.Hull.Sheer.Min(point => point.XM), length = _content.Hull.Sheer.Max(point => point.XM) - least;
        return EvenFractions.Select(fraction => unit.ToModel(Math.Round(unit.FromModel(least + (fraction * length)), MidpointRounding.AwayFromZero)));
    }

    private Box View(ViewKind kind, string title, Spot corner, double? cutXM)
    {
        if (_content.ExtentOf(kind, cutXM) is not { } extent)
        {
            double y = Lines(corner.Y, $"{title}: nothing to draw yet. Give the hull lines or a place to something.", TextSize.Body);
            return new Box(corner.X, corner.Y, 0, y - corner.Y);
        }

        return _views.Draw(kind, title, corner, cutXM, extent);
    }

    private double Foot(double y)
    {
        GridPainter grid = new(_svg, _options.Units, _options.Culture);
        grid.ScaleBar(new Spot(LeftPx, y), _pixelsPerM, Math.Min(260, (_width / 2) - LeftPx));
        y += 40;
        if (_content.HasAlteration)
        {
            y = ChangeLegend.Draw(_svg, new Spot(LeftPx, y), _width - RightPx);
        }

        string scale = _options.ScaleDenominatorRatio is { } denominator ? $"Scale 1:{denominator.ToString("0.##", _options.Culture)} when printed at 100 %. " : "";
        return Lines(y, $"{_views.LeftOut()}{(_views.HasAshore ? Ashore.Legend : "")}{scale}{_content.Outside()}Drawn from the recorded lines; not a survey.", TextSize.Small);
    }

    private double Lines(double y, string text, double size)
    {
        foreach (string line in TextSize.Wrapped(text, size, _width - LeftPx - RightPx))
        {
            _svg.Text(LeftPx, y, line, "soft", size: size);
            y += TextSize.Height(size) + 1;
        }

        return y;
    }
}
