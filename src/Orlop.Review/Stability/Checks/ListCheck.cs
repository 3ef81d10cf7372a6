using Orlop.Review.Electrics;
using Orlop.Review.Findings;
using Orlop.Review.Practices;
using static Orlop.Review.Stability.StabilityLines;

namespace Orlop.Review.Stability.Checks;

/// <summary>She lies no further over at rest than the owner wants.</summary>
public sealed class ListCheck : ICheck<StabilityView>
{
    public CheckDescription Description { get; } = new(
        "list",
        "List at rest",
        "Heel at rest against the owner's own limit, in every condition; nothing where the owner set none.",
        [LimitIds.MostListDeg])
    {
        IsCriterion = true,
    };

    public IEnumerable<Finding> Run(StabilityView view) => OwnersHold.Run(Description, view, "her list", (loaded, at) =>
    {
        double heel = at.Attitude.HeelDeg;
        Banded banded = view.NearbyIn(loaded.Condition).Banded(Math.Abs(heel), near => near.Attitude.HeelDeg);
        Sentence found = Sentence.Of($"She lists {Deg(Math.Abs(heel))} {Levers.Name(heel < 0 ? -1 : 1)} {FindingLines.In(loaded.Condition)}");
        return OwnersHold.Held(Description, view, loaded, banded, view.Practice!.Find(LimitIds.MostListDeg)!, true, "°", found, RestLines.Heel(at));
    });
}
