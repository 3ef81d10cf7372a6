using System.Collections.Immutable;
using Orlop.Boat.Things;
using Orlop.Boat.Topology;
using Orlop.Boat.Values;
using Orlop.Electrics.Strings;
using Orlop.Presentation.Words;
using Orlop.Review;
using Orlop.Review.Electrics;
using Orlop.Review.Findings;
using Orlop.Review.Networks;
using Orlop.Review.Practices;
using Orlop.Review.Readings;
using Orlop.Work.Ends;
using Orlop.Work.Scope;

namespace Orlop.Work.Readings;

/// <summary>Which readings prove the work: for each part that takes power through something new, at its source, at itself, its current, and the drop across all that is new and across each lead with an end made anew.</summary>
internal sealed class CommissioningReadings
{
    // A drop that can never show on a meter proves nothing.
    private const double LeastTellingV = 0.002;

    // A clamp's own offset hides anything smaller.
    private const double LeastClampA = 2 * MeterAccuracy.ClampA;

    private readonly PackScope _scope;
    private readonly HashSet<string> _new;
    private readonly HashSet<string> _remade;
    private readonly Dictionary<string, ConditionPrediction> _predictions = new(StringComparer.Ordinal);
    private readonly Memo _memo = new();
    private readonly CancellationToken _token;

    private CommissioningReadings(PackScope scope, ImmutableArray<CableEnd> ends, CancellationToken token)
    {
        _scope = scope;
        _token = token;
        _new = [.. scope.Changes.Where(change => change.Edit.Becomes is not null && change.Kind is not (ChangeKind.Record or ChangeKind.Move)).Select(change => change.Id)];
        _remade =
        [
            .. ends.Where(end => end.ForDevice is not null).Select(end => $"{end.CableId}.{end.CoreId}"),
            .. DeviceMounts.Remounted(scope).SelectMany(change => DeviceMounts.LeadsOn(scope, change.Id)).OfType<Link>().Select(link => link.Id),
        ];
    }

    public static ImmutableArray<PredictedReading> Of(PackScope scope, ImmutableArray<CableEnd> ends, CancellationToken token)
    {
        CommissioningReadings readings = new(scope, ends, token);
        return [.. scope.AsAltered.All<Part>().SelectMany(readings.OfTaker).Concat(readings.OfStrings()).DistinctBy(reading => reading.Key)
            .OrderBy(reading => scope.AsAltered.All<Condition>().Select(condition => condition.Id).ToList().IndexOf(reading.ConditionId))];
    }

    /// <summary>The condition a part's work is proved in: one in which it is on, at the berth rather than under way or ashore; null when it is never on.</summary>
    public static Condition? ConditionFor(PackScope scope, Part taker) => scope.AsAltered.All<Condition>()
        .Where(condition => taker is not ElectricLoad load || LoadElements.IsOnIn(load, condition.Id))
        .OrderBy(condition => (condition.EngineRuns ? 1 : 0) + (condition.OnShore ? 1 : 0)).FirstOrDefault();

    /// <summary>Key of the voltage at a part that takes power, while it runs.</summary>
    public static string KeyAt(string conditionId, string takerId) => $"{conditionId}/at/{takerId}";

    /// <summary>Key of the difference between two strings before they are joined.</summary>
    public static bool IsBeforeJoining(PredictedReading reading) => reading.Key.Split('/') is [_, "join", ..];

    // Each battery of a bank with something new, each string's difference to the first before they are joined, and each string's current.
    private IEnumerable<PredictedReading> OfStrings() =>
        from condition in _scope.AsAltered.All<Condition>().OrderBy(condition => (condition.EngineRuns ? 1 : 0) + (condition.OnShore ? 1 : 0)).Take(1)
        from stringGroup in BoatStrings.Of(_scope.AsAltered, _scope.AlteredWiring, condition.Id).Groups
        where stringGroup.Strings.Sum(each => each.Members.Length) > 1 && stringGroup.Strings.Any(each => each.Members.Any(IsNew))
        from reading in OfGroup(condition, stringGroup)
        select reading;

