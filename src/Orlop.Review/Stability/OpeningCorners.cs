using Orlop.Boat;
using Orlop.Boat.Things;
using Orlop.Boat.Values;
using Orlop.Hull.Floating;

namespace Orlop.Review.Stability;

/// <summary>The places at which an opening goes under first: its corners where its length and breadth are told, else the one place that is given; of a door or window the ends of its sill. All bear the opening's name.</summary>
internal static class OpeningCorners
{
    /// <summary>
    /// Places of one opening; none where its place is not given. A well of which nobody told the breadth has its sides at the deck edge (our rule, no source: they are nowhere farther out).
    /// </summary>
    public static IEnumerable<Opening> Of(BoatModel boat, HullOpening opening) =>
        from at in opening.LoopTop is not null ? [opening.LoopTop] : Corners(boat, opening)
        select new Opening(opening.Id, WeightLedger.At(at)) { Title = opening.Title };

    private static IEnumerable<Place> Corners(BoatModel boat, HullOpening opening)
    {
        if (opening.Place is not { } middle)
        {
            return [];
        }

        double length = Positive(opening.ClearLengthM) / 2;
        if (opening.IsStanding)
        {
            return Sill(middle, length, Positive(opening.ClearBreadthM) / 2, opening.Use);
        }

        double[] along = length > 0 ? [middle.XM - length, middle.XM + length] : [middle.XM];
        return along.SelectMany(x => Across(boat, opening, middle.YM, x).Select(y => middle with { XM = x, YM = y })).Distinct();
    }

    private static IEnumerable<double> Across(BoatModel boat, HullOpening opening, double middleM, double xM)
    {
        double breadth = Positive(opening.ClearBreadthM) / 2;
        return breadth > 0 ? [middleM - breadth, middleM + breadth]
            : opening.Use == OpeningUse.Well ? [middleM, -(DeckEdge.HalfBreadthM(boat, xM, -1) ?? 0), DeckEdge.HalfBreadthM(boat, xM, 1) ?? 0]
            : [middleM];
    }

    // With one breadth told it runs that way. With both, one is the height: a door is taller than it is broad (common practice, no source), a window is taken as broad as its greater; and it is taken to run both ways (our rule, no source).
    private static IEnumerable<Place> Sill(Place middle, double alongM, double acrossM, OpeningUse use)
    {
        double sill = alongM > 0 && acrossM > 0 ? (use == OpeningUse.Door ? Math.Min(alongM, acrossM) : Math.Max(alongM, acrossM)) : 0;
        (double along, double across) = sill > 0 ? (sill, sill) : (alongM, acrossM);
        return new[] { middle with { XM = middle.XM - along }, middle with { XM = middle.XM + along }, middle with { YM = middle.YM - across }, middle with { YM = middle.YM + across } }
            .Where(place => place != middle || (along == 0 && across == 0)).Distinct();
    }

    /// <summary>How the sill of a door or window was taken of which both length and breadth are told, for a line of working; null of any other opening.</summary>
    public static string? SillTaken(HullOpening opening) => opening is { IsStanding: true, ClearLengthM.Value: > 0 and var length, ClearBreadthM.Value: > 0 and var breadth }
        ? FormattableString.Invariant($"it stands, and its height does not count: of {length:0.###} m and {breadth:0.###} m the {(opening.Use == OpeningUse.Door ? "lesser" : "greater")} is taken as its sill, along and across, for nothing tells which way it runs; give only the breadth of the sill, as length where it runs along, as breadth where it runs across")
        : null;

    private static double Positive(Quantity? length) => length is { Value: > 0 and var value } ? value : 0;
}
