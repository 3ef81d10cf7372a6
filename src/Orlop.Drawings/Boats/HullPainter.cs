using Orlop.Boat.Things;
using Orlop.Boat.Values;
using Orlop.Drawings.Svg;

namespace Orlop.Drawings.Boats;

/// <summary>Draws water, hull and deckhouses in a view, and notes their lines, which labels keep clear of.</summary>
internal sealed class HullPainter(SvgWriter svg, BoatView view, List<Segment> lines)
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
            lines.Add(new(new(frame.X, y), new(frame.Right, y)));
        }
    }

    internal void Profile(HullLines hull)
    {
        Trace([.. hull.Sheer.Select(point => view.At(point)), .. hull.Keel.Reverse().Select(point => view.At(point))], "outline", isClosed: true);
        if (hull.Chine.Count > 1)
        {
            Trace(hull.Chine.Select(point => view.At(point)), "fine");
        }

        foreach (Deckhouse house in hull.Deckhouses)
        {
            Trace(
            [
                view.At(house.AftXM, 0, house.FootM), view.At(house.RoofAftXM, 0, house.RoofM),
                view.At(house.RoofForeXM, 0, house.RoofM), view.At(house.ForeXM, 0, house.FootM),
            ], "house");
        }
    }

    internal void Plan(HullLines hull)
    {
        Trace([.. hull.Sheer.Select(point => view.At(point)), .. hull.Sheer.Reverse().Select(point => view.At(point, -1))], "outline", isClosed: true);
        svg.Line(view.Frame.X, view.Up(0), view.Frame.Right, view.Up(0), "centre");
        foreach (int side in BothSides)
        {
            if (hull.Chine.Count > 1)
            {
                Trace(hull.Chine.Select(point => view.At(point, side)), "fine");
            }
        }

        foreach (Deckhouse house in hull.Deckhouses)
        {
            Spot port = view.At(house.AftXM, house.HalfBreadthM, 0), starboard = view.At(house.ForeXM, -house.HalfBreadthM, 0);
            Trace([port, new(starboard.X, port.Y), starboard, new(port.X, starboard.Y)], "house", isClosed: true);
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
        Trace([.. side.Reverse().Select(point => view.At(point)), .. side.Select(point => view.At(point, -1))], "outline", isClosed: true);
        foreach (Deckhouse house in hull.Deckhouses.Where(house => xM >= house.AftXM && xM <= house.ForeXM))
        {
            double roof = RoofAt(house, xM);
            Trace(
            [
                view.At(xM, house.HalfBreadthM, house.FootM), view.At(xM, house.HalfBreadthM, roof),
                view.At(xM, -house.HalfBreadthM, roof), view.At(xM, -house.HalfBreadthM, house.FootM),
            ], "house");
        }

        return true;
    }

    private void Trace(IEnumerable<Spot> spots, string style, bool isClosed = false)
    {
        Spot[] line = [.. spots];
        svg.Polyline(line, style, isClosed);
        lines.AddRange(Segment.Along(isClosed && line.Length > 0 ? [.. line, line[0]] : line));
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
