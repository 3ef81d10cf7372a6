using System.Globalization;
using Orlop.Work.Steps;

namespace Orlop.App.Parts;

/// <summary>What is asked once before work goes on past steps that are not ticked; the answer is the owner's.</summary>
internal static class OpenSteps
{
    private const int MostNumbers = 6;

    /// <summary>
    /// The question before a step is ticked: null where every step before it that makes dead or proves dead is ticked today, for the steps that
    /// make dead themselves, and for those after the work, which are done with the power on. Before a proof only what makes dead is asked for.
    /// </summary>
    public static string? BeforeTick(IReadOnlyList<WorkStep> steps, WorkStep step, DateOnly today)
    {
        int[] open = [.. Numbered(steps).TakeWhile(one => one.Step.Key != step.Key).Where(one => Precedes(one.Step, step) && !one.Step.IsDoneOn(today)).Select(one => one.Number)];
        return step.Kind is StepKind.Isolate or StepKind.Energise or StepKind.Commission or StepKind.HandOver || open.Length == 0 ? null
            : $"{Named(open)} before this one, to make the work dead{(step.Kind == StepKind.ProveDead ? "" : " and to prove it")}, {(open.Length == 1 ? "is" : "are")} not ticked today. Tick this one all the same?";
    }

    /// <summary>The question before parts are recorded as built: null where every step that builds them or works on them before is ticked.</summary>
    /// <param name="ids">Ids of the edits to be recorded.</param>
    public static string? BeforeBuild(IReadOnlyList<WorkStep> steps, IReadOnlyCollection<string> ids, DateOnly today)
    {
        (int Number, WorkStep Step)[] numbered = [.. Numbered(steps)];
        int last = numbered.Where(one => one.Step.Builds.Any(ids.Contains)).Select(one => one.Number).DefaultIfEmpty(0).Max();
        int[] open = [.. numbered.Where(one => one.Number <= last && !one.Step.IsForOneDay && one.Step.BuiltOn is null && !one.Step.IsDoneOn(today) && (one.Step.Builds.Any(ids.Contains) || one.Step.About.Any(ids.Contains))).Select(one => one.Number)];
        return open.Length == 0 ? null
            : $"{Named(open)} of what you record {(open.Length == 1 ? "is" : "are")} not ticked. Record it as built all the same?";
    }

    private static bool Precedes(WorkStep one, WorkStep step) => one.Kind == StepKind.Isolate || (one.Kind == StepKind.ProveDead && step.Kind != StepKind.ProveDead);

    private static IEnumerable<(int Number, WorkStep Step)> Numbered(IReadOnlyList<WorkStep> steps) => steps.Select((step, index) => (index + 1, step));

    private static string Named(int[] numbers)
    {
        string[] first = [.. numbers.Take(MostNumbers).Select(number => number.ToString(CultureInfo.InvariantCulture))];
        return numbers.Length == 1 ? $"Step {first[0]}"
            : numbers.Length > MostNumbers ? $"Steps {string.Join(", ", first)} and {numbers.Length - MostNumbers} more"
            : $"Steps {string.Join(", ", first[..^1])} and {first[^1]}";
    }
}
