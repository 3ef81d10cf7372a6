using Orlop.Hull.Measuring;

namespace Orlop.Hull.Floating;

/// <summary>
/// How far a boat that is let go at a heel swings to the other side, undamped and in still water: ∫GZ dφ from upright is the same at both ends (work and energy). Ship's own inertia and
/// the water's play no part in where she stops.
/// </summary>
/// <param name="HeelDeg">Where she stops, 0 or more, to the other side; 0 when she does not come to upright; null when nothing stops her as far as the curve goes.</param>
/// <param name="Slopes">How that changes with the weight; not a number where it cannot be told.</param>
public sealed record FreeSwing(double? HeelDeg, WeightSlopes Slopes)
{
    private const double RadPerDeg = Math.PI / 180;
    private const double FinestDeg = 1e-7;
    private const int MostSteps = 100;

    /// <param name="away">Levers to the side she swings to.</param>
    /// <param name="back">Levers to the side she starts at, to that heel at least.</param>
    /// <param name="fromDeg">Heel she is let go at, with its sign.</param>
    /// <param name="fromSlopes">How that heel, in degrees, changes with the weight.</param>
    public static FreeSwing From(RightingCurve away, RightingCurve back, double fromDeg, WeightSlopes fromSlopes)
    {
        ArgumentNullException.ThrowIfNull(away);
        ArgumentNullException.ThrowIfNull(back);
        if (back.AreaMRad(0, fromDeg) is not { } work || back.At(fromDeg) is not { } start || back.AreaSlopes(0, fromDeg) is not { } workSlopes)
        {
            return new FreeSwing(null, WeightSlopes.Untold);
        }

        if (work <= 0)
        {
            return new FreeSwing(0, WeightSlopes.Untold);
        }

        if (EndOf(away, work) is not { } end)
        {
            return new FreeSwing(null, WeightSlopes.Untold);
        }

        var spent = away.AreaSlopes(0, end.HeelDeg) ?? WeightSlopes.Untold;
        var given = workSlopes - (-start.GzM * RadPerDeg * fromSlopes);
        return new FreeSwing(Math.Abs(end.HeelDeg), 1 / (Math.Abs(end.GzM) * RadPerDeg) * (given - spent));
    }

    // Newton on the work left, whose slope is the lever, kept between the heels that bracket the end.
    private static RightingPoint? EndOf(RightingCurve away, double work)
    {
        var side = Math.Sign(away.Input.ToDeg);
        var (low, high) = (0.0, double.NaN);
        foreach (var point in away.Points)
        {
            if (!(Left(away, point, work) > 0))
            {
                high = Math.Abs(point.HeelDeg);
                break;
            }

            low = Math.Abs(point.HeelDeg);
        }

        var heel = 0.5 * (low + high);
        for (var step = 0; step < MostSteps; step++)
        {
            if (away.At(side * heel) is not { } point)
            {
                return null;
            }

            var left = Left(away, point, work);
            (low, high) = left > 0 ? (heel, high) : (low, heel);
            var newton = heel + (left / (side * point.GzM * RadPerDeg));
            if (Math.Abs(newton - heel) <= FinestDeg || high - low <= FinestDeg)
            {
                return point;
            }

            heel = newton > low && newton < high ? newton : 0.5 * (low + high);
        }

        return null;
    }

    private static double Left(RightingCurve away, RightingPoint point, double work) => work - away.AreaMRad(0, point.HeelDeg) ?? double.NaN;
}
