using System.Globalization;
using Orlop.Boat.Format;
using Orlop.Presentation.Quantities;

namespace Orlop.Presentation.Views;

/// <summary>What a number of a field may be, as people read and type it.</summary>
internal static class FieldLimits
{
    private static readonly CultureInfo ExampleCulture = CultureInfo.InvariantCulture;

    /// <summary>The suffix that the field's numbers are read and shown by.</summary>
    public static string Suffix(FieldSchema field) => field.Unit is { } unit && Units.BySuffix.ContainsKey(unit.Suffix) ? unit.Suffix : "Coefficient";

    /// <summary>What may be typed: of the examples of its unit those that are in its range; its ends where none is.</summary>
    public static string Examples(FieldSchema field, DisplayUnits units, CultureInfo culture)
    {
        string suffix = Suffix(field);
        string[] fitting =
        [
            .. Units.ForSuffix(suffix).Examples.Split([", ", " or "], StringSplitOptions.None)
                .Where(example => QuantityText.Parse(example, suffix, DisplayUnits.Metric, ExampleCulture).Quantity is { } quantity && IsIn(field, quantity.Value)),
        ];
        return fitting.Length switch
        {
            0 => Range(field, units, culture) ?? Units.ForSuffix(suffix).Examples,
            1 => fitting[0],
            _ => $"{string.Join(", ", fitting[..^1])} or {fitting[^1]}",
        };
    }

    /// <summary>The range in the reader's units: "0.2 mm² to 500 mm²"; null where any number goes.</summary>
    public static string? Range(FieldSchema field, DisplayUnits units, CultureInfo culture)
    {
        string Show(double end) => field.Type == FieldType.Count ? end.ToString("0", culture) : QuantityText.Shown(end, Suffix(field), units, culture);
        return field.Allowed switch
        {
            null => null,
            { Most: double.MaxValue } allowed => $"{Show(allowed.Least)} or more",
            { } allowed => $"{Show(allowed.Least)} to {Show(allowed.Most)}",
        };
    }

    /// <summary>The same as words: "from 0.2 mm² to 500 mm²"; null where any number goes.</summary>
    public static string? FromTo(FieldSchema field, DisplayUnits units, CultureInfo culture) =>
        Range(field, units, culture) is { } range ? field.Allowed is { Most: double.MaxValue } ? range : $"from {range}" : null;

    /// <summary>The number is in the field's range.</summary>
    public static bool IsIn(FieldSchema field, double number) => field.Allowed is not { } range || (number >= range.Least && number <= range.Most);
}
