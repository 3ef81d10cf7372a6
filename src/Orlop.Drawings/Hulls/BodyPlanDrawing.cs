using System.Globalization;
using Orlop.Drawings.Boats;
using Orlop.Drawings.Svg;
using Orlop.Hull.Surfaces;
using Orlop.Presentation.Views.Hulls;

namespace Orlop.Drawings.Hulls;

/// <summary>The body plan: stations of the fore body to the right, of the after body to the left, as seen from ahead of and abaft her.</summary>
public static class BodyPlanDrawing
{
    private const double LeftPx = 34;
    private const double RightPx = 34;
    private const double HeadPx = 44;
    private const double FootPx = 44;
    private const double LeastWidthPx = 240;
    private const double MostPixelsPerM = 260;
    private const double LabelWidthPx = 16;

    /// <summary>Draws it; the boat has at least one station.</summary>
    public static string Draw(HullFacts facts, LinesOptions options)
    {
        ArgumentNullException.ThrowIfNull(facts);
        ArgumentNullException.ThrowIfNull(options);
        FormSide side = LinesPainter.SideOf(facts, options.IsStarboard);
        double width = Math.Max(LeastWidthPx, options.WidthPx);
        FormSide scaled = options is { IsHeld: true, Kept: { } steady } ? LinesPainter.SideOf(steady, options.IsStarboard) : side;
        Point3[] all = [.. scaled.Sections.SelectMany(section => section)];
        double reachM = Math.Max(0.2, all.Max(point => point.YM)) * 1.12, leastUpM = Math.Min(0, all.Min(point => point.ZM)), mostUpM = all.Max(point => point.ZM);
        double marginM = 0.08 * Math.Max(0.5, mostUpM - leastUpM);
        double pixelsPerM = Math.Min(MostPixelsPerM, (width - LeftPx - RightPx) / (2 * reachM));
        Extent extent = new(-reachM, reachM, leastUpM - marginM, mostUpM + marginM);
        BoatView view = new(ViewKind.Section, extent, pixelsPerM, new Spot((width - (2 * reachM * pixelsPerM)) / 2, HeadPx));
        double height = view.Frame.Bottom + FootPx;
        string sides = facts.Lines.StarboardStations.Count == 0 ? "" : options.IsStarboard ? ", starboard side" : ", port side";
        SvgWriter svg = LinesPainter.Start(new Frame(options.Id, $"Body plan{sides}", $"{side.Sections.Length} stations to scale; {facts.Bodies.Doubts.Length} doubtful points.", width, height, IsInteractive: true));
        LinesPainter painter = new(svg, facts, options);
        svg.Start("g", ("class", "view section"), ("data-px-per-m", pixelsPerM));
        svg.Text(view.Frame.X, 14, $"Body plan{sides}", "strong");
        new GridPainter(svg, options.Units, options.Culture).Grid(view);
        svg.Line(view.Across(0), view.Frame.Y, view.Across(0), view.Frame.Bottom, "centre");
        svg.Text(view.Frame.X, view.Frame.Bottom + 16, "After body", "soft", size: TextSize.Small);
        svg.Text(view.Frame.Right, view.Frame.Bottom + 16, "Fore body", "soft", "end", TextSize.Small);
        if (facts.DraughtM is { } draught && draught > extent.LeastUpM && draught < extent.MostUpM)
        {
            svg.Line(view.Frame.X, view.Up(draught), view.Frame.Right, view.Up(draught), "designed");
            svg.Text(view.Frame.Right - 3, view.Up(draught) - 4, "DWL", "soft halo", "end", TextSize.Small);
        }

        bool[] isFore = IsFore(side);
        Func<Point3, Spot> At(int index) => point => new Spot(view.Across(isFore[index] ? point.YM : -point.YM), view.Up(point.ZM));
        foreach (int index in Enumerable.Range(0, side.Sections.Length).Where(index => index < painter.Stations(options.IsStarboard).Count).OrderBy(painter.IsChosen))
        {
            painter.Station(index, options.IsStarboard, side.Sections[index], At(index));
        }

        if (options.ChosenStation is { } chosen && chosen < side.Sections.Length)
        {
            if (options.Kept is { } kept && LinesPainter.SideOf(kept, options.IsStarboard) is var was && chosen < was.Sections.Length)
            {
                painter.Line(was.Sections[chosen], At(chosen), "was");
            }

            painter.Points(chosen, options.IsStarboard, At(chosen));
        }

        Numbers(svg, side, At, view, options);
        foreach (FormDoubt doubt in facts.Bodies.Doubts.Where(doubt => doubt.IsStarboard == options.IsStarboard))
        {
            int station = facts.SpotOf(doubt).Station;
            painter.Doubt(doubt, At(station), isToTheLeft: !isFore[station], width);
        }

        svg.End();
        svg.Text(6, height - 8, "Numbers as in the list; square points are sharp.", "soft", size: TextSize.Small);
        return svg.End().ToString();
    }

    /// <summary>A station belongs to the fore body, and is drawn on the right.</summary>
    public static bool IsFore(HullFacts facts, HullSpot spot)
    {
        ArgumentNullException.ThrowIfNull(facts);
        bool[] isFore = IsFore(LinesPainter.SideOf(facts, spot.IsStarboard));
        return spot.Station >= 0 && spot.Station < isFore.Length && isFore[spot.Station];
    }

    // The half of the stations whose place is forward of the middle.
    private static bool[] IsFore(FormSide side)
    {
        double[] places = [.. side.Sections.Select(section => section[^1].XM)];
        double middle = (places.Min() + places.Max()) / 2;
        return [.. places.Select(place => place > middle)];
    }

    private static void Numbers(SvgWriter svg, FormSide side, Func<int, Func<Point3, Spot>> at, BoatView view, LinesOptions options)
    {
        List<Box> taken = [];
        IEnumerable<int> order = Enumerable.Range(0, side.Sections.Length).OrderByDescending(index => options.ChosenStation == index);
        foreach (int index in order)
        {
            Spot end = at(index)(side.Sections[index][^1]);
            Box box = Box.Around(new Spot(end.X, end.Y - 9), LabelWidthPx, TextSize.Height(TextSize.Small));
            if (!taken.Exists(box.Overlaps) && box.Y > view.Frame.Y - 12)
            {
                taken.Add(box);
                svg.Text(end.X, end.Y - 5, (index + 1).ToString(CultureInfo.InvariantCulture), options.ChosenStation == index ? "added halo" : "soft halo", "middle", TextSize.Small);
            }
        }
    }
}
