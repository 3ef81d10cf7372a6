using Orlop.Review.Electrics;
using Orlop.Review.Findings;
using Orlop.Review.Practices;
using static Orlop.Review.Stability.StabilityLines;

namespace Orlop.Review.Stability.Checks;

/// <summary>She is as stiff at rest as the owner wants.</summary>
public sealed class LeastGmCheck : ICheck<StabilityView>
{
    public CheckDescription Description { get; } = new(
        "least-gm",
        "GM at rest",
        "Metacentric height at rest, free surfaces taken off, against the owner's own limit, in every condition; nothing where the owner set none.",
        [LimitIds.LeastGmM])
    {
        IsCriterion = true,
    };

    public IEnumerable<Finding> Run(StabilityView view) => OwnersHold.Run(Description, view, "her GM", (loaded, at) =>
    {
        Banded banded = view.NearbyIn(loaded.Condition).Banded(at.MetacentricHeightM, near => near.MetacentricHeightM);
        Sentence found = Sentence.Of($"GM {FindingLines.In(loaded.Condition)} is {M(at.MetacentricHeightM)}");
        return OwnersHold.Held(Description, view, loaded, banded, view.Practice!.Find(LimitIds.LeastGmM)!, false, "m", found, view.FloatingIn(loaded.Condition)!.Rest.Working().Select(Line));
    });
}
