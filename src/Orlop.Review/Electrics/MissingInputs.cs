using System.Collections.Immutable;
using Orlop.Boat.Things;
using Orlop.Boat.Topology;
using Orlop.Review.Findings;
using Orlop.Review.Networks;

namespace Orlop.Review.Electrics;

/// <summary>Which missing values spoil a result, so that it is told as unknown and the owner learns what to look up.</summary>
public static class MissingInputs
{
    /// <summary>What is missing for the current of elements at normal and at lowest charge: see the overload.</summary>
    public static ImmutableArray<FindingInput> OfCurrent(ElectricsView view, Condition condition, params IEnumerable<string> elementIds)
    {
        GreatestCurrents currents = view.CurrentsIn(condition);
        return Together(elementIds.Select(currents.MissingOf));
    }

    /// <summary>
    /// What is missing for the current of an element: the draw of anything it feeds, any source that shares in it, anything in a loop
    /// with it. What a missing length does to the current of a constant-power load is left to that load's own voltage checks.
    /// </summary>
    public static ImmutableArray<FindingInput> OfCurrent(ElectricsView view, SolvedNetwork solved, Condition condition, string elementId)
    {
        if (solved.Built.Gaps.Count == 0)
        {
            return [];
        }

        SupplyPaths paths = view.PathsIn(condition);
        IReadOnlySet<string> takers = paths.TakersBehind(elementId);
        return GapsWhere(solved, id => takers.Contains(id) || paths.LoopOf(elementId).Contains(id) || SharesIn(view, solved, paths, takers, elementId, id));
    }

    // A source shares in a current when it feeds any of the same takers; where nothing is fed, when it is a battery of the same group.
    private static bool SharesIn(ElectricsView view, SolvedNetwork solved, SupplyPaths paths, IReadOnlySet<string> takers, string elementId, string sourceId)
    {
        if (view.Boat.Find<Part>(sourceId) is not { } part || Poles.Giving(part) is null)
        {
            return false;
        }

        return takers.Count > 0
            ? takers.Any(taker => paths.ElementsTo(taker).Contains(sourceId))
            : solved.NetworkOf(elementId) is { } network && network.Batteries.Any(battery => battery.Id == sourceId);
    }

    private static readonly ChargeCase[] Charges = [ChargeCase.Normal, ChargeCase.Lowest];

    /// <summary>What is missing for the voltage at a taker at normal and at lowest charge.</summary>
    public static ImmutableArray<FindingInput> OfVoltage(ElectricsView view, Condition condition, string takerId) =>
        Together(Charges.Select(charge => OfVoltage(view, view.Solve(condition, charge), condition, takerId)));

    /// <summary>What is missing for the voltage at a taker: anything on the way, and the draw of anything that shares that way.</summary>
    public static ImmutableArray<FindingInput> OfVoltage(ElectricsView view, SolvedNetwork solved, Condition condition, string takerId)
    {
        if (solved.Built.Gaps.Count == 0)
        {
            return [];
        }

        SupplyPaths paths = view.PathsIn(condition);
        IReadOnlySet<string> way = paths.ElementsTo(takerId);
        return GapsWhere(solved, id => id == takerId || way.Contains(id) || paths.ElementsTo(id).Overlaps(way));
    }

    /// <summary>The resistances on the way to a taker that are assumed, and what is guessed of the batteries on it, as inputs that look guessed.</summary>
    public static ImmutableArray<FindingInput> AssumedOnWay(ElectricsView view, SolvedNetwork solved, Condition condition, string takerId) =>
        solved.Built.Assumed.Count + solved.Built.Guessed.Count == 0 ? [] : [.. view.PathsIn(condition).ElementsTo(takerId)
            .Where(id => solved.Built.Assumed.ContainsKey(id) || solved.Built.Guessed.ContainsKey(id)).Order(StringComparer.Ordinal)
            .SelectMany(id => solved.Built.Assumed.TryGetValue(id, out FindingInput? assumed) ? [assumed] : GuessedOf(solved, id)).Distinct()];

    /// <summary>What is guessed of the batteries that feed an element, as inputs that look guessed.</summary>
    public static ImmutableArray<FindingInput> GuessedFor(SolvedNetwork solved, string elementId) => solved.Built.Guessed.Count == 0
        ? []
        : [.. (solved.NetworkOf(elementId)?.Batteries ?? []).SelectMany(battery => GuessedOf(solved, battery.Id))];

    private static ImmutableArray<FindingInput> GuessedOf(SolvedNetwork solved, string id) => solved.Built.Guessed.TryGetValue(id, out GuessedBattery? guessed) ? guessed.Inputs : [];

    /// <summary>What is missing for a fault: anything that it flows through, anything in a loop with that, and the batteries that feed it.</summary>
    internal static ImmutableArray<FindingInput> OfWay(ElectricsView view, SolvedNetwork solved, Condition condition, FarEnd end)
    {
        if (solved.Built.Gaps.Count == 0)
        {
            return [];
        }

        SupplyPaths paths = view.PathsIn(condition);
        return GapsWhere(solved, id => end.WayIds.Contains(id)
            || paths.LoopOf(id).Any(end.WayIds.Contains)
            || solved.NetworkOf(end.Edge.Id)?.Batteries.Any(battery => battery.Id == id) == true);
    }

    private static ImmutableArray<FindingInput> GapsWhere(SolvedNetwork solved, Func<string, bool> counts)
    {
        List<KeyValuePair<string, ImmutableArray<FindingInput>>>? found = null;
        foreach (KeyValuePair<string, ImmutableArray<FindingInput>> gap in solved.Built.Gaps)
        {
            if (counts(gap.Key))
            {
                (found ??= []).Add(gap);
            }
        }

        return found is null ? [] : [.. found.OrderBy(gap => gap.Key, StringComparer.Ordinal).SelectMany(gap => gap.Value).Distinct()];
    }

    // Most often nothing is missing.
    internal static ImmutableArray<FindingInput> Together(IEnumerable<ImmutableArray<FindingInput>> each)
    {
        ImmutableArray<FindingInput> together = [];
        foreach (ImmutableArray<FindingInput> missing in each)
        {
            together = together.IsEmpty ? missing : [.. together, .. missing.Where(input => !together.Contains(input))];
        }

        return together;
    }
}
