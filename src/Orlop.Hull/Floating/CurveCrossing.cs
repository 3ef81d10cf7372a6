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

    /// <summary>The value is not above zero at the first heel and above it, or at it, at the second. Bisection and false position by turns.</summary>
    public static double Between(RightingCurve curve, double beforeDeg, double afterDeg, Func<RightingPoint, double> value)
    {
        var (valueBefore, valueAfter) = (value(curve.At(beforeDeg)!), value(curve.At(afterDeg)!));
        var isFalsePosition = true;
        while (Math.Abs(afterDeg - beforeDeg) > AngleToleranceDeg)
        {
            var share = isFalsePosition && valueAfter > valueBefore ? Math.Clamp(-valueBefore / (valueAfter - valueBefore), 0.001, 0.999) : 0.5;
            isFalsePosition = !isFalsePosition;
            var middleDeg = beforeDeg + (share * (afterDeg - beforeDeg));
            if (curve.At(middleDeg) is not { } middle)
            {
                break;
            }

            if (value(middle) > 0)
            {
                (afterDeg, valueAfter) = (middleDeg, value(middle));
            }
            else
            {
                (beforeDeg, valueBefore) = (middleDeg, value(middle));
            }
        }

        return 0.5 * (beforeDeg + afterDeg);
    }
}
