using System.Collections.Immutable;
using Orlop.Review.Findings;

namespace Orlop.Work.Bring;

/// <summary>What kind of thing is brought, in the order of the list.</summary>
public enum BringKind { Cable, Termination, Fuse, Plug, Device, Gear, Label, Fastening, Consumable, Tool }

/// <summary>Whether an item lies ready.</summary>
public enum StockState
{
    /// <summary>All of it is in stock.</summary>
    InStock,

    /// <summary>Some of it is in stock.</summary>
    Partly,

    /// <summary>None of it is in stock.</summary>
    ToBuy,

    /// <summary>The stock list cannot answer; look at what is named.</summary>
    Look,
}

/// <summary>What is taken from one stock item or which tool is taken along.</summary>
/// <param name="StockId">Id of the stock item or tool.</param>
/// <param name="Amount">How much of it; null for a tool or where the list cannot tell.</param>
/// <param name="Where">Where it lies; null when nobody said.</param>
public sealed record StockTake(string StockId, string Title, Amount? Amount, string? Where);

/// <summary>One line of what to bring.</summary>
public sealed record BringItem
{
    /// <summary>Stable key: <c>cable:35:flexible-tinned5:1:105</c>.</summary>
    public required string Key { get; init; }

    public required BringKind Kind { get; init; }

    /// <summary>What it is, with its size.</summary>
    public required Sentence What { get; init; }

    /// <summary>How much is needed, as length (M) or pieces (Count); null when it cannot be said, with the reason in <see cref="Remarks"/>.</summary>
    public Amount? Needed { get; init; }

    /// <summary>Of <see cref="Needed"/>, what the stock does not cover; null when that cannot be said.</summary>
    public Amount? ToBuy { get; init; }

    public required StockState State { get; init; }

    /// <summary>What is taken from where.</summary>
    public ImmutableArray<StockTake> Takes { get; init; } = [];

    /// <summary>What it is for, and what the list could not check.</summary>
    public ImmutableArray<Sentence> Remarks { get; init; } = [];

    /// <summary>Ids of the things it is for.</summary>
    public ImmutableArray<string> For { get; init; } = [];
}
