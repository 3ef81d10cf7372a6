using System.Globalization;
using Orlop.Boat;
using Orlop.Hull.Floating;
using Orlop.Presentation.Quantities;

namespace Orlop.Presentation.Views.Floating;

/// <summary>Stability's range to one side, in words.</summary>
internal static class RangeText
{
    private const double LastDeg = 180;
    private const double LeastFromDeg = 0.05;

    /// <summary>How many degrees she rights herself through to one side: 0 where she never does, as far as levers go where nothing ends it.</summary>
    public static double Deg(RightingFeatures side) => side.LollDeg is not { } loll ? 0 : side.RangeDeg ?? LastDeg - Math.Abs(loll);

    /// <summary>"63.6°", "none", "to 180°".</summary>
    public static string LengthOf(RightingFeatures side, DisplayUnits units, CultureInfo culture) => side switch
    {
        { LollDeg: null } => FloatingWords.None,
        { RangeDeg: { } range } => FloatingWords.Degrees(range, units, culture),
        _ => $"to {FloatingWords.Degrees(LastDeg, units, culture)}",
    };

    /// <summary>What ends it: "to starboard, until Wheelhouse door goes under"; where it begins, when that is not upright.</summary>
    public static string EndOf(BoatModel boat, RightingFeatures side, string where, DisplayUnits units, CultureInfo culture)
    {
        string from = side.LollDeg is { } loll && Math.Abs(loll) >= LeastFromDeg ? $" from {FloatingWords.Degrees(Math.Abs(loll), units, culture)}" : "";
        return side switch
        {
            { LollDeg: null } => $"{where} she never rights herself",
            { RangeDeg: null } => $"{where}{from} she rights herself from any heel",
            { DownfloodingDeg: { } heel, DownfloodingOpening: { } opening } when Math.Abs(heel) <= Math.Abs(side.VanishingDeg ?? double.MaxValue) =>
                $"{where}{from}, until {boat.Find(opening)?.Title ?? opening} goes under",
            _ => $"{where}{from}, where stability vanishes",
        };
    }
}
