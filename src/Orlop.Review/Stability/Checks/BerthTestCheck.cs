using System.Collections.Immutable;
using Orlop.Boat.Things;
using Orlop.Hull.Measuring;
using Orlop.Review.Findings;
using static Orlop.Review.Stability.StabilityLines;
using FreeboardSurvey = Orlop.Boat.Things.FreeboardSurvey;

namespace Orlop.Review.Stability.Checks;

/// <summary>Each berth test can be read, and agrees with all that is known together.</summary>
public sealed class BerthTestCheck : ICheck<StabilityView>
{
    public CheckDescription Description { get; } = new(
        "berth-test-agrees",
        "Berth test agrees with the rest",
        "Each freeboard survey, rolling and inclining test: unknown where it cannot be read, where a mark of a survey is beyond all reason, a shift of an inclining test too far off its line for chance and not left out, shifts that make no straight line, or a run of rolls more than half a roll off the others (none of these counts), and where marks misfit by more than twice what they were read to; what it measured against the best estimate from all evidence, in standard deviations, at most 3 (common practice, no source). One of two that disagree is wrong; the check does not know which. An inclining test that is weak (2008 IS Code part B 8.4.1.2 and annex 1; how well its line fits: common practice, no source) counts by what it is worth: why, and how little of KG it makes, is said. Tanks that were slack while she was rolled or inclined are named, with what they took from GM. Where one disagrees, every ± of her weight is made wider by √(χ²/ν) (Birge ratio, Physical Review 40 (1932) 207, from memory), no less than it takes for the two to meet, and no criterion holds. Fails where the tests that tell KG (the bare boat's figures where none does) put the centre of gravity of the whole boat, or of all the rest of her beside what was listed, below the lowest point of her hull or above the highest of hull, houses and things listed, two standard deviations and all (our rule, no source), unknown where the band reaches back; no criterion holds then either. Unknown where nothing else tells what a test measured: there is nothing to hold it against.",
        []);

    public IEnumerable<Finding> Run(StabilityView view) =>
    [
        .. view.Boat.All<BerthTest>().Select(test => Judge(view, test)).OfType<Finding>(),
        .. view.Weight.Impossible is { } impossible && view.Boat.Find(impossible.FromIds[0]) is not BerthTest ? [OutOfReach(view, impossible, impossible.FromIds[0], Sentence.Of($"By the bare boat's own figures"))] : Array.Empty<Finding>(),
    ];

    private Finding? Judge(StabilityView view, BerthTest test)
    {
        if (view.Weight.Trouble.FirstOrDefault(trouble => trouble.TestId == test.Id) is { } trouble)
        {
            return Unknown(Description, test.Id, null, Sentence.Of($"{test.Title} tells nothing: {trouble.Message}"), []);
        }

        if (view.Weight.Impossible is { } impossible && impossible.FromIds.Contains(test.Id))
        {
            return OutOfReach(view, impossible, test.Id, Sentence.Of($"By {test.Title}"));
        }

        EvidenceFit[] fits = [.. view.Weight.Fits.Where(fit => fit.Id == test.Id)];
        SlackAtTest? slack = view.SlackAt(test);
        if (fits.Length == 0 && view.Weight.WithoutKg is not null)
        {
            return Unknown(Description, test.Id, null, Sentence.Of($"{test.Title} counts, and whether it agrees cannot be told: {WhyUnknown.NoKg}"), [.. view.Weight.Missing]);
        }

        if (fits.Length == 0)
        {
            return Unknown(Description, test.Id, null, Sentence.Of($"{test.Title} is not part of what is known of her weight"), [.. view.Weight.Missing]);
        }

        if (fits.All(fit => fit.IsAlone))
        {
            return Unknown(Description, test.Id, null, Sentence.Of($"{test.Title} counts, and nothing else tells what it measured: there is nothing to hold it against{Said(slack)}"), [new FindingInput(test.Id, "aboard")]) with { Working = Lines(slack) };
        }

        double worst = fits.Max(fit => Math.Abs(fit.StandardisedRatio));
        Verdict verdict = Verdicts.Of(worst, Contradiction.MostDeviations);
        if (verdict != Verdict.Fails && test is FreeboardSurvey survey && view.Read(survey).MisfitRatio is var misfit && misfit > SpoiltTest.MostMisfitRatio)
        {
            return Unknown(
                Description, test.Id, null, Sentence.Of($"Whether {test.Title} agrees cannot be told: its own marks disagree, and every ± of it is made {FormattableString.Invariant($"{misfit:0.#}")} times wider for it; read those that are far off again, or look at the lines there"),
                [new FindingInput(test.Id, "marks")]);
        }

        WeakTest? weak = view.Weight.Weak.FirstOrDefault(one => one.TestId == test.Id);
        string said = verdict == Verdict.Fails ? "disagrees with the rest of the evidence: one of them is wrong, measure again" : "agrees with the rest of the evidence";
        return new Finding
        {
            CheckId = Description.Id,
            SubjectId = test.Id,
            Verdict = verdict,
            UseFraction = Verdicts.UseOf(worst, Contradiction.MostDeviations),
            Headline = Sentence.Of($"{test.Title} {said}: {FormattableString.Invariant($"{worst:0.0}")} deviations off, at most {FormattableString.Invariant($"{Contradiction.MostDeviations:0}")} expected{(weak is null ? "" : $"; it is weak, and {weak.Share}: {weak.Why}")}{Said(slack)}"),
            Working = [.. fits.Select(fit => new WorkingLine("Off", "residual over its own standard deviation", new Amount(fit.StandardisedRatio, "Ratio"), "weighted least squares")), .. view.Weight.Working.Select(Line), .. Lines(slack), .. view.Weight.Weak.Select(one => one.Line)],
            Inputs = [new FindingInput(test.Id, "aboard")],
            Caution = Caution,
        };
    }

    private Finding OutOfReach(StabilityView view, ImpossibleCentre impossible, string subjectId, Sentence by) => new()
    {
        CheckId = Description.Id,
        SubjectId = subjectId,
        Verdict = impossible.IsSure ? Verdict.Fails : Verdict.Unknown,
        Headline = Sentence.Of($"{by} {impossible.Said}, where no boat has it: {(view.Boat.Find(subjectId) is RollingTest ? ImpossibleCentre.HalfRolls : "it was read or typed wrong, or what was aboard was")}"),
        Working = [impossible.Line, .. view.Weight.Working.Select(Line)],
        Inputs = [impossible.Input with { ThingId = subjectId }],
        Caution = Caution,
    };

    private static Sentence Said(SlackAtTest? slack) => slack switch
    {
        null => Sentence.Of($""),
        { LossM: { } loss } => Sentence.Of($"; slack then: {slack.Names}, {M(loss)} off GM, which is put back"),
        _ => Sentence.Of($"; slack then: {slack.Names}, and what that took from GM cannot be told"),
    };

    private static ImmutableArray<WorkingLine> Lines(SlackAtTest? slack) => slack is null ? [] : [slack.Line];
}
