using System.Globalization;
using System.Text.RegularExpressions;
using Orlop.Presentation.Quantities;
using Orlop.Review.Findings;

namespace Orlop.Presentation.Words;

/// <summary>Sentences and amounts of the review in the reader's units.</summary>
public static class SentenceText
{
    // The space between a number and a unit that the words themselves write: "0 V", "24 V to 12 V".
    private static readonly Regex UnitSpace = new(
        $@"(?<=\d) (?=(?:{string.Join('|', Units.BySuffix.Values.SelectMany(dimension => dimension.Units).Select(unit => unit.Symbol).Where(symbol => symbol.Length > 0).Distinct().OrderByDescending(symbol => symbol.Length).Select(Regex.Escape))})(?![\p{{L}}\d]))",
        RegexOptions.CultureInvariant);

    /// <summary>The sentence with its amounts in display units.</summary>
    public static string Of(Sentence sentence, DisplayUnits units, CultureInfo culture) =>
        string.Concat(sentence.Parts.Select(part => part.Amount is { } amount ? Of(amount, units, culture) : Unbroken(part.Text ?? "")));

    /// <summary>Plain words, with a no-break space between each number and its unit.</summary>
    public static string Unbroken(string words) => UnitSpace.Replace(words, "\u00A0");

    /// <summary>Words as a list in a sentence, only the first with a capital: "Drilling, heavy and lining burns".</summary>
    public static string Listed(IEnumerable<string> words)
    {
        string[] all = [.. words.Select((word, index) => index == 0 || word.Length == 0 ? word : char.ToLowerInvariant(word[0]) + word[1..])];
        return all.Length < 2 ? string.Concat(all) : $"{string.Join(", ", all[..^1])} and {all[^1]}";
    }

    /// <summary>The amount in display units, with no-break spaces and no more digits than it means.</summary>
    public static string Of(Amount amount, DisplayUnits units, CultureInfo culture) => QuantityText.Result(amount.Value, amount.Suffix, units, culture);
}
