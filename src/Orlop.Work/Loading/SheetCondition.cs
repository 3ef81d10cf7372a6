using System.Collections.Immutable;
using Orlop.Boat.Things;
using Orlop.Hull.Measuring;
using Orlop.Presentation.Views.Floating;
using Orlop.Review;
using Orlop.Review.Stability;

namespace Orlop.Work.Loading;

/// <summary>The boat in one condition, on a sheet.</summary>
/// <param name="Condition">The condition.</param>
/// <param name="Now">How the boat floats that the sheet is about.</param>
/// <param name="Was">As built, beside an alteration; null without one, or where the condition is new.</param>
/// <param name="Levers">Her righting levers with their band; null where she does not float, or where they are not asked for.</param>
/// <param name="LeversWere">The levers as built.</param>
/// <param name="Findings">What she is held against, the gravest first.</param>
/// <param name="Draws">Many draws of her weight held against the general criteria; null where nobody asked.</param>
public sealed record SheetCondition(
    Condition Condition, FloatingFacts Now, FloatingFacts? Was, RightingView? Levers, RightingView? LeversWere, ImmutableArray<SheetFinding> Findings, StabilitySamplingResult? Draws)
{
    internal static SheetCondition Of(StabilityView shown, StabilityView? was, Condition condition, ImmutableArray<SheetFinding> findings, bool isDrawn, bool hasLevers, Memo memo, IProgress<double>? progress, CancellationToken token)
    {
        FloatingFacts now = FloatingFacts.Of(shown, condition, memo);
        FloatingFacts? before = was?.Boat.Find<Condition>(condition.Id) is { } known ? FloatingFacts.Of(was, known, memo) : null;
        return new SheetCondition(
            condition, now, before, hasLevers ? RightingView.Of(shown, now) : null, !hasLevers || before is null ? null : RightingView.Of(was!, before), findings,
            isDrawn ? shown.DrawnIn(condition, progress, token) : null);
    }
}
