using System.Collections.Immutable;
using Orlop.Boat.Things;
using Orlop.Hull.Criteria;
using Orlop.Hull.Measuring;
using Orlop.Hull.Working;
using Orlop.Review.Findings;
using static Orlop.Review.Stability.StabilityLines;

namespace Orlop.Review.Stability.Checks;

/// <summary>She keeps the general intact criteria, on her weaker side, as surely as her weight is known.</summary>
public sealed class GeneralIntactCheck : ICheck<StabilityView>
{
    private static readonly ImmutableArray<string> Ids = ["area-to-30", "area-to-40", "area-30-to-40", "lever-at-30", "heel-of-greatest-lever", "initial-gm"];

    public CheckDescription Description { get; } = new(
        "general-intact",
        "General criteria of stability",
        "Areas under the levers, the lever at 30°, the heel of the greatest lever and GM against 2008 IS Code part A 2.2, where the owner chose them; the worse side, in every condition. Unknown where two standard deviations of the weight reach the limit, and then which berth test would settle it.",
        [])
    {
        IsCriterion = true,
    };

    public IEnumerable<Finding> Run(StabilityView view) =>
        view.Basis?.Rules.Contains(StabilityRule.GeneralIntact) == true ? view.Conditions.SelectMany(condition => Judge(view, condition)) : [];

    private IEnumerable<Finding> Judge(StabilityView view, Condition condition)
    {
        LoadedBoat loaded = view.LoadedIn(condition);
        if (view.FloatingIn(condition) is not { } floating)
        {
            return Ids.Select(id => WhyUnknown.Of(Description, view, loaded, "her stability") with { SubjectId = Subject(view, id) });
        }

        IntactSide starboard = new(loaded, floating.Starboard), port = new(loaded, floating.Port);
        return Enumerable.Range(0, starboard.Criteria.Length).Select(i => Judge(view, loaded, IsWorse(port.Criteria[i], starboard.Criteria[i]) ? port : starboard, i));
    }

    // Rounding does not make one side worse; a side without a value is.
    private static bool IsWorse(CriterionResult port, CriterionResult starboard) =>
        starboard.Value is { } other && (port.Value is not { } value || value < other - (1e-6 * Math.Abs(other)));

    private Finding Judge(StabilityView view, LoadedBoat loaded, IntactSide side, int index)
    {
        CriterionResult criterion = side.Criteria[index];
        string subject = Subject(view, criterion.Id);
        string where = criterion.Id == "initial-gm" ? "upright" : Levers.Name(side.Side);
        ImmutableArray<FindingInput> openings = criterion.Id == "initial-gm" ? [] : OpeningsGiven.Missing(view.Boat);
        IEnumerable<WorkingLine> working =
        [
            .. criterion.Working.Select(Line),
            Line(new WorkingStep("Asked at least", "limit of the rule", criterion.Least, criterion.Unit, criterion.Source)),
            .. criterion.Remarks.Select(remark => new WorkingLine("Remark", remark, null, criterion.Source)),
            .. criterion.Id == "initial-gm" ? [] : OpeningsGiven.Taken(view.Boat),
            new WorkingLine("Side", $"levers {Levers.Name(side.Side)}, the worse one", null, "levers solved with free trim and running tank liquids"),
        ];
        if (criterion.Value is not { } value)
        {
            return Judged(Description, subject, loaded, Verdict.Unknown, null, Sentence.Of($"{loaded.Condition.Title}: {criterion.Subject}, {where}, cannot be told: {criterion.Remarks.FirstOrDefault() ?? "the levers do not reach far enough"}"), working, openings);
        }

        WeightSlopes slopes = side.SlopesOf(index);
        Banded banded = Banded.Of(value, loaded, slopes);
        Verdict verdict = banded.AtLeast(criterion.Least);
        Sentence found = Sentence.Of($"{loaded.Condition.Title}: {criterion.Subject}, {where}, is {Measure(value, criterion.Unit)}, at least {Measure(criterion.Least, criterion.Unit)} asked");
        Sentence headline = verdict == Verdict.Unknown
            ? Sentence.Of($"{found}, {Unsure(view, loaded, banded, criterion.Unit, criterion.Least)}")
            : found;
        return Judged(Description, subject, loaded, verdict, banded.UseAtLeast(criterion.Least), headline, [.. working, BandLine(banded, criterion.Unit)], openings);
    }

    private static string Subject(StabilityView view, string criterionId) => $"{WhyUnknown.SubjectOf(view)}.{criterionId}";
}
