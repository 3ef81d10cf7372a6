using System.Collections.Immutable;
using Orlop.Drawings.Boats;
using Orlop.Drawings.Svg;
using Orlop.Hull.Surfaces;
using Orlop.Presentation.Quantities;
using Orlop.Presentation.Views.Hulls;

namespace Orlop.Drawings.Hulls;

/// <summary>Profile over half-breadth plan, at one scale: keel, sharp lines, deck edge, stations, waterlines and the designed one.</summary>
public static class LinesPlanDrawing
{
    private const double LeftPx = 34;
    private const double RightPx = 14;
    private const double HeadPx = 44;
    private const double GapPx = 14;
    private const double LeastWidthPx = 240;
    private const double LeastLevelCount = 4;

    /// <summary>Draws it; the boat has at least one station.</summary>
    public static string Draw(HullFacts facts, LinesOptions options)
    {
        ArgumentNullException.ThrowIfNull(facts);
        ArgumentNullException.ThrowIfNull(options);
        double width = Math.Max(LeastWidthPx, options.WidthPx);
        bool isTwoSided = facts.Lines.StarboardStations.Count > 0;
        (FormSide Side, int Sign, bool IsStarboard)[] sides = isTwoSided ? [(facts.Curves.Port, 1, false), (facts.Curves.Starboard, -1, true)] : [(facts.Curves.Port, 1, false)];
        Point3[] all = [.. sides.SelectMany(side => side.Side.Sections).SelectMany(section => section)];
        double leastXM = all.Min(point => point.XM), mostXM = Math.Max(leastXM + 0.5, all.Max(point => point.XM)), marginM = 0.02 * (mostXM - leastXM);
        double pixelsPerM = (width - LeftPx - RightPx) / (mostXM - leastXM + (2 * marginM));
        double leastUpM = Math.Min(0, all.Min(point => point.ZM)), mostUpM = all.Max(point => point.ZM), reachM = Math.Max(0.2, all.Max(point => point.YM));
        BoatView profile = new(ViewKind.Profile, new Extent(leastXM - marginM, mostXM + marginM, leastUpM - marginM, mostUpM + marginM), pixelsPerM, new Spot(LeftPx, HeadPx));
        BoatView plan = new(ViewKind.Plan, new Extent(leastXM - marginM, mostXM + marginM, isTwoSided ? -reachM - marginM : -marginM, reachM + marginM), pixelsPerM, new Spot(LeftPx, profile.Frame.Bottom + GapPx + HeadPx));
        double barY = plan.Frame.Bottom + 16, height = barY + 34;
        SvgWriter svg = LinesPainter.Start(new Frame(options.Id, "Profile and plan of the lines", $"{facts.Lines.Stations.Count} stations, keel, deck edge and waterlines to scale; {facts.Bodies.Doubts.Length} doubtful points.", width, height, IsInteractive: true));
        LinesPainter painter = new(svg, facts, options);
        GridPainter grid = new(svg, options.Units, options.Culture);

        svg.Start("g", ("class", "view profile"), ("data-px-per-m", pixelsPerM)).Text(LeftPx, profile.Frame.Y - 24, "Profile", "strong");
        grid.Grid(profile);
        FormSide shown = LinesPainter.SideOf(facts, options.IsStarboard);
        Spot InProfile(Point3 point) => new(profile.Across(point.XM), profile.Up(point.ZM));
        if (facts.DraughtM is { } draught && draught > leastUpM && draught < mostUpM + marginM)
        {
            svg.Line(profile.Frame.X, profile.Up(draught), profile.Frame.Right, profile.Up(draught), "designed");
            svg.Text(profile.Frame.X + 3, profile.Up(draught) - 4, "DWL", "soft halo", size: TextSize.Small);
        }

        Stations(painter, shown, options.IsStarboard, InProfile);
        Outline(painter, shown, InProfile, [shown.Sections[0], shown.Sections[^1]]);
        Doubts(painter, facts, options.IsStarboard, InProfile, profile);
        svg.End();

        svg.Start("g", ("class", "view plan"), ("data-px-per-m", pixelsPerM)).Text(LeftPx, plan.Frame.Y - 24, isTwoSided ? "Plan, port side up" : "Half-breadth plan, waterlines", "strong");
        grid.Grid(plan);
        svg.Line(plan.Frame.X, plan.Up(0), plan.Frame.Right, plan.Up(0), "centre");
        foreach ((FormSide side, int sign, bool isStarboard) in sides)
        {
            Spot InPlan(Point3 point) => new(plan.Across(point.XM), plan.Up(sign * point.YM));
            foreach (double level in Levels(leastUpM, mostUpM, options.Units))
            {
                Level(painter, side, level, InPlan, "level");
            }

            Outline(painter, side, InPlan, [side.Sections[0]]);
            if (facts.DraughtM is { } designed)
            {
                Level(painter, side, designed, InPlan, "designed");
            }

            Doubts(painter, facts, isStarboard, InPlan, plan);
        }

        svg.End();
        grid.ScaleBar(new Spot(LeftPx, barY), pixelsPerM, Math.Min(260, (width / 2) - LeftPx));
        return svg.End().ToString();
    }

    private static void Stations(LinesPainter painter, FormSide side, bool isStarboard, Func<Point3, Spot> at)
    {
        for (int index = 0; index < Math.Min(side.Sections.Length, painter.Stations(isStarboard).Count); index++)
        {
            painter.Station(index, isStarboard, side.Sections[index], at);
        }
    }

    private static void Outline(LinesPainter painter, FormSide side, Func<Point3, Spot> at, IEnumerable<ImmutableArray<Point3>> ends)
    {
        for (int index = 0; index < side.Lines.Length; index++)
        {
            painter.Line(side.Lines[index].Points, at, index == 0 || index == side.Lines.Length - 1 ? "outline" : "sharp");
        }

        foreach (ImmutableArray<Point3> end in ends)
        {
            painter.Line(end, at, "outline");
        }
    }

    private static void Level(LinesPainter painter, FormSide side, double heightM, Func<Point3, Spot> at, string style)
    {
        foreach (ImmutableArray<Point3> stretch in side.Waterline(heightM))
        {
            painter.Line(stretch, at, style);
        }
    }

    private static void Doubts(LinesPainter painter, HullFacts facts, bool isStarboard, Func<Point3, Spot> at, BoatView view)
    {
        foreach (FormDoubt doubt in facts.Bodies.Doubts.Where(doubt => doubt.IsStarboard == isStarboard))
        {
            Point3 place = HullEdit.At(facts.Lines, facts.SpotOf(doubt)) is { } point ? new Point3(point.XM, point.HalfBreadthM, point.HeightM) : default;
            painter.Doubt(doubt, at, isToTheLeft: at(place).X > view.Frame.Centre.X, view.Frame.Right);
        }
    }

    // Round heights between keel and deck, in the reader's unit.
    private static IEnumerable<double> Levels(double leastUpM, double mostUpM, DisplayUnits units)
    {
        AxisUnit unit = AxisUnit.For("M", units);
        double least = unit.FromModel(leastUpM), most = unit.FromModel(mostUpM), step = RoundSteps.AtLeast((most - least) / (2 * LeastLevelCount));
        return RoundSteps.Between(least + (step / 2), most, step).Select(unit.ToModel);
    }
}
