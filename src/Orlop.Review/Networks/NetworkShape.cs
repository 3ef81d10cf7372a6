using System.Collections.Immutable;
using Orlop.Electrics.Networks;

namespace Orlop.Review.Networks;

/// <summary>
/// Equal for networks of the same elements between the same nodes, in the same order. What is joined with no resistance, a shared minus, and what a
/// load holds constant count as shape; no other value does.
/// </summary>
public sealed class NetworkShape : IEquatable<NetworkShape>
{
    private readonly Network _network;
    private readonly int _hash;

    /// <summary>The shape of a network.</summary>
    public NetworkShape(Network network)
    {
        ArgumentNullException.ThrowIfNull(network);
        _network = network;
        HashCode code = default;
        foreach (Conductor item in network.Conductors)
        {
            code.Add(item.Id, StringComparer.Ordinal);
        }

        foreach (Contact item in network.Contacts)
        {
            code.Add(item.Id, StringComparer.Ordinal);
        }

        foreach (Load item in network.Loads)
        {
            code.Add(item.Id, StringComparer.Ordinal);
        }

        _hash = code.ToHashCode();
    }

    public bool Equals(NetworkShape? other) => other is not null && _hash == other._hash
        && (ReferenceEquals(_network, other._network) || IsSame(_network, other._network));

    public override bool Equals(object? obj) => Equals(obj as NetworkShape);

    public override int GetHashCode() => _hash;

    private static bool IsSame(Network one, Network other) =>
        IsSame(one.Conductors, other.Conductors, (a, b) => a.Id == b.Id && a.A == b.A && a.B == b.B)
        && IsSame(one.Contacts, other.Contacts, (a, b) => a.Id == b.Id && a.A == b.A && a.B == b.B && a.ResistanceOhm == 0 == (b.ResistanceOhm == 0))
        && IsSame(one.Batteries, other.Batteries, (a, b) => a.Id == b.Id && a.Plus == b.Plus && a.Minus == b.Minus)
        && IsSame(one.LimitedSources, other.LimitedSources, (a, b) => a.Id == b.Id && a.Plus == b.Plus && a.Minus == b.Minus)
        && IsSame(one.Converters, other.Converters, (a, b) => a.Id == b.Id && a.InPlus == b.InPlus && a.InMinus == b.InMinus
            && a.OutPlus == b.OutPlus && a.OutMinus == b.OutMinus && a.IsSharedMinus == b.IsSharedMinus)
        && IsSame(one.Loads, other.Loads, (a, b) => a.Id == b.Id && a.Plus == b.Plus && a.Minus == b.Minus && a.Kind == b.Kind)
        && IsSame(one.BondedNodes, other.BondedNodes, (a, b) => a == b);

    private static bool IsSame<T>(ImmutableArray<T> one, ImmutableArray<T> other, Func<T, T, bool> isSame)
    {
        if (one.Length != other.Length)
        {
            return false;
        }

        for (int k = 0; k < one.Length; k++)
        {
            if (!isSame(one[k], other[k]))
            {
                return false;
            }
        }

        return true;
    }
}
