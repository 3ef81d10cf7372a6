using Orlop.Hull.Measuring;
using Orlop.Hull.Surfaces;

namespace Orlop.Review.Stability;

/// <summary>
/// Which one berth test would settle a result whose band straddles its limit, and how well it must know its number: so well that two deviations of all errors together are within
/// the distance to the limit. Where none would, what of the list would, put on a scale. What a test of a small boat can know at best is common practice, no source.
/// </summary>
internal static class SettlingTest
{
    private const double BestKgM = 0.005;
    private const double BestMassFraction = 0.002;
    private const double BestTcgM = 0.002;
    private const double BestLcgM = 0.01;

    // Less than this of the variance is not worth a scale (our rule, no source).
    private const double LeastShareFraction = 0.1;

    /// <summary>The end of a sentence: "an inclining test that knows KG to ± 0.04 m (two standard deviations) would settle it".</summary>
    /// <param name="view">The boat.</param>
    /// <param name="loaded">How she is loaded.</param>
    /// <param name="slopes">How the result changes with it.</param>
    /// <param name="margin">Distance of the result from its limit.</param>
    public static string Of(StabilityView view, LoadedBoat loaded, WeightSlopes slopes, double margin)
    {
        WeightTotal total = loaded.Total!;
        (double Found, double Best, Func<double, FormattableString> Said)[] tests =
        [
            (Needed(slopes.PerKgM, total.KgDeviationM, slopes with { PerKgM = 0 }), BestKgM, known => $"an inclining test that knows KG to ± {Down(2 * known, 1000):0.###} m (two standard deviations) would settle it"),
            (Needed(slopes.PerMassKg, total.MassDeviationKg, slopes with { PerMassKg = 0 }), BestMassFraction * total.MassKg, known => $"a freeboard survey that knows her weight to ± {Math.Floor(2 * known):0} kg (two standard deviations) would settle it"),
            (Needed(slopes.PerTcgM, total.TcgDeviationM, slopes with { PerTcgM = 0 }), BestTcgM, known => $"a freeboard survey that knows TCG to ± {Down(2 * known, 1000):0.###} m (two standard deviations) would settle it"),
            (Needed(slopes.PerLcgM, total.LcgDeviationM, slopes with { PerLcgM = 0 }), BestLcgM, known => $"a freeboard survey that knows LCG to ± {Down(2 * known, 1000):0.###} m (two standard deviations) would settle it"),
        ];
        return tests.FirstOrDefault(test => test.Found >= test.Best) is { Said: { } said } settling
            ? FormattableString.Invariant(said(settling.Found))
            : $"it is too near the limit for one berth test to settle; {Weighing(view, loaded, slopes, margin)}";

        // NaN where knowing this number better would not do, or it is known as well already.
        double Needed(double slope, double deviation, WeightSlopes others)
        {
            double needed = Math.Sqrt((margin * margin / 4) - Math.Pow(others.Deviation(total), 2)) / Math.Abs(slope);
            return needed < deviation ? needed : double.NaN;
        }
    }

    // What is listed and not in the test that her weight is from: its error comes on top, and a scale takes it away.
    private static string Weighing(StabilityView view, LoadedBoat loaded, WeightSlopes slopes, double margin)
    {
        WeightTotal total = loaded.Total!;
        double variance = Math.Pow(slopes.Deviation(total), 2);
        (LedgerItem Item, double Variance)[] unsure =
        [
            .. TestEvidence.Changes(view.Weight.Aboard, [.. loaded.Ledger.Rows.Select(WeightLedger.Item)]).Select(change => change.Now).OfType<LedgerItem>()
                .Select(item => (item, Math.Pow(PerKg(item) * item.MassDeviationKg, 2))).OrderByDescending(item => item.Item2),
        ];
        if (unsure.Length == 0 || !(unsure[0].Variance >= LeastShareFraction * variance))
        {
            return "no thing listed makes much of it: give her more to spare";
        }

        (LedgerItem heaviest, double share) = unsure[0];
        string named = FormattableString.Invariant($"weighing {view.Boat.Find(heaviest.Id)?.Title ?? heaviest.Id}, ± {2 * heaviest.MassDeviationKg:0.#} kg now,");
        return 4 * (variance - share) <= margin * margin ? $"{named} would settle it" : $"{named} would do most, and not enough alone";

        double PerKg(LedgerItem item)
        {
            Point3 arm = item.Place - total.Centre;
            return slopes.PerMassKg + (((slopes.PerLcgM * arm.XM) + (slopes.PerTcgM * arm.YM) + (slopes.PerKgM * arm.ZM)) / total.MassKg);
        }
    }

    private static double Down(double value, double perUnit) => Math.Floor(value * perUnit) / perUnit;
}
