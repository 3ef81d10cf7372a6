using System.Collections.Immutable;
using Orlop.Boat.Things;
using Orlop.Review.Findings;
using static Orlop.Review.Stability.StabilityLines;

namespace Orlop.Review.Stability.Checks;

/// <summary>Each rule that the owner chose is one that some check holds her against.</summary>
public sealed class RuleReckonedCheck : ICheck<StabilityView>
{
    private static readonly ImmutableDictionary<StabilityRule, string> NotReckoned = ImmutableDictionary<StabilityRule, string>.Empty
        .Add(StabilityRule.SimplifiedUnited, "the simplified proof test of 46 CFR 178");

    public CheckDescription Description { get; } = new(
        "rule-is-reckoned",
        "The rule chosen is reckoned",
        "Each rule that the owner chose to be held against; unknown where no check reckons it, so that nothing passes by being left out.",
        []);

    public IEnumerable<Finding> Run(StabilityView view) =>
        from rule in view.Basis?.Rules ?? []
        where NotReckoned.ContainsKey(rule)
        select Unknown(Description, view.Basis!.Id, null, Sentence.Of($"{Begun(NotReckoned[rule])} is chosen and not reckoned here: nothing is said of it"), [new FindingInput(view.Basis.Id, "rules")]);
}
