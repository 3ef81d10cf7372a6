using System.Globalization;
using Orlop.Presentation.Quantities;
using Orlop.Review.Stability;

namespace Orlop.Presentation.Views.Floating;

/// <summary>What room a boat has for the roll that a rolling test asks for.</summary>
public static class RollingRoom
{
    /// <summary>The roll to start with (common practice, no source).</summary>
    public const double AskedDeg = 5;

    // A roll meant to be of 5° may become twice as wide (common practice, no source).
    private const double LeastRatio = 2;

    /// <summary>
    /// The heel at which the first opening that is not shut, or the deck edge, goes under, against the roll asked for; that it cannot be told where it cannot. Whether there is too little room, or it
    /// is not told, stands beside it.
    /// </summary>
    public static (string Words, bool IsTight) Of(StabilityView view, FloatingFacts facts, DisplayUnits units, CultureInfo culture)
    {
        ArgumentNullException.ThrowIfNull(view);
        ArgumentNullException.ThrowIfNull(facts);
        string Degrees(double angle) => FloatingWords.Degrees(angle, units, culture);
        string loaded = $"Loaded as in “{facts.Condition.Title}”";
        if (facts is not { Floating: { Starboard: var starboard, Port: var port }, Position: not null, Fills: false })
        {
            return ($"{loaded}, at which heel an opening or the deck edge goes under cannot be told: shut what can be shut, look what is lowest, and begin with a roll that hardly shows.", true);
        }

        (double Deg, string What, string Side)[] under =
        [
            .. new[] { (Curve: starboard, Side: "to starboard"), (Curve: port, Side: "to port") }.SelectMany(side => new[]
            {
                (Deg: side.Curve.Features.DownfloodingDeg, What: view.Boat.Find(side.Curve.Features.DownfloodingOpening ?? "")?.Title ?? "an opening", side.Side),
                (Deg: view.EdgeUnderDeg(side.Curve), What: "the deck edge", side.Side),
            }).Where(place => place.Deg is not null).Select(place => (Math.Abs(place.Deg!.Value), place.What, place.Side)).OrderBy(place => place.Item1),
        ];
        if (under is not [var first, ..])
        {
            return ($"{loaded} neither an opening nor the deck edge goes under as far as her levers are reckoned; the roll asked for is {Degrees(AskedDeg)}.", false);
        }

        string found = $"{loaded}, {first.What} goes under at a heel of {Degrees(first.Deg)} {first.Side}; the roll asked for is {Degrees(AskedDeg)}";
        return first.Deg < LeastRatio * AskedDeg
            ? ($"{found}: too near. Roll her no further than {Degrees(first.Deg / LeastRatio)}, with all that can be shut shut, or not at all.", true)
            : ($"{found}.", false);
    }
}
