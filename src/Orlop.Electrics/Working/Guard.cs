using System.Runtime.CompilerServices;

namespace Orlop.Electrics.Working;

/// <summary>Refuses impossible input with one message: where, what was found, what is allowed. Written so that NaN fails.</summary>
internal static class Guard
{
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
}
