using Orlop.Boat;
using Orlop.Boat.Things;
using Orlop.Presentation.Views.Floating;
using Orlop.Review;
using Orlop.Review.Practices;
using Orlop.Review.Stability;

namespace Orlop.App.Sessions;

/// <summary>How the opened boat floats at one moment, in one condition.</summary>
/// <param name="Boat">The boat that pages show.</param>
/// <param name="Facts">How she floats.</param>
/// <param name="AsBuilt">The boat as built: the same without a draft.</param>
/// <param name="Was">How she floats as built; null without a draft.</param>
public sealed record FloatingMoment(StabilityView Boat, FloatingFacts Facts, StabilityView AsBuilt, FloatingFacts? Was)
{
    /// <summary>Works it out; null for a boat without a condition.</summary>
    /// <param name="now">The boat at this moment.</param>
    /// <param name="conditionId">The wanted condition; the first where it is not there.</param>
    /// <param name="memo">What was worked out already.</param>
    public static FloatingMoment? Of(BoatSnapshot now, string? conditionId, Memo memo)
    {
        if ((now.Shown.Find<Condition>(conditionId ?? "") ?? now.Shown.All<Condition>().FirstOrDefault()) is not { } condition)
        {
            return null;
        }

        StabilityView View(BoatModel boat) => new(boat, Practice.Of(boat, memo), memo);
        StabilityView shown = View(now.Shown), asBuilt = now.Draft is null ? shown : View(now.AsBuilt);
        return new FloatingMoment(shown, FloatingFacts.Of(shown, condition, memo), asBuilt, now.Draft is null ? null : FloatingFacts.Of(asBuilt, condition, memo));
    }
}
