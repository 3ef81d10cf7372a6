using Orlop.Work.Steps;

namespace Orlop.App.Parts;

/// <summary>What was read in a step and has no field among the readings: kept with its tick, in the words it was typed in.</summary>
internal static class StepNote
{
    /// <summary>It is typed at the step itself: masses go into sheets, freeboards into a survey.</summary>
    public static bool IsTakenIn(WorkStep step) => step.WriteDown is { Into: null } && step.Kind != StepKind.Weigh;

    /// <summary>What stands before its field.</summary>
    public static string Label(WriteDown write) => write.Accepts.Length > 1 ? $"What it read, {write.Accepts.Length} readings in that order" : $"{write.What ?? "What it read"}, {write.Unit}";

    /// <summary>The shape of how a test stands.</summary>
    public static Orlop.Review.Findings.Verdict Verdict(StepTest test) => test.Standing switch
    {
        TestStanding.Passed => Orlop.Review.Findings.Verdict.Holds,
        TestStanding.Outside => Orlop.Review.Findings.Verdict.Fails,
        _ => Orlop.Review.Findings.Verdict.Unknown,
    };
}
