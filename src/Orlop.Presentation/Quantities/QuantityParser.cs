using System.Globalization;
using System.Text.RegularExpressions;
using Orlop.Boat.Values;

namespace Orlop.Presentation.Quantities;

/// <summary>Reads typed text for one dimension.</summary>
internal sealed partial class QuantityParser(Dimension dimension, DisplayUnits units, CultureInfo culture, string examples)
{
    private const int LongestText = 100;
    private const double SameRatio = 0.01;

    internal QuantityReading Read(string text)
    {
        string normal = QuantityMarks.Normalised(text);
        if (normal.Length is 0 or > LongestText)
        {
            return Refuse(normal.Length == 0 ? "Nothing was typed" : "The text is too long");
        }

        Match inBrackets = Brackets().Match(normal);
        if (inBrackets.Success)
        {
            return ReadWithBrackets(text, inBrackets);
        }

        QuantityMarks marks = QuantityMarks.Of(normal);
        return ReadGauge(marks, text) ?? ReadTerms(marks, text);
    }

    private QuantityReading ReadWithBrackets(string text, Match match)
    {
        QuantityReading said = Read(match.Groups["said"].Value);
        QuantityReading repeated = Read(match.Groups["again"].Value);
        if (said.Quantity is null || repeated.Quantity is null)
        {
            return said.Quantity is null ? said : repeated;
        }

        return Math.Abs(said.Quantity.Value - repeated.Quantity.Value) <= SameRatio * Math.Abs(said.Quantity.Value)
            ? said with { Quantity = said.Quantity with { Typed = text.Trim() } }
            : Refuse($"'{text.Trim()}' gives two different values");
    }

    private QuantityReading? ReadGauge(QuantityMarks marks, string text)
    {
        bool mayBeBare = units == DisplayUnits.Us;
        if (!dimension.TakesWireGauge || WireGauge.Read(marks.Value, mayBeBare) is not { } number)
        {
            return null;
        }

        if (marks.PlusMinus is not null)
        {
            return Refuse("A wire gauge takes no ±");
        }

        bool isBare = !marks.Value.Contains(WireGauge.Symbol, StringComparison.OrdinalIgnoreCase);
        return Taken(new Quantity(WireGauge.AreaMm2(number), marks.Known), text, isBare ? WireGauge.Symbol : "");
    }

    private QuantityReading ReadTerms(QuantityMarks marks, string text)
    {
        bool isNegative = marks.Value.StartsWith('-');
        Terms? terms = Terms.Of(marks.Value.TrimStart('-', '+', ' '), dimension, culture, out string? refusal);
        Terms? plusMinus = null;
        bool isRelative = marks.PlusMinus?.EndsWith('%') == true && !dimension.Units.Any(known => known.IsNamed("%"));
        if (refusal is null && marks.PlusMinus is { } after)
        {
            plusMinus = Terms.Of(after, isRelative ? Units.ForSuffix("Fraction") : dimension, culture, out refusal);
        }

        if (terms is null || refusal is not null)
        {
            return Refuse(refusal ?? $"'{text.Trim()}' is not understood");
        }

        Unit display = dimension.For(units).Bare;
        Unit? unitAfterPlusMinus = isRelative ? null : plusMinus?.LastUnit;
        Unit unit = terms.LastUnit ?? unitAfterPlusMinus ?? display;
        bool isBare = terms.LastUnit is null && unitAfterPlusMinus is null;
        if (isBare && dimension.Suffix == "Fraction" && terms.Bare is > 0 and <= 1)
        {
            string number = marks.Value;
            return Refuse($"'{number}' may mean {number} % or {(terms.Bare * 100)!.Value.ToString("0.###", culture)} %");
        }

        if (isBare && dimension.TakesWireGauge && units == DisplayUnits.Us)
        {
            return Refuse($"'{text.Trim()}' is not a wire gauge, and has no unit");
        }

        decimal magnitude = terms.Bare is { } bare ? unit.ToModel(isNegative ? -bare : bare) : terms.InModel(isNegative);
        decimal? deviation = plusMinus is null ? null
            : isRelative ? Math.Abs(magnitude) * plusMinus.DifferenceInModel()
            : plusMinus.Bare is { } bareDeviation ? unit.DifferenceToModel(bareDeviation)
            : plusMinus.DifferenceInModel();
        return Taken(new Quantity((double)magnitude, marks.Known, (double?)deviation), text, isBare ? display.Symbol : "");
    }

    /// <summary>The quantity with its text; a bare number gets the unit it was taken in, so that another reader sees the same.</summary>
    private QuantityReading Taken(Quantity quantity, string text, string addedSymbol)
    {
        string typed = text.Trim();
        if (addedSymbol.Length == 0)
        {
            return new(quantity with { Typed = typed });
        }

        string withUnit = typed.EndsWith('?') ? $"{typed.TrimEnd('?', ' ')} {addedSymbol}?" : $"{typed} {addedSymbol}";
        return new(quantity with { Typed = withUnit }, Remark: $"Taken as {QuantityText.AsTyped(withUnit, culture)}.");
    }

    private QuantityReading Refuse(string reason) => QuantityReading.Refused($"{reason}; this is {dimension.Name}: write for example {examples}.");

    [GeneratedRegex(@"^(?<said>[^()]+)\((?<again>[^()]+)\)$")]
    private static partial Regex Brackets();
}
