using System.Collections.Immutable;
using Orlop.Boat.Things;
using Orlop.Boat.Topology;
using Orlop.Review;
using Orlop.Review.Findings;

namespace Orlop.Work.Circuits;

/// <summary>A fuse or breaker of the schedule.</summary>
/// <param name="Device">The device.</param>
/// <param name="Feeds">What takes power behind it.</param>
/// <param name="Findings">What is not well with it: failing, tight or unknown, the gravest first.</param>
public sealed record ProtectionLine(Protection Device, ImmutableArray<Part> Feeds, ImmutableArray<Finding> Findings)
{
    internal static ProtectionLine Of(Protection device, IReadOnlyList<Chain> chains, ReviewResult review) => new(
        device,
        [.. chains.Where(chain => chain.Out.Any(item => item.Thing.Id == device.Id)).Select(chain => chain.Taker)],
        [
            .. review.Findings.Where(pair => pair.After is not null && ElementIds.ThingOf(pair.SubjectId) == device.Id).Select(pair => pair.After!.Worst)
                .Where(finding => finding.Verdict != Verdict.Holds).OrderByDescending(finding => Verdicts.Weight(finding.Verdict)),
        ]);
}
