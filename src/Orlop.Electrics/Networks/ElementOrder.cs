using System.Collections.Immutable;

namespace Orlop.Electrics.Networks;

/// <summary>The places of a network's elements when each kind is sorted by id.</summary>
internal sealed record ElementOrder(
    KindOrder Conductors, KindOrder Contacts, KindOrder Batteries, KindOrder LimitedSources, KindOrder Converters, KindOrder Loads, ImmutableArray<string> BondedNodes)
{
    public static ElementOrder Of(Network network) => new(
        KindOrder.Of(network.Conductors, e => e.Id),
        KindOrder.Of(network.Contacts, e => e.Id),
        KindOrder.Of(network.Batteries, e => e.Id),
        KindOrder.Of(network.LimitedSources, e => e.Id),
        KindOrder.Of(network.Converters, e => e.Id),
        KindOrder.Of(network.Loads, e => e.Id),
        network.BondedNodes);

    /// <summary>Whether a network has as many elements of each kind, and the same bonded nodes.</summary>
    public bool Fits(Network network) =>
        network.Conductors.Length == Conductors.Count && network.Contacts.Length == Contacts.Count && network.Batteries.Length == Batteries.Count
        && network.LimitedSources.Length == LimitedSources.Count && network.Converters.Length == Converters.Count && network.Loads.Length == Loads.Count
        && network.BondedNodes.AsSpan().SequenceEqual(BondedNodes.AsSpan());
}

/// <summary>The places of elements of one kind when sorted by id.</summary>
internal readonly struct KindOrder
{
    private readonly int[] _places;

    private KindOrder(int[] places) => _places = places;

    public int Count => _places.Length;

    public static KindOrder Of<T>(ImmutableArray<T> elements, Func<T, string> id)
    {
        var ids = new string[elements.Length];
        var places = new int[elements.Length];
        var isSorted = true;
        for (var k = 0; k < ids.Length; k++)
        {
            (ids[k], places[k]) = (id(elements[k]), k);
            isSorted &= k == 0 || string.CompareOrdinal(ids[k - 1], ids[k]) <= 0;
        }

        if (!isSorted)
        {
            Array.Sort(ids, places, StringComparer.Ordinal);
        }

        return new KindOrder(places);
    }

    /// <summary>As many elements, in this order.</summary>
    public T[] Sorted<T>(ImmutableArray<T> elements)
    {
        var sorted = new T[_places.Length];
        for (var k = 0; k < sorted.Length; k++)
        {
            sorted[k] = elements[_places[k]];
        }

        return sorted;
    }
}
