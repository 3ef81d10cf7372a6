using System.Globalization;
using Orlop.Boat.Things;
using Orlop.Drawings.Changes;
using Orlop.Drawings.Svg;

namespace Orlop.Drawings.Boats;

/// <summary>Draws the views of a sheet one by one, and keeps in mind which things found room for their names.</summary>
internal sealed class BoatViewPainter(SheetContent content, SvgWriter svg, double pixelsPerM)
{
    private readonly HashSet<string> _drawnIds = new(StringComparer.Ordinal);
    private readonly HashSet<string> _namedIds = new(StringComparer.Ordinal);
    private int _viewCount;

    /// <summary>Something was drawn that stays ashore.</summary>
    public bool HasAshore { get; private set; }

    /// <summary>How many things found no room for their name in any view.</summary>
    public string LeftOut()
    {
        int count = _drawnIds.Except(_namedIds).Count();
        string number = count.ToString(content.Options.Culture);
        return count == 0 ? ""
            : content.Options.IsInteractive ? $"{number} more named when zoomed in. "
            : $"{number} {(count == 1 ? "thing is" : "things are")} drawn without a name, for want of room. ";
    }

    /// <summary>Draws a view; returns the room it takes, with the names under it.</summary>
    /// <param name="kind">From where she is seen.</param>
    /// <param name="title">Words over it.</param>
    /// <param name="corner">Upper left corner of its field.</param>
    /// <param name="cutXM">Where a section cuts her, metres forward; null for a view of all of her.</param>
    /// <param name="extent">How far it reaches.</param>
    public Box Draw(ViewKind kind, string title, Spot corner, double? cutXM, Extent extent)
    {
        BoatView view = new(kind, extent, pixelsPerM, corner);
        svg.Start("g", ("class", $"view {kind.ToString().ToLowerInvariant()}{(content.HasAlteration ? " compared" : "")}"), ("data-x-origin", view.Across(0)), ("data-up-origin", view.Up(0)), ("data-px-per-m", pixelsPerM));
        svg.Text(corner.X, corner.Y - 20, title, "strong");
        List<Segment> lines = [];
        HullPainter hullPainter = new(svg, view, lines);
        if (content.Options.Waterline is { } afloat)
        {
            hullPainter.Water(afloat, cutXM);
        }
        else if (content.Water is { } typed)
        {
            hullPainter.WaterDashed(typed, cutXM);
        }

        if (content.Options.WaterlineAsBuilt is { } asBuilt)
        {
            hullPainter.WaterDashed(asBuilt, cutXM);
        }

        new GridPainter(svg, content.Options.Units, content.Options.Culture).Grid(view);
        Hull(hullPainter, view, cutXM);
        double bottom = Things(new ThingPainter(svg, view, content.Options, cutXM, lines), view);
        if (cutXM is null)
        {
            new RoutePainter(svg, view).Routes(content.Options.Routes);
        }

        new MarkPainter(svg, view, content.Options.IsInteractive).Marks(content.Options.Marks);
        svg.End();
        return view.Frame with { Height = bottom - view.Frame.Y };
    }

    private void Hull(HullPainter painter, BoatView view, double? cutXM)
    {
        if (content.Hull is null)
        {
            svg.Text(view.Frame.X + 6, view.Frame.Y + 14, "No hull lines yet.", "soft");
        }
        else if (view.Kind == ViewKind.Profile)
        {
            painter.Profile(content.Hull);
        }
        else if (view.Kind == ViewKind.Plan)
        {
            painter.Plan(content.Hull);
        }
        else if (!painter.Section(content.Hull, cutXM!.Value))
        {
            svg.Text(view.Frame.X + 6, view.Frame.Y + 14, "The hull does not reach this far.", "soft");
        }
    }

    private double Things(ThingPainter painter, BoatView view)
    {
        string clip = $"{content.Options.Id}-clip-{_viewCount++.ToString(CultureInfo.InvariantCulture)}";
        svg.Start("clipPath", ("id", clip)).Rect(view.Frame, "").End();
        svg.Start("g", ("clip-path", $"url(#{clip})"));
        if (content.Options.ShowsSpaces)
        {
            painter.Spaces(content.Changes.Where(change => change.Shown is Space));
        }

        painter.Openings(content.Changes.Where(change => change.Shown is HullOpening opening && painter.IsArea(opening)));

        if (content.Options.ShowsRuns)
        {
            painter.Ways(content.Changes.Where(change => change.Shown is Way));
            painter.Runs(content.Changes.Where(change => change.Shown is Cable).OrderBy(change => change.Kind == ChangeKind.Kept ? 0 : 1), content.AsBuilt, content.Altered);
        }

        svg.End();
        painter.Things(content.Changes.Where(change => change.Shown is Gear or Part or Compass or Tank or Deadweight).OrderBy(change => change.Kind == ChangeKind.Kept ? 0 : 1).ThenByDescending(change => Area(change.Shown)));
        painter.Openings(content.Changes.Where(change => change.Shown is HullOpening opening && !painter.IsArea(opening)));
        ThingLabels labels = new(svg, view, content.Options, content.Water);
        (double bottom, IReadOnlyList<string> named) = labels.Draw(painter.Drawn, painter.DrawnSpaces, painter.Obstacles);
        _drawnIds.UnionWith(painter.Drawn.Concat(painter.DrawnSpaces).Where(thing => !Ashore.Is(thing.Change.Shown, content.Options)).Select(thing => thing.Change.Id));
        HasAshore |= painter.Drawn.Any(thing => Ashore.Is(thing.Change.Shown, content.Options));
        _namedIds.UnionWith(named);
        return bottom;
    }

    private static double Area(Thing thing) => BoatExtents.SizeOf(thing) is { } size ? size.LengthM * size.HeightM : 0;
}
