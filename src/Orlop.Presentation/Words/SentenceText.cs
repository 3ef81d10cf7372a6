using System.Globalization;
using Orlop.Presentation.Quantities;
using Orlop.Review.Findings;

namespace Orlop.Presentation.Words;

/// <summary>Sentences and amounts of the review in the reader's units.</summary>
public static class SentenceText
{
    private const int CentimetreDecimals = 2;

    /// <summary>The sentence with its amounts in display units.</summary>
    public static string Of(Sentence sentence, DisplayUnits units, CultureInfo culture) =>
        string.Concat(sentence.Parts.Select(part => part.Amount is { } amount ? Of(amount, units, culture) : part.Text));

    /// <summary>The amount in display units, with no-break spaces; a length from a metre up to the centimetre.</summary>
    public static string Of(Amount amount, DisplayUnits units, CultureInfo culture) =>
        QuantityText.Shown(IsLongLength(amount) && units == DisplayUnits.Metric ? Math.Round(amount.Value, CentimetreDecimals, MidpointRounding.AwayFromZero) : amount.Value, amount.Suffix, units, culture);

    private static bool IsLongLength(Amount amount) => amount.Suffix == "M" && Math.Abs(amount.Value) >= 1;
}
