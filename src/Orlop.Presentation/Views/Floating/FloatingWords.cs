using System.Globalization;
using Orlop.Boat;
using Orlop.Hull.Floating;
using Orlop.Presentation.Quantities;
using Orlop.Review.Findings;
using Orlop.Review.Stability;

namespace Orlop.Presentation.Views.Floating;

/// <summary>Floating position and stability in plain words.</summary>
public static class FloatingWords
{
    /// <summary>Stands wherever stability is shown.</summary>
    public const string Caution =
        "Stability at sea is a matter of life. These numbers rest on the form and the weights as typed, for still water; they replace no survey, no inclining test and no licensed naval architect, and local rules come first.";

    /// <summary>Standard deviations that ± stands for wherever people read it.</summary>
    public const double BandFactor = 2;

    /// <summary>Stands for a number that a capsized boat has not.</summary>
    public const string None = "none";

    /// <summary>What every number of stability takes for granted of the deck.</summary>
    public const string DeckCaution =
        "Taken as given: the deck is closed and watertight from edge to edge, and every opening not listed is shut. An open boat, a cockpit or a well that fills, is not: there she has less stability than these numbers say, or none.";

    private const string NoOpenings = "no opening is listed, so where she floods is not known";
    private const double LeastHeelDeg = 0.05;
    private const double LeastTrimM = 0.0005;

    /// <summary>Why there is no floating position, or what is wrong with it; null where she floats upright enough.</summary>
    public static string? Trouble(StabilityView view, FloatingFacts facts) => facts.Floating?.Rest switch
    {
        null when view.Bodies.Problems is [var problem, ..] => $"The hull's lines make no closed surface: {problem}.",
        null when view.Bodies.Hull is null => "How she floats is unknown: the hull's lines are not given.",
        null when facts.Loaded.WithoutKg is not null => $"Her stability is unknown: {WhyUnknown.NoKg}. Displacement, draughts and trim are those of the freeboards.",
        null => "How she floats is unknown: her own weight is not known. The bare boat's mass and centre tell it, or a freeboard survey together with an inclining or a rolling test.",
        { Status: FloatingStatus.Capsizes } => $"She capsizes: loaded like this she goes over to {(facts.IsPortWeaker ? "port" : "starboard")} and comes to rest more than 90° from upright.",
        { Status: FloatingStatus.Sinks or FloatingStatus.DoesNotFloat } => "She goes under: loaded like this she weighs more than all the water she can push aside.",
        { Status: FloatingStatus.NotConverged } => "No position of rest was found; nothing may be concluded.",
        { Position.IsLoll: true } => "She is not stable upright: she lies over at this angle, to one side or the other.",
        _ => null,
    };

    /// <summary>How grave that is.</summary>
    public static Verdict TroubleVerdict(FloatingFacts facts) => facts.Floating?.Rest switch
    {
        { Status: FloatingStatus.Capsizes or FloatingStatus.Sinks or FloatingStatus.DoesNotFloat } or { Position.IsLoll: true } => Verdict.Fails,
        _ => Verdict.Unknown,
    };

    /// <summary>"0.8° to port", "upright".</summary>
    public static string Heel(double heelDeg, DisplayUnits units, CultureInfo culture) => Math.Abs(heelDeg) < LeastHeelDeg
        ? "upright"
        : $"{Degrees(Math.Abs(heelDeg), units, culture)} to {(heelDeg > 0 ? "starboard" : "port")}";

    /// <summary>"0.12 m by the stern", "level".</summary>
    public static string Trim(double trimM, DisplayUnits units, CultureInfo culture) => Math.Abs(trimM) < LeastTrimM
        ? "level"
        : $"{Metres(Math.Abs(trimM), units, culture)} by the {(trimM > 0 ? "stern" : "bow")}";

    /// <summary>"± 0.05 m", two standard deviations; what cannot be told is said.</summary>
    public static string Band(double deviation, string suffix, DisplayUnits units, CultureInfo culture) => double.IsFinite(deviation)
        ? $"±\u00A0{Half(deviation, suffix, units, culture)}"
        : "± not known";

    /// <summary>"0.05 m": two standard deviations, to two digits, as they stand in a column under ±.</summary>
    public static string Half(double deviation, string suffix, DisplayUnits units, CultureInfo culture) => QuantityText.Shown(TwoDigits(BandFactor * deviation), suffix, units, culture);

    /// <summary>Stability's range on its weaker side: how far, and what ends it.</summary>
    public static (string Value, string Of) Range(BoatModel boat, FloatingFacts facts, DisplayUnits units, CultureInfo culture)
    {
        string side = facts.IsPortWeaker ? "to port" : "to starboard";
        string flooding = OpeningsGiven.IsAny(boat) ? "" : $"; {NoOpenings}";
        return facts.Weaker switch
        {
            _ when facts.Capsizes => (None, $"she goes over {side}"),
            null => (QuantityText.Unknown, ""),
            { LollDeg: null } => ("none", $"{side} she never rights herself"),
            { RangeDeg: null } => ("to 180°", $"{side} she rights herself from any heel{flooding}"),
            { DownfloodingDeg: { } heel, DownfloodingOpening: { } opening } features when Math.Abs(heel) <= Math.Abs(features.VanishingDeg ?? double.MaxValue) =>
                (Degrees(features.RangeDeg!.Value, units, culture), $"{side}, until {boat.Find(opening)?.Title ?? opening} goes under"),
            var features => (Degrees(features.RangeDeg!.Value, units, culture), $"{side}, where stability vanishes{flooding}"),
        };
    }

    /// <summary>A length to the millimetre.</summary>
    public static string Metres(double lengthM, DisplayUnits units, CultureInfo culture) => QuantityText.Shown(Math.Round(lengthM, 3), "M", units, culture);

    /// <summary>An angle to the tenth of a degree.</summary>
    public static string Degrees(double angleDeg, DisplayUnits units, CultureInfo culture) => QuantityText.Shown(Math.Round(angleDeg, 1), "Deg", units, culture);

    private static double TwoDigits(double value)
    {
        if (value == 0)
        {
            return 0;
        }

        double step = Math.Pow(10, Math.Floor(Math.Log10(Math.Abs(value))) - 1);
        return Math.Round(value / step) * step;
    }
}
