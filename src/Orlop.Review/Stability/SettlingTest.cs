using Orlop.Boat.Things;
using Orlop.Hull.Measuring;

namespace Orlop.Review.Stability;

/// <summary>
/// Which berth test would settle a result whose band straddles its limit, and how well it must know its number. The test is put into the estimate of her weight as if it had been made, with the same things aboard as when that was
/// last known; what came and went since is added, and two deviations of the result must be within the distance to its limit. Where no one test would, two together; else what of the list would, put on a scale.
/// </summary>
internal sealed class SettlingTest
{
    // Less than this of the variance is not worth a scale (our rule, no source).
    private const double LeastShareFraction = 0.1;

    // How much worse than the best a test may be, searched for by halves of the ratio.
    private const double WorstRatio = 1e4;
    private const int HalvingCount = 24;

    // Of the heaviest errors so many are looked at.
    private const int MostWeighed = 4;

    private readonly StabilityView _view;
    private readonly LoadedBoat _loaded;
    private readonly WeightSlopes _slopes;
    private readonly BesideWeight? _beside;
    private readonly WeightTotal _total;
    private readonly WeightTotal _came;
    private readonly double _allowed;
    private readonly double _now;

    private SettlingTest(StabilityView view, LoadedBoat loaded, WeightSlopes slopes, BesideWeight? beside, double margin)
    {
        (_view, _loaded, _slopes, _beside) = (view, loaded, slopes, beside);
        _total = view.Weight.Total!;
        _came = WeightTotal.Nothing.With(loaded.Changes);
        _allowed = margin * margin / 4;
        _now = Variance([], 1);
    }

    /// <summary>The end of a sentence: "an inclining test that knows KG to ± 0.04 m (two standard deviations) would settle it". Of several that would, the one that at its best takes most of the band away.</summary>
    /// <param name="view">The boat.</param>
    /// <param name="loaded">How she is loaded.</param>
    /// <param name="slopes">How the result changes with her weight.</param>
    /// <param name="beside">What it rests on besides; null for nothing.</param>
    /// <param name="margin">Distance of the result from its limit.</param>
    public static string Of(StabilityView view, LoadedBoat loaded, WeightSlopes slopes, BesideWeight? beside, double margin) => new SettlingTest(view, loaded, slopes, beside, margin).Said();

    private string Said()
    {
        SupposedTest displacement = SupposedTest.Displacement(_total);
        SupposedTest? inclining = _view.Weight.Metacentre is { } metacentre ? SupposedTest.Inclining(metacentre) : null;
        SupposedTest[] tests = [.. inclining is null ? [] : new[] { inclining }, displacement, .. SupposedTest.Centres(_total), .. _beside is null ? [] : new[] { SupposedTest.Beside(_beside) }];
        if (tests.Where(test => Variance([test], 1) <= _allowed).MinBy(test => Variance([test], 1)) is { } settling)
        {
            return $"{OpenWithKg(settling == inclining)}{Named(settling)} (two standard deviations) would settle it";
        }

        return inclining is not null && Variance([displacement, inclining], 1) <= _allowed
            ? $"{OpenWithKg(false)}{Named(displacement, inclining)} (two standard deviations each) would settle it together"
            : $"it is too near the limit for one berth test to settle; {Most()}";
    }

    // Where KG makes much of the band and would not settle it however well it were known.
    private string OpenWithKg(bool isOfKg)
    {
        double left = isOfKg ? 0 : Variance([SupposedTest.PerfectKg(_total)], 1);
        return left > _allowed && _now - left >= LeastShareFraction * _now ? "even KG known exactly would leave it open; " : "";
    }

    private string Named(params SupposedTest[] tests)
    {
        (double settles, double leaves) = (1, WorstRatio);
        for (int i = 0; i < HalvingCount; i++)
        {
            double middle = Math.Sqrt(settles * leaves);
            (settles, leaves) = Variance(tests, middle) <= _allowed ? (middle, leaves) : (settles, middle);
        }

        WeightTotal known = Known(tests, settles);
        return string.Join(" and ", tests.Select(test => test.Within(known, settles)));
    }

    private WeightTotal Known(IEnumerable<SupposedTest> tests, double worse) => tests.SelectMany(test => test.Evidence(worse)).Aggregate(_total, (total, evidence) => total.Knowing(evidence));

    // Of the result, with these tests made, each so many times worse than at best.
    private double Variance(SupposedTest[] tests, double worse)
    {
        double beside = _beside is null ? 0 : _beside.PerUnit * (tests.Select(test => test.BesideDeviation?.Invoke(worse)).FirstOrDefault(deviation => deviation is not null) ?? _beside.Deviation);
        return Squared(_slopes.Deviation(Known(tests, worse).Plus(_came))) + Squared(beside);
    }

    // What a scale would tell of what is aboard or was at the test, people and stores too. Or what it rests on beside her weight, where that makes more.
    private string Most()
    {
        (LedgerItem Item, double Variance)[] unsure =
        [
            .. _loaded.Changes.Select(change => (change.Now ?? change.Was)!).Concat(_view.Weight.Aboard).DistinctBy(item => item.Id)
                .OrderByDescending(item => _loaded.Total!.DeviationBy(WeightTotal.Nothing.With([new WeightChange(null, item with { PlaceDeviation = default })]), _slopes)).Take(MostWeighed)
                .Select(item => (item, Weighing(item.Id))).OrderByDescending(item => item.Item2),
        ];
        if (_beside is not null && _beside.Variance >= LeastShareFraction * _now && !(unsure.Length > 0 && unsure[0].Variance > _beside.Variance))
        {
            return $"{_beside.Test} better would do most, and not enough alone";
        }

        if (unsure.Length == 0 || !(unsure[0].Variance >= LeastShareFraction * _now))
        {
            return "no thing listed makes much of it: give her more to spare";
        }

        ((LedgerItem item, double share), Thing? thing) = (unsure[0], _view.Boat.Find(unsure[0].Item.Id));
        string title = thing?.Title ?? item.Id, what = thing is null or Tank ? $"knowing what {title} weighed at the test" : $"weighing {title}";
        string named = FormattableString.Invariant($"{what}, ± {2 * item.MassDeviationKg:0.#} kg now,");
        return _now - share <= _allowed ? $"{named} would settle it" : $"{named} would do most, and not enough alone";
    }

    // What of the variance goes once a thing is weighed, then and now.
    private double Weighing(string id)
    {
        WeightTotal came = WeightTotal.Nothing.With(_loaded.Changes.Select(change => (change.Now ?? change.Was)!.Id == id ? new WeightChange(Weighed(change.Was), Weighed(change.Now)) : change));
        return _now - Squared(_slopes.Deviation((_view.Weight.Weighing(id) ?? _total).Plus(came))) - (_beside?.Variance ?? 0);

        static LedgerItem? Weighed(LedgerItem? item) => item is null ? null : BoatWeight.Weighed(item);
    }

    private static double Squared(double value) => value * value;
}
