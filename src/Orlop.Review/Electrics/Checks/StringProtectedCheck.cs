using Orlop.Electrics.Strings;
using Orlop.Review.Findings;

namespace Orlop.Review.Electrics.Checks;

/// <summary>Each of several strings side by side has a fuse or breaker of its own.</summary>
public sealed class StringProtectedCheck : ICheck<ElectricsView>
{
    public CheckDescription Description { get; } = new(
        "strings-protected",
        "Each string has a fuse of its own",
        "Whether a fuse or breaker parts the plus end of each string from those beside it: a short inside one is fed by all others.",
        []);

    public IEnumerable<Finding> Run(ElectricsView view) =>
        from StringGroup stringGroup in view.Strings.InAny.Groups
        from BatteryString each in stringGroup.Strings
        where each.IsProtected is not null
        select Judge(view, stringGroup, each, each.IsProtected!.Value);

    private Finding Judge(ElectricsView view, StringGroup group, BatteryString each, bool isProtected)
    {
        string title = StringWords.Title(view.Boat, each), others = group.Strings.Length == 2 ? "the string" : $"the {group.Strings.Length - 1} strings";
        return new Finding
        {
            CheckId = Description.Id,
            SubjectId = each.Members[0].Id,
            Verdict = isProtected ? Verdict.Holds : Verdict.Fails,
            Headline = isProtected
                ? Sentence.Of($"{title}: a fuse or breaker parts it from {others} beside it")
                : Sentence.Of($"{title}: nothing parts it from {others} beside it; a short inside one is fed by all, with no fuse between"),
            Working = [new WorkingLine("Fuse or breaker between its plus end and the others'", isProtected ? "on every way" : "none on one way at least", null, "the wiring as drawn; that each string has its own: common practice, no source")],
            Inputs = [.. each.Members.Select(member => new FindingInput(member.Id, "id"))],
            Caution = Cautions.Strings,
        };
    }
}
