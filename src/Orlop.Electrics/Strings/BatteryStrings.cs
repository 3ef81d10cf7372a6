using System.Collections.Immutable;

namespace Orlop.Electrics.Strings;

/// <summary>
/// Finds the strings of a boat's batteries from how they are wired, and in each string what stands the wrong way round. How: docs/engines/strings.md.
/// </summary>
public static class BatteryStrings
{
    /// <summary>The groups of strings; every battery whose posts are not one node is in exactly one of them.</summary>
    /// <exception cref="ArgumentException">A nominal voltage is not finite or not above 0, or two batteries have one id.</exception>
    public static ImmutableArray<StringGroup> Find(StringInput input)
    {
        ArgumentNullException.ThrowIfNull(input);
        Refuse(input);
        var junctions = new StringJunctions(input);
        List<StringChain> chains = [.. input.Batteries.Select(battery => StringChain.Of(battery, junctions)).Where(chain => chain.From != chain.To)];
        JoinInSeries(chains, (at, ends) => ends[0].IsPlusAt(at) != ends[1].IsPlusAt(at) && !junctions.IsOutside(at));
        JoinInSeries(chains, (at, ends) => ends[0].IsPlusAt(at) == ends[1].IsPlusAt(at) && !junctions.IsOutside(at) && ends.All(chain => junctions.IsOutside(chain.Beyond(at))));
        JoinInSeries(chains, (at, ends) => ends[0].IsPlusAt(at) != ends[1].IsPlusAt(at));
        return [.. chains.GroupBy(chain => (Math.Min(chain.From, chain.To), Math.Max(chain.From, chain.To))).Select(group => GroupOf(group.Key, [.. group], input, junctions))];
    }

    // First where plus meets minus and nothing else is wired; then where like posts meet and nothing else is wired, which is a battery the wrong way round; last where a
    // load is tapped off between two. Two chains between the same ends are side by side.
    private static void JoinInSeries(List<StringChain> chains, Func<int, StringChain[], bool> isJoint)
    {
        while (chains.SelectMany(chain => new[] { (At: chain.From, Chain: chain), (At: chain.To, Chain: chain) }).GroupBy(end => end.At, end => end.Chain).OrderBy(meeting => meeting.Key)
            .Select(meeting => (At: meeting.Key, Ends: meeting.ToArray()))
            .FirstOrDefault(meeting => meeting.Ends.Length == 2 && meeting.Ends[0].Beyond(meeting.At) != meeting.Ends[1].Beyond(meeting.At) && isJoint(meeting.At, meeting.Ends)) is { Ends: { } ends, At: var at })
        {
            chains[chains.IndexOf(ends[0])] = ends[0].JoinedAt(at, ends[1]);
            chains.Remove(ends[1]);
        }
    }

    private static StringGroup GroupOf((int First, int Other) ends, StringChain[] chains, StringInput input, StringJunctions junctions)
    {
        StringChain[] fromFirst = [.. chains.Select(chain => chain.StartingAt(ends.First))];
        var wired = junctions.PlusesAt(ends.First) - junctions.PlusesAt(ends.Other);
        var isFirstPlus = wired != 0 ? wired > 0 : fromFirst.Sum(chain => chain.NominalV) >= 0;
        StringChain[] strings = [.. isFirstPlus ? fromFirst : fromFirst.Select(chain => chain.Reversed())];
        double[] fed =
        [
            .. input.Outside.Where(outside => outside.NominalV is not null && junctions.Of(outside.Plus) is var plus && junctions.Of(outside.Minus) is var minus
                    && ((plus == ends.First && minus == ends.Other) || (plus == ends.Other && minus == ends.First)))
                .Select(outside => outside.NominalV!.Value),
        ];
        return new StringGroup(
            [.. strings.Select(chain => new BatteryString([.. chain.Links.Select(link => new StringMember(link.Battery.Id, !link.IsForward))], chain.NominalV, IsProtected(chain, strings, junctions)))],
            fed.Length == 0 ? null : fed.GroupBy(volts => volts).OrderByDescending(same => same.Count()).ThenBy(same => same.Key).First().Key);
    }

    private static bool? IsProtected(StringChain chain, StringChain[] strings, StringJunctions junctions) => strings.Length == 1
        ? null
        : strings.All(other => other == chain || junctions.UnprotectedOf(PlusEnd(other)) != junctions.UnprotectedOf(PlusEnd(chain)));

    private static string PlusEnd(StringChain chain) => chain.Links[0] is (var battery, var isForward) && isForward ? battery.Plus : chain.Links[0].Battery.Minus;

    private static void Refuse(StringInput input)
    {
        HashSet<string> seen = new(StringComparer.Ordinal);
        foreach (var battery in input.Batteries)
        {
            if (!(double.IsFinite(battery.NominalV) && battery.NominalV > 0))
            {
                throw new ArgumentException(FormattableString.Invariant($"Battery '{battery.Id}': nominal voltage {battery.NominalV}; allowed above 0."), nameof(input));
            }

            if (!seen.Add(battery.Id))
            {
                throw new ArgumentException($"Battery '{battery.Id}' is there twice.", nameof(input));
            }
        }
    }
}
