using System.Collections.Immutable;
using Orlop.Boat;
using Orlop.Boat.Things;
using Orlop.Boat.Topology;
using Orlop.Electrics.Isolation;
using Orlop.Review.Electrics;

namespace Orlop.Review.Isolation;

/// <summary>A reading that must be nothing.</summary>
/// <param name="Node">Where.</param>
/// <param name="OtherNode">Against what; null for the hull's bond.</param>
/// <param name="IsAc">What the meter is set to; null where both are measured.</param>
/// <param name="NominalV">What stood there before; null where it is not known, 0 where nothing did.</param>
/// <param name="StandsFor">Other nodes that this reading proves too: metal joins them to one of the two, with nothing between that opens.</param>
public sealed record ProvingPoint(string Node, string? OtherNode, bool? IsAc, double? NominalV, ImmutableArray<string> StandsFor);

/// <summary>Where a meter is seen to read before it is believed.</summary>
/// <param name="Node">A live point.</param>
/// <param name="OtherNode">Against what: the minus post of the battery that keeps it live; null for the hull's bond.</param>
public sealed record LivePoint(string Node, string? OtherNode);

/// <summary>
/// The readings of a plan that matter: one point for all that metal joins, AC and DC each by itself, AC first, the work's own terminals first. Between
/// poles of different kinds nothing is measured: each is measured against the other pole of its own kind and against the hull. Where a battery's minus leads are off, the hull and every
/// minus bar float, and a meter between them and its plus reads nothing though the plus is live: there each point is measured against the bare minus post too.
/// </summary>
public static class ProvingPoints
{
    /// <summary>The readings, in the order in which they are taken.</summary>
    /// <param name="bare">The batteries whose minus leads are off.</param>
    public static ImmutableArray<ProvingPoint> Of(BoatModel boat, Wiring wiring, IsolationResult plan, ImmutableArray<BatteryBank> bare)
    {
        ArgumentNullException.ThrowIfNull(boat);
        ArgumentNullException.ThrowIfNull(wiring);
        ArgumentNullException.ThrowIfNull(plan);
        HashSet<string> reference = ReferenceNodes.Of(boat, wiring);
        string[] nodes = [.. plan.Proofs.SelectMany(proof => new[] { proof.Node, proof.OtherNode }).OfType<string>().Distinct()];
        Point[] points = [.. Joined(wiring, nodes).Select(group => new Point(group[0], group[1..], PointVoltage.At(boat, wiring, group[0]), reference.Contains(group[0])))];
        return [.. new bool?[] { true, false, null }.SelectMany(isAc => Pairs([.. points.Where(point => point.Voltage.IsAc == isAc)], isAc, bare))];
    }

    /// <summary>
    /// Where the meter is tried: the live point nearest the work that a battery keeps live, for covered panels and stopped engines give nothing to read; with no
    /// battery, the nearest of all. Null when nothing stays live.
    /// </summary>
    public static LivePoint? TryMeterAt(BoatModel boat, IsolationResult plan)
    {
        ArgumentNullException.ThrowIfNull(boat);
        ArgumentNullException.ThrowIfNull(plan);
        StaysLive[] batteries = [.. plan.StaysLive.Where(live => boat.Find<Part>(live.SourceId) is BatteryBank)];
        StaysLive? battery = batteries.FirstOrDefault(live => plan.TryMeterAtNode is { } nearest && live.Nodes.Contains(nearest));
        string? node = battery is null && plan.TryMeterAtNode is not null && batteries.Length > 0 ? (battery = batteries[0]).NearestNode : plan.TryMeterAtNode;
        return node is null ? null : new LivePoint(node, battery is null ? null : Minus(boat.Find<BatteryBank>(battery.SourceId)!));
    }

    private static string Minus(BatteryBank bank) => Poles.Giving(bank)!.Minus;

    private sealed record Point(string Node, ImmutableArray<string> StandsFor, PointVoltage Voltage, bool IsReference);

    private static IEnumerable<ProvingPoint> Pairs(Point[] points, bool? isAc, ImmutableArray<BatteryBank> bare)
    {
        HashSet<string> told = [];
        foreach (Point point in points.Where(point => !point.IsReference))
        {
            foreach (BatteryBank bank in bare.Where(point.Voltage.Sources.Contains))
            {
                yield return new ProvingPoint(point.Node, Minus(bank), isAc, SystemVoltage.NominalV(bank), [.. point.StandsFor.Where(told.Add)]);
            }
        }

        for (int i = 0; i < points.Length; i++)
        {
            // Two points of one pole have nothing between them, live or dead.
            for (int j = i + 1; j < points.Length; j++)
            {
                if (!points[i].Voltage.Reaches(points[j].Node))
                {
                    yield return Reading(points[i], points[j]);
                }
            }
        }

        // A lone reference point has nothing else to be measured against.
        foreach (Point point in points.Where(point => !point.IsReference || points.Length == 1))
        {
            yield return Reading(point, null);
        }

        ProvingPoint Reading(Point one, Point? other)
        {
            bool wasLive = !one.IsReference || other is { IsReference: false };
            double? volts = !wasLive ? 0 : new[] { one.Voltage.NominalV, other?.Voltage.NominalV }.Max();
            return new ProvingPoint(one.Node, other?.Node, isAc, volts, [.. one.StandsFor.Concat(other?.StandsFor ?? []).Where(told.Add)]);
        }
    }

    // Nodes that metal joins with no device between, in the order given.
    private static IEnumerable<ImmutableArray<string>> Joined(Wiring wiring, string[] nodes)
    {
        HashSet<string> placed = [];
        foreach (string node in nodes.Where(node => !placed.Contains(node)))
        {
            HashSet<string> seen = [node];
            Queue<string> queue = new(seen);
            while (queue.TryDequeue(out string? at))
            {
                foreach (WiringEdge edge in wiring.At(at).Where(edge => edge.Kind is WiringEdgeKind.Joint or WiringEdgeKind.Core or WiringEdgeKind.Link))
                {
                    if (seen.Add(edge.Other(at)))
                    {
                        queue.Enqueue(edge.Other(at));
                    }
                }
            }

            ImmutableArray<string> group = [.. nodes.Where(seen.Contains)];
            placed.UnionWith(group);
            yield return group;
        }
    }
}
