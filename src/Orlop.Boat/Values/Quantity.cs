namespace Orlop.Boat.Values;

/// <summary>How well a value is known, best first.</summary>
public enum Knowledge { Exact, Measured, Sheet, Estimated, Guessed }

/// <summary>
/// A number with how well it is known. The unit is the suffix of the property that holds it (<c>LengthM</c> holds metres).
/// </summary>
/// <param name="Value">Finite, in the property's unit.</param>
/// <param name="Known">How it is known.</param>
/// <param name="PlusMinus">One standard deviation in the same unit, at least 0; null when nobody said.</param>
/// <param name="On">When it was measured.</param>
/// <param name="Method">How it was measured, or where the figure was read.</param>
/// <param name="Typed">What the owner typed, with its unit ("10 AWG", "3 ft 6"), to be shown back.</param>
public sealed record Quantity(
    double Value,
    Knowledge Known = Knowledge.Exact,
    [property: Allowed(0, double.MaxValue)] double? PlusMinus = null,
    DateOnly? On = null,
    string? Method = null,
    string? Typed = null)
{
    public static implicit operator Quantity(double value) => new(value);

    public static Quantity FromDouble(double value) => new(value);
}
