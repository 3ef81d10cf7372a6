using Orlop.Review.Findings;

namespace Orlop.Presentation.Views;

/// <summary>A number that tells how the boat is, at a glance.</summary>
public sealed record Vital
{
    /// <summary>What it is: "Greatest use of a limit".</summary>
    public required string Name { get; init; }

    /// <summary>The number in the reader's units, or "unknown".</summary>
    public required string Value { get; init; }

    /// <summary>What it belongs to: the circuit, the load.</summary>
    public string Of { get; init; } = "";

    /// <summary>Id of that thing; null when there is none.</summary>
    public string? ThingId { get; init; }

    /// <summary>What is allowed: "limit 3 %"; null for a number without a limit, or given as a share of it.</summary>
    public string? Limit { get; init; }

    /// <summary>The number as built, with a draft open; null when the same.</summary>
    public string? Was { get; init; }

    /// <summary>Its verdict, where it has one.</summary>
    public Verdict? Verdict { get; init; }

    /// <summary>How far a bar is filled, 0 to 1 at the limit; null for a number without a limit.</summary>
    public double? FillFraction { get; init; }

    /// <summary>How far it was filled as built.</summary>
    public double? WasFillFraction { get; init; }
}
