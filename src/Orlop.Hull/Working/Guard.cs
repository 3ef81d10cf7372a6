using System.Runtime.CompilerServices;
using Orlop.Hull.Surfaces;

namespace Orlop.Hull.Working;

/// <summary>Refuses impossible input with one message: where, what was found, what is allowed. Written so that NaN fails.</summary>
internal static class Guard
{
    /// <summary>No boat this tool is for has a measure beyond this; a number of another unit often has.</summary>
    private const double FarthestM = 1000;

    public static double InRange(double value, double least, double most, string unit, string where,
        [CallerArgumentExpression(nameof(value))] string? name = null)
    {
        if (value >= least && value <= most)
        {
            return value;
        }

        throw new ArgumentOutOfRangeException(name, value,
            FormattableString.Invariant($"{where}: {name} = {value} {unit}; allowed {least} to {most} {unit}."));
    }

    public static double Positive(double value, double most, string unit, string where,
        [CallerArgumentExpression(nameof(value))] string? name = null)
    {
        if (value > 0 && value <= most)
        {
            return value;
        }

        throw new ArgumentOutOfRangeException(name, value,
            FormattableString.Invariant($"{where}: {name} = {value} {unit}; allowed above 0, to {most} {unit}."));
    }

    public static Point3 Place(Point3 place, string where, [CallerArgumentExpression(nameof(place))] string? name = null)
    {
        InRange(place.XM, -FarthestM, FarthestM, "m", where, $"{name}.XM");
        InRange(place.YM, -FarthestM, FarthestM, "m", where, $"{name}.YM");
        InRange(place.ZM, -FarthestM, FarthestM, "m", where, $"{name}.ZM");
        return place;
    }

    /// <summary>Water from fresh to the saltiest sea.</summary>
    public static double Water(double waterKgPerM3, string where) =>
        InRange(waterKgPerM3, 950, 1100, "kg/m³", where);
}
