namespace Orlop.Drawings.Svg;

/// <summary>A point on the drawing: x to the right, y down, in drawing units of 1/96 in.</summary>
internal readonly record struct Spot(double X, double Y);

/// <summary>An upright rectangle on the drawing.</summary>
internal readonly record struct Box(double X, double Y, double Width, double Height)
{
    internal double Right => X + Width;

    internal double Bottom => Y + Height;

    internal Spot Centre => new(X + (Width / 2), Y + (Height / 2));

    internal static Box Around(Spot centre, double width, double height) => new(centre.X - (width / 2), centre.Y - (height / 2), width, height);

    internal bool Overlaps(Box other) => X < other.Right && other.X < Right && Y < other.Bottom && other.Y < Bottom;

    internal bool Contains(Box other) => other.X >= X && other.Right <= Right && other.Y >= Y && other.Bottom <= Bottom;

    /// <summary>The part of it within another box; of no size where there is none.</summary>
    internal Box Within(Box room)
    {
        double x = Math.Clamp(X, room.X, room.Right), y = Math.Clamp(Y, room.Y, room.Bottom);
        return new(x, y, Math.Clamp(Right, x, room.Right) - x, Math.Clamp(Bottom, y, room.Bottom) - y);
    }

    internal Box Grown(double by) => new(X - by, Y - by, Width + (2 * by), Height + (2 * by));
}

/// <summary>A straight line on the drawing.</summary>
internal readonly record struct Segment(Spot From, Spot To)
{
    /// <summary>Any of it lies inside the box. Clipped to its four sides, as Liang and Barsky (1984) do; from memory.</summary>
    internal bool Crosses(Box box)
    {
        if ((From.X <= box.X && To.X <= box.X) || (From.X >= box.Right && To.X >= box.Right) || (From.Y <= box.Y && To.Y <= box.Y) || (From.Y >= box.Bottom && To.Y >= box.Bottom))
        {
            return false;
        }

        double from = 0, to = 1;
        return Clip(From.X, To.X, box.X, box.Right, ref from, ref to) && Clip(From.Y, To.Y, box.Y, box.Bottom, ref from, ref to) && from < to;
    }

    /// <summary>The stretches of a broken line.</summary>
    internal static IEnumerable<Segment> Along(IReadOnlyList<Spot> spots) => spots.Zip(spots.Skip(1), (from, to) => new Segment(from, to));

    private static bool Clip(double start, double end, double least, double most, ref double from, ref double to)
    {
        double run = end - start;
        if (run == 0)
        {
            return start > least && start < most;
        }

        (double first, double last) = ((least - start) / run, (most - start) / run);
        from = Math.Max(from, Math.Min(first, last));
        to = Math.Min(to, Math.Max(first, last));
        return from <= to;
    }
}
