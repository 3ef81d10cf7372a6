using System.Globalization;
using System.Text.RegularExpressions;

namespace Orlop.Presentation.Quantities;

/// <summary>Numbers with their units, as in "3 ft 6 in": each unit smaller than the one before it.</summary>
internal sealed partial class Terms
{
    private readonly List<(decimal Number, Unit Unit)> _terms = [];

    private Terms() { }

    /// <summary>The number, where it stands alone without a unit.</summary>
    internal decimal? Bare { get; private set; }

    internal Unit? LastUnit => _terms.Count == 0 ? null : _terms[^1].Unit;

    internal decimal InModel(bool isNegative) => _terms.Sum(term => term.Unit.ToModel(isNegative ? -term.Number : term.Number));

    internal decimal DifferenceInModel() => _terms.Sum(term => term.Unit.DifferenceToModel(term.Number));

    internal static Terms? Of(string text, Dimension dimension, CultureInfo culture, out string? refusal)
    {
        Terms terms = new();
        refusal = null;
        int at = 0;
        while (at < text.Length)
        {
            Match match = Term().Match(text, at);
            if (!match.Success || match.Index != at)
            {
                refusal = $"'{text[at..].Trim()}' is not understood";
                return null;
            }

            if (NumberText.Read(match.Groups["number"].Value, culture, out refusal) is not { } number || !terms.Add(number, match, text, dimension, ref refusal))
            {
                return null;
            }

            at += match.Length;
        }

        refusal = terms.Bare is null && terms._terms.Count == 0 ? "There is no number" : null;
        return refusal is null ? terms : null;
    }

    private bool Add(decimal number, Match match, string text, Dimension dimension, ref string? refusal)
    {
        string named = match.Groups["unit"].Value;
        bool isLast = match.Index + match.Length >= text.Length;
        if (named.Length == 0 && _terms.Count == 0 && isLast)
        {
            Bare = number;
            return true;
        }

        Unit? unit = named.Length == 0 ? LastUnit?.Then : dimension.Units.FirstOrDefault(known => known.IsNamed(named));
        if (unit is null)
        {
            refusal = named.Length == 0 ? $"'{match.Value.Trim()}' has no unit" : Mismatch(match.Value.Trim(), named);
            return false;
        }

        if (_terms.Count > 0 && (unit.Times / unit.Over >= LastUnit!.Times / LastUnit.Over || unit.Shift != 0))
        {
            refusal = $"'{text}' is not understood: {unit.Symbol} cannot follow {LastUnit.Symbol}";
            return false;
        }

        _terms.Add((number, unit));
        return true;
    }

    private static string Mismatch(string term, string named)
    {
        Dimension? other = named.Equals(WireGauge.Symbol, StringComparison.OrdinalIgnoreCase)
            ? Units.ForSuffix("Mm2")
            : Units.BySuffix.Values.OrderBy(known => known.Suffix, StringComparer.Ordinal).FirstOrDefault(known => known.Units.Any(unit => unit.IsNamed(named)));
        return other is null ? $"'{named}' is no unit that is known here" : $"'{term}' is {other.Name}";
    }

    [GeneratedRegex(@"\G\s*(?<number>" + NumberText.Pattern + @")\s*(?<unit>['""%×]|°(?:[CF]\b)?|k?A[2²]s\b|m[3³]/h\b|W/m[2²]K\b|/?[\p{L}]+(?:[/·-][\p{L}]+)*(?:\^?[23](?![\d.,\p{L}])|[²³])?)?\s*", RegexOptions.CultureInvariant)]
    private static partial Regex Term();
}
