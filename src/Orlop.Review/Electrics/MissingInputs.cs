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
        IReadOnlySet<string> takers = view.PathsIn(condition).TakersBehind(elementId);
        return GapsWhere(solved, takers.Contains);
    }

    /// <summary>What is missing for the voltage at a taker: anything on the way, and the draw of anything that shares that way.</summary>
    public static ImmutableArray<FindingInput> OfVoltage(ElectricsView view, SolvedNetwork solved, Condition condition, string takerId)
    {
        SupplyPaths paths = view.PathsIn(condition);
        IReadOnlySet<string> way = paths.ElementsTo(takerId);
        return GapsWhere(solved, id => id == takerId || way.Contains(id) || paths.ElementsTo(id).Overlaps(way));
    }

    /// <summary>The resistances on the way to a taker that are assumed, as inputs that look guessed.</summary>
    public static ImmutableArray<FindingInput> AssumedOnWay(ElectricsView view, SolvedNetwork solved, Condition condition, string takerId) =>
        [.. view.PathsIn(condition).ElementsTo(takerId).Order(StringComparer.Ordinal)
            .Where(solved.Built.Assumed.ContainsKey).Select(id => solved.Built.Assumed[id]).Distinct()];

    private static ImmutableArray<FindingInput> GapsWhere(SolvedNetwork solved, Func<string, bool> counts) =>
        [.. solved.Built.Gaps.Where(gap => counts(gap.Key)).OrderBy(gap => gap.Key, StringComparer.Ordinal).SelectMany(gap => gap.Value).Distinct()];
}
