namespace Orlop.Drawings.Svg;

/// <summary>A label that wants to stand at a thing.</summary>
/// <param name="IsNeeded">It is placed in a row below the view where there is no room near its thing; else it is left out.</param>
internal sealed record LabelWish(string Text, Box Target, string Style, bool IsNeeded = true, double Size = TextSize.Small)
{
    internal double Width => TextSize.BoldWidth(Text, Size) + 2;

    internal double Height => TextSize.Height(Size);
}

/// <summary>A label with its room on the drawing; a leader line joins it to its thing where it stands away from it.</summary>
internal sealed record PlacedLabel(LabelWish Wish, Box Box, bool HasLeader)
{
    internal Spot LeaderFrom => new(Math.Clamp(Wish.Target.Centre.X, Box.X, Box.Right), Math.Clamp(Wish.Target.Centre.Y, Box.Y, Box.Bottom));
}

/// <summary>Places labels so that none overlaps another or a thing: near its thing where there is room, else in rows below the view or not at all.</summary>
internal static class LabelPlacer
{
    private const double Gap = 2;
    private static readonly double[] Rings = [3, 12, 24, 38, 56, 78];
    private static readonly (double X, double Y)[] Directions = [(0, -1), (0, 1), (1, 0), (-1, 0), (1, -1), (-1, -1), (1, 1), (-1, 1)];

    /// <summary>Places in the order of the wishes: the first has the first choice.</summary>
    internal static IReadOnlyList<PlacedLabel> Place(IEnumerable<LabelWish> wishes, IReadOnlyList<Box> things, Box room)
    {
        List<PlacedLabel> placed = [];
        foreach (LabelWish wish in wishes)
        {
            PlacedLabel? label = Inside(wish, placed, things) ?? Near(wish, placed, things, room) ?? (wish.IsNeeded ? Below(wish, placed, room) : null);
            if (label is not null)
            {
                placed.Add(label);
            }
        }

        return placed;
    }

    private static PlacedLabel? Inside(LabelWish wish, List<PlacedLabel> placed, IReadOnlyList<Box> things)
    {
        Box box = Box.Around(wish.Target.Centre, wish.Width, wish.Height);
        bool isFree = wish.Target.Contains(box)
            && !placed.Any(other => other.Box.Overlaps(box.Grown(Gap)))
            && !things.Any(thing => thing != wish.Target && thing.Overlaps(box));
        return isFree ? new(wish, box, false) : null;
    }

    private static PlacedLabel? Near(LabelWish wish, List<PlacedLabel> placed, IReadOnlyList<Box> things, Box room)
    {
        foreach (double ring in Rings)
        {
            foreach ((double x, double y) in Directions)
            {
                Spot centre = new(
                    wish.Target.Centre.X + (x * ((wish.Target.Width + wish.Width) / 2 + ring)),
                    wish.Target.Centre.Y + (y * ((wish.Target.Height + wish.Height) / 2 + ring)));
                Box box = Box.Around(centre, wish.Width, wish.Height);
                PlacedLabel label = new(wish, box, ring > Rings[0]);
                if (room.Contains(box) && IsFree(label, placed, things))
                {
                    return label;
                }
            }
        }

        return null;
    }

    private static bool IsFree(PlacedLabel label, List<PlacedLabel> placed, IReadOnlyList<Box> things)
    {
        Box wide = label.Box.Grown(Gap);
        return !placed.Any(other => other.Box.Overlaps(wide) || (label.HasLeader && Crosses(label.LeaderFrom, label.Wish.Target.Centre, other.Box))
                || (other.HasLeader && Crosses(other.LeaderFrom, other.Wish.Target.Centre, label.Box)))
            && !things.Any(thing => thing.Overlaps(label.Box));
    }

    private static PlacedLabel Below(LabelWish wish, List<PlacedLabel> placed, Box room)
    {
        double most = Math.Max(room.X, room.Right - wish.Width);
        double wanted = Math.Clamp(wish.Target.Centre.X - (wish.Width / 2), room.X, most);
        for (int row = 0; ; row++)
        {
            double y = room.Bottom + Gap + (row * (wish.Height + Gap));
            for (double shift = 0; shift <= room.Width; shift += 8)
            {
                foreach (double x in (ReadOnlySpan<double>)[wanted - shift, wanted + shift])
                {
                    Box box = new(Math.Clamp(x, room.X, most), y, wish.Width, wish.Height);
                    if (!placed.Any(other => other.Box.Overlaps(box.Grown(Gap))))
                    {
                        return new(wish, box, true);
                    }
                }
            }
        }
    }

    private static bool Crosses(Spot from, Spot to, Box box)
    {
        const int Steps = 16;
        for (int step = 0; step <= Steps; step++)
        {
            double part = step / (double)Steps;
            double x = from.X + (part * (to.X - from.X)), y = from.Y + (part * (to.Y - from.Y));
            if (x > box.X && x < box.Right && y > box.Y && y < box.Bottom)
            {
                return true;
            }
        }

        return false;
    }
}
