using System.Globalization;
using Orlop.Hull.Measuring;
using Orlop.Presentation.Quantities;
using Orlop.Review.Stability;
using InclinationTest = Orlop.Boat.Things.InclinationTest;

namespace Orlop.Presentation.Views.Floating;

/// <summary>What an inclining test says, in words.</summary>
/// <param name="Refusal">Why it says nothing; null where it says something.</param>
/// <param name="Facts">Names and numbers: GM, KG, displacement, how well the line fits.</param>
/// <param name="Remarks">What is left out, and what the test lacks.</param>
/// <param name="Found">The numbers, to be drawn; null where they cannot be worked out.</param>
public sealed record InclinationReport(string? Refusal, IReadOnlyList<(string Name, string Value)> Facts, IReadOnlyList<string> Remarks, InclinationFound? Found)
{
    private const double LeastFreeSurfaceM = 0.0005;

    /// <summary>Reads a test, saved or being typed.</summary>
    public static InclinationReport Of(StabilityView view, InclinationTest test, DisplayUnits units, CultureInfo culture)
    {
        try
        {
            return Of(view.Read(test), [.. test.Readings.Where(reading => reading.IsLeftOut).Select(reading => reading.Name)], view.Weight.Weak.FirstOrDefault(weak => weak.TestId == test.Id), FloatingWords.Slack(view.SlackAt(test), null, units, culture), units, culture);
        }
        catch (ArgumentException refused)
        {
            return new InclinationReport($"It tells nothing yet: {RefusalWords.Of(refused).TrimEnd('.')}.", [], [], null);
        }
    }

    private static InclinationReport Of(InclinationFound found, string[] leftOut, WeakTest? weak, string? slack, DisplayUnits units, CultureInfo culture)
    {
        string Band(double deviation, string suffix) => FloatingWords.Band(deviation, suffix, units, culture);
        string Metres(double lengthM) => FloatingWords.Metres(lengthM, units, culture);
        LineFit line = found.Fit.WithIntercept;
        InclinationInput input = found.Input;
        string freeSurface = found.FreeSurfaceM < LeastFreeSurfaceM ? "" : $", slack tanks' {Metres(found.FreeSurfaceM)} of GM put back";
        string[] remarks = [.. WhatToMind(found.Fit, leftOut, weak), .. slack is null ? [] : new[] { slack }];
        if (SpoiltTest.Shifts(found.Fit) is { } why)
        {
            return new InclinationReport($"It tells nothing: {why}.", [], remarks, found);
        }

        return new InclinationReport(
            null,
            [
                ("GM as inclined", $"{Metres(line.GmM)} {Band(line.GmDeviationM, "M")}"),
                ("KG as inclined", $"{Metres(found.KgM)} {Band(found.KgDeviationM, "M")}, metacentre at {Metres(found.KmM)}{freeSurface}"),
                ("Displacement then", $"{QuantityText.Shown(Math.Round(input.DisplacementKg), "Kg", units, culture)} {Band(input.DisplacementDeviationKg, "Kg")}"),
                ("Moment for a heel of tan 1", $"{QuantityText.Shown(Math.Round(line.SlopeKgM), "KgM", units, culture)} {Band(line.SlopeDeviationKgM, "KgM")}"),
                ("Share the line explains, r²", found.Fit.DeterminationCoefficient.ToString("0.####", culture)),
            ],
            remarks,
            found);
    }

    private static IEnumerable<string> WhatToMind(InclinationResult fit, string[] leftOut, WeakTest? weak)
    {
        if (leftOut.Length > 0)
        {
            yield return $"Left out, and kept in the file: {string.Join(", ", leftOut)}.";
        }

        // Before it is kept nobody can say how little it will weigh.
        if (!fit.Cautions.IsEmpty)
        {
            yield return $"A weak test{(weak is null ? "" : $": {weak.Share}")}. It counts by what its line is worth, and no more:";
        }

        foreach (string caution in fit.Cautions)
        {
            yield return $"{char.ToUpperInvariant(caution[0])}{caution[1..]}.";
        }
    }
}
