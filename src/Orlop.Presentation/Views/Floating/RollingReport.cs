using System.Globalization;
using Orlop.Boat.Things;
using Orlop.Presentation.Quantities;
using Orlop.Review.Stability;

namespace Orlop.Presentation.Views.Floating;

/// <summary>What a rolling test says, in words.</summary>
/// <param name="Refusal">Why it says nothing; null where it says something.</param>
/// <param name="Facts">Names and numbers: period, coefficient, GM.</param>
public sealed record RollingReport(string? Refusal, IReadOnlyList<(string Name, string Value)> Facts)
{
    /// <summary>Reads a test, saved or being typed.</summary>
    public static RollingReport Of(StabilityView view, RollingTest test, DisplayUnits units, CultureInfo culture)
    {
        try
        {
            RollingReading read = view.Read(test);
            string Band(double deviation, string suffix) => FloatingWords.Band(deviation, suffix, units, culture);
            return new RollingReport(null,
            [
                ("Period of one whole roll", $"{QuantityText.Shown(Math.Round(read.PeriodS, 2), "S", units, culture)} {Band(read.PeriodDeviationS, "S")}"),
                ("Coefficient f", $"{QuantityText.Shown(read.RollingFactor, "Factor", units, culture)}{(test.RollingFactor is null ? ", of small fishing boats: put in her own as soon as an inclining test gives it" : "")}"),
                ("GM", $"{FloatingWords.Metres(read.GmM, units, culture)} {Band(read.GmDeviationM, "M")}"),
            ]);
        }
        catch (ArgumentException refused)
        {
            return new RollingReport($"It tells nothing yet: {refused.Message.TrimEnd('.')}.", []);
        }
    }
}
