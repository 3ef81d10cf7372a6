using Orlop.Electrics.Networks;

namespace Orlop.Review.Networks;

/// <summary>
/// Equal for networks of the same elements between the same nodes. It is a number made from their names: two shapes may share one by
/// chance, so what is found by it must be held against the network.
/// </summary>
public readonly record struct NetworkShape
{
    /// <summary>The shape of a network; its values do not count.</summary>
    public NetworkShape(Network network)
    {
        ArgumentNullException.ThrowIfNull(network);
        HashCode code = default;
        foreach (Conductor item in network.Conductors)
        {
            Add(ref code, item.Id, item.A, item.B);
        }

        foreach (Contact item in network.Contacts)
        {
            Add(ref code, item.Id, item.A, item.B);
            code.Add(item.ResistanceOhm == 0);
        }

        foreach (Battery item in network.Batteries)
        {
            Add(ref code, item.Id, item.Plus, item.Minus);
        }

        foreach (LimitedSource item in network.LimitedSources)
        {
            Add(ref code, item.Id, item.Plus, item.Minus);
        }

        foreach (Converter item in network.Converters)
        {
            Add(ref code, item.Id, item.InPlus, item.OutPlus);
        }

        foreach (Load item in network.Loads)
        {
            Add(ref code, item.Id, item.Plus, item.Minus);
            code.Add(item.Kind);
        }

        (ElementCount, Number) = (network.Conductors.Length + network.Contacts.Length + network.Loads.Length, code.ToHashCode());
    }

    /// <summary>How many conductors, contacts and loads.</summary>
    public int ElementCount { get; }

    /// <summary>Made from the names.</summary>
    public int Number { get; }

    private static void Add(ref HashCode code, string id, string a, string b)
    {
        code.Add(id);
        code.Add(a);
        code.Add(b);
    }
}
