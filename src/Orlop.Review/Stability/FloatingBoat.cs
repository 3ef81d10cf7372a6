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
    public static double GreatestLeverM(RightingCurve curve) => GreatestLever(curve)?.LeverM ?? double.NegativeInfinity;

    /// <summary>The same with its heel, in degrees with the sign of the side; null where she has none before water comes in.</summary>
    public static (double LeverM, double HeelDeg)? GreatestLever(RightingCurve curve)
    {
        ArgumentNullException.ThrowIfNull(curve);
        RightingFeatures read = curve.Features;
        if (read is not { GreatestGzM: { } lever, GreatestGzDeg: { } heel })
        {
            return null;
        }

        // The levers rise to the greatest of them: of those before water comes in the last is the greatest.
        return read.DownfloodingDeg is not { } flooding || Math.Abs(flooding) >= Math.Abs(heel) ? (lever, heel)
            : Math.Abs(flooding) > Math.Abs(read.LollDeg ?? 0) && curve.At(flooding) is { } last ? (Math.Abs(last.GzM), flooding)
            : null;
    }
}
