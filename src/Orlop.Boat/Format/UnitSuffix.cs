namespace Orlop.Boat.Format;

/// <summary>The unit that a number's name ends in, from the closed list of <c>docs/conventions.md</c>.</summary>
/// <param name="Suffix">End of the name: <c>Mm2</c>.</param>
/// <param name="Text">As files write it: <c>mm2</c>; empty for a bare number.</param>
/// <param name="Words">In a sentence: square millimetres.</param>
public sealed record UnitSuffix(string Suffix, string Text, string Words)
{
    /// <summary>The whole list. A longer suffix is tried before a shorter one that it ends in.</summary>
    public static IReadOnlyList<UnitSuffix> All { get; } =
    [
        new("MoneyPerM", "", "the owner's currency per metre"),
        new("KgPerM3", "kg/m3", "kilograms per cubic metre"),
        new("Fraction", "", "a fraction from 0 to 1"),
        new("WPerM2K", "W/(m2 K)", "watts per square metre and kelvin"),
        new("WPerMK", "W/(m K)", "watts per metre and kelvin"),
        new("WPerM2", "W/m2", "watts per square metre"),
        new("M3PerH", "m3/h", "cubic metres per hour"),
        new("WhPerM2", "Wh/m2", "watt-hours per square metre"),
        new("KgPerM", "kg/m", "kilograms per metre"),
        new("Factor", "", "a bare factor"),
        new("Money", "", "the owner's currency"),
        new("Month", "", "a month, 1 to 12"),
        new("Ratio", "", "a bare ratio"),
        new("Count", "", "a whole number"),
        new("Hour", "h", "hours; of a day, from midnight"),
        new("Year", "", "a year"),
        new("PerW", "1/W", "per watt"),
        new("Ohm", "ohm", "ohms"),
        new("A2S", "A2s", "ampere squared seconds"),
        new("Cm2", "cm2", "square centimetres"),
        new("Mm2", "mm2", "square millimetres"),
        new("Deg", "deg", "degrees of angle"),
        new("Mm", "mm", "millimetres"),
        new("M2", "m2", "square metres"),
        new("Kg", "kg", "kilograms"),
        new("Ah", "Ah", "ampere-hours"),
        new("Wh", "Wh", "watt-hours"),
        new("Nm", "Nm", "newton metres"),
        new("UT", "uT", "microteslas"),
        new("M", "m", "metres"),
        new("A", "A", "amperes"),
        new("V", "V", "volts"),
        new("W", "W", "watts"),
        new("C", "degC", "degrees Celsius"),
        new("K", "K", "kelvins"),
        new("S", "s", "seconds"),
        new("N", "N", "newtons"),
        new("F", "F", "farads"),
    ];

    /// <summary>The suffix a number's name ends in, or null.</summary>
    public static UnitSuffix? Of(string name) =>
        All.FirstOrDefault(unit => name.Length > unit.Suffix.Length && name.EndsWith(unit.Suffix, StringComparison.Ordinal));
}
