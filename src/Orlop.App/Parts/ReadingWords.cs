using System.Globalization;
using Orlop.Boat.Things;
using Orlop.Presentation.Quantities;
using Orlop.Presentation.Views;
using Orlop.Presentation.Words;
using Orlop.Review.Findings;
using Orlop.Review.Readings;
using Orlop.Work.Readings;

namespace Orlop.App.Parts;

/// <summary>The words and shapes for a reading held against its prediction.</summary>
internal static class ReadingWords
{
    private const double MostLikelyFraction = 0.99;
    private const string EveryDigit = "0.####";

    /// <summary>What the meter said, as it was typed.</summary>
    public static string Value(Reading reading, DisplayUnits units, CultureInfo culture) =>
        reading.VoltageV is { } volts ? QuantityText.Shown(volts, "V", units, culture)
        : reading.CurrentA is { } amperes ? QuantityText.Shown(amperes, "A", units, culture)
        : "";

    /// <summary>The unit a meter shows for a reading: millivolts where less than a volt is expected.</summary>
    public static string MeterUnit(PredictedReading predicted) => predicted.Through is not null ? "A" : IsSmall(predicted) ? "mV" : "V";

    /// <summary>What the meter said, every digit as it was typed, as a number in the unit that stands beside its box; with its unit where that is another.</summary>
    public static string OnMeter(PredictedReading predicted, Reading reading, DisplayUnits units, CultureInfo culture)
    {
        if ((reading.VoltageV ?? reading.CurrentA) is not { } read)
        {
            return "";
        }

        string unit = $" {MeterUnit(predicted)}", text = Value(reading, units, culture).Replace('\u00A0', ' ');
        if (read.Typed is not { } typed || text != QuantityText.AsTyped(typed, culture))
        {
            double scale = IsSmall(predicted) ? 1000 : 1;
            string Number(double value) => (value * scale).ToString(EveryDigit, culture);
            text = Number(read.Value) + (read.PlusMinus is { } either ? $" ± {Number(either)}" : "") + unit;
        }

        return text.EndsWith(unit, StringComparison.Ordinal) ? text[..^unit.Length] : text;
    }

    /// <summary>An amount as a meter shows it.</summary>
    public static string OnMeter(Amount amount, DisplayUnits units, CultureInfo culture) =>
        amount.Suffix == "V" && Math.Abs(amount.Value) < 1 ? Millivolts(amount.Value, culture) + "\u00a0mV" : SentenceText.Of(amount, units, culture);

    /// <summary>What was typed, with the meter's unit where it names none.</summary>
    public static string AsTyped(PredictedReading predicted, string typed) =>
        IsSmall(predicted) && typed.Any(char.IsAsciiDigit) && !typed.Any(char.IsLetter) ? $"{typed} mV" : typed;

    private static bool IsSmall(PredictedReading predicted) => predicted.Through is null && predicted.Expected is { } band && Math.Abs(band.Nominal.Value) < 1;

    private static string Millivolts(double volts, CultureInfo culture) => (volts * 1000).ToString(Math.Abs(volts) < 0.01 ? "0.0" : "0", culture);

    /// <summary>What was perhaps meant, in the unit that was not typed: "0.227 V" for what was taken as millivolts; null when nothing speaks for it.</summary>
    public static string? Meant(ComparedReading compared, CultureInfo culture)
    {
        if (compared is not { Meant: { } meant, Reading: var reading } || (reading.VoltageV ?? reading.CurrentA) is not { } read)
        {
            return null;
        }

        (double scale, string prefix) = Math.Abs(meant.Value) > Math.Abs(read.Value) ? (1, "") : (1000, "m");
        return $"{(meant.Value * scale).ToString(EveryDigit, culture)} {prefix}{meant.Suffix}";
    }

    /// <summary>How likely a place is, as a percentage; never all of it, for the readings cannot tell what was not considered.</summary>
    public static string Likely(double weightFraction, CultureInfo culture) =>
        weightFraction > MostLikelyFraction ? $"over {FindingRow.Share(MostLikelyFraction, culture)}" : FindingRow.Share(weightFraction, culture);

    /// <summary>Its shape.</summary>
    public static Verdict Verdict(ComparedReading compared) => compared.Standing switch
    {
        ReadingStanding.Within => Orlop.Review.Findings.Verdict.Holds,
        ReadingStanding.Below or ReadingStanding.Above or ReadingStanding.Turned => Orlop.Review.Findings.Verdict.Fails,
        _ => Orlop.Review.Findings.Verdict.Unknown,
    };

    /// <summary>Its words.</summary>
    public static string Standing(ComparedReading compared) => compared.Standing switch
    {
        ReadingStanding.Within => "agrees",
        ReadingStanding.Below => "below what it should be",
        ReadingStanding.Above => "above what it should be",
        ReadingStanding.Turned => $"{compared.WhyNot}; left out of the estimate",
        _ => $"cannot be compared: {compared.WhyNot}",
    };
}
