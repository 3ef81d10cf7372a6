using System.Globalization;
using Orlop.Boat.Things;
using Orlop.Electrics.Protection;
using Orlop.Review.Findings;
using Orlop.Review.Networks;
using static Orlop.Review.Electrics.FindingLines;

namespace Orlop.Review.Electrics.Checks;

/// <summary>On a fault the device nearest to it opens first, and the rest of the boat stays on.</summary>
public sealed class SelectivityCheck : ICheck<ElectricsView>
{
    private const string NoRule = "common practice, no source";

    public CheckDescription Description { get; } = new(
        "selectivity",
        "The nearest device opens first",
        "Each pair of fuses and breakers one behind the other, of which the one before feeds more: the latest that the nearer may open against the earliest that the other may, at every current from the nearer's rating to the greatest fault behind it; what the other carries besides is added. It holds where the nearer is first at every current; it is tight where only the curve drawn between gates shows it on a fault, or where it is first on the weakest fault at the far end but not at every other current; it fails where it is not even that, or where the one before is first at any current.",
        []);

    public IEnumerable<Finding> Run(ElectricsView view) =>
        from condition in view.Conditions
        from pair in DevicePair.In(view, condition)
        let finding = Judge(view, pair, condition)
        where finding is not null
        select finding with { OtherSubjectId = pair.Earlier.Id };

    private Finding? Judge(ElectricsView view, DevicePair pair, Condition condition)
    {
        string name = $"{pair.Nearer.Title} behind {pair.Earlier.Title}";
        if (pair.Devices(view) is not { } devices)
        {
            return Unknown(Description, pair.Nearer.Id, condition.Id, Sentence.Of($"{name}: which opens first cannot be told without the operating times of both{Gaps(pair)}"),
                [.. new[] { pair.Nearer, pair.Earlier }.Where(device => DeviceGates.Of(device) is null).Select(device => GatesGap.Input(device))]);
        }

        if (pair.GreatestA(view, condition) is not { } greatest)
        {
            return WithoutFault.Of(view, Description, pair.Nearer.Id, condition, name);
        }

        if (greatest <= pair.Nearer.RatedA.Value)
        {
            return null;
        }

        double besides = Besides(view, pair, condition);
        SelectivityResult result = view.SelectivityOf(pair.Earlier, pair.Nearer, new SelectivityInput
        {
            Subject = pair.Nearer.Id,
            Earlier = devices.Earlier,
            Nearer = devices.Nearer,
            LeastA = pair.Nearer.RatedA.Value,
            GreatestA = greatest,
            BesidesA = besides,
            IsPromised = pair.IsPromised,
        });
        return Told(pair, devices, result, condition, name, besides, greatest);
    }

    // A kind that is given and has no times at the rating, or is not the device's, is not asked for: that is told.
    private static string Gaps(DevicePair pair) => string.Concat(new[] { pair.Nearer, pair.Earlier }
        .Where(device => DeviceGates.Of(device) is null && GatesGap.IsTold(device)).Select(device => $"; {GatesGap.Words(device)}"));

    private Finding Told(DevicePair pair, (SeriesDevice Earlier, SeriesDevice Nearer) devices, SelectivityResult result, Condition condition, string name, double besidesA, double greatestA)
    {
        Verdict verdict = VerdictOf(pair, result, greatestA);
        SelectivityBand? lost = result.Bands.FirstOrDefault(band => band.Status == SelectivityStatus.EarlierFirst) ?? FirstLost(pair, result) ?? result.Bands.FirstOrDefault(band => !IsFirst(band.Status));
        return new Finding
        {
            CheckId = Description.Id,
            SubjectId = pair.Nearer.Id,
            ConditionId = condition.Id,
            Verdict = verdict,
            Headline = HeadlineOf(pair, result, lost, name, greatestA),
            WorkingWhenAsked = () =>
            [
                new WorkingLine("Rating of the nearer", "", A(pair.Nearer.RatedA.Value), "as typed"),
                new WorkingLine("Rating of the one before", "", A(pair.Earlier.RatedA.Value), "as typed"),
                new WorkingLine("It carries besides", $"its own current less the nearer's, {In(condition)}, up to a whole ampere; how others' current changes in a fault is left out", A(besidesA), "circuit solved"),
                .. pair.LeastA is { } least ? new[] { new WorkingLine("Weakest fault behind the nearer", "lowest battery, hot conductors, at the far end", A(least), "as in the check that a fault opens its device") } : [],
                new WorkingLine("Greatest fault behind the nearer", "full battery, every source, cold conductors", A(greatestA), "as in the check of breaking capacity"),
                .. pair.IsPromised ? new[] { new WorkingLine("Promised by their standard", "both are gG fuse-links, and the one before is at least 1.6 times the nearer", null, DevicePair.PromiseSource, IsFromMemory: true) } : [],
                .. result.Bands.Select(band => new WorkingLine(Words(band.Status), string.Create(CultureInfo.InvariantCulture, $"from {N(band.FromA)} A to {N(band.ToA)} A"), null, SourceOf(devices, band.Status), devices.Nearer.Curve.IsFromMemory || devices.Earlier.Curve.IsFromMemory)),
            ],
            Inputs =
            [
                new FindingInput(pair.Nearer.Id, "ratedA"), new FindingInput(pair.Nearer.Id, "gates"), new FindingInput(pair.Earlier.Id, "ratedA"), new FindingInput(pair.Earlier.Id, "gates"),
                .. result.Bands.Any(band => band.Status == SelectivityStatus.NotTold) ? MissingEnergies(pair) : [],
            ],
        };
    }

