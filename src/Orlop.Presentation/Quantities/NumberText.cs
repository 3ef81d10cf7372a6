using System.Globalization;
using System.Text.RegularExpressions;

namespace Orlop.Presentation.Quantities;

/// <summary>Reads one number as people write it, with a point or a comma for the decimals; never guesses whether a separator groups or divides.</summary>
internal static partial class NumberText
{
    internal const string Pattern = @"(?:\d+(?:\s+|-)\d+/\d+|\d+/\d+|\d{1,3}(?:\s\d{3})+(?:[.,]\d+)?(?!\d)|(?:\d[\d.,]*|[.,]\d+)(?:[eE][-+]?\d+)?)";

    /// <summary>The number, or null with the reason.</summary>
    internal static decimal? Read(string text, CultureInfo culture, out string? refusal)
    {
        refusal = null;
        if (text.Contains('/', StringComparison.Ordinal))
        {
            return ReadFraction(text, ref refusal);
        }

        string separator = culture.NumberFormat.NumberDecimalSeparator == "," ? "," : ".";
        string other = separator == "," ? "." : ",";
        string digits = Spaces().Replace(text, "");
        int dividers = digits.Split(separator).Length - 1;
        int others = digits.Split(other).Length - 1;
        bool isGrouped = others > 0 && Grouped(other).IsMatch(digits);
        if (dividers > 1 || (others > 0 && !isGrouped && (others > 1 || dividers > 0)))
        {
            refusal = $"'{text}' is not a number: points and commas stand in it so that it may mean several. Write one point or one comma for the decimals and nothing between the thousands, as in 1{separator}5 or 1234{separator}5";
            return null;
        }

        if (isGrouped && dividers == 0 && others == 1)
        {
            refusal = $"'{text}' may mean {digits.Replace(other, "", StringComparison.Ordinal)} or {digits.Replace(other, separator, StringComparison.Ordinal)}; write one of them";
            return null;
        }

        string plain = isGrouped ? digits.Replace(other, "", StringComparison.Ordinal) : digits;
        if (decimal.TryParse(plain.Replace(',', '.'), NumberStyles.AllowDecimalPoint | NumberStyles.AllowExponent, CultureInfo.InvariantCulture, out decimal number)
            && number < 1e15m && (number > 0 || !NonZeroMantissa().IsMatch(plain)))
        {
            return number;
        }

        refusal = $"'{text}' is too large, too small or not a number";
        return null;
    }

    /// <summary>A text that was read, with each number's decimals behind the culture's mark: "12,8 V" as "12.8 V".</summary>
    internal static string WithMark(string text, CultureInfo culture)
    {
        string separator = culture.NumberFormat.NumberDecimalSeparator == "," ? "," : ".";
        string other = separator == "," ? "." : ",";
        return OneNumber().Replace(text, number => number.Value.Contains(other, StringComparison.Ordinal) && !Grouped(other).IsMatch(number.Value)
            ? number.Value.Replace(other, separator, StringComparison.Ordinal)
            : number.Value);
    }

    private static decimal? ReadFraction(string text, ref string? refusal)
    {
        string[] parts = text.Split((char[]?)[' ', '-', '/'], StringSplitOptions.RemoveEmptyEntries);
        if (parts.Any(part => part.Length > 9))
        {
            refusal = $"'{text}' is too large";
            return null;
        }

        decimal[] numbers = [.. parts.Select(part => decimal.Parse(part, NumberStyles.None, CultureInfo.InvariantCulture))];
        if (numbers[^1] == 0)
        {
            refusal = $"'{text}' divides by zero";
            return null;
        }

        return (numbers.Length == 3 ? numbers[0] : 0) + (numbers[^2] / numbers[^1]);
    }

    private static Regex Grouped(string separator) => separator == "," ? GroupedByComma() : GroupedByPoint();

    [GeneratedRegex("^[^eE]*[1-9]")]
    private static partial Regex NonZeroMantissa();

    [GeneratedRegex(@"\d[\d.,]*\d|[.,]\d+")]
    private static partial Regex OneNumber();

    [GeneratedRegex(@"\s")]
    private static partial Regex Spaces();

    [GeneratedRegex(@"^[1-9]\d{0,2}(,\d{3})+(\.\d+)?$")]
    private static partial Regex GroupedByComma();

    [GeneratedRegex(@"^[1-9]\d{0,2}(\.\d{3})+(,\d+)?$")]
    private static partial Regex GroupedByPoint();
}
