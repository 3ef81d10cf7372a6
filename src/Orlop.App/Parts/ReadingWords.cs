using System.Globalization;
using Orlop.Boat.Things;
using Orlop.Presentation.Quantities;
using Orlop.Review.Findings;
using Orlop.Work.Readings;

namespace Orlop.App.Parts;

/// <summary>The words and shapes for a reading held against its prediction.</summary>
internal static class ReadingWords
{
    /// <summary>What the meter said, as it was typed.</summary>
    public static string Value(Reading reading, DisplayUnits units, CultureInfo culture) =>
        reading.VoltageV is { } volts ? QuantityText.Format(volts, "V", units, culture)
        : reading.CurrentA is { } amperes ? QuantityText.Format(amperes, "A", units, culture)
        : "";

    /// <summary>Its shape.</summary>
    public static Verdict Verdict(ComparedReading compared) => compared.Standing switch
    {
        ReadingStanding.Within => Orlop.Review.Findings.Verdict.Holds,
        ReadingStanding.Below or ReadingStanding.Above => Orlop.Review.Findings.Verdict.Fails,
        _ => Orlop.Review.Findings.Verdict.Unknown,
    };

    /// <summary>Its words.</summary>
    public static string Standing(ComparedReading compared) => compared.Standing switch
    {
        ReadingStanding.Within => "agrees",
        ReadingStanding.Below => "below what it should be",
        ReadingStanding.Above => "above what it should be",
        _ => $"cannot be compared: {compared.WhyNot}",
    };
}
