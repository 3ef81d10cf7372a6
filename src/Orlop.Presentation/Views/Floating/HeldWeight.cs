using System.Globalization;
using Orlop.Boat.Things;
using Orlop.Boat.Values;
using Orlop.Hull.Floating;
using Orlop.Hull.Hydrostatics;
using Orlop.Presentation.Quantities;
using Orlop.Review.Stability;

namespace Orlop.Presentation.Views.Floating;

/// <summary>How the boat lies while a hand holds a thing at another place.</summary>
/// <param name="Attitude">Where she comes to rest.</param>
/// <param name="Words">Heel, trim and GM, in words.</param>
public sealed record HeldWeight(Attitude Attitude, string Words)
{
    /// <summary>Works it out; null where she would not come to rest afloat, or where the thing has no weight in the condition.</summary>
    /// <param name="view">The boat.</param>
    /// <param name="condition">How she is loaded.</param>
    /// <param name="thingId">What is held.</param>
    /// <param name="place">Where.</param>
    /// <param name="units">The reader's units.</param>
    /// <param name="culture">How the reader writes numbers.</param>
    public static HeldWeight? Of(StabilityView view, Condition condition, string thingId, Place place, DisplayUnits units, CultureInfo culture)
    {
        if (view.Bodies.Hull is not { } hull || view.RestWith(condition, thingId, place) is not { Status: FloatingStatus.Floats, Position: { Attitude: var attitude, MetacentricHeightM: var gmM } })
        {
            return null;
        }

        double? trim = attitude.WaterHeightM(hull.Lowest.XM, 0) - attitude.WaterHeightM(hull.Highest.XM, 0);
        return new HeldWeight(attitude,
            $"Held here: {FloatingWords.Heel(attitude.HeelDeg, units, culture)}{(trim is { } known ? $", {FloatingWords.Trim(known, units, culture)}" : "")}, GM {FloatingWords.Metres(gmM, units, culture)}");
    }
}
