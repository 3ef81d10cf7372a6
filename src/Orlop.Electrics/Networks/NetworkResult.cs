using System.Collections.Immutable;

namespace Orlop.Electrics.Networks;

/// <summary>Why a solve ended.</summary>
public enum SolveStatus
{
    /// <summary>Solved; the residual is below the tolerance.</summary>
    Converged,

    /// <summary>The network cannot deliver what is asked: no operating point exists. See <see cref="NetworkResult.Shortfall"/>.</summary>
    NoOperatingPoint,

    /// <summary>The network is faulty before any solving. See <see cref="NetworkResult.Faults"/>.</summary>
    FaultyNetwork,

    /// <summary>Neither solved nor shown to have no operating point within the iteration limit.</summary>
    NotConverged,
}

/// <summary>The operating point of a network, or why there is none. Numbers are there only when <see cref="Status"/> is Converged.</summary>
public sealed record NetworkResult
{
    public required SolveStatus Status { get; init; }

    /// <summary>Present when converged.</summary>
    public OperatingPoint? Point { get; init; }

    /// <summary>Present when there is no operating point.</summary>
    public Shortfall? Shortfall { get; init; }

    /// <summary>Present when the network is faulty: every fault, named.</summary>
    public ImmutableArray<NetworkFault> Faults { get; init; } = [];

    public int IterationCount { get; init; }

    /// <summary>Largest imbalance of current at a node at the end.</summary>
    public double? ResidualA { get; init; }

    /// <summary>The node of the largest imbalance.</summary>
    public string? WorstNode { get; init; }
}

/// <summary>Voltages and currents of a solved network, by id.</summary>
public sealed record OperatingPoint
{
    /// <summary>Potential of each node against the zero of its connected part.</summary>
    public required IReadOnlyDictionary<string, double> NodeV { get; init; }

    /// <summary>Current of each conductor and contact, positive from A to B. A contact of zero resistance has none (its nodes are one) unless a single path fixes it.</summary>
    public required IReadOnlyDictionary<string, double> BranchA { get; init; }

    /// <summary>Temperature of each conductor that has <see cref="Conductor.Heating"/>.</summary>
    public required IReadOnlyDictionary<string, double> ConductorC { get; init; }

    /// <summary>Current out of each battery, source and converter output.</summary>
    public required IReadOnlyDictionary<string, double> SourceA { get; init; }

    /// <summary>Current into each load and converter input.</summary>
    public required IReadOnlyDictionary<string, double> LoadA { get; init; }

    /// <summary>Voltage across each load and converter input.</summary>
    public required IReadOnlyDictionary<string, double> LoadV { get; init; }

    /// <summary>How each limited source works: giving its limit, holding its voltage, or off.</summary>
    public required IReadOnlyDictionary<string, SourceMode> SourceModes { get; init; }

    /// <summary>Power out of each converter.</summary>
    public required IReadOnlyDictionary<string, double> ConverterOutputW { get; init; }

    /// <summary>Power out of batteries and limited sources, less what flows back in.</summary>
    public required double SourcePowerW { get; init; }

    /// <summary>Power into loads at their terminals.</summary>
    public required double LoadPowerW { get; init; }

    /// <summary>Power turned to heat in conductors, contacts, internal resistances and converters.</summary>
    public required double LossPowerW { get; init; }
}

/// <summary>How a limited source works at the operating point.</summary>
public enum SourceMode { AtLimit, HoldingVoltage, Off }

/// <summary>Which load cannot be served, the most it could get, and what stands in the way.</summary>
/// <param name="LoadId">The load that pulls the network down first.</param>
/// <param name="AskedW">What it asks.</param>
/// <param name="MostW">The most it could get with every other load as asked; 0 when the others alone are too much.</param>
/// <param name="VoltageAtMostV">Its voltage there.</param>
/// <param name="LimitingElements">Elements with the largest share of the resistance between it and its sources, largest first, with that share.</param>
public sealed record Shortfall(string LoadId, double AskedW, double MostW, double VoltageAtMostV, ImmutableArray<LimitingElement> LimitingElements);

/// <summary>An element and its share (0 to 1) of the voltage lost on the way to a load.</summary>
public sealed record LimitingElement(string Id, double LossFraction);

/// <summary>What can be wrong with a network before it is solved.</summary>
public enum NetworkFaultKind
{
    /// <summary>A value is not finite or out of its range.</summary>
    BadValue,

    /// <summary>Two elements have the same id.</summary>
    DuplicateId,

    /// <summary>A load or converter input has no closed path to any source, on one or both of its terminals.</summary>
    Floating,

    /// <summary>A source's two terminals are one node.</summary>
    Short,

    /// <summary>Voltage sources of different voltage joined with no resistance between them.</summary>
    SourceLoop,

    /// <summary>Power would go round: a converter or charger is fed, through others, by itself.</summary>
    EnergyLoop,
}

/// <summary>One fault found before solving: what, on which elements and nodes, in a sentence.</summary>
public sealed record NetworkFault(NetworkFaultKind Kind, ImmutableArray<string> Ids, string Message);
