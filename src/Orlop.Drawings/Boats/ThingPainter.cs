using Orlop.Boat;
using Orlop.Boat.Things;
using Orlop.Boat.Topology;
using Orlop.Boat.Values;
using Orlop.Drawings.Changes;
using Orlop.Drawings.Svg;
using Orlop.Presentation.Words;

namespace Orlop.Drawings.Boats;

/// <summary>Draws the things of a boat in a view, and notes where they stand for their labels.</summary>
internal sealed class ThingPainter(SvgWriter svg, BoatView view, BoatDrawingOptions options, double? cutXM, List<Segment> lines)
{
    private readonly List<Segment> _faintLines = [];
    private readonly List<DrawnThing> _things = [];
    private readonly List<DrawnThing> _spaces = [];
    private readonly List<Box> _left = [];

    /// <summary>Gear, tanks, what is carried, and parts drawn.</summary>
    internal IReadOnlyList<DrawnThing> Drawn => _things;

    /// <summary>Spaces drawn.</summary>
    internal IReadOnlyList<DrawnThing> DrawnSpaces => _spaces;

    /// <summary>What labels keep clear of: the things and where they stood, hull and changes, and the ways and runs that stay.</summary>
    internal LabelObstacles Obstacles => new([.. _things.Select(thing => thing.Box), .. _left], lines, _faintLines);

    internal void Spaces(IEnumerable<ThingChange> changes)
    {
        foreach (ThingChange change in changes)
        {
            Space space = (Space)change.Shown;
            if (cutXM is { } cut && (cut < space.From.XM || cut > space.To.XM))
            {
                continue;
            }

            Spot from = view.At(space.From), to = view.At(space.To);
            Box box = new(Math.Min(from.X, to.X), Math.Min(from.Y, to.Y), Math.Abs(to.X - from.X), Math.Abs(to.Y - from.Y));
            svg.StartThing(space.Id, NameOf(change), options.IsInteractive);
            svg.Rect(box, $"space {change.Style}".TrimEnd()).End();
            _spaces.Add(new(change, box));
        }
    }

    internal void Ways(IEnumerable<ThingChange> changes)
    {
        foreach (ThingChange change in changes.Where(change => cutXM is null && ((Way)change.Shown).Points.Count > 1))
        {
            svg.StartThing(change.Id, NameOf(change), options.IsInteractive);
            Trace([.. ((Way)change.Shown).Points.Select(view.At)], $"way {change.Style}".TrimEnd());
            svg.End();
        }
    }

    internal void Runs(IEnumerable<ThingChange> changes, BoatModel asBuilt, BoatModel altered)
    {
        foreach (ThingChange change in changes.Where(_ => cutXM is null))
        {
            if (change.Kind == ChangeKind.Altered && RunLine.Of((Cable)change.Was!, asBuilt) is { Count: > 1 } was
                && !was.SequenceEqual(RunLine.Of((Cable)change.Becomes!, altered)))
            {
                Trace([.. was.Select(view.At)], "run gone");
            }

            IReadOnlyList<Place> line = RunLine.Of((Cable)change.Shown, change.Becomes is null ? asBuilt : altered);
            if (line.Count > 1)
            {
                svg.StartThing(change.Id, NameOf(change), options.IsInteractive);
                Trace([.. line.Select(view.At)], $"run {change.Style}".TrimEnd());
                svg.End();
            }
        }
    }

    /// <summary>Boxes of gear and parts; what moves leaves a dashed box and an arrow.</summary>
    internal void Things(IEnumerable<ThingChange> changes)
    {
        foreach (ThingChange change in changes)
        {
            if (BoatExtents.PlaceOf(change.Shown) is not { } place || !view.Shows(place) || !BoatExtents.IsAtCut(change.Shown, cutXM))
            {
                continue;
            }

            Box box = view.BoxOf(place, BoatExtents.SizeOf(change.Shown));
            Place? from = change.Kind == ChangeKind.Altered && BoatExtents.PlaceOf(change.Was) is { } stood && stood != place ? stood : null;
            string style = $"kept {(change.Shown is Gear or Tank or Deadweight ? "gear" : "part")} {change.Style}".TrimEnd() + (Ashore.Is(change.Shown, options) ? " ashore" : "");
            svg.StartThing(change.Id, NameOf(change), options.IsInteractive);
            if (from is not null)
            {
                Box was = view.BoxOf(from, BoatExtents.SizeOf(change.Was));
                svg.Rect(was, "kept gone");
                _left.Add(was);
            }

            if (BoatExtents.SizeOf(change.Shown) is null)
            {
                svg.Circle(box.Centre, box.Width / 2, style);
            }
            else
            {
                svg.Rect(box, style);
            }

            if (from is not null)
            {
                Arrow(view.At(from), box);
            }

            svg.End();
            _things.Add(new(change, box));
        }
    }

    /// <summary>Openings; what is as large as it is drawn names itself in a corner, as a space does.</summary>
    internal void Openings(IEnumerable<ThingChange> changes)
    {
        OpeningPainter painter = new(svg, view);
        foreach (ThingChange change in changes)
        {
            HullOpening opening = (HullOpening)change.Shown;
            if (BoatExtents.PlaceOf(opening) is not { } place || !view.Shows(place) || !BoatExtents.IsAtCut(opening, cutXM))
            {
                continue;
            }

            svg.StartThing(change.Id, NameOf(change), options.IsInteractive);
            if (change.Kind == ChangeKind.Altered && BoatExtents.PlaceOf(change.Was) is { } stood && stood != place && view.Shows(stood))
            {
                _left.Add(painter.Draw((HullOpening)change.Was!, stood, "kept opening gone"));
            }

            Box box = painter.Draw(opening, place, $"kept opening {change.Style}".TrimEnd());
            svg.End();
            (IsArea(opening) ? _spaces : _things).Add(new(change, box));
        }
    }

    /// <summary>It is drawn as large as it is, and other things stand in it.</summary>
    internal bool IsArea(HullOpening opening) => view.Kind == ViewKind.Plan && opening.IsExtentTold;

    private void Trace(Spot[] line, string style)
    {
        svg.Polyline(line, style);
        (style is "run" or "way" ? _faintLines : lines).AddRange(Segment.Along(line));
    }

    private void Arrow(Spot from, Box to)
    {
        const double Head = 7;
        double x = to.Centre.X - from.X, y = to.Centre.Y - from.Y, length = Math.Sqrt((x * x) + (y * y));
        double reach = length * (1 - Math.Min(to.Width / 2 / Math.Abs(x), to.Height / 2 / Math.Abs(y)));
        if (!(reach > Head))
        {
            return;
        }

        (double ux, double uy) = (x / length, y / length);
        Spot tip = new(from.X + (ux * reach), from.Y + (uy * reach)), back = new(tip.X - (ux * Head), tip.Y - (uy * Head));
        svg.Line(from.X, from.Y, back.X, back.Y, "added");
        svg.Polyline([tip, new(back.X - (uy * Head / 2), back.Y + (ux * Head / 2)), new(back.X + (uy * Head / 2), back.Y - (ux * Head / 2))], "arrow", isClosed: true);
        lines.Add(new(from, tip));
    }

    /// <summary>The accessible name; it starts with what its label says.</summary>
    private string NameOf(ThingChange change) =>
        $"{LabelWords.Of(change.Shown, options)}, {Wording.KindOf(change.Shown)}{(Ashore.Is(change.Shown, options) ? Ashore.Remark : "")}{change.Remark}";
}

/// <summary>A thing as it stands in a view.</summary>
internal sealed record DrawnThing(ThingChange Change, Box Box);
