using System.Collections.Immutable;
using Orlop.Hull.Floating;
using Orlop.Hull.Measuring;
using Orlop.Hull.Surfaces;

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
    public static double Of(LoadedBoat loaded, Func<FloatingInput, double?> result) =>
        loaded.Total is { } total && SlopesOf(loaded, result) is { } slopes ? slopes.Deviation(total) : double.PositiveInfinity;

    /// <summary>A result with its band; infinitely wide where a neighbouring boat gives none.</summary>
    internal static Banded Banded(LoadedBoat loaded, double value, Func<FloatingInput, double?> result) => Stability.Banded.Of(value, loaded, SlopesOf(loaded, result));

    /// <summary>How a result changes with the weight; null where a neighbouring boat gives none.</summary>
    internal static WeightSlopes? SlopesOf(LoadedBoat loaded, Func<FloatingInput, double?> result)
    {
        ArgumentNullException.ThrowIfNull(result);
        ImmutableArray<FloatingInput> boats = Neighbours(loaded);
        if (boats.IsEmpty)
        {
            return null;
        }

        double?[] values = [.. boats.Select(result)];
        double[] steps = Steps(loaded.Total!);
        return values.Contains(null)
            ? null
            : new WeightSlopes(Slope(0), Slope(1), Slope(2), Slope(3));

        double Slope(int number) => (values[2 * number]!.Value - values[(2 * number) + 1]!.Value) / (2 * steps[number]);
    }

    /// <summary>A boat heavier and one lighter by a deviation, then as much forward and aft, to port and to starboard, up and down; none without a weight and a hull.</summary>
    internal static ImmutableArray<FloatingInput> Neighbours(LoadedBoat loaded)
    {
        ArgumentNullException.ThrowIfNull(loaded);
        if (loaded is not { Total: { } total, Input: { } boat })
        {
            return [];
        }

        double[] steps = Steps(total);
        return
        [
            boat with { MassKg = boat.MassKg + steps[0] }, boat with { MassKg = boat.MassKg - steps[0] },
            .. new[] { new Point3(steps[1], 0, 0), new Point3(0, steps[2], 0), new Point3(0, 0, steps[3]) }
                .SelectMany(step => new[] { boat with { CentreOfGravity = boat.CentreOfGravity + step }, boat with { CentreOfGravity = boat.CentreOfGravity - step } }),
        ];
    }

    private static double[] Steps(WeightTotal total) =>
    [
        Math.Max(LeastStepKg, total.MassDeviationKg), Math.Max(LeastStepM, total.LcgDeviationM), Math.Max(LeastStepM, total.TcgDeviationM), Math.Max(LeastStepM, total.KgDeviationM),
    ];
}
