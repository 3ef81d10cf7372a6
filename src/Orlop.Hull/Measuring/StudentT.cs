namespace Orlop.Hull.Measuring;

/// <summary>Student's t, by the incomplete beta function as a continued fraction (Abramowitz and Stegun 26.5.8, 26.7.1).</summary>
internal static class StudentT
{
    private const int MostTerms = 400;

    /// <summary>The t that is exceeded either way with a probability.</summary>
    public static double TwoSided(double probability, int degreesOfFreedom)
    {
        double low = 0, high = 1;
        while (Beyond(high, degreesOfFreedom) > probability)
        {
            high *= 2;
        }

        for (var step = 0; step < 100; step++)
        {
            var middle = 0.5 * (low + high);
            (low, high) = Beyond(middle, degreesOfFreedom) > probability ? (middle, high) : (low, middle);
        }

        return 0.5 * (low + high);
    }

    private static double Beyond(double t, int n) => IncompleteBeta(n / (n + (t * t)), n / 2.0, 0.5);

    private static double IncompleteBeta(double x, double a, double b)
    {
        if (x <= 0 || x >= 1)
        {
            return x <= 0 ? 0 : 1;
        }

        if (x > (a + 1) / (a + b + 2))
        {
            return 1 - IncompleteBeta(1 - x, b, a);
        }

        var front = Math.Exp((a * Math.Log(x)) + (b * Math.Log(1 - x)) + LogGamma(a + b) - LogGamma(a) - LogGamma(b)) / a;
        double c = 1, d = 1 / (1 - ((a + b) * x / (a + 1))), fraction = d;
        for (var m = 1; m <= MostTerms; m++)
        {
            var even = m * (b - m) * x / ((a + (2 * m) - 1) * (a + (2 * m)));
            d = 1 / (1 + (even * d));
            c = 1 + (even / c);
            fraction *= d * c;
            var odd = -(a + m) * (a + b + m) * x / ((a + (2 * m)) * (a + (2 * m) + 1));
            d = 1 / (1 + (odd * d));
            c = 1 + (odd / c);
            fraction *= d * c;
            if (Math.Abs((d * c) - 1) < 1e-15)
            {
                break;
            }
        }

        return front * fraction;
    }

    // Stirling's series above 10, stepped down from there.
    private static double LogGamma(double x)
    {
        var below = 0.0;
        while (x < 10)
        {
            below += Math.Log(x);
            x++;
        }

        var inverse = 1 / (x * x);
        return ((x - 0.5) * Math.Log(x)) - x + (0.5 * Math.Log(Math.Tau)) + ((1.0 / 12 - (inverse * (1.0 / 360 - (inverse * (1.0 / 1260 - (inverse / 1680)))))) / x) - below;
    }
}
