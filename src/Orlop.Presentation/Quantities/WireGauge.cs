using System.Globalization;
using System.Text.RegularExpressions;

namespace Orlop.Presentation.Quantities;

/// <summary>American wire gauge: d = 0.005 in × 92^((36 − n) / 39), n = 0, −1, −2, −3 for 1/0 to 4/0. [NBS-HB100], the same gauge as ASTM B258.</summary>
public static partial class WireGauge
{
    /// <summary>How the gauge is written.</summary>
    public const string Symbol = "AWG";

    private const int LargestNumber = -3;
    private const int SmallestNumber = 40;
    private const double SameSizeRatio = 0.005;

    /// <summary>Cross-section in mm² of a solid wire of a gauge number from −3 (4/0) to 40.</summary>
    public static double AreaMm2(int number)
    {
        if (number is < LargestNumber or > SmallestNumber)
        {
            throw new ArgumentOutOfRangeException(nameof(number), number, "Wire gauge: allowed 4/0 (-3) to 40.");
        }

        double diameterMm = 0.005 * 25.4 * Math.Pow(92, (36 - number) / 39.0);
        return Math.PI / 4 * diameterMm * diameterMm;
    }

    /// <summary>How a gauge number is written: 10, 1/0, 4/0.</summary>
    public static string Name(int number) => number > 0
        ? number.ToString(CultureInfo.InvariantCulture)
        : string.Create(CultureInfo.InvariantCulture, $"{1 - number}/0");

    /// <summary>The gauge number whose area is within 0.5 % (three digits) of an area in mm², or null.</summary>
    public static int? NumberOf(double areaMm2)
    {
        for (int number = LargestNumber; number <= SmallestNumber; number++)
        {
            double gauge = AreaMm2(number);
            if (Math.Abs(areaMm2 - gauge) <= SameSizeRatio * gauge)
            {
                return number;
            }
        }

        return null;
    }

    /// <summary>Reads "10 AWG", "AWG 10", "1/0", "000 AWG". A bare number only when <paramref name="mayBeBare"/>; null when it is no gauge.</summary>
    internal static int? Read(string text, bool mayBeBare)
    {
        Match match = Pattern().Match(text);
        if (!match.Success)
        {
            return null;
        }

        string number = match.Groups["number"].Value;
        bool isNamed = match.Groups["before"].Success || match.Groups["after"].Success;
        int value = number.Contains('/', StringComparison.Ordinal) ? 1 - (number[0] - '0')
            : number.Trim('0').Length == 0 ? 1 - number.Length
            : int.Parse(number, CultureInfo.InvariantCulture);
        bool isNumber = isNamed || mayBeBare || number.Contains('/', StringComparison.Ordinal);
        return isNumber && value is >= LargestNumber and <= SmallestNumber ? value : null;
    }

    [GeneratedRegex(@"^(?<before>AWG\s*)?(?<number>[1-4]/0|0{1,4}|[1-9]\d?)(?<after>\s*AWG)?$", RegexOptions.IgnoreCase | RegexOptions.CultureInvariant)]
    private static partial Regex Pattern();
}
