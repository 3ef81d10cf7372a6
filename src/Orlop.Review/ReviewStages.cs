using Orlop.Boat.Topology;
using Orlop.Review.Findings;

namespace Orlop.Review;

/// <summary>A review told stage by stage: what a discipline has not found yet stands as the review before found it, and is marked so.</summary>
/// <param name="Earlier">The review before this one; null where there is none.</param>
/// <param name="Told">Is given each stage, from the thread that reviews.</param>
public sealed record ReviewStages(ReviewResult? Earlier, Action<ReviewResult> Told)
{
    // What was found before of another alteration, or of a thing that is gone, would be read as said of this boat.
    internal void Tell(ReviewResult stage)
    {
        IEnumerable<PairedFinding> earlier = Earlier?.AlterationId == stage.AlterationId ? Earlier?.Findings ?? [] : [];
        Told(stage with
        {
            Findings = FindingPairs.InOrder([.. stage.Findings, .. earlier.Where(pair => stage.Waiting.Contains(pair.CheckId) && IsThere(pair, stage))]),
        });
    }

    private static bool IsThere(PairedFinding pair, ReviewResult stage)
    {
        string thing = ElementIds.ThingOf(pair.SubjectId);
        return (pair.Before is null || stage.AsBuilt.Find(thing) is not null) && (pair.After is null || stage.AsAltered.Find(thing) is not null);
    }
}
