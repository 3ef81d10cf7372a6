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

    internal Box Grown(double by) => new(X - by, Y - by, Width + (2 * by), Height + (2 * by));
}
