using System.Globalization;
using Orlop.Boat.Things;
using Orlop.Presentation.Quantities;
using Orlop.Presentation.Words;
using Orlop.Review.Stability;

namespace Orlop.Presentation.Views.Floating;

/// <summary>What a listed thing feels when the boat moves as stated, in words.</summary>
/// <param name="Title">The thing.</param>
/// <param name="Rows">Accelerations along the three axes and tilt; empty where they cannot be told.</param>
/// <param name="Period">How the period of the roll is known; null where nothing can be told.</param>
/// <param name="Working">The steps.</param>
/// <param name="Trouble">Why nothing can be told; null where something can.</param>
/// <param name="Missing">What is not given.</param>
public sealed record MotionView(string Title, IReadOnlyList<MotionRow> Rows, string? Period, IReadOnlyList<WorkingRow> Working, string? Trouble, IReadOnlyList<MissingField> Missing)
{
    /// <summary>At a thing of the condition's ledger.</summary>
    public static MotionView Of(StabilityView view, FloatingFacts facts, WeightRow thing, DisplayUnits units, CultureInfo culture)
    {
        ArgumentNullException.ThrowIfNull(view);
        ArgumentNullException.ThrowIfNull(facts);
        ArgumentNullException.ThrowIfNull(thing);
        MotionAt found = MotionAt.Of(view, facts.Condition, thing.Place, thing.Title);
        string Shown(double value, string suffix) => QuantityText.Shown(value, suffix, units, culture);
        return new MotionView(
            thing.Title,
            found.Result is not { } result ? [] :
            [
                new MotionRow("Across the boat, along the deck", $"±\u00A0{Shown(result.AcrossMPerS2, "MPerS2")}"),
                new MotionRow("Fore and aft, along the deck", $"±\u00A0{Shown(result.AlongMPerS2, "MPerS2")}"),
                new MotionRow("Square to the deck, most", Shown(result.MostDownMPerS2, "MPerS2")),
                new MotionRow("Square to the deck, least", $"{Shown(result.LeastDownMPerS2, "MPerS2")}{(result.LeastDownMPerS2 < 0 ? ": it lifts off unless it is held down" : "")}"),
                new MotionRow("Greatest tilt of the deck", Shown(result.TiltDeg, "Deg")),
            ],
            found.Result is null ? null : PeriodOf(found),
            [.. found.Working.Select(line => new WorkingRow(line.What, line.Expression, line.Value is { } value ? SentenceText.Of(value, units, culture) : "", line.Source, line.IsFromMemory))],
            found.WhyNot,
            MissingField.Of(found.Missing, view.Boat));
    }

    /// <summary>How the period of the roll is known.</summary>
    public static string PeriodOf(MotionAt found)
    {
        ArgumentNullException.ThrowIfNull(found);
        return found.IsPeriodPredicted ? "The period of the roll is predicted from GM and beam: it was not stated." : "The period of the roll is as stated.";
    }

    /// <summary>The motion that the owner states, in a sentence.</summary>
    public static string Stated(StatedMotion motion, DisplayUnits units, CultureInfo culture)
    {
        ArgumentNullException.ThrowIfNull(motion);
        string Shown(double value, string suffix) => QuantityText.Shown(value, suffix, units, culture);
        string roll = motion.RollPeriodS is { } period ? $" in {Shown(period, "S")}" : "";
        return $"As the owner states: she rolls {Shown(motion.RollDeg, "Deg")} to either side{roll}, pitches {Shown(motion.PitchDeg, "Deg")} in {Shown(motion.PitchPeriodS, "S")}, heaves {Shown(motion.HeaveM, "M")} either way in {Shown(motion.HeavePeriodS, "S")}.";
    }
}

/// <summary>One result and its value.</summary>
public sealed record MotionRow(string Name, string Value);
