using System.Globalization;
using System.Text.RegularExpressions;
using Orlop.Boat.Things;

namespace Orlop.Work.Bring;

/// <summary>The length or size that a stock item or tool states: in its field, else in its name.</summary>
internal static partial class StatedLength
{
    /// <summary>1 ft in metres, exact (NIST SP 811).</summary>
    private const double FootM = 0.3048;

    /// <summary>Length in a name, in metres: 10 of "Draw wire 10 m", 10.06 of "Draw wire, 33 ft"; null where it names none, or several.</summary>
    public static double? In(string title) => Stated().Matches(title) is [{ } only]
        ? double.Parse(only.Groups["number"].Value.Replace(',', '.'), CultureInfo.InvariantCulture) * (only.Groups["unit"].Value == "ft" ? FootM : 1)
        : null;

    /// <summary>All that a stock item has, in metres: its length, else so many pieces of the length in its name; null where it states none.</summary>
    public static double? Of(StockItem item) => item.LengthM?.Value ?? In(item.Title) * (item.PieceCount ?? 1);

    /// <summary>Size in a name, in millimetres: 12 of "Cable clips, metal, 12 mm", the greater of a range, 16 of "Clips 12-16 mm"; null where it names none, or several.</summary>
    public static double? MillimetresIn(string title) => Sized().Matches(title) is [{ } only] ? double.Parse(only.Groups["number"].Value.Replace(',', '.'), CultureInfo.InvariantCulture) : null;

    [GeneratedRegex(@"(?<![\w.,])(?:[0-9]+(?:[.,][0-9]+)?\s*(?:-|–|to)\s*)?(?<number>[0-9]+(?:[.,][0-9]+)?)\s*mm(?![\w²³])")]
    private static partial Regex Sized();

    [GeneratedRegex(@"(?<![\w.,])(?<number>[0-9]+(?:[.,][0-9]+)?)\s*(?<unit>m|ft)(?![\w²³])")]
    private static partial Regex Stated();
}
