using System.Globalization;
using Orlop.Boat;
using Orlop.Boat.Things;
using Orlop.Drawings.Changes;
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
    private readonly BoatModel _asBuilt;
    private readonly BoatModel _altered;
    private readonly BoatDrawingOptions _options;
    private readonly IReadOnlyList<ThingChange> _changes;
    private readonly HullLines? _hull;
    private readonly bool _hasAlteration;
    private readonly double _pixelsPerM;
    private readonly double _width;
    private readonly SvgWriter _svg = new();
    private int _viewCount;
    private readonly HashSet<string> _drawnIds = new(StringComparer.Ordinal);
    private bool _hasAshore;
    private readonly HashSet<string> _namedIds = new(StringComparer.Ordinal);

    internal BoatSheet(BoatModel asBuilt, BoatModel? altered, BoatDrawingOptions options)
    {
        if (!(options.WidthPx >= LeastWidthPx) || options.ScaleDenominatorRatio is { } ratio && !(ratio >= 1 && ratio <= 1000))
        {
            throw new ArgumentOutOfRangeException(nameof(options), options, "Boat drawing: width from 240 units, scale from 1:1 to 1:1000.");
        }

        _asBuilt = asBuilt;
        _altered = altered ?? asBuilt;
        _hasAlteration = altered is not null;
        _options = options;
        _changes = [.. ThingChange.Between(asBuilt, altered).Where(IsShown)];
        _hull = DrawnOutline.LinesOf(_altered);
        double lengthM = ExtentOf(ViewKind.Profile)?.WidthM ?? 1;
        _pixelsPerM = options.ScaleDenominatorRatio is { } denominator
            ? 1000 / denominator * DrawingFrame.UnitsPerMm
            : (options.WidthPx - LeftPx - RightPx) / lengthM;
        _width = options.ScaleDenominatorRatio is null ? options.WidthPx : Math.Max(LeastWidthPx, (lengthM * _pixelsPerM) + LeftPx + RightPx);
    }

    /// <summary>The largest usual scale at which the boat's length fits a width on paper.</summary>
    internal double ScaleFor(double widthMm)
    {
        double lengthMm = (ExtentOf(ViewKind.Profile)?.WidthM ?? 1) * 1000;
        double roomMm = widthMm - ((LeftPx + RightPx) / DrawingFrame.UnitsPerMm);
        return UsualScales.FirstOrDefault(denominator => lengthMm / denominator <= roomMm, UsualScales[^1]);
    }

    internal string Draw(string views, bool showsProfile = false, bool showsPlan = false, bool showsSections = false)
    {
        string boat = _asBuilt.Particulars?.Title ?? "Boat";
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
        string title = $"{boat}: {char.ToLowerInvariant(views[0])}{views[1..]}, {(_hasAlteration ? "as built and as altered" : "as built")}";
        SvgWriter frame = new();
        DrawingFrame.Start(frame, new Frame(_options.Id, title, Description(), _width, height, _options.IsInteractive, _options.ScaleDenominatorRatio is not null));
        return frame.Insert(_svg).End().ToString();
    }

    private double Sections(double y)
    {
        double top = y + (y > 0 ? GapPx : 0) + TextSize.Height(TextSize.Body);
        List<(double CutXM, Extent Extent)> sections =
        [
            .. (_options.SectionsXM ?? EvenCuts()).Select(cutXM => (cutXM, ExtentOf(ViewKind.Section, cutXM)))
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

    private Extent? ExtentOf(ViewKind kind, double? cutXM = null) => BoatExtents.Of(kind, _hull, _changes, cutXM, _options.Marks, cutXM is null ? _options.Routes : []);

    private double CellWidth(Extent extent) => (extent.WidthM * _pixelsPerM) + SectionGapPx;

    /// <summary>Four cuts along the hull, at whole metres or feet.</summary>
    private IEnumerable<double> EvenCuts()
    {
        if (_hull is null)
        {
            return [];
        }

        AxisUnit unit = AxisUnit.For("M", _options.Units);
        double least = _hull.Sheer.Min(point => point.XM), length = _hull.Sheer.Max(point => point.XM) - least;
        return EvenFractions.Select(fraction => unit.ToModel(Math.Round(unit.FromModel(least + (fraction * length)), MidpointRounding.AwayFromZero)));
    }

    private Box View(ViewKind kind, string title, Spot corner, double? cutXM)
    {
        if (ExtentOf(kind, cutXM) is not { } extent)
        {
            double y = Lines(corner.Y, $"{title}: nothing to draw yet. Give the hull lines or a place to something.", TextSize.Body);
            return new Box(corner.X, corner.Y, 0, y - corner.Y);
        }

        BoatView view = new(kind, extent, _pixelsPerM, corner);
        _svg.Start("g", ("class", $"view {kind.ToString().ToLowerInvariant()}{(_hasAlteration ? " compared" : "")}"), ("data-x-origin", view.Across(0)), ("data-up-origin", view.Up(0)), ("data-px-per-m", _pixelsPerM));
        _svg.Text(corner.X, corner.Y - 20, title, "strong");
        List<Segment> lines = [];
        HullPainter hullPainter = new(_svg, view, lines);
        if (_options.Waterline is { } afloat)
        {
            hullPainter.Water(afloat, cutXM);
        }
        else if (Water is { } typed)
        {
            hullPainter.WaterDashed(typed, cutXM);
        }

        if (_options.WaterlineAsBuilt is { } asBuilt)
        {
            hullPainter.WaterDashed(asBuilt, cutXM);
        }

        new GridPainter(_svg, _options.Units, _options.Culture).Grid(view);
        Hull(hullPainter, view, cutXM);
        double bottom = Things(new ThingPainter(_svg, view, _options, cutXM, lines), view);
        if (cutXM is null)
        {
            new RoutePainter(_svg, view).Routes(_options.Routes);
        }

        new MarkPainter(_svg, view, _options.IsInteractive).Marks(_options.Marks);
        _svg.End();
        return view.Frame with { Height = bottom - view.Frame.Y };
    }

    private void Hull(HullPainter painter, BoatView view, double? cutXM)
    {
        if (_hull is null)
        {
            _svg.Text(view.Frame.X + 6, view.Frame.Y + 14, "No hull lines yet.", "soft");
        }
        else if (view.Kind == ViewKind.Profile)
        {
            painter.Profile(_hull);
        }
        else if (view.Kind == ViewKind.Plan)
        {
            painter.Plan(_hull);
        }
        else if (!painter.Section(_hull, cutXM!.Value))
        {
            _svg.Text(view.Frame.X + 6, view.Frame.Y + 14, "The hull does not reach this far.", "soft");
        }
    }

    private double Things(ThingPainter painter, BoatView view)
    {
        string clip = $"{_options.Id}-clip-{_viewCount++.ToString(CultureInfo.InvariantCulture)}";
        _svg.Start("clipPath", ("id", clip)).Rect(view.Frame, "").End();
        _svg.Start("g", ("clip-path", $"url(#{clip})"));
        if (_options.ShowsSpaces)
        {
            painter.Spaces(_changes.Where(change => change.Shown is Space));
        }

        if (_options.ShowsRuns)
        {
            painter.Ways(_changes.Where(change => change.Shown is Way));
            painter.Runs(_changes.Where(change => change.Shown is Cable).OrderBy(change => change.Kind == ChangeKind.Kept ? 0 : 1), _asBuilt, _altered);
        }

        _svg.End();
        painter.Things(_changes.Where(change => change.Shown is Gear or Part or Compass or Tank or Deadweight).OrderBy(change => change.Kind == ChangeKind.Kept ? 0 : 1).ThenByDescending(change => Area(change.Shown)));
        ThingLabels labels = new(_svg, view, _options, Water);
        (double bottom, IReadOnlyList<string> named) = labels.Draw(painter.Drawn, painter.DrawnSpaces, painter.Obstacles);
        _drawnIds.UnionWith(painter.Drawn.Concat(painter.DrawnSpaces).Where(thing => !Ashore.Is(thing.Change.Shown, _options)).Select(thing => thing.Change.Id));
        _hasAshore |= painter.Drawn.Any(thing => Ashore.Is(thing.Change.Shown, _options));
        _namedIds.UnionWith(named);
        return bottom;
    }

    private Waterline? Water => _options.Waterline ?? (_options.ShowsTypedDraught && _altered.Particulars?.DraughtM is { } draught ? Waterline.Level(draught.Value) : null);

    private double Foot(double y)
    {
        GridPainter grid = new(_svg, _options.Units, _options.Culture);
        grid.ScaleBar(new Spot(LeftPx, y), _pixelsPerM, Math.Min(260, (_width / 2) - LeftPx));
        y += 40;
        if (_hasAlteration)
        {
            y = ChangeLegend.Draw(_svg, new Spot(LeftPx, y), _width - RightPx);
        }

        string scale = _options.ScaleDenominatorRatio is { } denominator ? $"Scale 1:{denominator.ToString("0.##", _options.Culture)} when printed at 100 %. " : "";
        return Lines(y, $"{LeftOut()}{(_hasAshore ? Ashore.Legend : "")}{scale}{Outside()}Drawn from the recorded lines; not a survey.", TextSize.Small);
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

    /// <summary>How many things found no room for their name in any view.</summary>
    private string LeftOut()
    {
        int count = _drawnIds.Except(_namedIds).Count();
        string number = count.ToString(_options.Culture);
        return count == 0 ? ""
            : _options.IsInteractive ? $"{number} more named when zoomed in. "
            : $"{number} {(count == 1 ? "thing is" : "things are")} drawn without a name, for want of room. ";
    }

    /// <summary>Names what has a place too far from the hull to be drawn: a likely slip of typing.</summary>
    private string Outside()
    {
        Extent? extent = BoatExtents.Of(ViewKind.Profile, _hull, _changes), plan = BoatExtents.Of(ViewKind.Plan, _hull, _changes);
        string[] names = [.. _changes.Where(change => BoatExtents.PlaceOf(change.Shown) is { } place
            && !(new BoatView(ViewKind.Profile, extent!, 1, default).Shows(place) && new BoatView(ViewKind.Plan, plan!, 1, default).Shows(place)))
            .Select(change => change.Shown.Title)];
        return names.Length == 0 ? "" : $"Too far from the hull to be drawn: {string.Join(", ", names.Take(5))}{(names.Length > 5 ? ", …" : "")}. ";
    }

    private string Description()
    {
        string[] Names(ChangeKind kind) => [.. _changes.Where(change => change.Kind == kind).Select(change => change.Shown.Title)];
        string Part(string what, string[] names) => names.Length == 0 ? "" : $" {what}: {string.Join(", ", names)}.";
        return $"{_changes.Count} {(_changes.Count == 1 ? "thing" : "things")}, to scale.{Part("Added", Names(ChangeKind.Added))}{Part("Changed", Names(ChangeKind.Altered))}{Part("Taken out", Names(ChangeKind.Gone))}";
    }

    private bool IsShown(ThingChange change) => (!_options.ShowsOnlyChanges || change.Kind != ChangeKind.Kept) && change.Shown switch
    {
        Gear or Tank or Deadweight => _options.ShowsGear,
        Part or Compass => _options.ShowsParts,
        Way or Cable => _options.ShowsRuns,
        Space => _options.ShowsSpaces,
        _ => false,
    };

    private static double Area(Thing thing) => BoatExtents.SizeOf(thing) is { } size ? size.LengthM * size.HeightM : 0;
}
