using System.Collections.Immutable;

namespace Orlop.Electrics.Strings;

/// <summary>Batteries in a row between two junctions.</summary>
/// <param name="Links">In order from the first junction; forward where the plus is passed first.</param>
internal sealed record StringChain(int From, int To, ImmutableArray<(StringBattery Battery, bool IsForward)> Links)
{
    public static StringChain Of(StringBattery battery, StringJunctions junctions) =>
        new(junctions.Of(battery.Plus), junctions.Of(battery.Minus), [(battery, true)]);

    /// <summary>From the first junction to the other: positive where the first is the plus.</summary>
    public double NominalV => Links.Sum(link => link.IsForward ? link.Battery.NominalV : -link.Battery.NominalV);

    public StringChain Reversed() => new(To, From, [.. Links.Reverse().Select(link => (link.Battery, !link.IsForward))]);

    /// <summary>The chain that starts at a junction; it must be one of its ends.</summary>
    public StringChain StartingAt(int junction) => From == junction ? this : Reversed();

    /// <summary>The junction at the end that is not this one.</summary>
    public int Beyond(int junction) => From == junction ? To : From;

    /// <summary>Post of its battery at an end.</summary>
    public bool IsPlusAt(int junction) => StartingAt(junction).Links[0].IsForward;

    /// <summary>This and another made one where they meet.</summary>
    public StringChain JoinedAt(int junction, StringChain other)
    {
        var (first, second) = (StartingAt(junction).Reversed(), other.StartingAt(junction));
        return new StringChain(first.From, second.To, [.. first.Links, .. second.Links]);
    }
}
