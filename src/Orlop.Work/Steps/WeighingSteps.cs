using System.Collections.Immutable;
using Orlop.Presentation.Views.Floating;
using Orlop.Review.Findings;
using Orlop.Work.Loading;
using Orlop.Work.Scope;

namespace Orlop.Work.Steps;

/// <summary>Weigh what goes aboard, and read the freeboards when the work is done.</summary>
internal static class WeighingSteps
{
    private static Caution Stability { get; } = new(CautionKind.Stability, FloatingWords.Caution);

    private static Caution Hanging { get; } = new(CautionKind.Lifting,
        "Nobody under a load, nobody between it and the rail. A weight on the winch or a crane acts at the hook it hangs from: she heels at once and further than with the same weight on deck. Lift within what hook, rope and winch are marked for, in calm water, and set it down before anyone leans out (common practice, no source).");

    /// <summary>Before anything is fitted; none where everything has been weighed.</summary>
    public static IEnumerable<WorkStep> Before(WeighingPlan plan)
    {
        if (!plan.Weigh.IsEmpty)
        {
            yield return new WorkStep
            {
                Key = "weigh:all",
                Kind = StepKind.Weigh,
                Text = Sentence.Of($"Weigh these before they go aboard, and write each down: {plan.Weigh.Length} {(plan.Weigh.Length == 1 ? "thing" : "things")}."),
                Details = [.. plan.Weigh.Select(line => Sentence.Of($"{line.Title}: {line.Known}.")), Sentence.Of($"A hanging scale or bathroom scales will do. Type the masses into the boat's file: trim, heel and stability rest on them.")],
                WriteDown = new WriteDown("kg"),
                Cautions = [Hanging],
                About = [.. plan.Weigh.Select(line => line.ThingId)],
            };
        }
    }

    /// <summary>When the work is done; none where too little was put aboard, taken off or moved to show.</summary>
    public static IEnumerable<WorkStep> After(PackScope scope, WeighingPlan plan)
    {
        if (plan is not { IsFelt: true, Condition: { } condition })
        {
            yield break;
        }

        string marks = plan.Survey is { } survey ? string.Join("; ", survey.Marks.Select(mark => mark.Name)) : "";
        ImmutableArray<Sentence> carried = [.. plan.Carried.Select(deadweight => deadweight.Place is { } place
            ? Sentence.Of($"{deadweight.Title} at {new Amount(place.XM, "M")} forward, {new Amount(Math.Abs(place.YM), "M")} to {(place.YM < 0 ? "starboard" : "port")}.")
            : Sentence.Of($"{deadweight.Title}: its place is not given."))];
        yield return new WorkStep
        {
            Key = "freeboards:after",
            Kind = StepKind.Commission,
            Text = plan.Survey is null
                ? Sentence.Of($"Take a freeboard survey: four marks or more, at both ends and on both sides.")
                : Sentence.Of($"Read the freeboards at the {plan.Survey.Marks.Count} marks of “{plan.Survey.Title}”: {marks}."),
            Details =
            [
                Sentence.Of($"Loaded as in “{condition.Title}”: tanks as written there, nothing on a hook, everybody else ashore. Aboard, and in these places:"),
                .. carried.IsEmpty ? [Sentence.Of($"Nobody: read from a dinghy or the pontoon.")] : carried,
                .. BerthTestGuide.FreeboardCautions.Select(words => Sentence.Of($"{words}")),
                Sentence.Of($"Expected heights and the range accepted stand under Freeboards. Type what you read under Weights, Berth tests, New freeboard survey: the check “Berth test agrees with the rest” then holds it against all else that is known."),
            ],
            WriteDown = new WriteDown("m"),
            Cautions = [Stability],
            About = [scope.Alteration.Id],
        };
    }
}
