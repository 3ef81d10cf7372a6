using Orlop.Drawings.Svg;

namespace Orlop.Drawings.Boats;

/// <summary>Draws marks over all else in a view.</summary>
internal sealed class MarkPainter(SvgWriter svg, BoatView view, bool isInteractive)
{
    private const double CentrePx = 6;
    private const double LeastPx = 2.5;
    private const double MostPx = 16;

    /// <summary>Marks inside the view, the greatest weights first so that small ones stay seen.</summary>
    internal void Marks(IEnumerable<BoatMark> marks)
    {
        foreach (BoatMark mark in marks.Where(mark => view.Shows(mark.Place)).OrderBy(mark => mark.Kind != MarkKind.Weight).ThenByDescending(mark => mark.ShareFraction))
        {
            Spot at = view.At(mark.Place);
            switch (mark.Kind)
            {
                case MarkKind.Weight when mark.ThingId is { } id:
                    svg.StartThing(id, mark.Name, isInteractive).Circle(at, Radius(mark), "kept gear weight").End();
                    break;
                case MarkKind.Weight:
                    svg.Start("g").Title(mark.Name).Circle(at, Radius(mark), "kept gear weight").End();
                    break;
                default:
                    Centre(mark, at);
                    break;
            }
        }
    }

    private static double Radius(BoatMark mark) => Math.Max(LeastPx, MostPx * Math.Sqrt(mark.ShareFraction));

    private void Centre(BoatMark mark, Spot at)
    {
        svg.Start("g", ("class", "mark")).Title(mark.Name);
        svg.Circle(at, CentrePx, "disc");
        if (mark.Kind == MarkKind.Gravity)
        {
            foreach (int side in new[] { 1, -1 })
            {
                svg.Path($"M{SvgValue.Number(at.X)},{SvgValue.Number(at.Y)}l{SvgValue.Number(side * CentrePx)},0a{CentrePx},{CentrePx} 0 0 0 {SvgValue.Number(-side * CentrePx)},{SvgValue.Number(-side * CentrePx)}z", "solid");
            }
        }
        else
        {
            svg.Circle(at, 1.6, "solid");
        }

        svg.Text(at.X + CentrePx + 3, at.Y + 4, mark.Kind == MarkKind.Gravity ? "G" : "B", "strong halo").End();
    }
}
