using System.Collections.Immutable;
using Orlop.Electrics.Networks;

namespace Orlop.Review.Networks;

/// <summary>Equal for networks of equal content, in whatever objects: all that the engine reads.</summary>
public sealed class NetworkKey : IEquatable<NetworkKey>
{
    private readonly Network _network;
    private readonly int _hash;

    /// <summary>The key of a network.</summary>
    public NetworkKey(Network network)
    {
        ArgumentNullException.ThrowIfNull(network);
        _network = network;
        HashCode code = default;
        foreach (Conductor item in network.Conductors)
        {
            code.Add(item.ResistanceAt20Ohm);
        }

        foreach (Contact item in network.Contacts)
        {
            code.Add(item.ResistanceOhm);
        }

        foreach (Battery item in network.Batteries)
        {
            code.Add(item);
        }

        foreach (Load item in network.Loads)
        {
            code.Add(item);
        }

        _hash = code.ToHashCode();
    }

    public bool Equals(NetworkKey? other) => other is not null && _hash == other._hash
        && (ReferenceEquals(_network, other._network) || IsSame(_network, other._network));

    public override bool Equals(object? obj) => Equals(obj as NetworkKey);

    public override int GetHashCode() => _hash;

    private static bool IsSame(Network one, Network other) =>
        IsSame(one.Conductors, other.Conductors) && IsSame(one.Contacts, other.Contacts) && IsSame(one.Batteries, other.Batteries)
        && IsSame(one.LimitedSources, other.LimitedSources) && IsSame(one.Converters, other.Converters) && IsSame(one.Loads, other.Loads)
        && IsSame(one.BondedNodes, other.BondedNodes);

    private static bool IsSame<T>(ImmutableArray<T> one, ImmutableArray<T> other)
        where T : IEquatable<T> => one.AsSpan().SequenceEqual(other.AsSpan());
}
