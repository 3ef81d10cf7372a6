using Orlop.Boat.Values;

namespace Orlop.Presentation.Quantities;

/// <summary>What was read from typed text: a quantity, or why not.</summary>
/// <param name="Quantity">The quantity in the model's unit, or null when the text was refused.</param>
/// <param name="Refusal">What was found and what is allowed, or null.</param>
/// <param name="Remark">How the text was taken where it left something open: the unit of a bare number.</param>
public sealed record QuantityReading(Quantity? Quantity, string? Refusal = null, string? Remark = null)
{
    /// <summary>The text had two meanings, of which the field's range left this one.</summary>
    public bool IsOneOfTwo { get; init; }

    internal static QuantityReading Refused(string reason) => new(null, reason);
}
