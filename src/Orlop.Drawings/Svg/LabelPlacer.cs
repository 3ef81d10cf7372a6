namespace Orlop.Drawings.Svg;

/// <summary>A label that wants to stand at a thing.</summary>
/// <param name="Id">The thing it names; empty where it names none and stands at its place or not at all.</param>
/// <param name="IsNeeded">It is placed in a row below the view where there is no room near its thing; else it is left out.</param>
/// <param name="MayCrossLines">It stands over a faint line rather than being left out.</param>
internal sealed record LabelWish(string Id, string Text, Box Target, string Style, bool IsNeeded = true, bool MayCrossLines = true)
{
    internal double Width => TextSize.BoldWidth(Text, TextSize.Small) + 2;

    internal static double Height => TextSize.Height(TextSize.Small);
}

/// <summary>A label with its room on the drawing; a leader line joins it to its thing where it stands away from it.</summary>
internal sealed record PlacedLabel(LabelWish Wish, Box Box, bool HasLeader)
{
    private const double IntoThing = 4;

    /// <summary>From the label to a little inside its thing.</summary>
    internal Segment Leader
    {
        get
        {
            Box target = Wish.Target;
            Box inner = target.Grown(-Math.Min(IntoThing, Math.Min(target.Width, target.Height) / 2));
            Spot to = new(Math.Clamp(Box.Centre.X, inner.X, inner.Right), Math.Clamp(Box.Centre.Y, inner.Y, inner.Bottom));
            return new(new(Math.Clamp(to.X, Box.X, Box.Right), Math.Clamp(to.Y, Box.Y, Box.Bottom)), to);
        }
    }
}

/// <summary>What labels keep clear of.</summary>
/// <param name="Things">Boxes that no label but their own may cover.</param>
/// <param name="Lines">Lines that no label stands on beside its thing.</param>
/// <param name="FaintLines">Lines that a label stands on only where there is no other room.</param>
internal sealed record LabelObstacles(IReadOnlyList<Box> Things, IReadOnlyList<Segment> Lines, IReadOnlyList<Segment> FaintLines);

/// <summary>Places labels so that none overlaps another or a thing: near its thing where there is room, else in rows below the view or not at all.</summary>
internal static class LabelPlacer
{
    private const double Gap = 2;
    private static readonly double[] Rings = [3, 10, 20, 32, 46, 62];
    private static readonly (double X, double Y)[] Directions =
        [(0, -1), (0, 1), (1, 0), (-1, 0), (0.5, -1), (-0.5, -1), (0.5, 1), (-0.5, 1), (1, -1), (-1, -1), (1, 1), (-1, 1)];

    /// <summary>Places in the order of the wishes: the first has the first choice.</summary>
    internal static IReadOnlyList<PlacedLabel> Place(IEnumerable<LabelWish> wishes, LabelObstacles obstacles, Box room)
    {
        List<PlacedLabel> placed = [];
        LabelObstacles strict = obstacles with { Lines = [.. obstacles.Lines, .. obstacles.FaintLines] };
        foreach (LabelWish wish in wishes)
        {
            PlacedLabel? label = Inside(wish, placed, obstacles, room)
                ?? Near(wish, placed, strict, room)
                ?? (wish.MayCrossLines ? Near(wish, placed, obstacles, room) : null)
                ?? (wish.IsNeeded ? Below(wish, placed, room) : null);
            if (label is not null)
            {
                placed.Add(label);
            }
        }

        return placed;
    }

    /// <summary>In the middle of its thing, or along its upper or lower edge.</summary>
    private static PlacedLabel? Inside(LabelWish wish, List<PlacedLabel> placed, LabelObstacles obstacles, Box room)
    {
        double spare = ((wish.Target.Height - LabelWish.Height) / 2) - Gap;
        foreach (double shift in (ReadOnlySpan<double>)[0, -spare, spare])
        {
            Box box = Box.Around(new(wish.Target.Centre.X, wish.Target.Centre.Y + shift), wish.Width, LabelWish.Height);
            if (wish.Target.Contains(box) && room.Contains(box)
                && !placed.Any(other => other.Box.Overlaps(box.Grown(Gap)) || (other.HasLeader && other.Leader.Crosses(box)))
                && !obstacles.Things.Any(thing => thing != wish.Target && !thing.Contains(wish.Target) && thing.Overlaps(box)))
            {
                return new(wish, box, false);
            }
        }

        return null;
    }

    private static PlacedLabel? Near(LabelWish wish, List<PlacedLabel> placed, LabelObstacles obstacles, Box room)
    {
        foreach (double ring in wish.Id.Length == 0 ? Rings[..1] : Rings)
        {
            foreach ((double x, double y) in Directions)
            {
                Spot centre = new(
                    wish.Target.Centre.X + (x * ((wish.Target.Width + wish.Width) / 2 + ring)),
                    wish.Target.Centre.Y + (y * ((wish.Target.Height + LabelWish.Height) / 2 + ring)));
                PlacedLabel label = new(wish, Box.Around(centre, wish.Width, LabelWish.Height), ring > Rings[0]);
                if (room.Contains(label.Box) && IsFree(label, placed, obstacles))
                {
                    return label;
                }
            }
        }

        return null;
    }

    private static bool IsFree(PlacedLabel label, List<PlacedLabel> placed, LabelObstacles obstacles)
    {
        Box wide = label.Box.Grown(Gap);
        return !placed.Any(other => other.Box.Overlaps(wide) || (label.HasLeader && label.Leader.Crosses(other.Box)) || (other.HasLeader && other.Leader.Crosses(label.Box)))
            && !obstacles.Things.Any(thing => thing.Overlaps(label.Box))
            && !obstacles.Lines.Any(line => line.Crosses(label.Box));
    }

    private static PlacedLabel Below(LabelWish wish, List<PlacedLabel> placed, Box room)
    {
        double most = Math.Max(room.X, room.Right - wish.Width);
        double wanted = Math.Clamp(wish.Target.Centre.X - (wish.Width / 2), room.X, most);
        for (int row = 0; ; row++)
        {
            double y = room.Bottom + Gap + (row * (LabelWish.Height + Gap));
            for (double shift = 0; shift <= room.Width; shift += 8)
            {
                foreach (double x in (ReadOnlySpan<double>)[wanted - shift, wanted + shift])
                {
                    Box box = new(Math.Clamp(x, room.X, most), y, wish.Width, LabelWish.Height);
                    if (!placed.Any(other => other.Box.Overlaps(box.Grown(Gap))))
                    {
                        return new(wish, box, true);
                    }
                }
            }
        }
    }
}
