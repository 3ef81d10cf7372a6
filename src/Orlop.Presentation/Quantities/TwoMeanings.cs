using System.Globalization;
using System.Text.RegularExpressions;

namespace Orlop.Presentation.Quantities;

/// <summary>A text in which one mark may divide a number's decimals or group its thousands, as in 1,093: both readings.</summary>
internal static partial class TwoMeanings
{
    /// <summary>
    /// The one reading that a field's range leaves, told with what was not meant; null where the text has one meaning, and where the range leaves both or none.
    /// </summary>
    /// <param name="read">Reads a text that has one meaning.</param>
    /// <param name="isAllowed">The value is in the field's range.</param>
    public static QuantityReading? OneLeft(string text, CultureInfo culture, Func<string, QuantityReading> read, Predicate<double> isAllowed)
    {
        string separator = culture.NumberFormat.NumberDecimalSeparator == "," ? "," : ".";
        Regex marked = separator == "," ? Point() : Comma();
        if (!marked.IsMatch(text))
        {
            return null;
        }

        (string Text, QuantityReading Reading)[] all = [.. new[] { separator, "" }.Select(mark => marked.Replace(text, match => $"{match.Groups["whole"]}{mark}{match.Groups["rest"]}")).Select(one => (one, read(one)))];
        (string Text, QuantityReading Reading)[] allowed = [.. all.Where(one => one.Reading.Quantity is { } quantity && isAllowed(quantity.Value))];
        return allowed.Length == 1 && all.All(one => one.Reading.Quantity is not null)
            ? allowed[0].Reading with { Remark = $"Taken as {allowed[0].Reading.Quantity!.Typed}: {all.Single(one => one.Text != allowed[0].Text).Reading.Quantity!.Typed} is out of range.", IsOneOfTwo = true }
            : null;
    }

    [GeneratedRegex(@"(?<![\d.,])(?<whole>[1-9]\d{0,2}),(?<rest>\d{3})(?![\d.,])")]
    private static partial Regex Comma();

    [GeneratedRegex(@"(?<![\d.,])(?<whole>[1-9]\d{0,2})\.(?<rest>\d{3})(?![\d.,])")]
    private static partial Regex Point();
}
