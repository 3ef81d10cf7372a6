using System.Collections.Frozen;
using System.Collections.Immutable;
using Orlop.Electrics.Networks;
using Orlop.Review.Findings;

namespace Orlop.Review.Networks;

/// <summary>An input that the network needed and the boat does not give.</summary>
/// <param name="ElementId">Element of the network that stands in for it, or that is left out.</param>
/// <param name="Missing">The thing and its field.</param>
public sealed record Gap(string ElementId, FindingInput Missing);

/// <summary>A boat's network in one case: what the engine solves, what was missing, what nothing feeds.</summary>
public sealed record BuiltNetwork
{
    public required NetworkCase Case { get; init; }

    public required Network Network { get; init; }

    /// <summary>Elements whose own value is missing. A stand-in keeps the network whole; nothing that rests on it is told as known.</summary>
    public required FrozenDictionary<string, ImmutableArray<FindingInput>> Gaps { get; init; }

    /// <summary>Elements whose resistance is assumed, with the input that would replace the assumption.</summary>
    public required IReadOnlyDictionary<string, FindingInput> Assumed { get; init; }

    /// <summary>Batteries of which something is guessed.</summary>
    public required IReadOnlyDictionary<string, GuessedBattery> Guessed { get; init; }

    /// <summary>Loads and converters that are on in the condition but that nothing feeds; left out of the network.</summary>
    public required ImmutableArray<string> Unfed { get; init; }
}
