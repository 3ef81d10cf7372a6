using System.Collections.Immutable;
using Orlop.Boat.Things;
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

    // More than this nobody holds still on bathroom scales (common practice, no source).
    private const double HeavyKg = 60;

    private static Caution Heavy { get; } = new(CautionKind.Lifting,
        $"Lift what one person cannot lift with ease as two, or with tackle marked for the load. {Lifts.GearOnly}. Hands and feet from beneath it, and chock what can roll or tip before letting go.");

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
                Details = [.. plan.Weigh.Select(line => Sentence.Of($"{line.Title}: {line.Known}.")), .. HowToWeigh(plan.Weigh), Sentence.Of($"Type the masses into the boat's file: trim, heel and stability rest on them.")],
                WriteDown = new WriteDown("kg", ReadingCount: plan.Weigh.Length),
                Cautions = plan.Weigh.Any(line => line.MassKg is null || line.MassKg > Tables.Allowances.LiftAloneKg) ? [Heavy, Hanging] : [Hanging],
                PeopleCount = plan.Weigh.Select(line => Lifts.PeopleFor(line.MassKg)).Max(),
                IsMassUntold = plan.Weigh.Any(line => line.MassKg is null),
                IsByGear = plan.Weigh.Any(line => Lifts.NeedsGear(line.MassKg)),
                About = [.. plan.Weigh.Select(line => line.ThingId)],
            };
        }
    }

    private static IEnumerable<Sentence> HowToWeigh(ImmutableArray<WeighLine> lines)
    {
        if (!lines.All(IsHeavy))
        {
            yield return Sentence.Of($"Up to about {new Amount(HeavyKg, "Kg")} a hanging scale or bathroom scales will do.");
        }

        if (lines.Where(line => line.MassKg is null).Select(line => line.Title).ToList() is { Count: > 0 } unknown)
        {
            yield return Sentence.Of($"Mass not given: {string.Join(", ", unknown)}. Try one end first. If it is over {new Amount(Tables.Allowances.LiftAloneKg, "Kg")}, it is lifted by two or with tackle marked for it; over {new Amount(Tables.Allowances.LiftTogetherKg, "Kg")} with lifting gear marked for the load only; if over about {new Amount(HeavyKg, "Kg")}, it is weighed as one says of heavy things: hung between hook and sling, all marked for more than the load, or part by part (common practice, no source).");
        }

        if (lines.Any(IsHeavy))
        {
            string heavy = string.Join(", ", lines.Where(IsHeavy).Select(line => line.Title));
            yield return Sentence.Of($"Over about {new Amount(HeavyKg, "Kg")} ({heavy}): a hanging scale between hook and sling, all marked for more than the load, a hand's breadth off the ground and with nobody under it or beside it; or two scales under a stiff beam that carries it, set down on it with lifting gear, the sum of both less the beam; or part by part, taken to pieces (common practice, no source).");
        }
    }

    private static bool IsHeavy(WeighLine line) => line.MassKg > HeavyKg;

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
                .. plan.Incline is null ? [] : Order(plan),
                Sentence.Of($"Loaded as in “{condition.Title}”: {plan.TankWords}, nothing on a hook. Nobody is aboard but these, who stay in these places; the two who measure are in a dinghy or on the pontoon:"),
                .. carried.IsEmpty ? [Sentence.Of($"Nobody and nothing but her own gear.")] : carried,
                plan.WhyLoaded!,
                .. BerthTestGuide.FreeboardCautions.Select(words => Sentence.Of($"{words}")),
                .. RecordFirst(scope, condition),
                Sentence.Of($"Expected heights and the range accepted stand under Freeboards. Type what you read under Weights, Berth tests, New freeboard survey: the check “Berth test agrees with the rest” then holds it against all else that is known. Until one made after the work is typed in, with its day, this step stays open."),
            ],
            WriteDown = new WriteDown("m", ReadingCount: 0, Into: BerthTestKind.Freeboards),
            Cautions = [Stability],
            PeopleCount = 2 + plan.PeopleAboardCount,
            About = [scope.Alteration.Id],
        };
        if (plan.Incline is { } incline)
        {
            yield return Inclining(scope, plan, incline, condition, carried);
        }
    }

    // The list of what was aboard is the list of the boat as built.
    private static IEnumerable<Sentence> RecordFirst(PackScope scope, Condition condition)
    {
        if (WorkAboard.Of(scope, condition).Unrecorded is { IsEmpty: false } unrecorded)
        {
            yield return Sentence.Of($"Record as built first what stands in her now, under Record as built below the steps: {string.Join("; ", unrecorded)}. A test lists what is recorded as aboard; what is not would be taken for the boat's own weight, and counted twice from then on.");
        }
    }

    // One filling for both: the freeboards tell the displacement that the inclining test needs.
    private static ImmutableArray<Sentence> Order(WeighingPlan plan) =>
    [
        Sentence.Of($"Freeboards and inclining test go together, in this order: first the tanks, {plan.TankWords}; then the weights of the test aboard, at their place on the centre line; freeboards; the inclining test; the freeboards once more. From the first freeboard to the last nothing is pumped, filled, taken aboard or put ashore: the freeboards tell the displacement that the inclining test needs (2008 IS Code part B 8.4.1.1)."),
        Sentence.Of($"The heights expected are those without the weights of the test and whoever moves them. Type these under Something else is aboard with each test{(plan.Pressed is { Tanks.IsEmpty: false } ? ", and the tanks as they were into the condition first" : "")}; the check counts them."),
    ];

    private static WorkStep Inclining(PackScope scope, WeighingPlan plan, InclineAnew incline, Condition condition, ImmutableArray<Sentence> carried) => new()
    {
        Key = "incline:after",
        Kind = StepKind.Commission,
        Text = Sentence.Of($"Incline her anew, at the berth: so much of her has changed that the latest test tells her centre of gravity no longer."),
        Details =
        [
            Sentence.Of($"{incline.Asks} (2 % of the light boat, 1 % of her length in LCG, 1 % of KG: SOLAS II-1/5; a measure for a small boat, not a duty)."),
            .. Order(plan),
            Sentence.Of($"Loaded as at the freeboards, “{condition.Title}”: {plan.TankWords}. Aboard but for the weights of the test and whoever moves them:"),
            .. carried.IsEmpty ? [Sentence.Of($"Nobody and nothing but her own gear.")] : carried,
            incline.MomentKgM is { } moment
                ? Sentence.Of($"About {new Amount(Math.Round(moment), "KgM")} moved to one side should heel her {new Amount(InclineAnew.HeelDeg, "Deg")}, as she is reckoned now: mass times the distance it is moved.")
                : Sentence.Of($"How much weight heels her how far cannot be told from what is given: begin with what one person carries, and add."),
            Sentence.Of($"Read the zero and at least six shifts, to both sides and back; eight shifts are the standard (2008 IS Code part B 8.4.1.2). Two pendulums as long as there is room for, each in a bucket of water, read to the millimetre."),
            .. BerthTestGuide.InclinationCautions.Select(words => Sentence.Of($"{words}")),
            .. RecordFirst(scope, condition),
            Sentence.Of($"Type it under Weights, Berth tests, New inclining test, with its day and what was aboard. Until one made after the work is typed in, this step stays open."),
        ],
        WriteDown = new WriteDown("mm or °", ReadingCount: 0, Into: BerthTestKind.Inclining),
        Cautions = [Stability, Heavy],
        PeopleCount = 2 + plan.PeopleAboardCount,
        About = [scope.Alteration.Id],
    };
}
