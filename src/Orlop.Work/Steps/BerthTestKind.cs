using Orlop.Boat.Things;

namespace Orlop.Work.Steps;

/// <summary>A test of the whole boat at her berth that a step asks for. Whether the step is done is judged by whether one is typed in that was made after the work.</summary>
public enum BerthTestKind { Freeboards, Inclining }

/// <summary>Names of these tests, and which is which.</summary>
public static class BerthTestKinds
{
    /// <summary>"freeboard survey".</summary>
    public static string Name(this BerthTestKind kind) => kind == BerthTestKind.Freeboards ? "freeboard survey" : "inclining test";

    /// <summary>A test is of this kind.</summary>
    public static bool IsOf(this BerthTestKind kind, BerthTest test) => kind == BerthTestKind.Freeboards ? test is FreeboardSurvey : test is InclinationTest;
}
