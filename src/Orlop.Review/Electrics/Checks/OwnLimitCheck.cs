using Orlop.Boat.Things;
using Orlop.Review.Findings;
using Orlop.Review.Practices;
using static Orlop.Review.Electrics.FindingLines;

namespace Orlop.Review.Electrics.Checks;

/// <summary>Every limit that the owner sets is one that a check reads.</summary>
public sealed class OwnLimitCheck : ICheck<ElectricsView>
{
    public CheckDescription Description { get; } = new(
        "owner-limit",
        "The owner's limit is one that counts",
        "Each limit that the owner sets against the list of limits. Unknown where none has that name, where it is given twice, or where it belongs to the ampacity table and cannot be set by itself.",
        []);

    public IEnumerable<Finding> Run(ElectricsView view) =>
        from choice in view.Boat.All<PracticeChoice>()
        where choice.Own.Count > 0
        select Judge(choice);

    private Finding Judge(PracticeChoice choice)
    {
        WorkingLine[] idle = [.. choice.Own.Select(own => own.Limit).Distinct().Select(id => new WorkingLine(id, WhyIdle(choice, id) ?? "", null, "list of limits")).Where(line => line.Expression.Length > 0)];
        return idle.Length > 0
            ? Unknown(Description, choice.Id, null, Sentence.Of($"{choice.Title}: {string.Join(", ", idle.Select(line => line.What))} of the owner's limits cannot be told as meant"), [new FindingInput(choice.Id, "own")]) with { Working = [.. idle] }
            : new Finding
            {
                CheckId = Description.Id,
                SubjectId = choice.Id,
                Verdict = Verdict.Holds,
                Headline = Sentence.Of($"{choice.Title}: each of the owner's {choice.Own.Count} limits is one that counts"),
                Working = [.. choice.Own.Select(own => new WorkingLine(own.Limit, own.Reason, null, "list of limits"))],
                Inputs = [new FindingInput(choice.Id, "own")],
            };
    }

    private static string? WhyIdle(PracticeChoice choice, string id) =>
        !LimitIds.All.Contains(id) && !LimitIds.OwnersOnly.Contains(id) ? "no limit has this name"
        : choice.Own.Count(own => own.Limit == id) > 1 ? "given more than once; the last one counts"
        : id == LimitIds.TableAmbientC ? "belongs to the ampacity table, which keeps its own"
        : null;
}
