using System.Globalization;
using Orlop.Boat;
using Orlop.Hull.Floating;
using Orlop.Presentation.Quantities;
using Orlop.Review.Stability;

namespace Orlop.Presentation.Views.Floating;

/// <summary>Levers past the heel at which water comes in: how they are marked and what the mark means. They are worked out as if every opening were shut, and are not the boat's.</summary>
public static class FloodedLevers
{
    /// <summary>Stands behind a lever of a boat that has flooded.</summary>
    public const string Mark = "*";

    /// <summary>Name of that part of a curve.</summary>
    public const string Name = "Flooded: not hers";

    /// <summary>Whether she has flooded at a heel: null where it is not known where she floods.</summary>
    public static bool? At(BoatModel boat, RightingFeatures? side, double heelDeg) => side is null ? null : side.IsFloodedAt(heelDeg) ? true : OpeningsGiven.IsAny(boat) ? false : null;

    /// <summary>What the mark means, with where she floods on either side; that it is not known where she floods; null without levers, or where no opening goes under.</summary>
    public static string? Text(BoatModel boat, FloatingFacts facts, DisplayUnits units, CultureInfo culture)
    {
        ArgumentNullException.ThrowIfNull(boat);
        ArgumentNullException.ThrowIfNull(facts);
        if (facts is not { Starboard: { } starboard, Port: { } port })
        {
            return null;
        }

        string[] sides = [.. new[] { (Side: starboard, Name: "to starboard"), (Side: port, Name: "to port") }.Where(one => one.Side.DownfloodingDeg is not null).Select(one => From(boat, one.Side, one.Name, units, culture))];
        string[] said =
        [
            .. sides.Length == 0 ? Array.Empty<string>()
                : [$"{Mark} Flooded: {string.Join("; ", sides)}. Levers from there on are worked out as if no water came in, and are not hers: she has less, or none. Greatest lever, range and areas end there."],
            .. OpeningsGiven.WhyNot(boat) is { } why ? new[] { $"She may flood sooner than marked: {why}." } : [],
        ];
        return said.Length == 0 ? null : string.Join(" ", said);
    }

    private static string From(BoatModel boat, RightingFeatures side, string name, DisplayUnits units, CultureInfo culture) =>
        $"{name} from {FloatingWords.Degrees(Math.Abs(side.DownfloodingDeg!.Value), units, culture)}, where {boat.Find(side.DownfloodingOpening ?? "")?.Title ?? side.DownfloodingOpening} goes under";
}
