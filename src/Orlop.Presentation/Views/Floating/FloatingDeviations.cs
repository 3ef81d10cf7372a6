using Orlop.Hull.Floating;
using Orlop.Review.Stability;

namespace Orlop.Presentation.Views.Floating;

/// <summary>How sure a floating position is: one standard deviation of each number, infinite where it cannot be told.</summary>
public sealed record FloatingDeviations(double MassKg, double DraughtM, double TrimM, double TrimDeg, double HeelDeg, double GmM)
{
    /// <summary>Nothing can be told.</summary>
    public static FloatingDeviations Unknown { get; } = new(double.PositiveInfinity, double.PositiveInfinity, double.PositiveInfinity, double.PositiveInfinity, double.PositiveInfinity, double.PositiveInfinity);

    /// <summary>Of a loaded boat, from the errors of her weight alone.</summary>
    /// <param name="rest">Where she comes to rest, near which her neighbours are sought.</param>
    /// <param name="aftXM">After end of the hull.</param>
    /// <param name="foreXM">Forward end of the hull.</param>
    internal static FloatingDeviations Of(LoadedBoat loaded, FloatingPosition rest, double aftXM, double foreXM)
    {
        Dictionary<FloatingInput, FloatingPosition?> solved = [];
        FloatingPosition? At(FloatingInput input) => solved.TryGetValue(input, out FloatingPosition? known) ? known : solved[input] = Equilibrium.Solve(input, rest.Attitude).Position;
        double Deviation(Func<FloatingPosition, double?> result) => ResultDeviation.Of(loaded, input => At(input) is { } position ? result(position) : null);
        return new FloatingDeviations(
            loaded.Total?.MassDeviationKg ?? double.PositiveInfinity,
            Deviation(position => position.Attitude.WaterHeightM((aftXM + foreXM) / 2, 0)),
            Deviation(position => position.Attitude.WaterHeightM(aftXM, 0) - position.Attitude.WaterHeightM(foreXM, 0)),
            Deviation(position => position.Attitude.TrimDeg),
            Deviation(position => position.Attitude.HeelDeg),
            Deviation(position => position.MetacentricHeightM));
    }
}
