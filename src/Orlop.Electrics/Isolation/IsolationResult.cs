using System.Collections.Immutable;

namespace Orlop.Electrics.Isolation;

/// <summary>Whether a part can be made dead.</summary>
public enum IsolationStatus
{
    /// <summary>No source reaches it as things stand; prove it all the same.</summary>
    AlreadyDead,

    /// <summary>Opening what is listed leaves no source reaching it.</summary>
    CanBeMadeDead,

    /// <summary>Some of its nodes cannot be made dead; what is listed serves the others.</summary>
    PartlyDead,

    /// <summary>None of its nodes can be made dead.</summary>
    CannotBeMadeDead,
}

/// <summary>What to open, in which order, what stays live and where to prove the part dead.</summary>
public sealed record IsolationResult
{
    public required IsolationStatus Status { get; init; }

    /// <summary>In working order: AC first, then charging, then nearest the part first, battery leads last. Loads are switched off before the first.</summary>
    public ImmutableArray<Opening> Openings { get; init; } = [];

    /// <summary>Sum of the costs of the openings.</summary>
    public long Cost { get; init; }

    /// <summary>Devices that are open now and must stay so: closing one would make the part live.</summary>
    public ImmutableArray<string> KeepOpen { get; init; } = [];

    /// <summary>Each source that still reaches some node afterwards.</summary>
    public ImmutableArray<StaysLive> StaysLive { get; init; } = [];

    /// <summary>Readings that prove the part dead: each pair of its nodes and each node against the hull bond. To be taken with a meter tried just before and after.</summary>
    public ImmutableArray<DeadProof> Proofs { get; init; } = [];

    /// <summary>The live node nearest to the part: try the meter on it before and after. Null when nothing stays live.</summary>
    public string? TryMeterAtNode { get; init; }

    /// <summary>Target nodes that cannot be made dead, and why.</summary>
    public ImmutableArray<CannotBeMadeDead> CannotBeMadeDead { get; init; } = [];
}

/// <summary>One thing to open or stop.</summary>
/// <param name="Id">The device, or the source when <paramref name="Means"/> is null.</param>
/// <param name="Means">How a device is opened; null when a source is stopped.</param>
/// <param name="StopHow">How a source is stopped; null for a device.</param>
/// <param name="EdgeIds">The edges that the device opens; empty for a source.</param>
public sealed record Opening(string Id, OpeningMeans? Means, string? StopHow, ImmutableArray<string> EdgeIds, int Cost);

/// <summary>A source that stays live, the nodes it reaches, and the way to the one nearest the part.</summary>
/// <param name="PathIds">Edges and feeds from the source's pole to its live node nearest the part; empty when that is the pole itself.</param>
public sealed record StaysLive(string SourceId, string Because, ImmutableArray<string> Nodes, string NearestNode, ImmutableArray<string> PathIds);

/// <summary>A reading that must be zero. <paramref name="OtherNode"/> is null for the hull bond.</summary>
public sealed record DeadProof(string Node, string? OtherNode);

/// <summary>A node that cannot be made dead: the source, and a way to it without anything that can be opened.</summary>
public sealed record CannotBeMadeDead(string Node, string SourceId, string Because, ImmutableArray<string> PathIds);
