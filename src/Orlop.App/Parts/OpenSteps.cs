using System.Globalization;
using Orlop.Work.Paper;
using Orlop.Work.Steps;

namespace Orlop.App.Parts;

/// <summary>What is asked once before work goes on past steps that are not ticked; the answer is the owner's.</summary>
internal static class OpenSteps
{
    private const int MostNumbers = 6;

    /// <summary>What is asked before a step is ticked.</summary>
    public const string TickAllTheSame = "Tick this one all the same?";

    /// <summary>What is asked before parts are recorded as built.</summary>
    public const string RecordAllTheSame = "Record it as built all the same?";

    /// <summary>
    /// The question before a step is ticked; null where nothing is open. Work waits for every step before it that makes dead or proves dead, a proof, and
    /// what makes dead, for what makes dead before it: the order is part of it. What makes something live, what is connected to a point that nothing makes dead, and what is read or handed over with the power on, waits for what is fitted, run, made off,
    /// connected and tested before it, and what is closed for what is to be closed before. What is recorded as built is not asked for again.
    /// </summary>
    public static string? BeforeTick(IReadOnlyList<WorkStep> steps, WorkStep step, DateOnly today)
    {
        (int Number, WorkStep Step)[] before = [.. Numbered(steps).TakeWhile(one => one.Step.Key != step.Key)];
        (int Number, WorkStep Step)[] failed = [.. before.Where(one => RestsOn(one.Step, step) && one.Step.AgainstOn(today) is not null)];
        (int Number, WorkStep Step)[] open = [.. before.Except(failed).Where(one => Precedes(one.Step, step) && !one.Step.IsDoneOn(today) && one.Step.BuiltOn is null)];
        int[] numbers = [.. open.Select(one => one.Number)];
        string areOpen = $"{(numbers.Length == 1 ? "is" : "are")} not ticked";
        string? unticked = numbers.Length == 0 ? null
            : IsAfterWork(step) || step.IsOntoLive ? $"{Named(numbers)} before this one {areOpen} ({string.Join(", ", open.Select(one => Lead(one.Step)).Distinct())}){(step.Kind == StepKind.Energise || step.IsOntoLive ? ", and this one makes things live" : "")}. {TickAllTheSame}"
            : $"{Named(numbers)} before this one, to make the work dead{(step.Kind is StepKind.Isolate or StepKind.ProveDead ? "" : " and to prove it")}, {areOpen} today. {TickAllTheSame}";
        return failed.Length == 0 ? unticked : $"{NotPassed(failed, step => step.AgainstOn(today)!)} {unticked ?? TickAllTheSame}";
    }

    /// <summary>The question before parts are recorded as built: null where every step that builds them or works on them before is ticked, and no test of the work has failed.</summary>
    /// <param name="ids">Ids of the edits to be recorded.</param>
    public static string? BeforeBuild(IReadOnlyList<WorkStep> steps, IReadOnlyCollection<string> ids, DateOnly today)
    {
        (int Number, WorkStep Step)[] numbered = [.. Numbered(steps)];
        int last = numbered.Where(one => one.Step.Builds.Any(ids.Contains)).Select(one => one.Number).DefaultIfEmpty(0).Max();
        int[] open = [.. numbered.Where(one => one.Number <= last && !one.Step.IsForOneDay && one.Step.BuiltOn is null && !one.Step.IsDoneOn(today) && (one.Step.Builds.Any(ids.Contains) || one.Step.About.Any(ids.Contains))).Select(one => one.Number)];
        string? unticked = open.Length == 0 ? null : $"{Named(open)} of what you record {(open.Length == 1 ? "is" : "are")} not ticked. {RecordAllTheSame}";
        (int Number, WorkStep Step)[] failed = [.. numbered.Where(one => one.Step.Failed is not null)];
        return failed.Length == 0 ? unticked : $"{NotPassed(failed, step => step.Failed!)} {unticked ?? RecordAllTheSame}";
    }

    // What a test speaks against: what waits for its step, connecting where the free ends failed, measuring where the supply did, and handing over in any case.
    private static bool RestsOn(WorkStep tested, WorkStep step) => Precedes(tested, step) || step.Kind switch
    {
        StepKind.Connect => tested.Kind == StepKind.TestFree,
        StepKind.Commission => tested.Kind is StepKind.Energise or StepKind.Isolate or StepKind.ProveDead,
        StepKind.Energise => tested.Kind is StepKind.Isolate or StepKind.ProveDead,
        StepKind.HandOver => true,
        _ => false,
    };

    private static string NotPassed((int Number, WorkStep Step)[] failed, Func<WorkStep, StepTest> test) =>
        $"{(failed.Length == 1 ? "The test of a step did" : $"The tests of {failed.Length} steps did")} not pass: {string.Join("; ", failed.Select(one => string.Create(CultureInfo.InvariantCulture, $"{one.Number}, {one.Step.Text.ToString().TrimEnd('.', ':')}, {Read(test(one.Step))}")))}.";

    private static string Read(StepTest test) => test.Standing switch
    {
        TestStanding.NotTyped => test.Shown,
        TestStanding.TooFew => test.Said,
        _ => $"read {test.Shown}",
    };

    private static bool IsAfterWork(WorkStep step) => step.Kind is StepKind.Energise or StepKind.Commission or StepKind.HandOver;

    private static bool Precedes(WorkStep one, WorkStep step) => step.Kind switch
    {
        StepKind.Weigh => false,
        StepKind.Isolate or StepKind.ProveDead => one.Kind == StepKind.Isolate,
        StepKind.Energise => IsWork(one) || one.Kind == StepKind.Energise,
        StepKind.Commission => IsWork(one),
        StepKind.HandOver => !one.IsForOneDay,
        _ => one.Kind is StepKind.Isolate or StepKind.ProveDead || (step.IsOntoLive && IsWork(one)),
    };

    private static bool IsWork(WorkStep step) => step.Kind is StepKind.Remove or StepKind.Fit or StepKind.Run or StepKind.MakeOff or StepKind.TestFree or StepKind.Connect or StepKind.Test;

    private static string Lead(WorkStep step) => step.Kind == StepKind.Energise ? "plug in and close" : PackText.Of(step.Kind).ToLowerInvariant();

    private static IEnumerable<(int Number, WorkStep Step)> Numbered(IReadOnlyList<WorkStep> steps) => steps.Select((step, index) => (index + 1, step));

    private static string Named(int[] numbers)
    {
        string[] first = [.. numbers.Take(MostNumbers).Select(number => number.ToString(CultureInfo.InvariantCulture))];
        return numbers.Length == 1 ? $"Step {first[0]}"
            : numbers.Length > MostNumbers ? $"Steps {string.Join(", ", first)} and {numbers.Length - MostNumbers} more"
            : $"Steps {string.Join(", ", first[..^1])} and {first[^1]}";
    }
}
