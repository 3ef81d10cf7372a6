using System.Globalization;
using Orlop.Boat;
using Orlop.Boat.Things;
using Orlop.Presentation.Quantities;
using Orlop.Presentation.Views;
using Orlop.Review.Findings;
using Orlop.Review.Ways;

namespace Orlop.Presentation.Words;

/// <summary>The words people read for routes of cables: on pages, on paper and on the command line.</summary>
public static class RouteWords
{
    /// <summary>What a route costs for, in a word or two.</summary>
    public static string Of(CostKind kind) => kind switch
    {
        CostKind.Length => "length",
        CostKind.Bilge => "in the bilge",
        CostKind.Wet => "in wet spaces",
        CostKind.Engine => "in the engine space",
        CostKind.Outside => "on the open deck",
        CostKind.NotKnown => "where nobody said what it is like",
        CostKind.BesideAc => "beside the other kind of current",
        CostKind.Loose => "loose",
        CostKind.Low => "low",
        CostKind.NewHoles => "holes to be made",
        CostKind.MadeHoles => "holes that are there",
        _ => "openings",
    };

    /// <summary>What keeps the edge of a hole off a cable.</summary>
    public static string Of(EdgeGuard? guard) => guard switch
    {
        EdgeGuard.Bare => "bare edge",
        EdgeGuard.Grommet => "grommet",
        EdgeGuard.Gland => "gland",
        EdgeGuard.Sealed => "sealed",
        _ => "nobody looked at its edge",
    };

    /// <summary>A hole: where it is, what guards it, whether it has to be made.</summary>
    public static string Of(PassedHole hole)
    {
        ArgumentNullException.ThrowIfNull(hole);
        string guard = Of(hole.Hole.Guard) + RangeOf(hole.Hole);
        return $"{hole.Hole.Where} ({(hole.Hole.IsMade ? guard : $"to be made, {guard}")})";
    }

    // What a gland takes, in the millimetres that are stamped on it.
    private static string RangeOf(WayHole hole) => hole.Guard != EdgeGuard.Gland ? "" : (hole.LeastClampedMm, hole.BoreMm) switch
    {
        ({ } least, { } most) => FormattableString.Invariant($" for {least.Value:0.#} to {most.Value:0.#} mm"),
        (null, { } most) => FormattableString.Invariant($" for up to {most.Value:0.#} mm"),
        ({ } least, null) => FormattableString.Invariant($" for {least.Value:0.#} mm and more"),
        _ => "",
    };

    /// <summary>Whether a plan of several cables is the best: that it is proved, or how far above the best it may be; and why it is dearer than each alone where it is.</summary>
    public static string Proof(JointRoutes together, CultureInfo culture)
    {
        ArgumentNullException.ThrowIfNull(together);
        string full = together.TogetherM > together.ApartM + 1e-9 ? "The conduits do not hold them all as each would go alone. " : "";
        return full + (together.IsProved ? "No plan along these ways costs less: that is proved."
            : double.IsFinite(together.MostAboveFraction) ? string.Create(culture, $"It is not proved to be the best: at most {Math.Ceiling(1000 * together.MostAboveFraction) / 10:0.#} % above the least.")
            : "It is not proved to be the best.");
    }

    /// <summary>What is missing, in words: "outer diameter of Winch feed".</summary>
    public static string Of(FindingInput missing, BoatModel boat)
    {
        ArgumentNullException.ThrowIfNull(missing);
        ArgumentNullException.ThrowIfNull(boat);
        return MissingWords.Of(missing, boat);
    }

    /// <summary>A cost of a route, which is no length of it: "3.16 m weighted".</summary>
    public static string Weighted(double costM, DisplayUnits units, CultureInfo culture) => $"{QuantityText.Shown(Math.Round(costM, 2), "M", units, culture)} weighted";

    /// <summary>How full a conduit gets: "Conduit through the after bulkhead 34 %, 40 % allowed".</summary>
    public static string Of(RouteFill fill, DisplayUnits units, CultureInfo culture)
    {
        ArgumentNullException.ThrowIfNull(fill);
        string full = fill.FillFraction is { } share ? QuantityText.Shown(share, "Fraction", units, culture) : "not known how full";
        return fill.MostFraction is { } most ? $"{fill.Way.Title} {full}, {QuantityText.Shown(most, "Fraction", units, culture)} allowed" : $"{fill.Way.Title} {full}";
    }
}
