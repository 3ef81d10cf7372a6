namespace Orlop.Electrics.Networks;

/// <summary>
/// What loads and converter inputs ask in one solve: a scaled or changed copy of the network's own. Loads first, then converter inputs.
/// </summary>
internal sealed class Sinks
{
    private Sinks(LoadKind[] kinds, double[] amounts, bool[] followsConverter, double[] signs)
    {
        Kinds = kinds;
        Amounts = amounts;
        FollowsConverter = followsConverter;
        Signs = signs;
    }

    public LoadKind[] Kinds { get; }

    /// <summary>W, A or ohm by kind. Of a converter input it is the part of its own power that is asked, 0 to 1.</summary>
    public double[] Amounts { get; }

    public bool[] FollowsConverter { get; }

    /// <summary>1, or -1 where a sink is wired the wrong way round; its current then flows from minus to plus.</summary>
    public double[] Signs { get; }

    public static Sinks Of(Wiring wiring)
    {
        var loads = wiring.Loads;
        var count = loads.Length + wiring.Converters.Length;
        var sinks = new Sinks(new LoadKind[count], new double[count], new bool[count], new double[count]);
        Array.Fill(sinks.Signs, 1);
        for (var k = 0; k < count; k++)
        {
            sinks.FollowsConverter[k] = k >= loads.Length;
            sinks.Kinds[k] = k < loads.Length ? loads[k].Kind : LoadKind.Power;
            sinks.Amounts[k] = k < loads.Length ? loads[k].Amount : 1;
        }

        return sinks;
    }

    /// <summary>Whether a sink asks for power or current whatever the voltage.</summary>
    public bool Insists(int sink) => Kinds[sink] != LoadKind.Resistance && Amounts[sink] > 0;

    /// <summary>A copy with every insisting sink at a part of what it asks.</summary>
    public Sinks Scaled(double part)
    {
        var copy = Copy();
        for (var k = 0; k < Amounts.Length; k++)
        {
            if (Kinds[k] != LoadKind.Resistance)
            {
                copy.Amounts[k] *= part;
            }
        }

        return copy;
    }

    /// <summary>A copy in which one sink draws a fixed current.</summary>
    public Sinks WithCurrent(int sink, double currentA)
    {
        var copy = Copy();
        copy.Kinds[sink] = LoadKind.Current;
        copy.Amounts[sink] = currentA;
        copy.FollowsConverter[sink] = false;
        return copy;
    }

    private Sinks Copy() => new([.. Kinds], [.. Amounts], [.. FollowsConverter], Signs);
}
