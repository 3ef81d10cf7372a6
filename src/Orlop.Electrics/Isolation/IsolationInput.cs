using System.Collections.Immutable;

namespace Orlop.Electrics.Isolation;

/// <summary>
/// A boat's wiring seen by someone who wants one part of it dead. Everything that conducts is an edge; nodes exist by being named.
/// A node is live when a pole of a source reaches it along closed edges and feeds without passing a grounded node.
/// </summary>
public sealed record IsolationInput
{
    public ImmutableArray<IsolationEdge> Edges { get; init; } = [];

    public ImmutableArray<IsolationSource> Sources { get; init; } = [];

    public ImmutableArray<ConverterFeed> Feeds { get; init; } = [];

    /// <summary>Nodes that stay bonded to the hull whatever is opened: never live, and nothing is passed on through them.</summary>
    public ImmutableArray<string> GroundedNodes { get; init; } = [];

    /// <summary>The nodes of the part to be made dead, at least one for <see cref="IsolationPlan"/>.</summary>
    public ImmutableArray<string> TargetNodes { get; init; } = [];
}

/// <summary>How a person opens a connection.</summary>
public enum OpeningMeans { Isolator, Breaker, Unplug, PullFuse, LiftBatteryLead }

/// <summary>Something that conducts between two nodes: a conductor, a load, a closed device.</summary>
/// <param name="Opening">How it can be opened; null when it cannot (a conductor, a load).</param>
public sealed record IsolationEdge(string Id, string A, string B, EdgeOpening? Opening = null, bool IsClosed = true);

/// <summary>How an edge can be opened.</summary>
/// <param name="DeviceId">The device in hand; every edge of one device opens with it (the poles of a two-pole isolator).</param>
/// <param name="Cost">How unwelcome it is, 1 to 1 000 000; the set with the lowest sum is chosen.</param>
public sealed record EdgeOpening(string DeviceId, OpeningMeans Means, int Cost);

/// <summary>What a source is, for the order in which things are opened.</summary>
public enum SourceKind { AlternatingCurrent, Charging, Battery }

/// <summary>A source and its poles.</summary>
/// <param name="Stop">How the source itself can be stopped; null when it cannot (a panel in light, a battery).</param>
/// <param name="LiveBecause">Why it is live, as a person reads it ("light falls on the panel", "the shore lead is plugged in").</param>
public sealed record IsolationSource(string Id, SourceKind Kind, ImmutableArray<string> PoleNodes, SourceStop? Stop, string LiveBecause);

/// <summary>How a source is stopped ("stop the engine"), and how unwelcome that is, 1 to 1 000 000.</summary>
public sealed record SourceStop(string How, int Cost);

/// <summary>A converter: a live input node makes the output node live, never the other way round.</summary>
public sealed record ConverterFeed(string Id, string InputNode, string OutputNode);
