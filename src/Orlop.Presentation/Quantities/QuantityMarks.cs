using System.Text.RegularExpressions;
using Orlop.Boat.Values;

namespace Orlop.Presentation.Quantities;

/// <summary>Splits typed text into the value and what is said of how well it is known: "about", "~", "?", "±".</summary>
/// <param name="Value">The text without the marks.</param>
/// <param name="PlusMinus">What follows ±, or null.</param>
/// <param name="Known">What the marks say.</param>
internal sealed partial record QuantityMarks(string Value, string? PlusMinus, Knowledge Known)
{
    internal static QuantityMarks Of(string text)
    {
        string rest = text;
        Knowledge? known = null;
        if (rest.EndsWith('?'))
        {
            rest = rest.TrimEnd('?', ' ');
            known = Knowledge.Guessed;
        }

        Match mark = Prefix().Match(rest);
        if (mark.Success)
        {
            rest = rest[mark.Length..];
            known ??= mark.Value.StartsWith('g') || mark.Value.StartsWith('G') ? Knowledge.Guessed : Knowledge.Estimated;
        }

        string[] halves = PlusMinusSign().Split(rest, 2);
        string? plusMinus = halves.Length == 2 ? halves[1].Trim() : null;
        return new(halves[0].Trim(), plusMinus, known ?? (plusMinus is null ? Knowledge.Exact : Knowledge.Measured));
    }

    /// <summary>One spelling for signs that keyboards and phones write in several ways.</summary>
    internal static string Normalised(string text) => DegreeLetter().Replace(PerWatt().Replace(
        text.Trim()
            .Replace('\u00A0', ' ').Replace('\u202F', ' ').Replace('\u2009', ' ')
            .Replace('\u2126', 'Ω').Replace('μ', 'µ').Replace('\u2212', '-').Replace('\u2013', '-')
            .Replace('’', '\'').Replace('‘', '\'').Replace('′', '\'')
            .Replace('“', '"').Replace('”', '"').Replace('″', '"').Replace("''", "\"", StringComparison.Ordinal)
            .Replace("short ton", "shortton", StringComparison.OrdinalIgnoreCase),
        " /W"), "°$1");

    /// <summary>A text that was read, with squares and cubes raised: "16 mm2" as "16 mm²"; a power of ten, "1.78e2", is left.</summary>
    internal static string Raised(string text) => Power().Replace(text, power => power.Value.EndsWith('2') ? "²" : "³");

    [GeneratedRegex(@"(?<=[\p{L}])(?<!\d[eE])\^?[23](?![\d.,\p{L}^])|(?<=A)2(?=s\b)")]
    private static partial Regex Power();

    [GeneratedRegex(@"^(about|approximately|approx\.?|circa|ca\.?|guess(ed)?:?|~|≈)\s*", RegexOptions.IgnoreCase | RegexOptions.CultureInvariant)]
    private static partial Regex Prefix();

    [GeneratedRegex(@"±|\+\s*/?\s*-")]
    private static partial Regex PlusMinusSign();

    [GeneratedRegex(@"(?:\bdeg\.?|°)\s*([CF])\b", RegexOptions.IgnoreCase | RegexOptions.CultureInvariant)]
    private static partial Regex DegreeLetter();

    [GeneratedRegex(@"\s+1/W\b")]
    private static partial Regex PerWatt();
}
