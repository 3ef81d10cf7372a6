using Orlop.Review.Electrics;
using Orlop.Review.Findings;
using Orlop.Review.Practices;
using static Orlop.Review.Stability.StabilityLines;

namespace Orlop.Review.Stability.Checks;

/// <summary>She trims no further than the owner wants.</summary>
public sealed class TrimCheck : ICheck<StabilityView>
{
    public CheckDescription Description { get; } = new(
        "trim",
        "Trim at rest",
        "Angle of the base line to the water at rest, by the stern or by the head, against the owner's own limit, in every condition; nothing where the owner set none.",
        [LimitIds.MostTrimDeg])
    {
        IsCriterion = true,
    };

    public IEnumerable<Finding> Run(StabilityView view) => OwnersHold.Run(Description, view, "her trim", (loaded, at) =>
    {
        double trim = at.Attitude.TrimDeg;
        Banded banded = view.NearbyIn(loaded.Condition).Banded(Math.Abs(trim), near => near.Attitude.TrimDeg);
        Sentence found = Sentence.Of($"She trims {Deg(Math.Abs(trim))} by the {(trim < 0 ? "bow" : "stern")} {FindingLines.In(loaded.Condition)}");
        return OwnersHold.Held(Description, view, loaded, banded, view.Practice!.Find(LimitIds.MostTrimDeg)!, true, "°", found, RestLines.Trim(at));
    });
}
