namespace Orlop.Presentation.Views;

/// <summary>What was read from a form's box: a value, which may be none, or why not.</summary>
/// <param name="IsGood">It can be kept.</param>
/// <param name="Value">The value for the field; null empties it.</param>
/// <param name="Refusal">What was found and what is allowed.</param>
/// <param name="Remark">How the text was taken, where it left something open.</param>
public sealed record FieldReading(bool IsGood, object? Value, string? Refusal = null, string? Remark = null)
{
    /// <summary>The text had two meanings, of which the field's range left this one: the remark says which.</summary>
    public bool IsOneOfTwo { get; init; }

    internal static FieldReading Refused(string reason) => new(false, null, reason);
}
