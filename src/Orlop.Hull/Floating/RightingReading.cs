namespace Orlop.Hull.Floating;

/// <summary>Reads a curve's features, each angle refined by solving the boat at heels between the points.</summary>
internal static class RightingReading
{
    /// <summary>An upright lever smaller than this is none: a symmetric boat leaves only its rounding.</summary>
    private const double RoundingM = 1e-9;

    public static RightingFeatures Read(RightingCurve curve)
    {
        var points = curve.Points;
        var side = Math.Sign(curve.Input.ToDeg);
        var loll = FirstRighting(curve, side);
        var vanishing = loll is null ? null : Vanishing(curve, side, loll.Value);
        var peak = loll is null || points.Length < 2 ? null : Peak(curve, side, loll.Value, vanishing ?? points[^1].HeelDeg);
        var (flooding, opening) = FirstUnder(curve, curve.Input.Openings);
        return new RightingFeatures
        {
            GreatestGzM = peak is null ? null : side * peak.GzM,
            GreatestGzDeg = peak?.HeelDeg,
            LollDeg = loll,
            VanishingDeg = vanishing,
            DownfloodingDeg = flooding,
            DownfloodingOpening = opening,
        };
    }

    // Stable upright means that the first lever rights her; otherwise the first crossing from upsetting to righting.
    private static double? FirstRighting(RightingCurve curve, int side)
    {
        var points = curve.Points;
        if (points.Length < 2)
        {
            return null;
        }

        if (side * points[0].GzM > RoundingM || (Math.Abs(points[0].GzM) <= RoundingM && side * points[1].GzM > 0))
        {
            return 0;
        }

        for (var i = 1; i < points.Length; i++)
        {
            if (side * points[i].GzM > 0)
            {
                return CurveCrossing.Between(curve, points[i - 1].HeelDeg, points[i].HeelDeg, point => side * point.GzM);
            }
        }

        return null;
    }

    private static double? Vanishing(RightingCurve curve, int side, double loll)
    {
        var points = curve.Points;
        for (var i = 1; i < points.Length; i++)
        {
            if (Math.Abs(points[i - 1].HeelDeg) >= Math.Abs(loll) && side * points[i].GzM < 0 && side * points[i - 1].GzM >= 0 && i > 1)
            {
                return CurveCrossing.Between(curve, points[i - 1].HeelDeg, points[i].HeelDeg, point => -side * point.GzM);
            }
        }

        return null;
    }

    private static RightingPoint? Peak(RightingCurve curve, int side, double fromDeg, double toDeg)
    {
        var highest = curve.Points.Where(point => Math.Abs(point.HeelDeg) >= Math.Abs(fromDeg) && Math.Abs(point.HeelDeg) <= Math.Abs(toDeg))
            .MaxBy(point => side * point.GzM);
        if (highest is null)
        {
            return null;
        }

        var (low, high) = (Math.Max(Math.Abs(highest.HeelDeg) - curve.Input.StepDeg, Math.Abs(fromDeg)), Math.Min(Math.Abs(highest.HeelDeg) + curve.Input.StepDeg, Math.Abs(toDeg)));
        return CurvePeak.Between(curve, side, low, high) is { } found && side * found.GzM > side * highest.GzM ? found : highest;
    }

    /// <summary>Heel at which the first of some places goes under, and which that is.</summary>
    public static (double? Deg, string? Opening) FirstUnder(RightingCurve curve, IEnumerable<Opening> places)
    {
        double? first = null;
        string? which = null;
        foreach (var opening in places)
        {
            if (Under(curve, opening) is { } heel && (first is null || Math.Abs(heel) < Math.Abs(first.Value)))
            {
                (first, which) = (heel, opening.Id);
            }
        }

        return (first, which);
    }

    private static double? Under(RightingCurve curve, Opening opening)
    {
        for (var i = 0; i < curve.Points.Length; i++)
        {
            if (curve.Points[i].Attitude.HeightAboveWaterM(opening.Place) <= 0)
            {
                return i == 0 ? 0 : CurveCrossing.Between(curve, curve.Points[i - 1].HeelDeg, curve.Points[i].HeelDeg, point => -point.Attitude.HeightAboveWaterM(opening.Place));
            }
        }

        return null;
    }
}
