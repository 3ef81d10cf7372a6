using System.Globalization;
using Orlop.Boat.Values;

namespace Orlop.Presentation.Quantities;

/// <summary>Quantities as people type and read them: the only place where units are converted.</summary>
public static class QuantityText
{
    /// <summary>What is shown for a value that is missing or not finite.</summary>
    public const string Unknown = "unknown";

    private const int CentimetreDecimals = 2;
    private const int MillimetreDecimals = 3;
    private const int AngleDecimals = 1;
    private const int MostDecimals = 15;
    private const double LeastResult = 1e-9;

    /// <summary>
    /// Reads typed text for a property with this unit suffix. "about", "~" and "?" say how well it is known, "±" that it was
    /// measured. Lengths may be feet-inches-eighths (7-10-4), times minutes and seconds (0:16.2). A number without a unit is in the field's display unit, which the remark states.
    /// </summary>
    /// <param name="examples">What a refusal names to be typed instead; where left out, that of any property with the suffix.</param>
    public static QuantityReading Parse(string text, string suffix, DisplayUnits units, CultureInfo culture, string? examples = null)
    {
        QuantityParser parser = new(Units.ForSuffix(suffix), units, culture, examples ?? Units.ForSuffix(suffix).Examples);
        return TradeNotation.Plain(text, suffix, culture) is not { } plain ? parser.Read(text)
            : parser.Read(plain) is { Quantity: { } quantity } read ? read with { Quantity = quantity with { Typed = null } } : parser.Read(plain);
    }

    /// <summary>What someone typed, unit and digits as they are, with the one decimal mark of the culture and with mm² for mm2.</summary>
    public static string AsTyped(string typed, CultureInfo culture) => QuantityMarks.Raised(NumberText.WithMark(typed, culture));

    /// <summary>A quantity as it was typed, where the reader would read that as the same value; else formatted, with its ± where it has one.</summary>
    public static string Format(Quantity? quantity, string suffix, DisplayUnits units, CultureInfo culture)
    {
        if (quantity is null)
        {
            return Unknown;
        }

        if (quantity.Typed is { } typed && Parse(typed, suffix, units, culture).Quantity?.Value == quantity.Value)
        {
            return AsTyped(typed, culture);
        }

        return quantity.PlusMinus is { } plusMinus
            ? new QuantityFormatter(Units.ForSuffix(suffix), units, culture).Format(quantity.Value, plusMinus)
            : Format(quantity.Value, suffix, units, culture);
    }

    /// <summary>A quantity as its own field shows it: as it was typed, else with all the digits that it was given with.</summary>
    public static string InField(Quantity quantity, string suffix, DisplayUnits units, CultureInfo culture)
    {
        ArgumentNullException.ThrowIfNull(quantity);
        return quantity.Typed is { } typed && Parse(typed, suffix, units, culture).Quantity?.Value == quantity.Value
            ? AsTyped(typed, culture)
            : new QuantityFormatter(Units.ForSuffix(suffix), units, culture).Exact(quantity.Value, quantity.PlusMinus);
    }

    /// <summary>A number as its own field shows it: with all the digits that it was given with.</summary>
    public static string InField(double value, string suffix, DisplayUnits units, CultureInfo culture) => new QuantityFormatter(Units.ForSuffix(suffix), units, culture).Exact(value, null);

    /// <summary>As <see cref="InField(Quantity, string, DisplayUnits, CultureInfo)"/>, with no-break spaces: for text that is read and not typed.</summary>
    public static string ShownInField(Quantity quantity, string suffix, DisplayUnits units, CultureInfo culture) => Unbroken(InField(quantity, suffix, units, culture));

    /// <summary>As <see cref="InField(double, string, DisplayUnits, CultureInfo)"/>, with no-break spaces: for text that is read and not typed.</summary>
    public static string ShownInField(double value, string suffix, DisplayUnits units, CultureInfo culture) => Unbroken(InField(value, suffix, units, culture));

    /// <summary>As <see cref="Format(Quantity?, string, DisplayUnits, CultureInfo)"/>, with no-break spaces: for text that is read and not typed.</summary>
    public static string Shown(Quantity? quantity, string suffix, DisplayUnits units, CultureInfo culture) => Unbroken(Format(quantity, suffix, units, culture));

    /// <summary>As <see cref="Format(double, string, DisplayUnits, CultureInfo)"/>, with no-break spaces: for text that is read and not typed.</summary>
    public static string Shown(double value, string suffix, DisplayUnits units, CultureInfo culture) => Unbroken(Format(value, suffix, units, culture));

    /// <summary>
    /// A number that was worked out, for a headline, a table or a line of working, with no more digits than it means: a length to the millimetre, from a
    /// metre up to the centimetre; an angle to a tenth of a degree. What that would make nothing keeps one digit. With no-break spaces.
    /// </summary>
    public static string Result(double value, string suffix, DisplayUnits units, CultureInfo culture) => Shown(
        suffix switch
        {
            "M" when units == DisplayUnits.Metric => Rounded(value, Math.Abs(value) >= 1 ? CentimetreDecimals : MillimetreDecimals),
            "Deg" => Rounded(value, AngleDecimals),
            _ => value,
        },
        suffix,
        units,
        culture);

    private static double Rounded(double value, int decimals)
    {
        // Rounding left over from reckoning is no length.
        if (Math.Abs(value) < LeastResult)
        {
            return 0;
        }

        double rounded = Math.Round(value, decimals, MidpointRounding.AwayFromZero);
        while (rounded == 0 && value != 0 && decimals < MostDecimals)
        {
            rounded = Math.Round(value, ++decimals, MidpointRounding.AwayFromZero);
        }

        return rounded;
    }

    private static string Unbroken(string text) => text.Replace(' ', '\u00A0');

    /// <summary>A number in the unit of its suffix, in the display units; "unknown" when it is not finite.</summary>
    public static string Format(double value, string suffix, DisplayUnits units, CultureInfo culture) =>
        new QuantityFormatter(Units.ForSuffix(suffix), units, culture).Format(value);
}
