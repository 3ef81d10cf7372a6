using System.Globalization;
using System.Text.RegularExpressions;

namespace Orlop.Hull.Surfaces;

/// <summary>How a column of a table of offsets writes its lengths.</summary>
/// <param name="Suffix">What the column's name ends with.</param>
/// <param name="UnitM">One of its units.</param>
/// <param name="Allowed">What it may hold, in words.</param>
internal sealed partial record OffsetUnit(string Suffix, double UnitM, string Allowed)
{
    private const double InchM = 0.0254;

    public static readonly OffsetUnit FeetInchesEighths = new("ft_in_8", InchM / 16, "feet-inches-eighths such as 3-4-5, or 3-4-5+ for a sixteenth more; inches 0 to 11, eighths 0 to 7");

    /// <summary>Longest suffix first, since some end with others.</summary>
    public static readonly OffsetUnit[] All =
    [
        FeetInchesEighths,
        new("ft", 12 * InchM, "decimal feet"),
        new("in", InchM, "decimal inches"),
        new("m", 1, "metres"),
    ];

    /// <summary>The length in m; null for what is not written as it should be.</summary>
    public double? Read(string cell)
    {
        if (this != FeetInchesEighths)
        {
            return double.TryParse(cell, NumberStyles.Float, CultureInfo.InvariantCulture, out var value) && double.IsFinite(value) ? value * UnitM : null;
        }

        if (Threefold().Match(cell) is not { Success: true } match)
        {
            return cell == "0" ? 0 : null;
        }

        var (feet, inches, eighths) = (Whole(match, 2), Whole(match, 3), Whole(match, 4));
        var sixteenths = (((feet * 12) + inches) * 16) + (eighths * 2) + match.Groups[5].Length;
        return inches <= 11 && eighths <= 7 ? (match.Groups[1].Length > 0 ? -1 : 1) * sixteenths * UnitM : null;
    }

    private static int Whole(Match match, int group) => int.Parse(match.Groups[group].ValueSpan, NumberStyles.None, CultureInfo.InvariantCulture);

    [GeneratedRegex(@"^(-?)(\d{1,4})-(\d{1,2})-(\d)(\+?)$")]
    private static partial Regex Threefold();
}
