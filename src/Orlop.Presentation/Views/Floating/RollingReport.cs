using System.Globalization;
using Orlop.Boat.Things;
using Orlop.Presentation.Quantities;
using Orlop.Review.Stability;

namespace Orlop.Presentation.Views.Floating;

/// <summary>What a rolling test says, in words.</summary>
/// <param name="Refusal">Why it says nothing; null where it says something.</param>
/// <param name="Facts">Names and numbers: each run; period, coefficient, GM where it says something.</param>
/// <param name="Remark">That it puts her centre of gravity below the keel, and tanks that were slack, with what that means; null where there is neither.</param>
public sealed record RollingReport(string? Refusal, IReadOnlyList<(string Name, string Value)> Facts, string? Remark)
{
    /// <summary>Reads a test, saved or being typed.</summary>
    public static RollingReport Of(StabilityView view, RollingTest test, DisplayUnits units, CultureInfo culture)
    {
        ArgumentNullException.ThrowIfNull(test);
        (string, string)[] runs = [.. test.Runs.Select((run, index) => ($"Run {index + 1}", RunText(run, units, culture)))];
        if (SpoiltTest.Runs(test) is { } why)
        {
            return new RollingReport($"It tells nothing: {why}.", runs, null);
        }

        try
        {
            RollingReading read = view.Read(test);
            string Band(double deviation, string suffix) => FloatingWords.Band(deviation, suffix, units, culture);
            return new RollingReport(null,
            [
                .. runs,
                ("Period of one whole roll", $"{QuantityText.Shown(Math.Round(read.PeriodS, 2), "S", units, culture)} {Band(read.PeriodDeviationS, "S")}"),
                ("Coefficient f", $"{QuantityText.Shown(read.RollingFactor, "Factor", units, culture)} {Band(read.DeviationOfFactor, "Factor")}{(test.RollingFactor is null ? ", of small fishing boats: put in her own as soon as an inclining test gives it" : "")}"),
                ("GM", $"{FloatingWords.Metres(read.GmM, units, culture)} {Band(read.GmDeviationM, "M")}"),
            ], Remarks(view, test, read, units, culture));
        }
        catch (ArgumentException refused)
        {
            return new RollingReport($"It tells nothing yet: {RefusalWords.Of(refused).TrimEnd('.')}.", runs, null);
        }
    }

    private static string? Remarks(StabilityView view, RollingTest test, RollingReading read, DisplayUnits units, CultureInfo culture)
    {
        string? below = view.BelowKeelM(test) is { } belowM
            ? $"That GM puts her centre of gravity {FloatingWords.Metres(belowM, units, culture)} below her keel, where no boat has it: {ImpossibleCentre.HalfRolls}." : null;
        string[] said = [.. new[] { below, FloatingWords.Slack(view.SlackAt(test), read.GmM, units, culture) }.OfType<string>()];
        return said.Length == 0 ? null : string.Join(" ", said);
    }

    private static string RunText(TimedRolls run, DisplayUnits units, CultureInfo culture) =>
        $"{run.RollCount} {(run.RollCount == 1 ? "roll" : "rolls")} in {QuantityText.Shown(run.TimeS, "S", units, culture)}, {QuantityText.Shown(Math.Round(run.TimeS / run.RollCount, 2), "S", units, culture)} each";
}
