using System.Collections.Immutable;
using Orlop.Boat.Things;
using Orlop.Boat.Topology;
using Orlop.Boat.Values;
using Orlop.Review;
using Orlop.Review.Findings;
using Orlop.Review.Networks;
using Orlop.Review.Readings;
using Orlop.Work.Scope;

namespace Orlop.Work.Readings;

/// <summary>Which readings prove the work: for each part that takes power through something new, at its source, at itself, its current, and the drop across all that is new.</summary>
internal sealed class CommissioningReadings
{
    // A drop that can never show on a meter proves nothing.
    private const double LeastTellingV = 0.002;

    // A clamp's own offset hides anything smaller.
    private const double LeastClampA = 2 * MeterAccuracy.ClampA;

    private readonly PackScope _scope;
    private readonly HashSet<string> _new;
    private readonly Dictionary<string, ConditionPrediction> _predictions = new(StringComparer.Ordinal);
    private readonly Memo _memo = new();
    private readonly CancellationToken _token;

    private CommissioningReadings(PackScope scope, CancellationToken token)
    {
        _scope = scope;
        _token = token;
        _new = [.. scope.Changes.Where(change => change.Edit.Becomes is not null && change.Kind is not (ChangeKind.Record or ChangeKind.Move)).Select(change => change.Id)];
    }

    public static ImmutableArray<PredictedReading> Of(PackScope scope, CancellationToken token)
    {
        CommissioningReadings readings = new(scope, token);
        return [.. scope.AsAltered.All<Part>().SelectMany(readings.OfTaker).DistinctBy(reading => reading.Key)
            .OrderBy(reading => scope.AsAltered.All<Condition>().Select(condition => condition.Id).ToList().IndexOf(reading.ConditionId))];
    }

    /// <summary>The condition a part's work is proved in: one in which it is on, at the berth rather than under way or ashore; null when it is never on.</summary>
    public static Condition? ConditionFor(PackScope scope, Part taker) => scope.AsAltered.All<Condition>()
        .Where(condition => taker is not ElectricLoad load || LoadElements.IsOnIn(load, condition.Id))
        .OrderBy(condition => (condition.EngineRuns ? 1 : 0) + (condition.OnShore ? 1 : 0)).FirstOrDefault();

    /// <summary>Key of the voltage at a part that takes power, while it runs.</summary>
    public static string KeyAt(string conditionId, string takerId) => $"{conditionId}/at/{takerId}";

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
            .. edges.Where(edge => _new.Contains(edge.Owner.Id) && edge.Kind != WiringEdgeKind.Joint).Select(edge => Drop(condition, edge))
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
        return Voltage(condition, $"drop/{edge.Id}", Sentence.Of($"Voltage lost along {_scope.Words.Element(edge.Id)}"), plus, minus, [edge.Owner.Id]);
    }

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
