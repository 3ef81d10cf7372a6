using System.Globalization;
using Orlop.Boat.Format;
using Orlop.Boat.Things;
using Orlop.Hull.Surfaces;
using Orlop.Presentation.Quantities;

namespace Orlop.Presentation.Views.Hulls;

/// <summary>Lengths of a hull's lines as people type and read them: to the millimetre, or in feet-inches-eighths as tables of offsets have them, to a sixteenth.</summary>
public static class HullCell
{
    private static readonly RecordSchema Point = RecordSchema.Of(typeof(StationPoint));

    /// <summary>A length as it stands in a box; empty for none.</summary>
    public static string Text(double? m, DisplayUnits units, CultureInfo culture) => m is not { } value ? ""
        : units == DisplayUnits.Metric ? $"{(Math.Round(value, 3) + 0.0).ToString("0.###", culture)} m"
        : FeetInchesEighths.Write(value);

    /// <summary>Reads a forward place, a half-breadth or a height.</summary>
    /// <param name="field">"xM", "halfBreadthM" or "heightM".</param>
    /// <param name="typed">What was typed.</param>
    /// <param name="m">What it says.</param>
    /// <returns>Why it cannot be used; null where it can.</returns>
    public static string? Read(string field, string typed, DisplayUnits units, CultureInfo culture, out double m)
    {
        ArgumentNullException.ThrowIfNull(typed);
        FieldReading read = FieldText.Read(Point.Field(field)!, typed, units, culture);
        m = read.IsGood && read.Value is double value ? value : 0;
        return read.IsGood ? null : read.Refusal;
    }
}
