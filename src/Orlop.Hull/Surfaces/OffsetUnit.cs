using System.Globalization;

namespace Orlop.Hull.Surfaces;

/// <summary>How a column of a table of offsets writes its lengths.</summary>
/// <param name="Suffix">What the column's name ends with.</param>
/// <param name="UnitM">One of its units.</param>
/// <param name="Allowed">What it may hold, in words.</param>
internal sealed record OffsetUnit(string Suffix, double UnitM, string Allowed)
{
    private const double InchM = 0.0254;

    public static readonly OffsetUnit Threefold = new("ft_in_8", InchM / 16, "feet-inches-eighths such as 3-4-5, or 3-4-5+ for a sixteenth more; inches 0 to 11, eighths 0 to 7");

    /// <summary>Longest suffix first, since some end with others.</summary>
    public static readonly OffsetUnit[] All =
    [
        Threefold,
        new("ft", 12 * InchM, "decimal feet"),
        new("in", InchM, "decimal inches"),
        new("m", 1, "metres"),
    ];

    /// <summary>The length in m; null for what is not written as it should be.</summary>
    public double? Read(string cell)
    {
        if (this == Threefold)
        {
            return cell == "0" ? 0 : FeetInchesEighths.Read(cell);
        }

        return double.TryParse(cell, NumberStyles.Float, CultureInfo.InvariantCulture, out var value) && double.IsFinite(value) ? value * UnitM : null;
    }
}
