namespace Orlop.Hull.Floating;

/// <summary>Where something read from a curve's points rises above zero, refined by solving the boat between the points.</summary>
internal static class CurveCrossing
{
    private const double AngleToleranceDeg = 1e-7;

    /// <summary>The first heel beyond a heel of the same side at which the value rises above zero; null when it does not.</summary>
    public static double? First(RightingCurve curve, double afterDeg, Func<RightingPoint, double> value)
    {
        double? before = curve.At(afterDeg) is { } start && value(start) <= 0 ? afterDeg : null;
        foreach (var point in curve.Points.Where(point => Math.Abs(point.HeelDeg) > Math.Abs(afterDeg)))
        {
            if (value(point) <= 0)
            {
                before = point.HeelDeg;
            }
            else if (before is { } below)
            {
                return Between(curve, below, point.HeelDeg, value);
            }
        }

        return null;
    }

    /// <summary>
    /// The value is not above zero at the first heel and above it, or at it, at the second. Chandrupatla's method (1997): inverse quadratic interpolation where the three last
    /// points allow it, halving where they do not.
    /// </summary>
    public static double Between(RightingCurve curve, double beforeDeg, double afterDeg, Func<RightingPoint, double> value)
    {
        var (a, b) = (afterDeg, beforeDeg);
        var (valueA, valueB) = (value(curve.At(a)!), value(curve.At(b)!));
        if (valueB == 0 || valueA == 0)
        {
            return valueB == 0 ? b : a;
        }

        var share = Math.Clamp(valueA / (valueA - valueB), 0.01, 0.99);
        while (Math.Abs(b - a) > 2 * AngleToleranceDeg)
        {
            var middle = a + (share * (b - a));
            if (curve.At(middle) is not { } point)
            {
                break;
            }

            var found = value(point);
            var (c, valueC) = (a, valueA);
            if (found > 0 == valueA > 0)
            {
                (a, valueA) = (middle, found);
            }
            else
            {
                (c, valueC) = (b, valueB);
                (b, valueB) = (a, valueA);
                (a, valueA) = (middle, found);
            }

            if (found == 0)
            {
                return middle;
            }

            var least = AngleToleranceDeg / Math.Abs(b - a);
            share = least >= 0.5 ? 0.5 : Math.Clamp(Share(a, valueA, b, valueB, c, valueC), least, 1 - least);
        }

        return Math.Abs(valueA) < Math.Abs(valueB) ? a : b;
    }

    private static double Share(double a, double valueA, double b, double valueB, double c, double valueC)
    {
        var (way, drop) = ((a - b) / (c - b), (valueA - valueB) / (valueC - valueB));
        return drop * drop < way && (1 - drop) * (1 - drop) < 1 - way
            ? (valueA / (valueB - valueA) * valueC / (valueB - valueC)) + ((c - a) / (b - a) * valueA / (valueC - valueA) * valueB / (valueC - valueB))
            : 0.5;
    }
}
