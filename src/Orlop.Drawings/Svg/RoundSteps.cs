namespace Orlop.Drawings.Svg;

/// <summary>Steps of 1, 2 or 5 times a power of ten.</summary>
internal static class RoundSteps
{
    /// <summary>The least round step that is at least so large.</summary>
    internal static double AtLeast(double step)
    {
        double power = Math.Pow(10, Math.Floor(Math.Log10(step)));
        foreach (double factor in (ReadOnlySpan<double>)[1, 2, 5])
        {
            if (factor * power >= step * (1 - 1e-9))
            {
                return factor * power;
            }
        }

        return 10 * power;
    }

    /// <summary>Multiples of the step from <paramref name="least"/> to <paramref name="most"/>.</summary>
    internal static IEnumerable<double> Between(double least, double most, double step)
    {
        double first = Math.Ceiling((least / step) - 1e-9), last = Math.Floor((most / step) + 1e-9);
        for (double count = first; count <= last; count++)
        {
            yield return Math.Round(count * step, 10) + 0.0;
        }
    }
}
