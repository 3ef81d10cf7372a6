using System.Collections.Immutable;
using Orlop.Boat.Things;

namespace Orlop.Work.Steps;

/// <summary>What was read in a step, kept in the alteration from when it is typed: beside the step until it is ticked, with its tick from then on.</summary>
public static class StepRemarks
{
    /// <summary>The steps with the ticks and remarks that an alteration holds for them.</summary>
    public static ImmutableArray<WorkStep> Of(IEnumerable<WorkStep> steps, Alteration alteration)
    {
        ArgumentNullException.ThrowIfNull(steps);
        ArgumentNullException.ThrowIfNull(alteration);
        return [.. steps.Select(step => With(step, alteration))];
    }

    /// <summary>What counts of it on a day, as typed; null where nothing does.</summary>
    public static string? On(DateOnly day, WorkStep step, Alteration alteration)
    {
        ArgumentNullException.ThrowIfNull(step);
        ArgumentNullException.ThrowIfNull(alteration);
        return With(step, alteration).NoteOn(day);
    }

    /// <summary>The alteration with what was read: with the tick where that counts on this day, else beside the step. Null or blank takes it away.</summary>
    public static Alteration Noted(Alteration alteration, WorkStep step, string? remark, DateOnly day)
    {
        ArgumentNullException.ThrowIfNull(alteration);
        ArgumentNullException.ThrowIfNull(step);
        string? typed = string.IsNullOrWhiteSpace(remark) ? null : remark.Trim();
        return With(step, alteration) is var seen && seen.Tick is { } tick && seen.IsTickedOn(day)
            ? alteration with { Ticks = [.. alteration.Ticks.Select(one => one == tick ? tick with { Remark = typed } : one)] }
            : alteration with { StepRemarks = [.. Others(alteration, step), .. typed is null ? Array.Empty<StepRemark>() : [new StepRemark(step.Key, day, typed, seen.IsLeftOutOn(day))]] };
    }

    /// <summary>The alteration with the step left out, or taken up again; what is beside it says why, and without that nothing is left out.</summary>
    public static Alteration LeftOut(Alteration alteration, WorkStep step, bool isLeftOut, DateOnly day)
    {
        ArgumentNullException.ThrowIfNull(alteration);
        ArgumentNullException.ThrowIfNull(step);
        return With(step, alteration) is var seen && !seen.IsTickedOn(day) && seen.Remark is { } remark && seen.NoteOn(day) is not null
            ? alteration with { StepRemarks = [.. alteration.StepRemarks.Select(one => one == remark ? remark with { IsLeftOut = isLeftOut } : one)] }
            : alteration;
    }

    /// <summary>The alteration with the step ticked on a day, and what was read with its tick.</summary>
    public static Alteration Ticked(Alteration alteration, WorkStep step, DateOnly day)
    {
        ArgumentNullException.ThrowIfNull(alteration);
        ArgumentNullException.ThrowIfNull(step);
        return alteration with
        {
            Ticks = [.. OtherTicks(alteration, step), new StepTick(step.Key, day, On(day, step, alteration))],
            StepRemarks = [.. Others(alteration, step)],
        };
    }

    /// <summary>The alteration with the tick taken away; what was read stays beside the step.</summary>
    public static Alteration Unticked(Alteration alteration, WorkStep step)
    {
        ArgumentNullException.ThrowIfNull(alteration);
        ArgumentNullException.ThrowIfNull(step);
        return alteration.Ticks.FirstOrDefault(tick => tick.Step == step.Key) is not { } tick ? alteration : alteration with
        {
            Ticks = [.. OtherTicks(alteration, step)],
            StepRemarks = tick.Remark is { } remark ? [.. Others(alteration, step), new StepRemark(step.Key, tick.On, remark)] : alteration.StepRemarks,
        };
    }

    private static WorkStep With(WorkStep step, Alteration alteration) => step with
    {
        Tick = alteration.Ticks.FirstOrDefault(tick => tick.Step == step.Key),
        Remark = alteration.StepRemarks.FirstOrDefault(remark => remark.Step == step.Key),
    };

    private static IEnumerable<StepTick> OtherTicks(Alteration alteration, WorkStep step) => alteration.Ticks.Where(tick => tick.Step != step.Key);

    private static IEnumerable<StepRemark> Others(Alteration alteration, WorkStep step) => alteration.StepRemarks.Where(remark => remark.Step != step.Key);
}