    private IEnumerable<PredictedReading> OfGroup(Condition condition, StringGroup group)
    {
        BatteryBank First(BatteryString each) => _scope.AsAltered.Find<BatteryBank>(each.Members[0].Id)!;
        foreach (BatteryBank battery in group.Strings.SelectMany(each => each.Members).Select(member => _scope.AsAltered.Find<BatteryBank>(member.Id)!))
        {
            yield return Voltage(condition, $"supply/{battery.Id}", Sentence.Of($"Voltage at {battery.Title}"), battery.At(TerminalNames.Plus).ToString(), battery.At(TerminalNames.Minus).ToString(), [battery.Id]);
        }

        foreach (BatteryString each in group.Strings.Length > 1 ? group.Strings : [])
        {
            BatteryBank own = First(each), first = First(group.Strings[0]);
            if (own != first)
            {
                yield return Difference(condition, first, own);
            }

            if (_scope.AlteredWiring.At(own.At(TerminalNames.Plus).ToString()).Select(edge => edge.Owner).OfType<Cable>().FirstOrDefault() is { Cores.Count: > 0 } lead)
            {
                yield return StringCurrent(condition, own, ElementIds.Core(lead, lead.Cores.First(core => core.From.Part == own.Id || core.To.Part == own.Id)));
            }
        }
    }

    private bool IsNew(StringMember member) => _new.Contains(member.Id)
        || new[] { TerminalNames.Plus, TerminalNames.Minus }.SelectMany(name => _scope.AlteredWiring.At(new Terminal(member.Id, name).ToString())).Any(edge => _new.Contains(edge.Owner.Id));

    private PredictedReading Difference(Condition condition, BatteryBank first, BatteryBank own)
    {
        double? mostV = _scope.Practice?.Find(LimitIds.StringJoinV)?.Value;
        Terminal plus = first.At(TerminalNames.Plus), minus = own.At(TerminalNames.Plus);
        return new PredictedReading
        {
            Key = $"{condition.Id}/join/{first.Id}/{own.Id}",
            ConditionId = condition.Id,
            What = Sentence.Of($"Before they are joined: difference between {first.Title} and {own.Title}, minus leads on, plus lead of {own.Title} off"),
            Plus = plus,
            Minus = minus,
            Where = $"red on {_scope.Words.Node(plus.ToString())}; black on {_scope.Words.Node(minus.ToString())}",
            Expected = mostV is { } most ? new Band(new Amount(0, "V"), new Amount(-most, "V"), new Amount(most, "V")) : null,
            WhyNot = mostV is null ? "no practice is chosen that says how far apart they may be joined" : null,
            About = [first.Id, own.Id],
        };
    }

    private PredictedReading StringCurrent(Condition condition, BatteryBank own, string element)
    {
        Prediction prediction = PredictionFor(condition).Current(element);
        return new PredictedReading
        {
            Key = $"{condition.Id}/current/{element}",
            ConditionId = condition.Id,
            What = Sentence.Of($"Current of {own.Title}, its share"),
            Through = element,
            Where = $"clamp round {_scope.Words.Element(element)}, its arrow towards {_scope.Words.Node(Ends(_scope.AlteredWiring.Find(element)!, prediction.Band is { Nominal.Value: < 0 }).To)}",
            Expected = prediction.Band?.Forward(),
            WhyNot = prediction.WhyNot,
            About = [own.Id, ElementIds.ThingOf(element)],
        };
    }

