using System.Globalization;
using Orlop.Boat.Things;
using Orlop.Boat.Values;
using Orlop.Hull.Surfaces;
using Orlop.Presentation.Quantities;

namespace Orlop.Presentation.Views.Floating;

/// <summary>
/// How much of a thing's box lies outside the hull at its height: beside her, ahead or astern of her, or under her bottom. What stands over her deck is not outside. Told by
/// points spread evenly in the box; the skin has no thickness.
/// </summary>
/// <param name="ShareFraction">Share of the box, more than 0, to 1.</param>
/// <param name="Words">The same in a sentence.</param>
public sealed record OutsideHull(double ShareFraction, string Words)
{
    // Along each side of the box: 1000 points tell a share to about a hundredth.
    private const int PointsAcross = 10;

    // A box that touches the plating as measured may cross it by this share (our rule, no source).
    private const double LeastFraction = 0.01;

    /// <summary>Works it out; null where all of it is inside her or over her deck, and for a thing that has no place.</summary>
    public static OutsideHull? Of(TriangleMesh hull, Thing thing, DisplayUnits units, CultureInfo culture)
    {
        ArgumentNullException.ThrowIfNull(hull);
        if (BoxOf(thing) is not { } box)
        {
            return null;
        }

        double share = Share(hull, box.Low, box.High);
        string much = share >= 1 - LeastFraction ? "All" : $"About {QuantityText.Shown(Math.Round(share, 2), "Fraction", units, culture)}";
        return share > LeastFraction
            ? new OutsideHull(share, $"{much} of it lies outside the hull at its height. Where that is not meant, correct its place or its size.")
            : null;
    }

    private static (Point3 Low, Point3 High)? BoxOf(Thing thing) => thing switch
    {
        Part { Place: { } place } part => Around(place, part.Size),
        Gear { Place: { } place } gear => Around(place, gear.Size),
        Tank { IsHullSided: false } tank => (new(tank.From.XM, tank.From.YM, tank.From.ZM), new(tank.To.XM, tank.To.YM, tank.To.ZM)),
        _ => null,
    };

    private static (Point3 Low, Point3 High) Around(Place place, BoxSize? size)
    {
        Point3 half = new((size?.LengthM ?? 0) / 2, (size?.BreadthM ?? 0) / 2, (size?.HeightM ?? 0) / 2), centre = new(place.XM, place.YM, place.ZM);
        return (centre + (-1 * half), centre + half);
    }

    private static double Share(TriangleMesh hull, Point3 low, Point3 high)
    {
        int outside = 0;
        (Point3 A, Point3 B, Point3 C)[] over = [.. hull.Triangles.Select(triangle => (hull.Corners[triangle.A], hull.Corners[triangle.B], hull.Corners[triangle.C])).Where(triangle => IsOver(triangle, low, high))];
        for (int i = 0; i < PointsAcross; i++)
        {
            for (int j = 0; j < PointsAcross; j++)
            {
                double? bottomM = BottomM(over, At(low.XM, high.XM, i), At(low.YM, high.YM, j));
                outside += Enumerable.Range(0, PointsAcross).Count(k => bottomM is not { } bottom || At(low.ZM, high.ZM, k) < bottom);
            }
        }

        return outside / Math.Pow(PointsAcross, 3);
    }

    private static double At(double fromM, double toM, int point) => fromM + ((toM - fromM) * (point + 0.5) / PointsAcross);

    private static bool IsOver((Point3 A, Point3 B, Point3 C) triangle, Point3 low, Point3 high)
    {
        (Point3 a, Point3 b, Point3 c) = triangle;
        return Math.Min(a.XM, Math.Min(b.XM, c.XM)) <= high.XM && Math.Max(a.XM, Math.Max(b.XM, c.XM)) >= low.XM
            && Math.Min(a.YM, Math.Min(b.YM, c.YM)) <= high.YM && Math.Max(a.YM, Math.Max(b.YM, c.YM)) >= low.YM;
    }

    // The lowest height of the hull's surface over a point of the plan; null where she is not there.
    private static double? BottomM((Point3 A, Point3 B, Point3 C)[] over, double xM, double yM)
    {
        double? lowest = null;
        foreach ((Point3 a, Point3 b, Point3 c) in over)
        {
            double area = ((b.XM - a.XM) * (c.YM - a.YM)) - ((c.XM - a.XM) * (b.YM - a.YM));
            if (area == 0)
            {
                continue;
            }

            double ofB = (((xM - a.XM) * (c.YM - a.YM)) - ((c.XM - a.XM) * (yM - a.YM))) / area, ofC = (((b.XM - a.XM) * (yM - a.YM)) - ((xM - a.XM) * (b.YM - a.YM))) / area;
            double heightM = a.ZM + (ofB * (b.ZM - a.ZM)) + (ofC * (c.ZM - a.ZM));
            if (ofB >= 0 && ofC >= 0 && ofB + ofC <= 1 && !(heightM >= lowest))
            {
                lowest = heightM;
            }
        }

        return lowest;
    }
}
