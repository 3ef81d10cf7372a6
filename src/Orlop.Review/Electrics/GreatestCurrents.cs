using System.Collections.Concurrent;
using System.Collections.Immutable;
using Orlop.Boat.Things;
using Orlop.Review.Findings;
using Orlop.Review.Networks;

namespace Orlop.Review.Electrics;

/// <summary>The larger of the currents of a condition at normal and at lowest charge, and what is missing for them; each looked up once. Safe from several threads.</summary>
internal sealed class GreatestCurrents(ElectricsView view, Condition condition)
{
    private readonly SolvedNetwork _normal = view.Solve(condition, ChargeCase.Normal);
    private readonly SolvedNetwork _lowest = view.Solve(condition, ChargeCase.Lowest);
    private readonly ConcurrentDictionary<string, double?> _currents = new(StringComparer.Ordinal);
    private readonly ConcurrentDictionary<string, ImmutableArray<FindingInput>> _missing = new(StringComparer.Ordinal);

    /// <summary>Greatest current of an element, A; null where the network has no answer.</summary>
    public double? OfA(string elementId) => _currents.TryGetValue(elementId, out double? current) ? current : _currents[elementId] = Find(elementId);

    /// <summary>What is missing for the current of an element.</summary>
    public ImmutableArray<FindingInput> MissingOf(string elementId) => _missing.TryGetValue(elementId, out ImmutableArray<FindingInput> missing)
        ? missing
        : _missing[elementId] = MissingInputs.Together(
            [MissingInputs.OfCurrent(view, _normal, condition, elementId), MissingInputs.OfCurrent(view, _lowest, condition, elementId)]);

    /// <summary>The case in which an element carries its greatest current, with every load that is on.</summary>
    public SolvedNetwork CaseOf(string elementId) => Math.Abs(_lowest.BranchA(elementId) ?? 0) > Math.Abs(_normal.BranchA(elementId) ?? 0) ? _lowest : _normal;

    private double? Find(string elementId) =>
        _normal.BranchA(elementId) is { } n && _lowest.BranchA(elementId) is { } l ? Math.Max(Math.Abs(n), Math.Abs(l)) : null;
}
