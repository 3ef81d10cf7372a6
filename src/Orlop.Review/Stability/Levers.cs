using System.Collections.Immutable;
using Orlop.Hull.Floating;
using Orlop.Review.Findings;

namespace Orlop.Review.Stability;

/// <summary>Righting levers as the checks take them: to 90° unless less will do, in steps of 5°, between which the engine solves again.</summary>
internal static class Levers
{
    public const double LastDeg = 90;
    private const double StepDeg = 5;

    /// <summary>Levers to one side, 1 for starboard, -1 for port.</summary>
    public static RightingCurve To(int side, FloatingInput boat, ImmutableArray<Opening> openings, double lastDeg = LastDeg) =>
        RightingCurve.Calculate(new RightingInput { Boat = boat, Openings = openings, ToDeg = side * lastDeg, StepDeg = StepDeg });

    /// <summary>A heel as it is said: "heel 2.1° to port".</summary>
    public static Sentence Heel(double heelDeg) => Sentence.Of($"heel {StabilityLines.Deg(Math.Abs(heelDeg))} {Name(heelDeg < 0 ? -1 : 1)}");

    /// <summary>A trim as it is said: "trim 0.6° by the bow".</summary>
    public static Sentence Trim(double trimDeg) => Sentence.Of($"trim {StabilityLines.Deg(Math.Abs(trimDeg))} by the {(trimDeg < 0 ? "bow" : "stern")}");

    /// <summary>Name of a side.</summary>
    public static string Name(int side) => side < 0 ? "to port" : "to starboard";
}
