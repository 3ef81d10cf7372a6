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

    /// <summary>The end of a sentence: "an inclining test that knows KG to ± 0.04 m (two standard deviations) would settle it". Of several that would, the one whose number makes most of the band.</summary>
    /// <param name="view">The boat.</param>
    /// <param name="loaded">How she is loaded.</param>
    /// <param name="slopes">How the result changes with her weight.</param>
    /// <param name="beside">What it rests on besides; null for nothing.</param>
    /// <param name="margin">Distance of the result from its limit.</param>
    public static string Of(StabilityView view, LoadedBoat loaded, WeightSlopes slopes, BesideWeight? beside, double margin)
    {
        WeightTotal total = loaded.Total!;
        Candidate[] tests =
        [
            Of("an inclining test that knows KG", slopes.PerKgM, total.KgDeviationM, slopes with { PerKgM = 0 }, BestKgM),
            Of("a freeboard survey that knows her weight", slopes.PerMassKg, total.MassDeviationKg, slopes with { PerMassKg = 0 }, BestMassFraction * total.MassKg, "kg"),
            Of("a freeboard survey that knows TCG", slopes.PerTcgM, total.TcgDeviationM, slopes with { PerTcgM = 0 }, BestTcgM),
            Of("a freeboard survey that knows LCG", slopes.PerLcgM, total.LcgDeviationM, slopes with { PerLcgM = 0 }, BestLcgM),
            .. beside is null ? [] : new[] { new Candidate(beside.Test, "", beside.Variance, Needed(beside.PerUnit, beside.Deviation, Squared(slopes.Deviation(total))), beside.BestDeviation) },
        ];
        return tests.Where(test => test.Needed >= test.Best).MaxBy(test => test.Variance) is { } settling
            ? $"{settling.Said} would settle it"
            : $"it is too near the limit for one berth test to settle; {Most(view, loaded, slopes, beside, margin)}";

        Candidate Of(string test, double slope, double deviation, WeightSlopes others, double best, string unit = "m") =>
            new(test, unit, Squared(slope * deviation), Needed(slope, deviation, Squared(others.Deviation(total)) + (beside?.Variance ?? 0)), best);

        // NaN where knowing this number better would not do, or it is known as well already.
        double Needed(double slope, double deviation, double othersVariance)
        {
            double needed = Math.Sqrt((margin * margin / 4) - othersVariance) / Math.Abs(slope);
            return needed < deviation ? needed : double.NaN;
        }
    }

    // What is listed and not in the test that her weight is from: its error comes on top, and a scale takes it away. Or what it rests on beside her weight, where that makes more.
    private static string Most(StabilityView view, LoadedBoat loaded, WeightSlopes slopes, BesideWeight? beside, double margin)
    {
        WeightTotal total = loaded.Total!;
        double variance = Squared(slopes.Deviation(total)) + (beside?.Variance ?? 0);
        (LedgerItem Item, double Variance)[] unsure =
        [
            .. TestEvidence.Changes(view.Weight.Aboard, [.. loaded.Ledger.Rows.Select(WeightLedger.Item)]).Select(change => change.Now).OfType<LedgerItem>()
                .Select(item => (item, Squared(PerKg(item) * item.MassDeviationKg))).OrderByDescending(item => item.Item2),
        ];
        if (beside is not null && beside.Variance >= LeastShareFraction * variance && !(unsure.Length > 0 && unsure[0].Variance > beside.Variance))
        {
            return $"{beside.Test} better would do most, and not enough alone";
        }

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

    private static double Squared(double value) => value * value;

    /// <summary>A berth test: what it makes of the variance now, how well it would have to know its number, and how well it can at best; one standard deviation each.</summary>
    private sealed record Candidate(string Test, string Unit, double Variance, double Needed, double Best)
    {
        // Two deviations, rounded down: to a kilogram, or to a thousandth.
        public string Said => FormattableString.Invariant($"{Test} to ± {(Unit == "kg" ? Math.Floor(2 * Needed) : Math.Floor(2 * Needed * 1000) / 1000):0.###}{(Unit.Length > 0 ? $" {Unit}" : "")} (two standard deviations)");
    }
}
