using System.Collections.Immutable;
using Orlop.Boat.Values;
using Orlop.Review.Findings;
using Orlop.Review.Readings;

namespace Orlop.Work.Readings;

/// <summary>A reading to take at commissioning, with what it should be.</summary>
public sealed record PredictedReading
{
    /// <summary>Made of the condition and the probe points: <c>at-berth/drying-breaker.in/drying-breaker.out</c>.</summary>
    public required string Key { get; init; }

    public required string ConditionId { get; init; }

    /// <summary>What is read, in words.</summary>
    public required Sentence What { get; init; }

    /// <summary>Terminal of the positive probe; null for a current.</summary>
    public Terminal? Plus { get; init; }

    /// <summary>Terminal of the negative probe; null for a current.</summary>
    public Terminal? Minus { get; init; }

    /// <summary>The element the clamp goes round; null for a voltage.</summary>
    public string? Through { get; init; }

    /// <summary>Where the probes or the clamp go, in words.</summary>
    public required string Where { get; init; }

    /// <summary>What is expected; null when it cannot be predicted.</summary>
    public Band? Expected { get; init; }

    /// <summary>Why it cannot be predicted; null when it can.</summary>
    public string? WhyNot { get; init; }

    /// <summary>Ids of the things whose work it proves.</summary>
    public ImmutableArray<string> About { get; init; } = [];
}
