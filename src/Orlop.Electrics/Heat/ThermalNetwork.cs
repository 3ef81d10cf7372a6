using System.Collections.Immutable;

namespace Orlop.Electrics.Heat;

/// <summary>A place with one temperature: a conductor, a surface, the air of a space.</summary>
/// <param name="Id">What it is called.</param>
/// <param name="CapacityJPerK">What it stores, 0 or more; 0 follows its neighbours at once.</param>
/// <param name="HeatW">Heat set free in it at 20 °C, 0 to 1e6.</param>
/// <param name="RisePerK">By which part of <paramref name="HeatW"/> that grows for each kelvin over 20 °C: copper's own for a current in copper, else 0.</param>
/// <param name="HeldC">Temperature it is held at, whatever flows: air and water around; null for one that is sought.</param>
public sealed record ThermalNode(string Id, double CapacityJPerK = 0, double HeatW = 0, double RisePerK = 0, double? HeldC = null)
{
    /// <summary>Heat set free in it at a temperature.</summary>
    public double HeatAtW(double nodeC) => HeatW * (1 + (RisePerK * (nodeC - 20)));
}

/// <summary>Nodes that exchange heat over branches; a branch names its nodes by their place in <paramref name="Nodes"/>.</summary>
/// <param name="Subject">What it is, for messages.</param>
public sealed record ThermalNetwork(string Subject, ImmutableArray<ThermalNode> Nodes, ImmutableArray<ThermalBranch> Branches);

/// <summary>Temperatures that do not change any more.</summary>
/// <param name="NodeC">Of each node; empty where there are none.</param>
/// <param name="WhyNone">Why there are none; null where there are.</param>
/// <param name="ImbalanceFraction">What the balance of heat of the worst node lacks, over all heat that flows, a milliwatt at least.</param>
/// <param name="IterationCount">Steps it took.</param>
public sealed record ThermalState(ImmutableArray<double> NodeC, string? WhyNone, double ImbalanceFraction, int IterationCount)
{
    /// <summary>There is a steady state within what the laws are valid for.</summary>
    public bool IsFound => WhyNone is null;

    internal static ThermalState None(string why, int iterations = 0) => new([], why, 0, iterations);
}
