using System.Collections.Immutable;
using Orlop.Electrics.Networks;

namespace Orlop.Review.Networks;

/// <summary>A boat's network in one case, split into the groups that have nothing to do with each other. Immutable.</summary>
/// <param name="Built">The network, what nothing feeds left out.</param>
/// <param name="Grouping">The group of each element and node.</param>
/// <param name="Groups">The groups, each a network of its own.</param>
public sealed record GroupedNetwork(BuiltNetwork Built, NetworkGrouping Grouping, ImmutableArray<Network> Groups);