    private static IEnumerable<FindingInput> MissingEnergies(DevicePair pair)
    {
        if (pair.Earlier.MeltingA2S is null)
        {
            yield return new FindingInput(pair.Earlier.Id, "meltingA2S", IsMissing: true);
        }

        if (pair.Nearer.ClearingA2S is null)
        {
            yield return new FindingInput(pair.Nearer.Id, "clearingA2S", IsMissing: true);
        }
    }

    private static Verdict VerdictOf(DevicePair pair, SelectivityResult result, double greatestA)
    {
        if (result.IsSelective())
        {
            bool isProvedOnFaults = pair.LeastA is { } least ? result.Bands.All(band => band.ToA <= least || band.Status != SelectivityStatus.NearerFirstAsDrawn) : result.ProvedToA >= greatestA;
            return isProvedOnFaults ? Verdict.Holds : Verdict.Tight;
        }

        if (result.Bands.Any(band => band.Status == SelectivityStatus.EarlierFirst))
        {
            return Verdict.Fails;
        }

        // Below the weakest fault only an overload flows.
        return FirstLost(pair, result) switch
        {
            null => Verdict.Tight,
            { Status: SelectivityStatus.NotTold } => Verdict.Unknown,
            var lost => pair.LeastA is null ? Verdict.Unknown : lost.FromA > pair.LeastA ? Verdict.Tight : Verdict.Fails,
        };
    }

    private static SelectivityBand? FirstLost(DevicePair pair, SelectivityResult result) =>
        result.Bands.FirstOrDefault(band => !IsFirst(band.Status) && band.ToA > (pair.LeastA ?? 0));

    // Up to a whole ampere: more besides only brings the earlier device sooner, and a small change of a load asks for nothing anew.
    private static double Besides(ElectricsView view, DevicePair pair, Condition condition)
    {
        SolvedNetwork normal = view.Solve(condition, ChargeCase.Normal);
        return normal.BranchA(pair.Earlier.Id) is { } all && normal.BranchA(pair.Nearer.Id) is { } own ? Math.Ceiling(Math.Max(0, Math.Abs(all) - Math.Abs(own))) : 0;
    }

    private static bool IsFirst(SelectivityStatus status) => status is SelectivityStatus.NearerFirst or SelectivityStatus.NearerFirstAsDrawn or SelectivityStatus.NeitherMustOpen;

    private static string SourceOf((SeriesDevice Earlier, SeriesDevice Nearer) devices, SelectivityStatus status) => status switch
    {
        SelectivityStatus.NeitherMustOpen => NoRule,
        _ when devices.Earlier.Curve.Source == devices.Nearer.Curve.Source => devices.Nearer.Curve.Source,
        _ => $"{devices.Nearer.Curve.Source}; {devices.Earlier.Curve.Source}",
    };

    private static string Words(SelectivityStatus status) => status switch
    {
        SelectivityStatus.NeitherMustOpen => "Neither must open",
        SelectivityStatus.NearerFirst => "The nearer opens first",
        SelectivityStatus.NearerFirstAsDrawn => "The nearer opens first, by the curve drawn between gates",
        SelectivityStatus.EitherFirst => "Either may open first",
        SelectivityStatus.EarlierFirst => "The one before opens first",
        _ => "Not told by the gates",
    };

    private static Sentence HeadlineOf(DevicePair pair, SelectivityResult result, SelectivityBand? lost, string name, double greatestA) => lost switch
    {
        null when result.ProvedToA < greatestA => Sentence.Of($"{name}: {pair.Nearer.Title} opens first on every fault, to {A(greatestA)}; from {A(result.ProvedToA)} only by the curves drawn between gates"),
        null => Sentence.Of($"{name}: {pair.Nearer.Title} opens first on every fault, to {A(greatestA)}"),
        { Status: SelectivityStatus.NotTold } => Sentence.Of($"{name}: {pair.Nearer.Title} opens first up to {A(lost.FromA)}; of a harder fault, to {A(greatestA)}, the times known do not tell"),
        { Status: SelectivityStatus.EarlierFirst } => Sentence.Of($"{name}: from {A(lost.FromA)} to {A(lost.ToA)} {pair.Earlier.Title} opens first, and all behind it goes dark"),
        _ => Sentence.Of($"{name}: from {A(lost.FromA)} to {A(lost.ToA)} either may open first, and all behind {pair.Earlier.Title} may go dark"),
    };
}
