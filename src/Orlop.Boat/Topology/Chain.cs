using System.Collections.Immutable;
using Orlop.Boat.Things;

namespace Orlop.Boat.Topology;

/// <summary>One thing along a chain: the nodes it is entered and left by on the way out, and the edges passed.</summary>
public sealed record ChainItem(Thing Thing, string EnteredAt, string LeftAt, ImmutableArray<WiringEdge> Edges);

/// <summary>
/// The shortest way from a source to a part that takes power, as a finger would trace it: out along the positive or live side,
/// and back along the negative or neutral side. Found in the wiring each time; never stored.
/// </summary>
public sealed record Chain(Part Taker, Part? Source, ImmutableArray<ChainItem> Out, ImmutableArray<ChainItem> Back)
{
    /// <summary>Both sides reach the same source.</summary>
    public bool IsComplete => Source is not null && Out.Length > 0 && Back.Length > 0;

    /// <summary>Traces the chain of a part, in a condition or with everything closed; null for a part that takes no power.</summary>
    public static Chain? Trace(BoatModel boat, Wiring wiring, Part taker, string? conditionId = null) => Trace(boat, wiring, taker, edge => edge.IsClosedIn(conditionId));

    /// <summary>
    /// The chain from what feeds a part in a condition. Where a switch that is open in it lets no source through, the chain that stands there
    /// with every switch closed and the change-overs as they are; where they lead to none either, the one with everything closed.
    /// </summary>
    public static Chain? In(BoatModel boat, Wiring wiring, Part taker, string conditionId)
    {
        Chain?[] found =
        [
            Trace(boat, wiring, taker, conditionId),
            Trace(boat, wiring, taker, edge => edge.Owner is IsolatorSwitch || edge.IsClosedIn(conditionId)),
            Trace(boat, wiring, taker),
        ];
        return found.FirstOrDefault(chain => chain?.IsComplete == true) ?? found.FirstOrDefault(chain => chain?.Source is not null) ?? found[^1];
    }

    private static Chain? Trace(BoatModel boat, Wiring wiring, Part taker, Func<WiringEdge, bool> isClosed)
    {
        PolePair? taking = Poles.Taking(taker);
        if (taking is null)
        {
            return null;
        }

        Dictionary<string, Part> plus = new(StringComparer.Ordinal);
        foreach (Part part in boat.All<Part>().Where(part => part.Id != taker.Id && IsFeed(part)))
        {
            PolePair giving = Poles.Giving(part)!;
            plus.TryAdd(giving.Plus, part);
        }

        (string? sourceNode, ImmutableArray<WiringEdge> outEdges) = Shortest(wiring, isClosed, taking.Plus, plus.ContainsKey);
        if (sourceNode is null)
        {
            return new Chain(taker, null, [], []);
        }

        Part source = plus[sourceNode];
        string minus = Poles.Giving(source)!.Minus;
        (string? back, ImmutableArray<WiringEdge> backEdges) = Shortest(wiring, isClosed, taking.Minus, node => node == minus);
        return new Chain(taker, source, Items(sourceNode, outEdges), back is null ? [] : Items(minus, backEdges));
    }

    private static bool IsFeed(Part part) => part is BatteryBank or DcConverter or Inverter or ShoreInlet;

    private static (string? End, ImmutableArray<WiringEdge> Edges) Shortest(Wiring wiring, Func<WiringEdge, bool> isClosed, string start, Func<string, bool> isEnd)
    {
        Dictionary<string, WiringEdge?> reachedBy = new(StringComparer.Ordinal) { [start] = null };
        Queue<string> queue = new([start]);
        while (queue.TryDequeue(out string? node))
        {
            if (isEnd(node))
            {
                return (node, PathFrom(node, start, reachedBy));
            }

            foreach (WiringEdge edge in wiring.At(node))
            {
                if (isClosed(edge) && reachedBy.TryAdd(edge.Other(node), edge))
                {
                    queue.Enqueue(edge.Other(node));
                }
            }
        }

        return (null, []);
    }

    private static ImmutableArray<WiringEdge> PathFrom(string end, string start, Dictionary<string, WiringEdge?> reachedBy)
    {
        ImmutableArray<WiringEdge>.Builder path = ImmutableArray.CreateBuilder<WiringEdge>();
        for (string node = end; node != start;)
        {
            WiringEdge edge = reachedBy[node]!;
            path.Add(edge);
            node = edge.Other(node);
        }

        return path.ToImmutable();
    }

    private static ImmutableArray<ChainItem> Items(string start, ImmutableArray<WiringEdge> edges)
    {
        ImmutableArray<ChainItem>.Builder items = ImmutableArray.CreateBuilder<ChainItem>();
        string node = start;
        foreach (WiringEdge edge in edges)
        {
            string next = edge.Other(node);
            if (items.Count > 0 && items[^1].Thing.Id == edge.Owner.Id)
            {
                items[^1] = items[^1] with { LeftAt = next, Edges = items[^1].Edges.Add(edge) };
            }
            else
            {
                items.Add(new ChainItem(edge.Owner, node, next, [edge]));
            }

            node = next;
        }

        return items.ToImmutable();
    }
}
