using System.Collections.Immutable;
using Orlop.Electrics.Networks;

namespace Orlop.Review.Networks;

/// <summary>One group of a network, solved.</summary>
public sealed record SolvedGroup(Network Network, NetworkResult Result);

/// <summary>
/// A boat's network in one case; a group is solved when something in it is first asked. A number is null where its group has no operating
/// point, or it is not there. Safe from several threads where the solver it is given is.
/// </summary>
public sealed class SolvedNetwork
{
    private readonly GroupedNetwork _grouped;
    private readonly Func<Network, SolvedGroup> _solve;
    private readonly SolvedGroup?[] _solved;

    /// <summary>A case whose groups are those of <paramref name="grouped"/>.</summary>
    /// <param name="networkCase">The case; it differs from the one that was grouped where it only changes numbers of the same elements.</param>
    /// <param name="grouped">The elements and their groups.</param>
    /// <param name="solve">Solves a group, with the numbers that the case has in it.</param>
    public SolvedNetwork(NetworkCase networkCase, GroupedNetwork grouped, Func<Network, SolvedGroup> solve)
    {
        Case = networkCase;
        _grouped = grouped;
        _solve = solve;
        _solved = new SolvedGroup?[grouped.Groups.Length];
    }

    public NetworkCase Case { get; }

    public BuiltNetwork Built => _grouped.Built;

    /// <summary>All groups, solved.</summary>
    public ImmutableArray<SolvedGroup> Groups => [.. Enumerable.Range(0, _solved.Length).Select(Solve)];

    /// <summary>The elements of the group that holds an element, before solving; null when none does.</summary>
    public Network? NetworkOf(string elementId) => _grouped.Grouping.GroupOf(elementId) is { } group ? _grouped.Groups[group] : null;

    /// <summary>An element and a node are in one group.</summary>
    public bool IsTogether(string elementId, string node) => _grouped.Grouping.GroupOf(elementId) is { } group && _grouped.Grouping.GroupOfNode(node) == group;

    /// <summary>The group that holds an element, or null.</summary>
    public SolvedGroup? GroupOf(string elementId) => _grouped.Grouping.GroupOf(elementId) is { } group ? Solve(group) : null;

    /// <summary>Voltage across a load or a converter's input.</summary>
    public double? LoadV(string id) => Find(id, point => point.LoadV);

    /// <summary>Current into a load or a converter's input.</summary>
    public double? LoadA(string id) => Find(id, point => point.LoadA);

    /// <summary>Current of a conductor or contact, positive from its first end.</summary>
    public double? BranchA(string id) => Find(id, point => point.BranchA);

    /// <summary>Current out of a source or a converter's output.</summary>
    public double? SourceA(string id) => Find(id, point => point.SourceA);

    /// <summary>Temperature of a conductor.</summary>
    public double? ConductorC(string id) => Find(id, point => point.ConductorC);

    /// <summary>Power out of a converter.</summary>
    public double? ConverterOutputW(string id) => Find(id, point => point.ConverterOutputW);

    /// <summary>Voltage between two nodes of one group.</summary>
    public double? BetweenV(string plus, string minus) =>
        _grouped.Grouping.GroupOfNode(plus) is { } group && Solve(group).Result.Point is { } point && point.NodeV.TryGetValue(minus, out double minusV)
            ? point.NodeV[plus] - minusV
            : null;

    private SolvedGroup Solve(int group) => _solved[group] ??= _solve(_grouped.Groups[group]);

    private double? Find(string id, Func<OperatingPoint, IReadOnlyDictionary<string, double>> table) =>
        GroupOf(id)?.Result.Point is { } point && table(point).TryGetValue(id, out double value) ? value : null;
}
