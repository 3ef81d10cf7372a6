using Orlop.Boat.Things;
using Orlop.Boat.Values;
using Orlop.Drawings.Svg;

namespace Orlop.Drawings.Boats;

/// <summary>Draws water, hull and deckhouses in a view.</summary>
internal sealed class HullPainter(SvgWriter svg, BoatView view)
{
    private static readonly int[] BothSides = [1, -1];

    internal void Water(double draughtM)
    {
        Box frame = view.Frame;
        double y = view.Up(draughtM);
        if (view.Kind != ViewKind.Plan && y > frame.Y && y < frame.Bottom)
        {
            svg.Rect(new Box(frame.X, y, frame.Width, frame.Bottom - y), "water");
            svg.Line(frame.X, y, frame.Right, y, "water-line");
        }
    }

    internal void Profile(HullLines hull)
    {
        svg.Polyline([.. hull.Sheer.Select(point => view.At(point)), .. hull.Keel.Reverse().Select(point => view.At(point))], "outline", isClosed: true);
        if (hull.Chine.Count > 1)
        {
            svg.Polyline(hull.Chine.Select(point => view.At(point)), "fine");
        }

        foreach (Deckhouse house in hull.Deckhouses)
        {
            svg.Polyline(
            [
                view.At(house.AftXM, 0, house.FootM), view.At(house.RoofAftXM, 0, house.RoofM),
                view.At(house.RoofForeXM, 0, house.RoofM), view.At(house.ForeXM, 0, house.FootM),
            ], "house");
        }
    }

    internal void Plan(HullLines hull)
    {
        svg.Polyline([.. hull.Sheer.Select(point => view.At(point)), .. hull.Sheer.Reverse().Select(point => view.At(point, -1))], "outline", isClosed: true);
        svg.Line(view.Frame.X, view.Up(0), view.Frame.Right, view.Up(0), "centre");
        foreach (int side in BothSides)
        {
            if (hull.Chine.Count > 1)
            {
                svg.Polyline(hull.Chine.Select(point => view.At(point, side)), "fine");
            }
        }

        foreach (Deckhouse house in hull.Deckhouses)
        {
            Spot port = view.At(house.AftXM, house.HalfBreadthM, 0), starboard = view.At(house.ForeXM, -house.HalfBreadthM, 0);
            svg.Rect(new Box(port.X, port.Y, starboard.X - port.X, starboard.Y - port.Y), "house");
        }
    }

    /// <summary>The section at x; false where the hull does not reach it.</summary>
    internal bool Section(HullLines hull, double xM)
    {
        IReadOnlyList<OutlinePoint> side = hull.SectionAt(xM);
        if (side.Count < 2)
        {
            return false;
        }

        svg.Line(view.Across(0), view.Frame.Y, view.Across(0), view.Frame.Bottom, "centre");
        svg.Polyline([.. side.Reverse().Select(point => view.At(point)), .. side.Select(point => view.At(point, -1))], "outline", isClosed: true);
        foreach (Deckhouse house in hull.Deckhouses.Where(house => xM >= house.AftXM && xM <= house.ForeXM))
        {
            double roof = RoofAt(house, xM);
            svg.Polyline(
            [
                view.At(xM, house.HalfBreadthM, house.FootM), view.At(xM, house.HalfBreadthM, roof),
                view.At(xM, -house.HalfBreadthM, roof), view.At(xM, -house.HalfBreadthM, house.FootM),
            ], "house");
        }

        return true;
    }

    private static double RoofAt(Deckhouse house, double xM)
    {
        ValueList<OutlinePoint> line =
        [
            new(house.AftXM, 0, house.FootM), new(house.RoofAftXM, 0, house.RoofM), new(house.RoofForeXM, 0, house.RoofM), new(house.ForeXM, 0, house.FootM),
        ];
        return HullLines.At(line, xM)?.HeightM ?? house.RoofM;
    }
}
