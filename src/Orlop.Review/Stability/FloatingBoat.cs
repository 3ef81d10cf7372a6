using Orlop.Hull.Floating;

namespace Orlop.Review.Stability;

/// <summary>Where the boat floats in a condition, and how she rights herself to either side.</summary>
/// <param name="Rest">Where she comes to rest.</param>
/// <param name="Starboard">Levers to starboard.</param>
/// <param name="Port">Levers to port.</param>
public sealed record FloatingBoat(FloatingResult Rest, RightingCurve Starboard, RightingCurve Port)
{
    private const double LastDeg = 180;
    private const double StepDeg = 5;
    private const double SameM = 1e-9;

    /// <summary>The side on which she has the smaller greatest lever before water comes in: the one to judge by. Starboard where there is nothing to choose.</summary>
    public RightingCurve Weaker => GreatestLeverM(Port) < GreatestLeverM(Starboard) - SameM ? Port : Starboard;

    /// <summary>Floats a boat.</summary>
    public static FloatingBoat Of(FloatingInput input, System.Collections.Immutable.ImmutableArray<Opening> openings)
    {
        RightingCurve Side(double toDeg) => RightingCurve.Calculate(new RightingInput { Boat = input, Openings = openings, ToDeg = toDeg, StepDeg = StepDeg });
        return new FloatingBoat(Equilibrium.Solve(input), Side(LastDeg), Side(-LastDeg));
    }

    /// <summary>The greatest lever to one side before water comes in, in metres; minus infinity where there is none.</summary>
    public static double GreatestLeverM(RightingCurve curve)
    {
        ArgumentNullException.ThrowIfNull(curve);
        RightingFeatures read = curve.Features;
        return read switch
        {
            { GreatestGzM: null } => double.NegativeInfinity,
            { GreatestGzDeg: { } heel, DownfloodingDeg: { } flooding } when Math.Abs(flooding) < Math.Abs(heel) => Math.Abs(curve.At(flooding)?.GzM ?? 0),
            { GreatestGzM: { } lever } => lever,
        };
    }
}
