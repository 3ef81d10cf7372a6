using System.Globalization;
using System.Text.RegularExpressions;
using Orlop.Presentation.Quantities;

namespace Orlop.Work.Steps;

/// <summary>One reading of a test as it was typed.</summary>
/// <param name="Text">As it is shown: with its unit, where none was typed in that of the field.</param>
/// <param name="Least">The least that it can be, in the unit of its suffix.</param>
/// <param name="Most">The most that it can be; infinite for a meter that shows over its range.</param>
internal sealed partial record TypedReading(string Text, double Least, double Most)
{
    /// <summary>
    /// The pieces of a note, each of which should be one reading: divided by semicolons, lines, commas or the blank behind a number. Nothing between two semicolons is an empty piece, that its place be kept;
    /// none stands at the end.
    /// </summary>
    public static string[] Pieces(string note)
    {
        List<string> pieces = [.. Fields().Split(note).SelectMany(field => string.IsNullOrWhiteSpace(field) ? [""] : Divided().Split(field).Select(piece => piece.Trim()).Where(piece => piece.Length > 0))];
        while (pieces is [.., ""])
        {
            pieces.RemoveAt(pieces.Count - 1);
        }

        return [.. pieces];
    }

    /// <summary>The reading in a piece, in the field's unit where it names none; null where it cannot be read, or stands in a unit of something else.</summary>
    public static TypedReading? Of(string piece, AcceptedReading accepted)
    {
        Match match = Piece().Match(piece);
        if (!match.Success)
        {
            return null;
        }

        if (match.Groups["over"].Success)
        {
            return accepted.Suffix == "Ohm" ? new TypedReading("OL (over the meter's range)", double.PositiveInfinity, double.PositiveInfinity) : null;
        }

        // Commas and points alike divide decimals: a reading is never in thousands.
        string number = match.Groups["number"].Value.Replace(',', '.'), sign = match.Groups["sign"].Value is "-" or "−" or "–" ? "−" : "", unit = match.Groups["unit"].Value;
        if (Value($"{sign}{number}", unit.Length == 0 ? accepted.Unit : unit, accepted.Suffix) is not { } value)
        {
            return null;
        }

        string side = match.Groups["side"].Value, text = $"{side}{(side.Length > 0 ? " " : "")}{sign}{number} {(unit.Length == 0 ? accepted.Unit : unit)}";
        return side switch
        {
            "<" => new TypedReading(text, -Math.Abs(value), value),
            ">" => new TypedReading(text, value, double.PositiveInfinity),
            _ => new TypedReading(text, value, value),
        };
    }

    // An insulation tester shows megohms; no field of the boat takes them, where a capital would make a million out of a thousandth.
    private const double Mega = 1e6;

    /// <summary>A value in a unit, as a number in the unit of the suffix; null where it is none.</summary>
    public static double? Value(string number, string unit, string suffix) =>
        suffix == "Ohm" && unit is "MΩ" or "M\u2126" or "Mohm" or "MOhm" ? Value(number, "Ω", suffix) * Mega
        : QuantityText.Parse($"{number.Replace('−', '-')} {unit}", suffix, DisplayUnits.Metric, CultureInfo.InvariantCulture).Quantity is { Value: var value } && double.IsFinite(value) ? value : null;

    [GeneratedRegex(@"\r\n|[;\r\n]")]
    private static partial Regex Fields();

    [GeneratedRegex(@",\s+|(?<=[0-9VΩ])\s+(?=[-−–+<>]?\s?[0-9])")]
    private static partial Regex Divided();

    [GeneratedRegex(@"^(?:[^:]*:)?\s*(?:(?<over>[O0]\.?L|o\.?l|∞)|(?<side>[<>])?\s*(?<sign>[-−–+])?\s*(?<number>[0-9]+(?:[.,][0-9]+)?)\s*(?<unit>[A-Za-z\u00b5\u03bc\u03a9\u2126]+)?)$")]
    private static partial Regex Piece();
}
