using System.Globalization;
using System.Text.RegularExpressions;

namespace Orlop.Hull.Surfaces;

/// <summary>Lengths as tables of offsets write them: feet-inches-eighths, 3-4-5, and a + for a sixteenth more.</summary>
public static partial class FeetInchesEighths
{
    private const double SixteenthM = 0.0254 / 16;
    private const int SixteenthsPerInch = 16;
    private const int InchesPerFoot = 12;

    /// <summary>The length in m; null for what is not written so, with inches to 11 and eighths to 7.</summary>
    public static double? Read(string text)
    {
        if (Threefold().Match(text) is not { Success: true } match)
        {
            return null;
        }

        var (feet, inches, eighths) = (Whole(match, 2), Whole(match, 3), Whole(match, 4));
        var sixteenths = (((feet * InchesPerFoot) + inches) * SixteenthsPerInch) + (eighths * 2) + match.Groups[5].Length;
        return inches < InchesPerFoot && eighths <= 7 ? (match.Groups[1].Length > 0 ? -1 : 1) * sixteenths * SixteenthM : null;
    }

    /// <summary>A length in m to the nearest sixteenth of an inch.</summary>
    public static string Write(double m)
    {
        var sixteenths = (long)Math.Round(Math.Abs(m) / SixteenthM, MidpointRounding.AwayFromZero);
        var (inches, rest) = Math.DivRem(sixteenths, SixteenthsPerInch);
        return string.Create(CultureInfo.InvariantCulture, $"{(m < 0 && sixteenths > 0 ? "-" : "")}{inches / InchesPerFoot}-{inches % InchesPerFoot}-{rest / 2}{(rest % 2 == 1 ? "+" : "")}");
    }

    private static int Whole(Match match, int group) => int.Parse(match.Groups[group].ValueSpan, NumberStyles.None, CultureInfo.InvariantCulture);

    [GeneratedRegex(@"^(-?)(\d{1,4})-(\d{1,2})-(\d)(\+?)$")]
    private static partial Regex Threefold();
}
