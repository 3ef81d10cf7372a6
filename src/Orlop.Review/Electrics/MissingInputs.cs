using System.Collections.Immutable;
using Orlop.Boat.Things;
using Orlop.Review.Findings;
using Orlop.Review.Networks;

namespace Orlop.Review.Electrics;

/// <summary>Which missing values spoil a result, so that it is told as unknown and the owner learns what to look up.</summary>
public static class MissingInputs
{
    /// <summary>What is missing for the current of an element: the draw of anything it feeds.</summary>
    public static ImmutableArray<FindingInput> OfCurrent(ElectricsView view, SolvedNetwork solved, Condition condition, string elementId)
    {
        ImmutableHashSet<string> takers = view.PathsIn(condition).TakersBehind(elementId);
        return [.. takers.Order(StringComparer.Ordinal).SelectMany(taker => solved.Built.Gaps.GetValueOrDefault(taker, [])).Distinct()];
    }

    /// <summary>What is missing for the voltage at a taker: anything on the way, and the draw of anything that shares that way.</summary>
    public static ImmutableArray<FindingInput> OfVoltage(ElectricsView view, SolvedNetwork solved, Condition condition, string takerId)
    {
        SupplyPaths paths = view.PathsIn(condition);
        ImmutableHashSet<string> way = paths.ElementsTo(takerId);
        IEnumerable<string> sharing = way.SelectMany(paths.TakersBehind).Append(takerId).Distinct();
        return [.. way.Concat(sharing).Order(StringComparer.Ordinal).SelectMany(id => solved.Built.Gaps.GetValueOrDefault(id, [])).Distinct()];
    }

    /// <summary>The resistances on the way to a taker that are assumed, as inputs that look guessed.</summary>
    public static ImmutableArray<FindingInput> AssumedOnWay(ElectricsView view, SolvedNetwork solved, Condition condition, string takerId) =>
        [.. view.PathsIn(condition).ElementsTo(takerId).Order(StringComparer.Ordinal)
            .Where(solved.Built.Assumed.ContainsKey).Select(id => solved.Built.Assumed[id]).Distinct()];
}
