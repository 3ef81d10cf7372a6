using Orlop.Review.Findings;

namespace Orlop.Work.Readings;

/// <summary>What a reading is expected to be, and the range that is accepted. All three in volts or all three in amperes.</summary>
/// <param name="Nominal">With every input at its value.</param>
/// <param name="Least">The lowest that is accepted, the meter's error included.</param>
/// <param name="Most">The highest that is accepted, the meter's error included.</param>
public sealed record Band(Amount Nominal, Amount Least, Amount Most)
{
    /// <summary>Suffix of its unit: V or A.</summary>
    public string Suffix => Nominal.Suffix;

    /// <summary>The value lies in the accepted range.</summary>
    public bool Contains(double value) => value >= Least.Value && value <= Most.Value;
}
