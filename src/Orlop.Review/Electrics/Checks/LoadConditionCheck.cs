using Orlop.Boat.Things;
using Orlop.Review.Findings;
using static Orlop.Review.Electrics.FindingLines;

namespace Orlop.Review.Electrics.Checks;

/// <summary>Each load is judged somewhere: it is on in at least one condition, and the boat has a condition and a practice.</summary>
public sealed class LoadConditionCheck : ICheck<ElectricsView>
{
    public CheckDescription Description { get; } = new(
        "load-has-a-condition",
        "Each load is judged in some condition",
        "A load that is on in no condition is judged in none, and nothing can be said of it.",
        []);

    public IEnumerable<Finding> Run(ElectricsView view) => view.Boat.All<ElectricLoad>().Select(load =>
    {
        Condition[] used = [.. view.Conditions.Where(condition => load.Uses.Any(use => use.Condition == condition.Id && use.DutyFraction > 0))];
        return used.Length == 0
            ? Unknown(Description, load.Id, null, Sentence.Of($"{load.Title} is on in no condition, so nothing is said of its circuit"), [new FindingInput(load.Id, "uses", IsMissing: true)])
            : new Finding
            {
                CheckId = Description.Id,
                SubjectId = load.Id,
                Verdict = Verdict.Holds,
                Headline = Sentence.Of($"{load.Title} is judged in {used.Length} of {view.Conditions.Length} conditions"),
                Working = [new WorkingLine("On in", string.Join(", ", used.Select(condition => condition.Title)), null, "as typed")],
                Inputs = [new FindingInput(load.Id, "uses")],
            };
    });
}
