namespace Orlop.Electrics.Diagnosis;

/// <summary>
/// Least value of a function of one variable on an interval: a coarse scan, then Brent's parabolic steps with golden-section safeguard around the best point
/// (Brent 1973, chapter 5). Infinite values are allowed and are stepped back from.
/// </summary>
internal static class ScalarMinimum
{
    private const double GoldenShare = 0.381966011250105;

    public static double Find(Func<double, double> value, double least, double most, int scanCount, double tolerance)
    {
        var best = 0;
        var bestValue = double.PositiveInfinity;
        var spacing = (most - least) / scanCount;
        for (var i = 0; i <= scanCount; i++)
        {
            var here = value(least + (i * spacing));
            if (here < bestValue)
            {
                (best, bestValue) = (i, here);
            }
        }

        var start = least + (best * spacing);
        var found = Brent(value, Math.Max(least, start - spacing), Math.Min(most, start + spacing), tolerance);
        return value(found) < bestValue ? found : start;
    }

    private static double Brent(Func<double, double> value, double low, double high, double tolerance)
    {
        var x = low + (GoldenShare * (high - low));
        var (w, v) = (x, x);
        var fx = value(x);
        var (fw, fv) = (fx, fx);
        double step = 0, lastStep = 0;
        for (var i = 0; i < 60; i++)
        {
            var middle = (low + high) / 2;
            if (Math.Abs(x - middle) <= (2 * tolerance) - ((high - low) / 2))
            {
                break;
            }

            var (previous, parabola) = (lastStep, Parabola(x, fx, w, fw, v, fv));
            lastStep = step;
            if (Math.Abs(previous) > tolerance && Math.Abs(parabola) < Math.Abs(previous / 2) && x + parabola > low && x + parabola < high)
            {
                step = parabola;
            }
            else
            {
                lastStep = x < middle ? high - x : low - x;
                step = GoldenShare * lastStep;
            }

            var u = x + (Math.Abs(step) >= tolerance ? step : Math.CopySign(tolerance, step));
            var fu = value(u);
            if (fu <= fx)
            {
                (low, high) = u < x ? (low, x) : (x, high);
                (v, fv, w, fw, x, fx) = (w, fw, x, fx, u, fu);
                continue;
            }

            (low, high) = u < x ? (u, high) : (low, u);
            if (fu <= fw || w == x)
            {
                (v, fv, w, fw) = (w, fw, u, fu);
            }
            else if (fu <= fv || v == x || v == w)
            {
                (v, fv) = (u, fu);
            }
        }

        return x;
    }

    /// <summary>Step from x to the turning point of the parabola through three points; not a number when there is none.</summary>
    private static double Parabola(double x, double fx, double w, double fw, double v, double fv)
    {
        var r = (x - w) * (fx - fv);
        var q = (x - v) * (fx - fw);
        var denominator = 2 * (q - r);
        return -(((x - v) * q) - ((x - w) * r)) / denominator;
    }
}
