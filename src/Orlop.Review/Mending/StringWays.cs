using System.Collections.Frozen;
using System.Collections.Immutable;
using Orlop.Boat.Things;
using Orlop.Boat.Topology;
using Orlop.Electrics.Strings;
using Orlop.Review.Electrics;

namespace Orlop.Review.Mending;

/// <summary>Strings of batteries side by side, and the conductors between them.</summary>
internal sealed class StringWays
{
    private readonly MendBench _bench;

    public StringWays(MendBench bench)
    {
        _bench = bench;
        Groups = [.. BoatStrings.Of(bench.Draft, bench.Wiring, null).Groups.Where(group => group.Strings.Length > 1)];
        ThingIds = Groups.SelectMany(group => new[] { true, false }.SelectMany(isPlus => group.Strings.SelectMany(one => group.Strings.Where(other => other != one).SelectMany(other => Between(Post(one, isPlus), Post(other, isPlus))))))
            .Select(thing => thing.Id).ToFrozenSet(StringComparer.Ordinal);
    }

    /// <summary>Strings side by side.</summary>
    public ImmutableArray<StringGroup> Groups { get; }

    /// <summary>Everything that stands on a way from one string to another.</summary>
    public FrozenSet<string> ThingIds { get; }

    /// <summary>The group that a battery stands in; null for one that stands alone.</summary>
    public StringGroup? Of(string batteryId) => Groups.FirstOrDefault(group => group.Strings.Any(each => each.Members.Any(member => member.Id == batteryId)));

    /// <summary>The node of an end of a string.</summary>
    public string Post(BatteryString each, bool isPlus)
    {
        StringMember member = isPlus ? each.Members[0] : each.Members[^1];
        return _bench.Draft.Find<BatteryBank>(member.Id)!.At(isPlus != member.IsReversed ? TerminalNames.Plus : TerminalNames.Minus).ToString();
    }

    /// <summary>
    /// The cables at one end of each string that lead to where all meet, from the post on; null where they are not as many for each string, or where strings share them: joined one to the next.
    /// </summary>
    public ImmutableArray<ImmutableArray<Cable>>? Leads(StringGroup group, bool isPlus)
    {
        ImmutableArray<ImmutableArray<Cable>> leads =
        [
            .. group.Strings.Select(one => group.Strings.Where(other => other != one).Select(other => Between(Post(one, isPlus), Post(other, isPlus)).OfType<Cable>().ToArray())
                .Aggregate((common, next) => [.. common.Intersect(next)]).ToImmutableArray()),
        ];
        Cable[] all = [.. leads.SelectMany(each => each)];
        // Of two strings the one way between them is led by both: each has the part of it on its own side of the middle, told by the device or bar there.
        leads = group.Strings.Length == 2 ? Halves(group, isPlus) : leads;
        return leads.Any(each => each.IsEmpty || each.Length != leads[0].Length) || (group.Strings.Length > 2 && all.Distinct().Count() != all.Length) ? null : leads;
    }

    // The way from one of two strings to the other, cut where something else joins it.
    private ImmutableArray<ImmutableArray<Cable>> Halves(StringGroup group, bool isPlus)
    {
        ImmutableArray<WiringEdge> way = Way(Post(group.Strings[0], isPlus), Post(group.Strings[1], isPlus));
        HashSet<string> on = [.. way.Select(edge => edge.Owner.Id)];
        string at = Post(group.Strings[0], isPlus);
        for (int k = 0; k < way.Length; k++)
        {
            at = way[k].Other(at);
            bool isMeeting = _bench.Wiring.At(at).Any(edge => !on.Contains(edge.Owner.Id)) || _bench.Draft.Find(ElementIds.ThingOf(at)) is Busbar;
            if (isMeeting && k < way.Length - 1)
            {
                return [Cables(way[..(k + 1)]), [.. Cables(way[(k + 1)..]).Reverse()]];
            }
        }

        return [[], []];
    }

    private static ImmutableArray<Cable> Cables(ImmutableArray<WiringEdge> way) => [.. way.Select(edge => edge.Owner).OfType<Cable>().Distinct()];

    private IEnumerable<Thing> Between(string from, string to) => Way(from, to).Select(edge => edge.Owner).Distinct();

    // The way of the fewest edges.
    private ImmutableArray<WiringEdge> Way(string from, string to)
    {
        Dictionary<string, WiringEdge?> by = new(StringComparer.Ordinal) { [from] = null };
        Queue<string> open = new([from]);
        while (open.TryDequeue(out string? node) && node != to)
        {
            foreach (WiringEdge edge in _bench.Wiring.At(node).Where(edge => !by.ContainsKey(edge.Other(node))))
            {
                by[edge.Other(node)] = edge;
                open.Enqueue(edge.Other(node));
            }
        }

        List<WiringEdge> way = [];
        for (string at = to; by.GetValueOrDefault(at) is { } edge; at = edge.Other(at))
        {
            way.Insert(0, edge);
        }

        return [.. way];
    }
}
