using System.Collections.Frozen;
using System.Collections.Immutable;
using Orlop.Boat.Topology;

namespace Orlop.Review.Electrics;

/// <summary>What lies on the shortest way from a source to something that takes power, there and back.</summary>
/// <param name="SourceId">The source at its end; null when nothing feeds the taker.</param>
/// <param name="Out">The elements from the source's positive or live pole to the taker, in order.</param>
/// <param name="Back">The elements of the other side, in order from the source.</param>
internal sealed record ShortestWay(string? SourceId, ImmutableArray<string> Out, ImmutableArray<string> Back)
{
    private readonly FrozenSet<string> _elementIds = Out.Concat(Back).ToFrozenSet(StringComparer.Ordinal);

    /// <summary>No way at all.</summary>
    public static ShortestWay None { get; } = new(null, [], []);

    /// <summary>The way that a traced chain takes; none where there is no chain.</summary>
    public static ShortestWay Of(Chain? chain) => new(chain?.Source?.Id, Ids(chain?.Out), Ids(chain?.Back));

    /// <summary>The element lies on it.</summary>
    public bool Holds(string elementId) => _elementIds.Contains(elementId);

    private static ImmutableArray<string> Ids(ImmutableArray<ChainItem>? items) => [.. (items ?? []).SelectMany(item => item.Edges).Select(edge => edge.Id)];
}
