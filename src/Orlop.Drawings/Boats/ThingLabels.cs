using Orlop.Boat.Things;
using Orlop.Drawings.Changes;
using Orlop.Drawings.Svg;

namespace Orlop.Drawings.Boats;

/// <summary>Names the things drawn in a view, as far as there is room: the chosen one first, then what changes, then gear, then parts.</summary>
internal sealed class ThingLabels(SvgWriter svg, BoatView view, BoatDrawingOptions options, Waterline? waterline)
{
    private const double MostLabelPx = 230;
    private const double LeaderDotPx = 1.7;
    private const double TogetherPx = 13;
    private const double RoomyWidthPx = 700;

    /// <summary>Draws the labels; returns how far down they reach and which things they name.</summary>
    internal (double Bottom, IReadOnlyList<string> NamedIds) Draw(IReadOnlyList<DrawnThing> things, IReadOnlyList<DrawnThing> spaces, LabelObstacles obstacles)
    {
        IReadOnlyList<PlacedLabel> labels = LabelPlacer.Place(Wishes(things, spaces, obstacles), obstacles, view.Frame);
        foreach (PlacedLabel label in labels.Where(label => label.HasLeader))
        {
            svg.Start("g", ("data-names", options.IsInteractive ? label.Wish.Id : ""))
                .Line(label.Leader.From.X, label.Leader.From.Y, label.Leader.To.X, label.Leader.To.Y, "leader").Circle(label.Leader.To, LeaderDotPx, "dot").End();
        }

        foreach (PlacedLabel label in labels)
        {
            svg.Start("text",
                ("x", label.Box.Centre.X), ("y", label.Box.Y + (TextSize.Small * 0.95)), ("class", $"label halo {label.Wish.Style}".TrimEnd()),
                ("text-anchor", "middle"), ("font-size", TextSize.Small), ("data-names", options.IsInteractive ? label.Wish.Id : "")).Content(label.Wish.Text).End();
        }

        return (Math.Max(view.Frame.Bottom, labels.Select(label => label.Box.Bottom).DefaultIfEmpty(0).Max()), [.. labels.Select(label => label.Wish.Id)]);
    }

    private IEnumerable<LabelWish> Wishes(IReadOnlyList<DrawnThing> things, IReadOnlyList<DrawnThing> spaces, LabelObstacles obstacles)
    {
        bool IsChosen(DrawnThing thing) => thing.Change.Id == options.SelectedId;
        DrawnThing[] others = [.. things.Where(thing => !IsChosen(thing) && !Ashore.Is(thing.Change.Shown, options))];
        return
        [
            .. things.Where(IsChosen).Select(thing => Wish(thing, isNeeded: true)),
            .. others.Where(thing => thing.Change.Kind != ChangeKind.Kept).Select(thing => Wish(thing, isNeeded: view.Frame.Width >= RoomyWidthPx)),
            .. others.Where(thing => thing.Change is { Kind: ChangeKind.Kept, Shown: Gear or Tank or Deadweight }).Select(thing => Wish(thing, isNeeded: false)),
            .. Shared([.. others.Where(thing => thing.Change is { Kind: ChangeKind.Kept, Shown: Part })]),
            .. Shared([.. others.Where(thing => thing.Change is { Kind: ChangeKind.Kept, Shown: HullOpening })]),
            .. spaces.Select(space => InCorner(space, obstacles)).OfType<LabelWish>(),
            .. Waterline(),
        ];
    }

    private LabelWish Wish(DrawnThing thing, bool isNeeded)
    {
        string mass = LabelWords.Mass(thing.Change.Shown, options);
        double most = Math.Min(MostLabelPx, (view.Frame.Width / TextSize.BoldWidth("n", TextSize.Small) * TextSize.Width("n", TextSize.Small)) - TextSize.Width(mass, TextSize.Small) - 2);
        return new(thing.Change.Id, TextSize.Fitted(thing.Change.Shown.Title, TextSize.Small, most) + mass, thing.Box, thing.Change.Style, isNeeded);
    }

    /// <summary>Kept parts that stand together share a label; one that would stand on a line is left out.</summary>
    private List<LabelWish> Shared(List<DrawnThing> parts)
    {
        List<LabelWish> shared = [];
        while (parts.Count > 0)
        {
            Box first = parts[0].Box;
            List<DrawnThing> together = [.. parts.Where(part => IsTogether(part.Box, first))];
            parts.RemoveAll(together.Contains);
            string more = together.Count == 1 ? "" : string.Create(options.Culture, $" and {together.Count - 1} more");
            string text = TextSize.Fitted(together[0].Change.Shown.Title, TextSize.Small, MostLabelPx) + more;
            shared.Add(new(together[0].Change.Id, text, Around(together), "", IsNeeded: false, MayCrossLines: false));
        }

        return shared;
    }

    private IEnumerable<LabelWish> Waterline()
    {
        const double FromEndPx = 14;
        string name = options.Waterline is null ? "draught as typed" : "waterline";
        double middle = view.Frame.Right - FromEndPx - (TextSize.Width(name, TextSize.Small) / 2);
        return view.Kind == ViewKind.Profile && waterline is { } water
            ? [new("", name, new Box(middle, view.Up(water.AtM(view.Extent.MostAcrossM, 0)), 0, 0), "soft", IsNeeded: false)]
            : [];
    }

    /// <summary>The name of a space in a corner of it that no thing covers; null where there is none.</summary>
    private LabelWish? InCorner(DrawnThing space, LabelObstacles obstacles)
    {
        const double Pad = 3;
        Box box = space.Box.Within(view.Frame);
        string text = TextSize.Fitted(space.Change.Shown.Title, TextSize.Small, (box.Width - (4 * Pad)) * TextSize.Width("n", TextSize.Small) / TextSize.BoldWidth("n", TextSize.Small));
        double width = TextSize.BoldWidth(text, TextSize.Small) + Pad, height = TextSize.Height(TextSize.Small) + 1;
        Box[] corners =
        [
            new(box.X + Pad, box.Y + Pad, width, height), new(box.Right - width - Pad, box.Y + Pad, width, height),
            new(box.X + Pad, box.Bottom - height - Pad, width, height), new(box.Right - width - Pad, box.Bottom - height - Pad, width, height),
            Box.Around(box.Centre, width, height),
        ];
        return corners.Where(corner => !obstacles.Things.Any(thing => thing.Overlaps(corner)))
            .Select(corner => new LabelWish(space.Change.Id, text, corner, "soft", IsNeeded: false)).FirstOrDefault();
    }

    private static Box Around(List<DrawnThing> things)
    {
        double x = things.Min(thing => thing.Box.X), y = things.Min(thing => thing.Box.Y);
        return new(x, y, things.Max(thing => thing.Box.Right) - x, things.Max(thing => thing.Box.Bottom) - y);
    }

    private static bool IsTogether(Box one, Box other) =>
        Math.Abs(one.Centre.X - other.Centre.X) < TogetherPx * 2 && Math.Abs(one.Centre.Y - other.Centre.Y) < TogetherPx;
}
