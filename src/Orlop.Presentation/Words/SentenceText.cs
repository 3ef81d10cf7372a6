using System.Globalization;
using Orlop.Presentation.Quantities;
using Orlop.Review.Findings;

namespace Orlop.Presentation.Words;

/// <summary>Sentences and amounts of the review in the reader's units.</summary>
public static class SentenceText
{
    /// <summary>The sentence with its amounts in display units.</summary>
    public static string Of(Sentence sentence, DisplayUnits units, CultureInfo culture) =>
        string.Concat(sentence.Parts.Select(part => part.Amount is { } amount ? Of(amount, units, culture) : part.Text));

    /// <summary>The amount in display units.</summary>
    public static string Of(Amount amount, DisplayUnits units, CultureInfo culture) =>
        QuantityText.Format(amount.Value, amount.Suffix, units, culture);
}
