using Orlop.Hull.Floating;
using Orlop.Hull.Measuring;
using Orlop.Hull.Working;
using Orlop.Review.Electrics;
using Orlop.Review.Findings;
using Orlop.Review.Practices;
using static Orlop.Review.Stability.StabilityLines;

namespace Orlop.Review.Stability.Checks;

/// <summary>She rolls neither slower nor quicker than the owner wants.</summary>
public sealed class RollPeriodCheck : ICheck<StabilityView>
{
    public CheckDescription Description { get; } = new(
        "roll-period",
        "Natural roll period",
        "T = f B/√GM, f from the boat's own rolling test or 0.80 ± 0.10, two standard deviations (Res. A.749(18) annex 3: scatter 0.05, taken as one), against the owner's longest and shortest period, in every condition; nothing where the owner set neither.",
        [LimitIds.LongestRollPeriodS, LimitIds.ShortestRollPeriodS])
    {
        IsCriterion = true,
    };

    public IEnumerable<Finding> Run(StabilityView view) => OwnersHold.Run(Description, view, "her roll period", (loaded, at) => Judge(view, loaded, at));

    private Finding Judge(StabilityView view, LoadedBoat loaded, FloatingPosition at)
    {
        if (view.Boat.Particulars?.BeamM?.Value is not { } beam)
        {
            return Unknown(Description, WhyUnknown.SubjectOf(view), loaded.Condition.Id, Sentence.Of($"Her roll period {FindingLines.In(loaded.Condition)} cannot be told without her beam"), [new FindingInput(WhyUnknown.SubjectOf(view), "beamM", IsMissing: true)]);
        }

        RollFactor own = RollFactor.Of(view);
        double factor = own.Value;
        if (RollPeriod.FromBeamS(factor, beam, at.MetacentricHeightM) is not { } period)
        {
            return Judged(Description, WhyUnknown.SubjectOf(view), loaded, Verdict.Fails, null, Sentence.Of($"She has no roll period {FindingLines.In(loaded.Condition)}: GM is {M(at.MetacentricHeightM)}"), []);
        }

        Banded banded = view.NearbyIn(loaded.Condition).Banded(period, near => RollPeriod.FromBeamS(factor, beam, near.MetacentricHeightM)).With(own.Beside(period));
        Limit? longest = view.Practice!.Find(LimitIds.LongestRollPeriodS), shortest = view.Practice.Find(LimitIds.ShortestRollPeriodS);
        bool isLongNearer = shortest is null || (longest is not null && longest.Value - period <= period - shortest.Value);
        Sentence found = Sentence.Of($"She rolls in {S(period)} {FindingLines.In(loaded.Condition)}");
        return OwnersHold.Held(Description, view, loaded, banded, isLongNearer ? longest! : shortest!, isLongNearer, "s", found,
        [
            Line(new WorkingStep("GM", "at rest, free surfaces taken off", at.MetacentricHeightM, "m", "hydrostatics")),
            Line(new WorkingStep("f", FormattableString.Invariant($"± {2 * own.Deviation:0.###}, two standard deviations"), factor, "", own.Source)),
            Line(new WorkingStep("T", FormattableString.Invariant($"{factor:0.###}·{beam:0.###}/√{at.MetacentricHeightM:0.####}"), period, "s", "T = f B/√GM")),
        ]);
    }
}
