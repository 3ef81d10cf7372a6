using Orlop.Hull.Measuring;

namespace Orlop.Review.Stability;

/// <summary>A berth test still to be made, with the same things aboard as when her weight was last known: what it would measure, so many times worse than such a test can at best, and how its ± is said.</summary>
/// <param name="Said">What tells what, before its ±: "an inclining test that knows KG".</param>
/// <param name="Unit">Of the ±: "m", "kg", or nothing.</param>
/// <param name="Evidence">What it would measure of her weight, by how many times worse than the best; nothing where it is of a number beside it.</param>
/// <param name="Stated">How well the number is to be known, one standard deviation, by the weight with the test in it and by how many times worse than the best: what the test and all that was known before tell together, and
/// never finer than such a test can tell alone. A test that says so much on its own card is good enough therefore.</param>
/// <param name="BesideDeviation">One standard deviation of the number beside her weight, by how many times worse; null where the test is not of that.</param>
internal sealed record SupposedTest(
    string Said, string Unit, Func<double, IEnumerable<WeightEvidence>> Evidence, Func<WeightTotal, double, double> Stated, Func<double, double>? BesideDeviation = null)
{
    // What a test of a small boat can know at best (common practice, no source).
    private const double BestKgM = 0.005;
    private const double BestMassFraction = 0.002;
    private const double BestTcgM = 0.002;
    private const double BestLcgM = 0.01;

    private const string Supposed = "supposed";

    /// <summary>KG known without any error, to tell whether any inclining test would do.</summary>
    public static SupposedTest PerfectKg(WeightTotal total) => Of("", "m", 1e-9, known => known.KgDeviationM, deviation => WeightEvidence.OfKg(Supposed, total.Centre.ZM, deviation));

    /// <summary>A freeboard survey, for the displacement it tells.</summary>
    public static SupposedTest Displacement(WeightTotal total) =>
        Of("a freeboard survey that knows her weight", "kg", BestMassFraction * total.MassKg, known => known.MassDeviationKg, deviation => WeightEvidence.OfDisplacement(Supposed, total.MassKg, deviation));

    /// <summary>The same for TCG and for LCG.</summary>
    public static IEnumerable<SupposedTest> Centres(WeightTotal total) =>
    [
        Of("a freeboard survey that knows TCG", "m", BestTcgM, known => known.TcgDeviationM, deviation => WeightEvidence.OfTcg(Supposed, total.Centre.YM, deviation)),
        Of("a freeboard survey that knows LCG", "m", BestLcgM, known => known.LcgDeviationM, deviation => WeightEvidence.OfLcg(Supposed, total.Centre.XM, deviation)),
    ];

    /// <summary>An inclining test: it measures Δ·GM, and tells KG with what the displacement leaves open.</summary>
    public static SupposedTest Inclining(MetacentreThen metacentre)
    {
        double mass = metacentre.Boat.MassKg;
        return new SupposedTest(
            "an inclining test that knows KG", "m",
            worse => [WeightEvidence.OfRightingMoment(Supposed, metacentre.RightingMomentKgM, worse * BestKgM * mass, metacentre)],
            (known, _) => Math.Max(known.KgDeviationM, Math.Sqrt(Math.Pow(BestKgM, 2) + Math.Pow(metacentre.ReadKgPerKg * known.MassDeviationKg, 2))));
    }

    /// <summary>A test of the number that a result rests on beside her weight.</summary>
    public static SupposedTest Beside(BesideWeight beside) =>
        new(beside.Test, "", _ => [], (_, worse) => worse * beside.BestDeviation, worse => Math.Min(beside.Deviation, worse * beside.BestDeviation));

    // Two deviations, rounded down: to a kilogram, to a millimetre or a thousandth, finer where that would be nothing.
    public string Within(WeightTotal known, double worse)
    {
        double band = 2 * Stated(known, worse), step = Unit == "kg" ? 1 : 0.001;
        while (band < 10 * step && step > 1e-5)
        {
            step /= 10;
        }

        return FormattableString.Invariant($"{Said} to ± {Math.Floor(band / step) * step:0.#####}{(Unit == "kg" ? " kg" : Unit == "m" ? " m" : "")}");
    }

    private static SupposedTest Of(string said, string unit, double best, Func<WeightTotal, double> deviation, Func<double, WeightEvidence> evidence) =>
        new(said, unit, worse => [evidence(worse * best)], (known, _) => Math.Max(best, deviation(known)));
}
