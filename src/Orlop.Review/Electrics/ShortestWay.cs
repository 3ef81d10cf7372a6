using System.Collections.Frozen;
using Orlop.Boat.Topology;

namespace Orlop.Review.Electrics;

/// <summary>What lies on the shortest way from a source to something that takes power, there and back.</summary>
/// <param name="SourceId">The source at its end; null when nothing feeds the taker.</param>
/// <param name="ElementIds">Every element on the way.</param>
internal sealed record ShortestWay(string? SourceId, FrozenSet<string> ElementIds)
{
    /// <summary>The way that a traced chain takes; none where there is no chain.</summary>
    public static ShortestWay Of(Chain? chain) => new(
        chain?.Source?.Id,
        chain is null ? [] : chain.Out.Concat(chain.Back).SelectMany(item => item.Edges).Select(edge => edge.Id).ToFrozenSet(StringComparer.Ordinal));

    /// <summary>The element lies on it.</summary>
    public bool Holds(string elementId) => ElementIds.Contains(elementId);
}
