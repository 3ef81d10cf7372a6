using Orlop.Review.Findings;

namespace Orlop.Review.Readings;

/// <summary>What a reading is expected to be, and the range that is accepted. All three in volts or all three in amperes.</summary>
/// <param name="Nominal">With every input at its value.</param>
/// <param name="Least">The lowest that is accepted, the meter's error included.</param>
/// <param name="Most">The highest that is accepted, the meter's error included.</param>
public sealed record Band(Amount Nominal, Amount Least, Amount Most)
{
    private const double BetweenUnits = 1000;

    /// <summary>Suffix of its unit: V or A.</summary>
    public string Suffix => Nominal.Suffix;

    /// <summary>The value lies in the accepted range.</summary>
    public bool Contains(double value) => value >= Least.Value && value <= Most.Value;

    /// <summary>Its sign is certain: everything in it is on one side of nothing.</summary>
    public bool HasSign => Least.Value > 0 || Most.Value < 0;

    /// <summary>A current is told along the way it is expected to flow: the same band, with its nominal value positive.</summary>
    public Band Forward() => Nominal.Value < 0 ? new Band(Minus(Nominal), Minus(Most), Minus(Least)) : this;

    /// <summary>A reading has the other sign than everything that is accepted, by more than the meter's own error.</summary>
    public bool IsTurned(double value, double meterError) => HasSign && value * Nominal.Value < 0 && Math.Abs(value) > meterError;

    /// <summary>The value in the unit a thousand times larger or smaller, where only that lies in the accepted range; else null.</summary>
    public Amount? Meant(double value) => Contains(value) ? null
        : Contains(value * BetweenUnits) ? Nominal with { Value = value * BetweenUnits }
        : Contains(value / BetweenUnits) && Math.Abs(value) > Math.Abs(Nominal.Value) ? Nominal with { Value = value / BetweenUnits }
        : null;

    private static Amount Minus(Amount amount) => amount with { Value = -amount.Value };
}
