using Orlop.Hull.Measuring;

namespace Orlop.Review.Stability;

/// <summary>
/// Which one berth test would settle a result whose band straddles its limit, and how well it must know its number: so well that two deviations of all errors together are within
/// the distance to the limit. What a test of a small boat can know at best is common practice, no source.
/// </summary>
internal static class SettlingTest
{
    private const double BestKgM = 0.005;
    private const double BestMassFraction = 0.002;
    private const double BestTcgM = 0.002;
    private const double BestLcgM = 0.01;

    /// <summary>The end of a sentence: "an inclining test that knows KG to ± 0.04 m (two standard deviations) would settle it".</summary>
    /// <param name="total">What is known of the weight.</param>
    /// <param name="slopes">How the result changes with it.</param>
    /// <param name="margin">Distance of the result from its limit.</param>
    public static string Of(WeightTotal total, WeightSlopes slopes, double margin)
    {
        (double Found, double Best, Func<double, FormattableString> Said)[] tests =
        [
            (Needed(slopes.PerKgM, total.KgDeviationM, slopes with { PerKgM = 0 }), BestKgM, known => $"an inclining test that knows KG to ± {Down(2 * known, 1000):0.###} m (two standard deviations) would settle it"),
            (Needed(slopes.PerMassKg, total.MassDeviationKg, slopes with { PerMassKg = 0 }), BestMassFraction * total.MassKg, known => $"a freeboard survey that knows her weight to ± {Math.Floor(2 * known):0} kg (two standard deviations) would settle it"),
            (Needed(slopes.PerTcgM, total.TcgDeviationM, slopes with { PerTcgM = 0 }), BestTcgM, known => $"a freeboard survey that knows TCG to ± {Down(2 * known, 1000):0.###} m (two standard deviations) would settle it"),
            (Needed(slopes.PerLcgM, total.LcgDeviationM, slopes with { PerLcgM = 0 }), BestLcgM, known => $"a freeboard survey that knows LCG to ± {Down(2 * known, 1000):0.###} m (two standard deviations) would settle it"),
        ];
        return tests.FirstOrDefault(test => test.Found >= test.Best) is { Said: { } said } settling
            ? FormattableString.Invariant(said(settling.Found))
            : "it is too near the limit for one berth test to settle";

        // NaN where knowing this number better would not do, or it is known as well already.
        double Needed(double slope, double deviation, WeightSlopes others)
        {
            double needed = Math.Sqrt((margin * margin / 4) - Math.Pow(others.Deviation(total), 2)) / Math.Abs(slope);
            return needed < deviation ? needed : double.NaN;
        }
    }

    private static double Down(double value, double perUnit) => Math.Floor(value * perUnit) / perUnit;
}
