using System.Collections.Immutable;
using Orlop.Boat;
using Orlop.Boat.Things;
using Orlop.Boat.Topology;
using Orlop.Review.Isolation;

namespace Orlop.Work.Paper;

/// <summary>One row of the diagram of a pack: everything from a bar or device to the next bar or the load.</summary>
internal sealed record CircuitRow(string FromId, string ToId, HashSet<string> Ids);

/// <summary>Cuts the chains of a boat at their bars, so that what an alteration touches is drawn a stretch a row and large enough to read.</summary>
internal static class CircuitRows
{
    /// <summary>Parts in one row: with names about 40 mm wide they fill a landscape page.</summary>
    private const int MostPartCount = 6;

    /// <summary>The rows that hold something of the alteration, those of both boats under one another.</summary>
    public static ImmutableArray<CircuitRow> Touched(BoatModel before, BoatModel after, HashSet<string> edited)
    {
        List<CircuitRow> rows = [];
        foreach (BoatModel boat in new[] { after, before })
        {
            Wiring wiring = Wiring.Of(boat);
            ImmutableArray<Chain> chains = [.. boat.All<Part>().Select(part => Chain.Trace(boat, wiring, part)).OfType<Chain>()];
            foreach (CircuitRow row in chains.SelectMany(chain => Cut(boat, chain.Out)).Where(row => row.Ids.Overlaps(edited)))
            {
                Add(rows, row);
            }

            HashSet<string> shown = [.. rows.SelectMany(row => row.Ids)];
            foreach (CircuitRow row in chains.SelectMany(chain => Cut(boat, chain.Back)).Where(row => row.Ids.Any(id => edited.Contains(id) && !shown.Contains(id))))
            {
                Add(rows, row);
            }

            foreach (Thing thing in boat.Things.Where(thing => thing is Cable or Link && edited.Contains(thing.Id) && !rows.Exists(row => row.Ids.Contains(thing.Id))))
            {
                ImmutableArray<string> ends = [.. IsolationPlans.NodesOf(thing).Select(ElementIds.ThingOf).Distinct(StringComparer.Ordinal)];
                Add(rows, new CircuitRow(ends[0], ends[^1], [thing.Id, .. ends]));
            }
        }

        return [.. rows];
    }

    private static void Add(List<CircuitRow> rows, CircuitRow row)
    {
        if (rows.Find(other => other.FromId == row.FromId && other.ToId == row.ToId) is { } same)
        {
            same.Ids.UnionWith(row.Ids);
        }
        else
        {
            rows.Add(row);
        }
    }

    private static IEnumerable<CircuitRow> Cut(BoatModel boat, ImmutableArray<ChainItem> items)
    {
        if (items.IsEmpty)
        {
            yield break;
        }

        string node = items[0].EnteredAt, from = ElementIds.ThingOf(node), part = from;
        HashSet<string> ids = [from];
        int count = 1;
        foreach (WiringEdge edge in items.SelectMany(item => item.Edges))
        {
            node = edge.Other(node);
            _ = ids.Add(edge.Owner.Id);
            string next = ElementIds.ThingOf(node);
            if (next == part || boat.Find<Part>(next) is not { } reached)
            {
                continue;
            }

            (part, count) = (next, count + 1);
            _ = ids.Add(part);
            if (reached is Busbar || count >= MostPartCount)
            {
                yield return new CircuitRow(from, part, ids);
                (from, ids, count) = (part, [part], 1);
            }
        }

        if (count > 1)
        {
            yield return new CircuitRow(from, part, ids);
        }
    }
}
