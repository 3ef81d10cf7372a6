namespace Orlop.Hull.Floating;

/// <summary>The greatest lever between two heels of one side, by Brent's method (1973): parabolas through the last three points, the golden section where they do not help.</summary>
internal static class CurvePeak
{
    private const double Golden = 0.3819660112501051;
    private const double AngleToleranceDeg = 1e-5;
    private const int MostSteps = 60;

    /// <summary>The point of the greatest lever; null where the boat cannot be solved in between.</summary>
    /// <param name="curve">The levers.</param>
    /// <param name="side">1 to starboard, -1 to port.</param>
    /// <param name="lowDeg">Least heel, without sign.</param>
    /// <param name="highDeg">Greatest heel, without sign.</param>
    public static RightingPoint? Between(RightingCurve curve, int side, double lowDeg, double highDeg)
    {
        var (low, high) = (lowDeg, highDeg);
        var best = low + (Golden * (high - low));
        if (curve.At(side * best) is not { } at)
        {
            return null;
        }

        var (second, third) = (best, best);
        var (valueBest, valueSecond, valueThird) = (side * at.GzM, side * at.GzM, side * at.GzM);
        double step = 0, stepBefore = 0;
        for (var i = 0; i < MostSteps; i++)
        {
            var middle = 0.5 * (low + high);
            if (Math.Abs(best - middle) <= (2 * AngleToleranceDeg) - (0.5 * (high - low)))
            {
                return at;
            }

            var parabola = Parabola(best, valueBest, second, valueSecond, third, valueThird);
            if (Math.Abs(stepBefore) > AngleToleranceDeg && Math.Abs(parabola) < Math.Abs(0.5 * stepBefore) && best + parabola > low && best + parabola < high)
            {
                (stepBefore, step) = (step, parabola);
            }
            else
            {
                stepBefore = best < middle ? high - best : low - best;
                step = Golden * stepBefore;
            }

            var next = best + (Math.Abs(step) >= AngleToleranceDeg ? step : Math.CopySign(AngleToleranceDeg, step));
            if (curve.At(side * next) is not { } point)
            {
                return null;
            }

            var value = side * point.GzM;
            if (value >= valueBest)
            {
                (low, high) = next >= best ? (best, high) : (low, best);
                (third, valueThird, second, valueSecond) = (second, valueSecond, best, valueBest);
                (best, valueBest, at) = (next, value, point);
            }
            else
            {
                (low, high) = next < best ? (next, high) : (low, next);
                if (value >= valueSecond || second == best)
                {
                    (third, valueThird, second, valueSecond) = (second, valueSecond, next, value);
                }
                else if (value >= valueThird || third == best || third == second)
                {
                    (third, valueThird) = (next, value);
                }
            }
        }

        return at;
    }

    // Step from the best point to the top of the parabola through three; not a number where there is none.
    private static double Parabola(double best, double valueBest, double second, double valueSecond, double third, double valueThird)
    {
        var (r, q) = ((best - second) * (valueThird - valueBest), (best - third) * (valueSecond - valueBest));
        return (((best - third) * q) - ((best - second) * r)) / (2 * (r - q));
    }
}
