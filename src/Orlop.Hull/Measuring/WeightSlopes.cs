namespace Orlop.Hull.Measuring;

/// <summary>How a result changes with the boat's weight, in the result's own unit.</summary>
/// <param name="PerMassKg">Per kilogram more at the same centre.</param>
/// <param name="PerLcgM">Per metre that the centre lies further forward.</param>
/// <param name="PerTcgM">Per metre that it lies further to port.</param>
/// <param name="PerKgM">Per metre that it lies higher.</param>
public readonly record struct WeightSlopes(double PerMassKg, double PerLcgM, double PerTcgM, double PerKgM)
{
    /// <summary>Slopes that cannot be told: a deviation from them is not a number, and nothing holds by it.</summary>
    public static WeightSlopes Untold { get; } = new(double.NaN, double.NaN, double.NaN, double.NaN);

    public static WeightSlopes operator -(WeightSlopes a, WeightSlopes b) =>
        new(a.PerMassKg - b.PerMassKg, a.PerLcgM - b.PerLcgM, a.PerTcgM - b.PerTcgM, a.PerKgM - b.PerKgM);

    public static WeightSlopes operator *(double factor, WeightSlopes a) =>
        new(factor * a.PerMassKg, factor * a.PerLcgM, factor * a.PerTcgM, factor * a.PerKgM);

    /// <summary>One standard deviation of the result for a weight as well known as this; NaN where a slope is.</summary>
    public double Deviation(WeightTotal total)
    {
        ArgumentNullException.ThrowIfNull(total);
        return total.Deviation(PerMassKg, PerLcgM, PerTcgM, PerKgM);
    }
}
