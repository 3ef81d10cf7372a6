using Orlop.Drawings.Svg;

namespace Orlop.Drawings.Hulls;

/// <summary>How a half-breadth and a height are taken at a station ashore: centre line, level line, plumb batten.</summary>
public static class MeasuringSketch
{
    private const double Width = 460;
    private const double Height = 290;
    private const double CentreX = 130;
    private const double BaseY = 240;
    private const double BattenX = 360;

    /// <summary>Draws it.</summary>
    /// <param name="id">Id of the drawing's outermost element, unique on its page.</param>
    public static string Draw(string id)
    {
        SvgWriter svg = LinesPainter.Start(new Frame(id, "Measuring a station ashore",
            "Half of a station seen from aft. A level string under the keel is the base line, a plumb line the centre line. From a plumb batten at a known distance the tape runs level in to the hull; the half-breadth is the batten's distance less the tape's.", Width, Height));
        Spot[] hull = [new(CentreX, 212), new(175, 203), new(250, 180), new(290, 150), new(308, 110), new(318, 56)];
        Spot point = hull[3];
        svg.Polyline(hull, "outline").Line(CentreX, 30, CentreX, BaseY, "centre").Line(30, BaseY, 440, BaseY, "axis");
        svg.Line(BattenX, 34, BattenX, BaseY, "outline").Line(point.X, point.Y, BattenX, point.Y, "designed").Line(CentreX, point.Y, point.X, point.Y, "was").Line(point.X, point.Y, point.X, BaseY, "was");
        svg.Circle(point, 4, "point");
        svg.Text(CentreX, 22, "centre line, plumb", "soft", "middle", TextSize.Small);
        svg.Text(BattenX, 26, "batten, plumb", "soft", "middle", TextSize.Small);
        svg.Text(34, BaseY + 18, "base line: a level string", "soft", size: TextSize.Small);
        svg.Text(BattenX + 6, point.Y + 4, "tape, level", "halo", size: TextSize.Small);
        svg.Text((CentreX + point.X) / 2, point.Y - 6, "half-breadth", "halo", "middle", TextSize.Small);
        svg.Text(point.X - 6, (point.Y + BaseY) / 2 + 10, "height", "halo", "end", TextSize.Small);
        svg.Text(312, 52, "deck edge", "soft", "end", TextSize.Small);
        svg.Text(CentreX - 6, 216, "keel", "soft", "end", TextSize.Small);
        svg.Text(34, BaseY + 40, "half-breadth = distance of the batten from the centre line − tape", "", size: TextSize.Small);
        return svg.End().ToString();
    }
}
