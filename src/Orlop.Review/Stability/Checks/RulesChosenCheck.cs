using Orlop.Review.Findings;
using static Orlop.Review.Stability.StabilityLines;

namespace Orlop.Review.Stability.Checks;

/// <summary>Somebody chose what her stability is held against.</summary>
public sealed class RulesChosenCheck : ICheck<StabilityView>
{
    public CheckDescription Description { get; } = new(
        "stability-rules-chosen",
        "Rules of stability are chosen",
        "Unknown while no rules are chosen that her stability is held against: that nothing fails says nothing then. Nothing where they are chosen.",
        []);

    public IEnumerable<Finding> Run(StabilityView view) => view.HasRules
        ? []
        : [Unknown(Description, view.Basis?.Id ?? WhyUnknown.SubjectOf(view), null, Sentence.Of($"No stability rules are chosen: what she is held against cannot be told"), [new FindingInput(view.Basis?.Id ?? "stability-basis", "rules", IsMissing: true)])];
}
