using System.Globalization;
using Orlop.Drawings.Svg;
using Orlop.Presentation.Quantities;

namespace Orlop.Drawings.Boats;

/// <summary>Draws grid and scale bar in the reader's unit of length.</summary>
internal sealed class GridPainter(SvgWriter svg, DisplayUnits units, CultureInfo culture)
{
    private const double LeastStepPx = 30;
    private const double LeastStepUnits = 1;
    private const double BarHeightPx = 6;
    private readonly AxisUnit _unit = AxisUnit.For("M", units);

    internal void Grid(BoatView view)
    {
        Box frame = view.Frame;
        double step = Step(view.PixelsPerM, LeastStepPx);
        Extent extent = view.Extent;
        foreach (double count in RoundSteps.Between(_unit.FromModel(extent.LeastAcrossM), _unit.FromModel(extent.MostAcrossM), step))
        {
            double x = view.Across(_unit.ToModel(count));
            svg.Line(x, frame.Y, x, frame.Bottom, "grid");
            string text = Math.Abs(count).ToString("0.##", culture);
            svg.Text(x, frame.Y - 4, count == 0 ? $"0 {_unit.Symbol}" : view.Kind == ViewKind.Section ? text : count.ToString("0.##", culture), "soft", "middle", TextSize.Small);
        }

        foreach (double count in RoundSteps.Between(_unit.FromModel(extent.LeastUpM), _unit.FromModel(extent.MostUpM), step))
        {
            double y = view.Up(_unit.ToModel(count));
            svg.Line(frame.X, y, frame.Right, y, "grid");
            string number = view.Kind == ViewKind.Plan ? Math.Abs(count).ToString("0.##", culture) : count.ToString("0.##", culture);
            svg.Text(frame.X - 4, y + 4, number, "soft", "end", TextSize.Small);
        }
    }

    /// <summary>A bar of a few round lengths, and its right end.</summary>
    internal void ScaleBar(Spot corner, double pixelsPerM, double mostWidth)
    {
        double step = Step(pixelsPerM, LeastStepPx);
        int parts = Math.Clamp((int)(mostWidth / (_unit.ToModel(step) * pixelsPerM)), 1, 4);
        double width = _unit.ToModel(step) * pixelsPerM;
        svg.Start("g", ("class", "scale-bar"), ("data-metres", _unit.ToModel(step) * parts));
        svg.Rect(new Box(corner.X, corner.Y, width * parts, BarHeightPx), "fine");
        for (int part = 0; part <= parts; part++)
        {
            if (part % 2 == 0 && part < parts)
            {
                svg.Rect(new Box(corner.X + (part * width), corner.Y, width, BarHeightPx), "solid");
            }

            string text = (part * step).ToString("0.##", culture);
            svg.Text(corner.X + (part * width), corner.Y + BarHeightPx + 12, part == parts ? $"{text} {_unit.Symbol}" : text, "soft", part == 0 ? "start" : "middle", TextSize.Small);
        }

        svg.End();
    }

    private double Step(double pixelsPerM, double leastPx) => Math.Max(RoundSteps.AtLeast(_unit.FromModel(leastPx / pixelsPerM)), LeastStepUnits);
}
