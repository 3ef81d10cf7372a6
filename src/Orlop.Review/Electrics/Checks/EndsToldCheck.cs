using System.Collections.Immutable;
using Orlop.Boat.Things;
using Orlop.Boat.Topology;
using Orlop.Boat.Values;
using Orlop.Review.Findings;
using static Orlop.Review.Electrics.FindingLines;

namespace Orlop.Review.Electrics.Checks;

/// <summary>How each end of a cable is made off has been said, and the thread that each ring and fork goes over: what is brought, made off and tightened follows from it.</summary>
public sealed class EndsToldCheck : ICheck<ElectricsView>
{
    public CheckDescription Description { get; } = new(
        "ends-told",
        "Ends of a cable are told",
        "Unknown for a cable of which nobody said how an end is made off, or the thread that a ring or fork goes over, where neither its stud nor another ring on it tells that: without it neither what to bring nor how it is made off and tightened can be told. Nothing is said of a cable whose ends are all told.",
        []);

    public IEnumerable<Finding> Run(ElectricsView view) =>
        from cable in view.Boat.All<Cable>()
        let untold = Untold(view, cable)
        where untold.Length > 0
        select Unknown(
            Description, cable.Id, null,
            Sentence.Of($"{cable.Title}: {string.Join("; ", Missing(view, "kind of end not given at", untold.Where(end => !end.IsRing)).Concat(Missing(view, "thread of the stud not known at", untold.Where(end => end.IsRing))))}; what to bring and how to make it off cannot be told"),
            [new FindingInput(cable.Id, untold[0].Field, IsMissing: true)]);

    // The first is asked for; when it is told, the next.
    private static ImmutableArray<(Terminal At, string Field, bool IsRing)> Untold(ElectricsView view, Cable cable) =>
    [
        .. from core in cable.Cores
           from one in new[] { (End: core.FromEnd, At: core.From, Field: $"cores/{core.Id}/fromEnd", Joint: ElementIds.FromJoint(cable, core)), (End: core.ToEnd, At: core.To, Field: $"cores/{core.Id}/toEnd", Joint: ElementIds.ToJoint(cable, core)) }
           let isRing = one.End is { Means: TerminationMeans.Ring or TerminationMeans.Fork }
           where one.End is null || (isRing && one.End.StudMm is null && view.Rings.ThreadMm(view.Boat.Find<Part>(one.At.Part), one.At, one.Joint) is null)
           select (one.At, isRing ? $"{one.Field}/studMm" : one.Field, isRing),
    ];

    private static IEnumerable<string> Missing(ElectricsView view, string what, IEnumerable<(Terminal At, string Field, bool IsRing)> ends)
    {
        string[] parts = [.. ends.Select(end => view.Boat.Find(end.At.Part)?.Title ?? end.At.Part).Distinct()];
        return parts.Length == 0 ? [] : [$"{what} {string.Join(", ", parts)}"];
    }
}
