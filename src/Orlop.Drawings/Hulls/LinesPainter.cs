using System.Collections.Immutable;
using System.Globalization;
using Orlop.Boat.Things;
using Orlop.Drawings.Svg;
using Orlop.Hull.Surfaces;
using Orlop.Presentation.Views.Hulls;

namespace Orlop.Drawings.Hulls;

/// <summary>Draws stations, their points and the marks of doubt, the same in every view of a hull's lines.</summary>
internal sealed class LinesPainter(SvgWriter svg, HullFacts facts, LinesOptions options)
{
    private const double DoubtRadius = 7;
    private const double PointRadius = 3.2;
    private const double CrossArm = 4;
    private const string UnknownColour = "#6153c4";

    private static readonly string Style = string.Create(CultureInfo.InvariantCulture, $$"""
        .drawing .reach{fill:none;stroke:transparent;stroke-width:13}
        .drawing .station{fill:none;stroke:var(--soft,{{Palette.Soft}});stroke-width:1;stroke-linejoin:round}
        .drawing .chosen .station{stroke:var(--draft,{{Palette.Draft}});stroke-width:2.6}
        .drawing .thing:hover .station{stroke:var(--draft,{{Palette.Draft}});stroke-width:2}
        .drawing .sharp{fill:none;stroke:var(--ink,{{Palette.Ink}});stroke-width:1.3;stroke-linejoin:round}
        .drawing .point{fill:var(--sheet,{{Palette.Sheet}});stroke:var(--draft,{{Palette.Draft}});stroke-width:1.6}
        .drawing .doubt{fill:none;stroke:var(--unknown,{{UnknownColour}});stroke-width:2.2}
        .drawing text.doubt{fill:var(--unknown,{{UnknownColour}});font-weight:600;stroke:var(--sheet,{{Palette.Sheet}});stroke-width:4.5px;paint-order:stroke;stroke-linejoin:round}
        .drawing .was{fill:none;stroke:var(--gone,{{Palette.Gone}});stroke-width:1.4;stroke-dasharray:5 4}
        .drawing .level{fill:none;stroke:var(--water-line,{{Palette.WaterLine}});stroke-width:.9}
        .drawing .designed{fill:none;stroke:var(--water-line,{{Palette.WaterLine}});stroke-width:2}
        """);

    /// <summary>Opens the drawing.</summary>
    internal static SvgWriter Start(Frame frame)
    {
        SvgWriter svg = DrawingFrame.Start(new SvgWriter(), frame);
        return svg.Start("style").Content(Style).End();
    }

    /// <summary>Curves of a side.</summary>
    internal static FormSide SideOf(HullFacts facts, bool isStarboard) => isStarboard ? facts.Curves.Starboard : facts.Curves.Port;

    /// <summary>Stations of a side as measured.</summary>
    internal IReadOnlyList<HullStation> Stations(bool isStarboard) => HullEdit.Side(facts.Lines, isStarboard);

    /// <summary>A station that can be chosen.</summary>
    internal void Station(int index, bool isStarboard, ImmutableArray<Point3> outline, Func<Point3, Spot> at)
    {
        string name = Stations(isStarboard)[index].Name;
        svg.StartThing($"s{index.ToString(CultureInfo.InvariantCulture)}", $"Station {name}", isInteractive: true, IsChosen(index) ? "chosen" : "");
        Spot[] line = [.. outline.Select(at)];
        svg.Polyline(line, "reach").Polyline(line, "station").End();
    }

    /// <summary>The points of the chosen station, each to be taken hold of: sharp ones square.</summary>
    internal void Points(int index, bool isStarboard, Func<Point3, Spot> at)
    {
        HullStation station = Stations(isStarboard)[index];
        for (int number = 0; number < station.Points.Count; number++)
        {
            StationPoint point = station.Points[number];
            Spot spot = at(PlaceOf(point));
            svg.StartThing(string.Create(CultureInfo.InvariantCulture, $"p{index}.{number}"), $"Point {number + 1} of {station.Name}", isInteractive: true);
            svg.Circle(spot, DoubtRadius + 3, "hit");
            if (point.Line is null)
            {
                svg.Circle(spot, PointRadius, "point");
            }
            else
            {
                svg.Rect(Box.Around(spot, 2 * PointRadius, 2 * PointRadius), "point");
            }

            svg.End();
        }
    }

    /// <summary>A doubtful point: an open diamond, a cross where a fair line would have it, and by how much; the words stay within the drawing's width.</summary>
    internal void Doubt(FormDoubt doubt, Func<Point3, Spot> at, bool isToTheLeft, double width)
    {
        HullSpot where = facts.SpotOf(doubt);
        if (HullEdit.At(facts.Lines, where) is not { } point)
        {
            return;
        }

        Spot spot = at(PlaceOf(point)), fair = at(new Point3(point.XM, doubt.ExpectedHalfBreadthM, doubt.ExpectedHeightM));
        Spot[] diamond = [new(spot.X, spot.Y - DoubtRadius), new(spot.X + DoubtRadius, spot.Y), new(spot.X, spot.Y + DoubtRadius), new(spot.X - DoubtRadius, spot.Y)];
        svg.Start("g", ("data-doubt", string.Create(CultureInfo.InvariantCulture, $"{where.Station}.{where.Point}"))).Polyline(diamond, "doubt", isClosed: true);
        if (Math.Max(Math.Abs(fair.X - spot.X), Math.Abs(fair.Y - spot.Y)) > CrossArm)
        {
            svg.Line(fair.X - CrossArm, fair.Y - CrossArm, fair.X + CrossArm, fair.Y + CrossArm, "doubt").Line(fair.X - CrossArm, fair.Y + CrossArm, fair.X + CrossArm, fair.Y - CrossArm, "doubt");
        }

        string text = HullWords.Off(doubt, options.Units, options.Culture);
        double room = DoubtRadius + 4 + TextSize.BoldWidth(text, TextSize.Small);
        bool isLeft = isToTheLeft ? spot.X > room : spot.X + room > width;
        svg.Text(spot.X + ((DoubtRadius + 4) * (isLeft ? -1 : 1)), spot.Y + 4, text, "doubt", isLeft ? "end" : "start", TextSize.Small);
        svg.End();
    }

    /// <summary>A line of the form.</summary>
    internal void Line(IEnumerable<Point3> points, Func<Point3, Spot> at, string style) => svg.Polyline(points.Select(at), style);

    internal bool IsChosen(int index) => options.ChosenStation == index;

    private static Point3 PlaceOf(StationPoint point) => new(point.XM, point.HalfBreadthM, point.HeightM);
}
