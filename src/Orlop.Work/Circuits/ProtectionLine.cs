using System.Collections.Immutable;
using Orlop.Boat;
using Orlop.Boat.Things;
using Orlop.Boat.Topology;
using Orlop.Review;
using Orlop.Review.Findings;

namespace Orlop.Work.Circuits;

/// <summary>A fuse or breaker of the schedule.</summary>
/// <param name="Device">The device.</param>
/// <param name="Feeds">What takes power behind it.</param>
/// <param name="From">Where nothing takes power behind it: the chargers, converters and generators whose output it stands in.</param>
/// <param name="Findings">What is not well with it: failing, tight or unknown, the gravest first.</param>
public sealed record ProtectionLine(Protection Device, ImmutableArray<Part> Feeds, ImmutableArray<Part> From, ImmutableArray<Finding> Findings)
{
    internal static ProtectionLine Of(Protection device, Wiring wiring, BoatModel boat, IReadOnlyList<Chain> chains, ReviewResult review)
    {
        ImmutableArray<Part> feeds = [.. chains.Where(chain => chain.Out.Any(item => item.Thing.Id == device.Id)).Select(chain => chain.Taker)];
        return new(
            device,
            feeds,
            feeds.IsEmpty ? SourcesBefore(device, wiring, boat) : [],
            [
                .. review.Findings.Where(pair => pair.After is not null && ElementIds.ThingOf(pair.SubjectId) == device.Id).Select(pair => pair.After!.Worst)
                    .Where(finding => finding.Verdict != Verdict.Holds).OrderByDescending(finding => Verdicts.Weight(finding.Verdict)),
            ]);
    }

    // What gives power and is met from either end before a bar or another device.
    private static ImmutableArray<Part> SourcesBefore(Protection device, Wiring wiring, BoatModel boat)
    {
        ILookup<string, Part> giving = boat.All<Part>().Where(part => part is not BatteryBank && Poles.Giving(part) is not null).ToLookup(part => Poles.Giving(part)!.Plus, StringComparer.Ordinal);
        HashSet<string> seen = [device.At(TerminalNames.In).ToString(), device.At(TerminalNames.Out).ToString()];
        Queue<string> queue = new(seen);
        List<Part> found = [];
        while (queue.TryDequeue(out string? node))
        {
            found.AddRange(giving[node]);
            foreach (WiringEdge edge in boat.Find<Busbar>(ElementIds.ThingOf(node)) is null ? wiring.At(node).Where(edge => edge.Owner is not Protection) : [])
            {
                if (seen.Add(edge.Other(node)))
                {
                    queue.Enqueue(edge.Other(node));
                }
            }
        }

        return [.. found.Distinct()];
    }
}
