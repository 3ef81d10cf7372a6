using Orlop.Boat.Things;
using Orlop.Review.Findings;
using Orlop.Review.Practices;
using static Orlop.Review.Electrics.FindingLines;

namespace Orlop.Review.Ways.Checks;

/// <summary>Cables are supported often enough along a way.</summary>
public sealed class SupportsCheck : ICheck<WaysView>
{
    public CheckDescription Description { get; } = new(
        "supports",
        "Cables are supported",
        "For each way that a cable follows, conduits and glands apart: the greatest distance between its supports against the practice's.",
        [LimitIds.SupportSpacingM]);

    public IEnumerable<Finding> Run(WaysView view) => view.Ways.Where(way => way.Means is not (WayKind.Conduit or WayKind.Gland) && view.CablesIn(way).Any()).Select(way => Judge(view, way));

    private Finding Judge(WaysView view, Way way)
    {
        if (view.Practice?.Find(LimitIds.SupportSpacingM) is not { } limit)
        {
            return NoLimit(Description, way.Id, null, way.Title, LimitIds.SupportSpacingM);
        }

        if (way.SupportM is not { } spacing)
        {
            return Unknown(Description, way.Id, null, Sentence.Of($"{way.Title}: nobody said how far apart its supports are"), [new FindingInput(way.Id, "supportM", IsMissing: true)]);
        }

        return new Finding
        {
            CheckId = Description.Id,
            SubjectId = way.Id,
            // Supports are set out by the spacing that is allowed: that is allowed.
            Verdict = spacing.Value <= limit.Value ? Verdict.Holds : Verdict.Fails,
            UseFraction = Verdicts.UseOf(spacing.Value, limit.Value),
            Headline = Sentence.Of($"{way.Title} has a support every {M(spacing.Value)}; {M(limit.Value)} is allowed"),
            Working = [Line(limit, "Allowed", "M"), new WorkingLine("Supports", "greatest distance, as typed", M(spacing.Value), ""), Use(spacing.Value, limit.Value)],
            Inputs = [new FindingInput(way.Id, "supportM")],
        };
    }
}
