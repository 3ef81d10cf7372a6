using System.Globalization;
using System.Text.RegularExpressions;
using Orlop.Hull.Surfaces;

namespace Orlop.Presentation.Quantities;

/// <summary>Lengths and times as the trade writes them without naming a unit: feet-inches-eighths (7-10-4, 7-10-4+), and minutes and seconds of a stopwatch (0:16.2).</summary>
internal static partial class TradeNotation
{
    private const int SecondsPerMinute = 60;

    /// <summary>The same as a number with its unit; null for what is not written so, or is no length or time.</summary>
    /// <param name="suffix">Unit suffix of the property.</param>
    public static string? Plain(string text, string suffix, CultureInfo culture) => suffix switch
    {
        "M" when FeetInchesEighths.Read(text.Trim()) is { } metres => $"{metres.ToString("R", culture)} m",
        "S" when Stopwatch().Match(text.Trim()) is { Success: true } match => $"{Seconds(match).ToString("R", culture)} s",
        _ => null,
    };

    private static double Seconds(Match match) =>
        (SecondsPerMinute * int.Parse(match.Groups[1].ValueSpan, NumberStyles.None, CultureInfo.InvariantCulture))
        + double.Parse(match.Groups[2].Value.Replace(',', '.'), NumberStyles.AllowDecimalPoint, CultureInfo.InvariantCulture);

    [GeneratedRegex(@"^(\d{1,3}):([0-5]?\d(?:[.,]\d{1,3})?)$")]
    private static partial Regex Stopwatch();
}
