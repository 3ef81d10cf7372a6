using Orlop.Hull.Floating;

namespace Orlop.Review.Stability;

/// <summary>
/// How sure a result is: its change per kg of displacement and per metre of LCG, TCG and KG, by differences of one standard deviation, and the weight's covariance (linear
/// propagation). A boat whose weight is not sure enough for a straight line between is told as unknown by her band anyway.
/// </summary>
public static class ResultDeviation
{
    private const double LeastStepKg = 1;
    private const double LeastStepM = 0.001;

    /// <summary>One standard deviation of a result; infinite where a neighbouring boat gives none.</summary>
    public static double Of(LoadedBoat loaded, Func<FloatingInput, double?> result)
    {
        ArgumentNullException.ThrowIfNull(loaded);
        ArgumentNullException.ThrowIfNull(result);
        return loaded.Total is { } total && SlopesOf(loaded, result) is { } slopes ? slopes.Deviation(total) : double.PositiveInfinity;
    }

    /// <summary>How a result changes with the weight; null where a neighbouring boat gives none.</summary>
    internal static WeightSlopes? SlopesOf(LoadedBoat loaded, Func<FloatingInput, double?> result)
    {
        if (loaded is not { Total: { } total, Input: { } input })
        {
            return null;
        }

        double kg = Math.Max(LeastStepKg, total.MassDeviationKg);
        double?[] slopes =
        [
            Slope(kg, step => input with { MassKg = input.MassKg + step }),
            Slope(Math.Max(LeastStepM, total.LcgDeviationM), step => input with { CentreOfGravity = input.CentreOfGravity with { XM = input.CentreOfGravity.XM + step } }),
            Slope(Math.Max(LeastStepM, total.TcgDeviationM), step => input with { CentreOfGravity = input.CentreOfGravity with { YM = input.CentreOfGravity.YM + step } }),
            Slope(Math.Max(LeastStepM, total.KgDeviationM), step => input with { CentreOfGravity = input.CentreOfGravity with { ZM = input.CentreOfGravity.ZM + step } }),
        ];
        return slopes.Any(slope => slope is null) ? null : new WeightSlopes(slopes[0]!.Value, slopes[1]!.Value, slopes[2]!.Value, slopes[3]!.Value);

        double? Slope(double step, Func<double, FloatingInput> with) => (result(with(step)) - result(with(-step))) / (2 * step);
    }
}
