using Orlop.Boat.Things;
using Orlop.Boat.Values;
using Orlop.Drawings.Svg;

namespace Orlop.Drawings.Boats;

/// <summary>Draws water, hull and deckhouses in a view, and notes their lines, which labels keep clear of.</summary>
internal sealed class HullPainter(SvgWriter svg, BoatView view, List<Segment> lines)
{
    /// <summary>
    /// Water up to its plane, at the trim in profile and at the heel in a section; none in plan. What is written on the group lets a page move it with the hand: the frame, and where the
    /// section is cut.
    /// </summary>
    internal void Water(Waterline waterline, double? cutXM)
    {
        if (view.Kind == ViewKind.Plan)
        {
            return;
        }

        Box frame = view.Frame;
        Segment whole = Surface(waterline, cutXM);
        Segment? seen = Seen(whole);
        double Inside(double y) => Math.Clamp(y, frame.Y, frame.Bottom);
        Spot[] edge =
        [
            new(frame.X, Inside(whole.From.Y)), .. seen is { } line ? new[] { line.From, line.To } : [],
            new(frame.Right, Inside(whole.To.Y)), new(frame.Right, frame.Bottom), new(frame.X, frame.Bottom),
        ];
        svg.Start("g", ("class", "afloat"), ("data-left", frame.X), ("data-right", frame.Right), ("data-top", frame.Y), ("data-bottom", frame.Bottom), ("data-cut-m", cutXM ?? 0));
        svg.Path($"M{string.Join('L', edge.Select(spot => $"{SvgValue.Number(spot.X)},{SvgValue.Number(spot.Y)}"))}Z", "water");
        if (seen is { } surface)
        {
            svg.Line(surface.From.X, surface.From.Y, surface.To.X, surface.To.Y, "water-line");
            lines.Add(surface);
        }

        svg.End();
    }

    /// <summary>A waterline that she does not lie at, without its water: as built beside an alteration, or level at the draught that somebody typed.</summary>
    internal void WaterDashed(Waterline waterline, double? cutXM)
    {
        if (view.Kind != ViewKind.Plan && Seen(Surface(waterline, cutXM)) is { } surface)
        {
            svg.Line(surface.From.X, surface.From.Y, surface.To.X, surface.To.Y, "water-line dashed");
        }
    }

    // From edge to edge of the frame, above and below it too.
    private Segment Surface(Waterline waterline, double? cutXM)
    {
        double Height(double acrossM) => view.Kind == ViewKind.Section ? waterline.AtM(cutXM ?? 0, -acrossM) : waterline.AtM(acrossM, 0);
        return new(new(view.Frame.X, view.Up(Height(view.Extent.LeastAcrossM))), new(view.Frame.Right, view.Up(Height(view.Extent.MostAcrossM))));
    }

    // What of it is inside the frame; null for none.
    private Segment? Seen(Segment surface)
    {
        (double top, double bottom, double rise) = (view.Frame.Y, view.Frame.Bottom, surface.To.Y - surface.From.Y);
        double Share(double y) => Math.Clamp((y - surface.From.Y) / rise, 0, 1);
        (double from, double to) = rise == 0 ? (0, surface.From.Y > top && surface.From.Y < bottom ? 1 : 0) : (Math.Min(Share(top), Share(bottom)), Math.Max(Share(top), Share(bottom)));
        Spot At(double share) => new(surface.From.X + (share * (surface.To.X - surface.From.X)), surface.From.Y + (share * rise));
        return to > from ? new(At(from), At(to)) : null;
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
        Trace([.. hull.Sheer.Select(point => view.At(point)), .. hull.Starboard.Sheer.Reverse().Select(point => view.At(point, -1))], "outline", isClosed: true);
        svg.Line(view.Frame.X, view.Up(0), view.Frame.Right, view.Up(0), "centre");
        foreach ((ValueList<OutlinePoint> chine, int side) in new[] { (hull.Port.Chine, 1), (hull.Starboard.Chine, -1) })
        {
            if (chine.Count > 1)
            {
                Trace(chine.Select(point => view.At(point, side)), "fine");
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
        IReadOnlyList<OutlinePoint> port = hull.Port.SectionAt(xM), starboard = hull.Starboard.SectionAt(xM);
        if (port.Count < 2 || starboard.Count < 2)
        {
            return false;
        }

        svg.Line(view.Across(0), view.Frame.Y, view.Across(0), view.Frame.Bottom, "centre");
        Trace([.. port.Reverse().Select(point => view.At(point)), .. starboard.Select(point => view.At(point, -1))], "outline", isClosed: true);
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
