using Orlop.Boat.Values;

namespace Orlop.Review.Readings;

/// <summary>By what factor a value may truly be smaller or larger than it is put down: two standard deviations either way.</summary>
/// <param name="LeastFactor">Above 0, at most 1.</param>
/// <param name="MostFactor">At least 1.</param>
internal sealed record Knowing(double LeastFactor, double MostFactor)
{
    /// <summary>A joint or contact nobody has measured (from memory: good and poor but sound joints differ by this much).</summary>
    public static Knowing Assumed { get; } = new(0.3, 2);

    /// <summary>Nothing to be unsure of.</summary>
    public static Knowing Exact { get; } = new(1, 1);

    private const double DeviationsRatio = 2;
    private const double SmallestFactor = 0.05;

    /// <summary>Of a quantity: by its ± where it has one, else by how it is known.</summary>
    /// <param name="unmeasured">For a value that is missing, estimated or guessed.</param>
    /// <param name="sheet">Share either way for a value read from a sheet or measured without a ±.</param>
    public static Knowing Of(Quantity? quantity, Knowing unmeasured, double sheet) => quantity switch
    {
        null => unmeasured,
        { PlusMinus: { } deviation, Value: > 0 } => new(Math.Max(SmallestFactor, 1 - (DeviationsRatio * deviation / quantity.Value)), 1 + (DeviationsRatio * deviation / quantity.Value)),
        { Known: Knowledge.Exact } => Exact,
        { Known: Knowledge.Measured or Knowledge.Sheet } => new(1 - sheet, 1 + sheet),
        _ => unmeasured,
    };
}
