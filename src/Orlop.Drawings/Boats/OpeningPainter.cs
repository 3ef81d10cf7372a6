using Orlop.Boat.Things;
using Orlop.Boat.Values;
using Orlop.Drawings.Svg;

namespace Orlop.Drawings.Boats;

/// <summary>
/// The shape of an opening at its place: from above the rectangle of its clear length and breadth where both are told, seen level its lowest edge between two ticks;
/// else a cross, and for a through-hull or an exhaust a ring. Our own way of drawing it, to no standard.
/// </summary>
internal sealed class OpeningPainter(SvgWriter svg, BoatView view)
{
    private const double ReachPx = 4.5;
    private const double RingPx = 3.2;
    private const double TickPx = 5;
    private const double FingerPx = 8;

    /// <summary>Draws it into the open group of its thing; returns the room it takes.</summary>
    internal Box Draw(HullOpening opening, Place place, string style)
    {
        Spot at = view.At(place);
        if (BoatExtents.SizeOf(opening) is { } size)
        {
            Box box = view.BoxOf(place, size);
            if (view.Kind == ViewKind.Plan)
            {
                svg.Rect(box, style);
                return box;
            }

            svg.Rect(Box.Around(at, box.Width, FingerPx), "hit");
            svg.Path($"M{Point(box.X, at.Y - TickPx)}L{Point(box.X, at.Y)}L{Point(box.Right, at.Y)}L{Point(box.Right, at.Y - TickPx)}", style);
            return new Box(box.X, at.Y - TickPx, box.Width, TickPx);
        }

        svg.Circle(at, FingerPx, "hit");
        if (opening.Use is OpeningUse.ThroughHull or OpeningUse.Exhaust)
        {
            svg.Circle(at, RingPx, style);
            return Box.Around(at, 2 * RingPx, 2 * RingPx);
        }

        svg.Path($"M{Point(at.X - ReachPx, at.Y - ReachPx)}L{Point(at.X + ReachPx, at.Y + ReachPx)}M{Point(at.X - ReachPx, at.Y + ReachPx)}L{Point(at.X + ReachPx, at.Y - ReachPx)}", style);
        return Box.Around(at, 2 * ReachPx, 2 * ReachPx);
    }

    private static string Point(double x, double y) => $"{SvgValue.Number(x)},{SvgValue.Number(y)}";
}
