using Orlop.Boat;
using Orlop.Boat.Things;
using Orlop.Boat.Values;
using Orlop.Drawings.Changes;
using Orlop.Drawings.Svg;
using Orlop.Presentation.Quantities;
using Orlop.Presentation.Words;

namespace Orlop.Drawings.Boats;

/// <summary>Draws the things of a boat in a view, and places their labels.</summary>
internal sealed class ThingPainter(SvgWriter svg, BoatView view, BoatDrawingOptions options, double? cutXM, bool namesAllGear, double? draughtM)
{
    private const double MostLabelPx = 190;
    private const double TogetherPx = 13;
    private readonly List<Box> _boxes = [];
    private readonly List<(ThingChange Change, Box Box)> _named = [];
    private readonly List<(ThingChange Change, Box Box)> _spaces = [];

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
            _spaces.Add((change, box));
        }
    }

    internal void Ways(IEnumerable<ThingChange> changes)
    {
        foreach (ThingChange change in changes.Where(change => cutXM is null && ((Way)change.Shown).Points.Count > 1))
        {
            svg.StartThing(change.Id, NameOf(change), options.IsInteractive);
            svg.Polyline(((Way)change.Shown).Points.Select(view.At), "way").End();
        }
    }

    internal void Runs(IEnumerable<ThingChange> changes, BoatModel asBuilt, BoatModel altered)
    {
        foreach (ThingChange change in changes.Where(_ => cutXM is null))
        {
            if (change.Kind == ChangeKind.Altered && RunLine.Of((Cable)change.Was!, asBuilt) is { Count: > 1 } was
                && !was.SequenceEqual(RunLine.Of((Cable)change.Becomes!, altered)))
            {
                svg.Polyline(was.Select(view.At), "run gone");
            }

            IReadOnlyList<Place> line = RunLine.Of((Cable)change.Shown, change.Becomes is null ? asBuilt : altered);
            if (line.Count > 1)
            {
                svg.StartThing(change.Id, NameOf(change), options.IsInteractive);
                svg.Polyline(line.Select(view.At), $"run {change.Style}".TrimEnd()).End();
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
            Place? from = change.Kind == ChangeKind.Altered ? BoatExtents.PlaceOf(change.Was) : null;
            svg.StartThing(change.Id, NameOf(change), options.IsInteractive);
            if (from is not null && from != place)
            {
                Box was = view.BoxOf(from, BoatExtents.SizeOf(change.Was));
                svg.Rect(was, "kept gone");
                Arrow(was.Centre, box);
            }

            if (BoatExtents.SizeOf(change.Shown) is null)
            {
                svg.Circle(box.Centre, box.Width / 2, $"kept {change.Style}".TrimEnd());
            }
            else
            {
                svg.Rect(box, $"kept {change.Style}".TrimEnd());
            }

            svg.End();
            _boxes.Add(box);
            _named.Add((change, box));
        }
    }

    /// <summary>Labels of the things drawn, as far as there is room; returns how far down they reach.</summary>
    internal double Labels()
    {
        LabelWish[] wishes = [.. Wishes()];
        IReadOnlyList<PlacedLabel> labels = LabelPlacer.Place(wishes, _boxes, view.Frame);
        LeftOutCount = wishes.Length - labels.Count;
        foreach (PlacedLabel label in labels.Where(label => label.HasLeader))
        {
            svg.Line(label.LeaderFrom.X, label.LeaderFrom.Y, label.Wish.Target.Centre.X, label.Wish.Target.Centre.Y, "leader");
        }

        foreach (PlacedLabel label in labels)
        {
            svg.Text(label.Box.Centre.X, label.Box.Y + (label.Wish.Size * 0.95), label.Wish.Text, $"label halo {label.Wish.Style}".TrimEnd(), "middle", label.Wish.Size);
        }

        return Math.Max(view.Frame.Bottom, labels.Select(label => label.Box.Bottom).DefaultIfEmpty(0).Max());
    }

    /// <summary>Labels that found no room.</summary>
    internal int LeftOutCount { get; private set; }

    /// <summary>Changes first, then gear, then parts; kept parts that stand together share a label.</summary>
    private IEnumerable<LabelWish> Wishes()
    {
        List<LabelWish> shared = [];
        List<(ThingChange Change, Box Box)> parts = [.. _named.Where(named => named.Change is { Kind: ChangeKind.Kept, Shown: Part })];
        while (parts.Count > 0)
        {
            Box first = parts[0].Box;
            List<(ThingChange Change, Box Box)> together = [.. parts.Where(part => IsTogether(part.Box, first))];
            parts.RemoveAll(together.Contains);
            string more = together.Count == 1 ? "" : string.Create(options.Culture, $" and {together.Count - 1} more");
            shared.Add(new(TextSize.Fitted(together[0].Change.Shown.Title, TextSize.Small, MostLabelPx) + more, Around(together), "", IsNeeded: false));
        }

        return
        [
            .. _named.Where(named => named.Change.Kind != ChangeKind.Kept).Select(Wish),
            .. _named.Where(named => named.Change is { Kind: ChangeKind.Kept, Shown: Gear }).Select(named => Wish(named) with { IsNeeded = namesAllGear }),
            .. shared,
            .. _spaces.Select(space => InCorner(space.Change, space.Box)).OfType<LabelWish>(),
            .. Waterline(),
        ];
    }

    private IEnumerable<LabelWish> Waterline()
    {
        const double FromEndPx = 40;
        return view.Kind == ViewKind.Profile && draughtM is { } draught
            ? [new("waterline", new Box(view.Frame.Right - FromEndPx, view.Up(draught), 0, 0), "soft", IsNeeded: false)]
            : [];
    }

    /// <summary>The name of a space in a corner of it that no thing covers; null where there is none.</summary>
    private LabelWish? InCorner(ThingChange change, Box space)
    {
        const double Pad = 3;
        string text = TextSize.Fitted(change.Shown.Title, TextSize.Small, space.Width - (4 * Pad));
        double width = TextSize.Width(text, TextSize.Small) + Pad, height = TextSize.Height(TextSize.Small) + 1;
        Box[] corners =
        [
            new(space.X + Pad, space.Y + Pad, width, height), new(space.Right - width - Pad, space.Y + Pad, width, height),
            new(space.X + Pad, space.Bottom - height - Pad, width, height), new(space.Right - width - Pad, space.Bottom - height - Pad, width, height),
            Box.Around(space.Centre, width, height),
        ];
        foreach (Box corner in corners)
        {
            if (!_boxes.Any(box => box.Overlaps(corner)))
            {
                return new(text, corner, "soft", IsNeeded: false);
            }
        }

        return null;
    }

    private static Box Around(List<(ThingChange Change, Box Box)> things)
    {
        double x = things.Min(thing => thing.Box.X), y = things.Min(thing => thing.Box.Y);
        return new(x, y, things.Max(thing => thing.Box.Right) - x, things.Max(thing => thing.Box.Bottom) - y);
    }

    private static bool IsTogether(Box one, Box other) =>
        Math.Abs(one.Centre.X - other.Centre.X) < TogetherPx * 2 && Math.Abs(one.Centre.Y - other.Centre.Y) < TogetherPx;

    private LabelWish Wish((ThingChange Change, Box Box) named)
    {
        string mass = named.Change.Shown is Gear { MassKg: { } massKg } ? $", {QuantityText.Format(massKg.Value, "Kg", options.Units, options.Culture)}" : "";
        return new(TextSize.Fitted(named.Change.Shown.Title, TextSize.Small, MostLabelPx) + mass, named.Box, named.Change.Style);
    }


    private void Arrow(Spot from, Box to)
    {
        const double Head = 7;
        double x = to.Centre.X - from.X, y = to.Centre.Y - from.Y, length = Math.Sqrt((x * x) + (y * y));
        double reach = length - Math.Min(to.Width, to.Height) / 2;
        if (reach <= Head)
        {
            return;
        }

        (double ux, double uy) = (x / length, y / length);
        Spot tip = new(from.X + (ux * reach), from.Y + (uy * reach)), back = new(tip.X - (ux * Head), tip.Y - (uy * Head));
        svg.Line(from.X, from.Y, back.X, back.Y, "added");
        svg.Polyline([tip, new(back.X - (uy * Head / 2), back.Y + (ux * Head / 2)), new(back.X + (uy * Head / 2), back.Y - (ux * Head / 2))], "arrow", isClosed: true);
    }

    private static string NameOf(ThingChange change) => $"{Wording.NameWithKind(change.Shown)}{change.Remark}";
}
