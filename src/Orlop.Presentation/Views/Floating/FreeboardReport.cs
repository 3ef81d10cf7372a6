using System.Globalization;
using Orlop.Hull.Measuring;
using Orlop.Presentation.Quantities;
using Orlop.Review.Stability;
using FreeboardSurvey = Orlop.Boat.Things.FreeboardSurvey;

namespace Orlop.Presentation.Views.Floating;

/// <summary>One mark of a freeboard survey against the fitted waterline.</summary>
/// <param name="Name">The mark.</param>
/// <param name="Read">Its height over the water as read.</param>
/// <param name="Off">Read less fitted, in words.</param>
/// <param name="OffRatio">The same over what its deviation allows: beyond 2 or 3 read it again.</param>
public sealed record MarkReport(string Name, string Read, string Off, double OffRatio);

/// <summary>What a freeboard survey says, in words.</summary>
/// <param name="Refusal">Why it says nothing; null where it says something.</param>
/// <param name="Facts">Names and numbers: displacement, draught, trim, heel, hog.</param>
/// <param name="Marks">Each mark.</param>
/// <param name="Agreement">How well the marks agree.</param>
public sealed record FreeboardReport(string? Refusal, IReadOnlyList<(string Name, string Value)> Facts, IReadOnlyList<MarkReport> Marks, string Agreement)
{
    private const int LeastMarkCount = 4;

    /// <summary>Reads a survey, saved or being typed.</summary>
    public static FreeboardReport Of(StabilityView view, FreeboardSurvey survey, DisplayUnits units, CultureInfo culture)
    {
        try
        {
            return Of(view.Read(survey), survey, units, culture);
        }
        catch (ArgumentException refused)
        {
            return new FreeboardReport($"It tells nothing yet: {RefusalWords.Of(refused).TrimEnd('.')}.", [], [], "");
        }
    }

    private static FreeboardReport Of(FreeboardResult read, FreeboardSurvey survey, DisplayUnits units, CultureInfo culture)
    {
        MarkReport[] marks =
        [
            .. survey.Marks.Zip(read.Residuals, (mark, residual) => new MarkReport(
                mark.Name, FloatingWords.Metres(mark.FreeboardM, units, culture), Off(residual.ResidualM, units, culture), residual.ResidualM / mark.DeviationM)),
        ];
        if (SpoiltTest.Marks(read) is { } why)
        {
            return new FreeboardReport($"It tells nothing: {why}.", [], marks.Length == LeastMarkCount ? [.. marks.Select(mark => mark with { Off = "cannot be told", OffRatio = 0 })] : marks, "Nothing is told of her weight until the marks agree.");
        }

        string Band(double deviation, string suffix) => FloatingWords.Band(deviation, suffix, units, culture);
        return new FreeboardReport(
            null,
            [
                ("Displacement", $"{QuantityText.Shown(Math.Round(read.DisplacementKg), "Kg", units, culture)} {Band(read.DisplacementDeviationKg, "Kg")}"),
                ("Draught at the after perpendicular", $"{FloatingWords.Metres(read.Attitude.WaterHeightM(0, 0) ?? read.Attitude.DraughtM, units, culture)} {Band(read.DraughtDeviationM, "M")}"),
                ("Trim, by the stern above 0", $"{QuantityText.Shown(Math.Round(read.Attitude.TrimDeg, 2), "Deg", units, culture)} {Band(read.TrimDeviationDeg, "Deg")}"),
                ("Heel", $"{FloatingWords.Heel(read.Attitude.HeelDeg, units, culture)} {Band(read.HeelDeviationDeg, "Deg")}"),
                ("Bent amidships", $"{(read.IsHogMeasured ? Hog(read.HogM, units, culture) : "these marks cannot tell; taken as none,")} {Band(1000 * read.HogDeviationM, "Mm")}"),
            ],
            marks,
            read.MisfitRatio switch
            {
                > SpoiltTest.MostMisfitRatio => string.Create(culture, $"The marks disagree by more than they should, and every ± is made {read.MisfitRatio:0.#} times wider for it: read those that are far off again, or look at the lines there. Until then it agrees with nothing."),
                _ when survey.Marks.Count == LeastMarkCount => "Four marks show no more than whether they twist: two more show hog or sag, and a slip of the tape.",
                _ => "The marks agree as well as they were read.",
            });
    }

    private static string Hog(double hogM, DisplayUnits units, CultureInfo culture) => Math.Abs(hogM) < 0.0005
        ? "neither hog nor sag"
        : $"{(hogM > 0 ? "hog" : "sag")} {QuantityText.Shown(Math.Round(Math.Abs(hogM) * 1000), "Mm", units, culture)}";

    private static string Off(double residualM, DisplayUnits units, CultureInfo culture)
    {
        double mm = Math.Round(Math.Abs(residualM) * 1000);
        return mm == 0 ? "fits" : $"{QuantityText.Shown(mm, "Mm", units, culture)} {(residualM > 0 ? "higher" : "lower")}";
    }
}
