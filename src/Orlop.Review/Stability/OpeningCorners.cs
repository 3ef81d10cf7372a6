using Orlop.Boat;
using Orlop.Boat.Things;
using Orlop.Boat.Values;
using Orlop.Hull.Floating;

namespace Orlop.Review.Stability;

/// <summary>The places at which an opening goes under first: its corners where its length and breadth are told, else the one place that is given. All bear the opening's name.</summary>
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

    private static double Positive(Quantity? length) => length is { Value: > 0 and var value } ? value : 0;
}
