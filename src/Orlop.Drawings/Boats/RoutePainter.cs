using System.Globalization;
using Orlop.Boat.Values;
using Orlop.Drawings.Svg;

namespace Orlop.Drawings.Boats;

/// <summary>Draws the ways a cable may take, the best as a full line over the others, which are broken.</summary>
internal sealed class RoutePainter(SvgWriter svg, BoatView view)
{
    // Where routes share a way they lie beside each other.
    private const double ApartPx = 3.5;
    private static readonly string[] Styles = ["route", "route next", "route third"];

    internal void Routes(ValueList<DrawnRoute> routes)
    {
        for (int index = routes.Count - 1; index >= 0; index--)
        {
            double aside = index * ApartPx;
            Spot[] line = [.. routes[index].Line.Select(view.At).Select(spot => new Spot(spot.X + aside, spot.Y + aside))];
            if (line.Length > 1)
            {
                svg.Start("g", ("class", "mark")).Title(routes[index].Name).Polyline(line, Styles[Math.Min(index, Styles.Length - 1)]);
                Spot at = MiddleOf(line, (index + 1.0) / (routes.Count + 1));
                svg.Text(at.X + 4, at.Y - 5, (index + 1).ToString(CultureInfo.InvariantCulture), "strong halo").End();
            }
        }
    }

    private static Spot MiddleOf(Spot[] line, double share)
    {
        double whole = Enumerable.Range(1, line.Length - 1).Sum(k => Length(line[k - 1], line[k])), left = share * whole;
        for (int k = 1; k < line.Length; k++)
        {
            double length = Length(line[k - 1], line[k]);
            if (left <= length && length > 0)
            {
                return new Spot(line[k - 1].X + (left / length * (line[k].X - line[k - 1].X)), line[k - 1].Y + (left / length * (line[k].Y - line[k - 1].Y)));
            }

            left -= length;
        }

        return line[^1];
    }

    private static double Length(Spot a, Spot b) => Math.Sqrt(((b.X - a.X) * (b.X - a.X)) + ((b.Y - a.Y) * (b.Y - a.Y)));
}