    private IEnumerable<PredictedReading> OfTaker(Part taker)
    {
        if (Chain.Trace(_scope.AsAltered, _scope.AlteredWiring, taker) is not { IsComplete: true, Source: { } source } chain || ConditionFor(_scope, taker) is not { } condition)
        {
            return [];
        }

        ImmutableArray<WiringEdge> edges = [.. chain.Out.Concat(chain.Back).SelectMany(item => item.Edges)];
        if (!_new.Contains(taker.Id) && !edges.Any(edge => _new.Contains(edge.Owner.Id)))
        {
            return [];
        }

        PolePair giving = Poles.Giving(source)!, taking = Poles.Taking(taker)!;
        return
        [
            Voltage(condition, $"supply/{source.Id}", Sentence.Of($"Voltage at {source.Title}"), giving.Plus, giving.Minus, [source.Id]),
            Voltage(condition, $"at/{taker.Id}", Sentence.Of($"Voltage at {taker.Title}, running"), taking.Plus, taking.Minus, [taker.Id]),
            .. new[] { Current(condition, taker, chain) }.Where(reading => reading.Expected is not { } band || band.Nominal.Value >= LeastClampA),
            .. edges.Where(edge => (_new.Contains(edge.Owner.Id) || _remade.Contains(edge.Id)) && edge.Kind != WiringEdgeKind.Joint).Select(edge => Drop(condition, edge))
                .Where(reading => reading.Expected is not { } band || band.Most.Value >= LeastTellingV),
        ];
    }

    private PredictedReading Current(Condition condition, Part taker, Chain chain)
    {
        WiringEdge through = chain.Out.SelectMany(item => item.Edges).LastOrDefault(edge => edge.Kind == WiringEdgeKind.Core) ?? chain.Out[^1].Edges[^1];
        Prediction prediction = PredictionFor(condition).Current(through.Id);
        return new PredictedReading
        {
            Key = $"{condition.Id}/current/{through.Id}",
            ConditionId = condition.Id,
            What = Sentence.Of($"Current of {taker.Title}"),
            Through = through.Id,
            Where = $"clamp round {_scope.Words.Element(through.Id)}, its arrow towards {_scope.Words.Node(Ends(through, prediction.Band is { Nominal.Value: < 0 }).To)}",
            Expected = prediction.Band?.Forward(),
            WhyNot = prediction.WhyNot,
            About = [through.Owner.Id, taker.Id],
        };
    }

    private static (string From, string To) Ends(WiringEdge edge, bool isBackwards)
    {
        (string from, string to) = edge is { Kind: WiringEdgeKind.Core, Core: { } core } ? (core.From.ToString(), core.To.ToString()) : (edge.A, edge.B);
        return isBackwards ? (to, from) : (from, to);
    }

    private PredictedReading Drop(Condition condition, WiringEdge edge)
    {
        (string from, string to) = Ends(edge, isBackwards: false);
        (string plus, string minus) = Ends(edge, PredictionFor(condition).Nominal.BetweenV(from, to) < 0);
        return Voltage(condition, $"drop/{edge.Id}", LostAlong(edge), plus, minus, [edge.Owner.Id]);
    }

    // What is expected goes by the length as laid: a loop that is left in loses more.
    private Sentence LostAlong(WiringEdge edge) => edge is { Kind: WiringEdgeKind.Core, Owner: Cable cable, Core: { } core } && (core.LengthM ?? cable.LengthM) is { } length
        ? Sentence.Of($"Voltage lost along {_scope.Words.Element(edge.Id)}, reckoned with {new Amount(length.Value, "M")} {CableLengthWords.Laid}")
        : Sentence.Of($"Voltage lost along {_scope.Words.Element(edge.Id)}");

    private PredictedReading Voltage(Condition condition, string key, Sentence what, string plus, string minus, ImmutableArray<string> about)
    {
        Prediction prediction = PredictionFor(condition).Voltage(plus, minus);
        return new PredictedReading
        {
            Key = $"{condition.Id}/{key}",
            ConditionId = condition.Id,
            What = what,
            Plus = Terminal.Parse(plus),
            Minus = Terminal.Parse(minus),
            Where = $"red on {_scope.Words.Node(plus)}; black on {_scope.Words.Node(minus)}",
            Expected = prediction.Band,
            WhyNot = prediction.WhyNot,
            About = about,
        };
    }

    private ConditionPrediction PredictionFor(Condition condition)
    {
        if (!_predictions.TryGetValue(condition.Id, out ConditionPrediction? prediction))
        {
            _predictions[condition.Id] = prediction = ConditionPrediction.Of(_scope.AsAltered, _scope.AlteredWiring, _scope.Practice, condition, _memo, _token);
        }

        return prediction;
    }
}
