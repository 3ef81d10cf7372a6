using System.Globalization;
using Orlop.Hull.Criteria;
using Orlop.Hull.Measuring;
using Orlop.Presentation.Quantities;

namespace Orlop.Presentation.Views.Floating;

/// <summary>One criterion over many draws of her weight, in words.</summary>
/// <param name="Subject">What is asked.</param>
/// <param name="Least">The least that is asked.</param>
/// <param name="Holds">"holds in 97 % of the draws".</param>
/// <param name="Mean">Mean and two standard deviations of the draws.</param>
public sealed record DrawnLine(string Subject, string Least, string Holds, string Mean);

/// <summary>How sure each general criterion is: her weight drawn many times as its errors have it, each draw held against the limits on both sides.</summary>
/// <param name="Lines">One for each criterion.</param>
/// <param name="All">How many draws hold them all; why nothing was drawn where there are no lines.</param>
public sealed record DrawsView(IReadOnlyList<DrawnLine> Lines, string All)
{
    /// <summary>Stands under the table.</summary>
    public const string Limits = "2008 IS Code part A 2.2, the worse side of each draw. Only the errors of her weight are drawn: those of the lines, the openings and the sea are not in it. A share of draws is no promise for the boat.";

    /// <summary>The view of one condition.</summary>
    public static DrawsView Of(FloatingFacts facts, StabilitySamplingResult? drawn, DisplayUnits units, CultureInfo culture)
    {
        if (drawn is null || drawn.Shares.IsEmpty || facts.WeakerCurve is not { } curve)
        {
            return new DrawsView([], drawn is null ? "Nothing can be drawn: her weight, her hull or something on the list is not given." : $"Nothing can be drawn: {drawn.Message}.");
        }

        Dictionary<string, string> subjects = GeneralCriteria.Check(curve).ToDictionary(criterion => criterion.Id, criterion => criterion.Subject, StringComparer.Ordinal);
        return new DrawsView(
            [.. drawn.Shares.Select(share => Line(share, subjects.GetValueOrDefault(share.Id, share.Id), units, culture))],
            $"All of them together hold in {Share(drawn.MeetsAllFraction ?? 0, culture)} of the draws.");
    }

    private static DrawnLine Line(SampledShare share, string subject, DisplayUnits units, CultureInfo culture)
    {
        string suffix = share.Unit switch { "m rad" => "MRad", "°" => "Deg", _ => "M" };
        string Shown(double value) => QuantityText.Shown(suffix == "Deg" ? Math.Round(value, 1) : Math.Round(value, 3), suffix, units, culture);
        string unknown = share.UnknownFraction > 0 ? $", cannot be told in {Share(share.UnknownFraction, culture)}" : "";
        return new DrawnLine(
            $"{char.ToUpper(subject[0], culture)}{subject[1..]}", Shown(share.Least), $"holds in {Share(share.MeetsFraction, culture)} of the draws{unknown}",
            share is { Mean: { } mean, Deviation: { } deviation } ? $"{Shown(mean)} ± {Shown(FloatingWords.BandFactor * deviation)}" : QuantityText.Unknown);
    }

    // Nothing is rounded up to all of them, nor down to none.
    private static string Share(double fraction, CultureInfo culture)
    {
        double hundred = fraction * 100;
        return hundred switch
        {
            < 100 and > 99.9 => "more than 99.9\u00A0%",
            > 0 and < 0.1 => "less than 0.1\u00A0%",
            _ => string.Create(culture, $"{Math.Round(hundred, 1):0.#}\u00A0%"),
        };
    }
}
