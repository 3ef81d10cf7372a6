using System.Collections.Immutable;
using Orlop.Boat;
using Orlop.Boat.Things;
using Orlop.Boat.Values;

namespace Orlop.Review.Mending;

/// <summary>Another run for a cable.</summary>
/// <param name="Legs">Its stretches.</param>
/// <param name="LengthM">Their sum, in metres.</param>
/// <param name="Words">Which ways it takes.</param>
internal sealed record OtherRun(ValueList<RunLeg> Legs, double LengthM, string Words);

/// <summary>
/// The shortest run between a cable's ends along the boat's ways, clear of engine spaces and bilges. From way to way, and from a part to a way, it
/// is laid square and within one space, for only ways lead through bulkheads; a way is taken from one of its points to another. An estimate by the drawing: it is to be measured on board.
/// </summary>
internal static class OtherRuns
{
    // Farther than this nothing is laid loose.
    private const double MostLooseM = 2.5;
    private const double StepM = 0.05;

    // Ways that meet are drawn to the same point.
    private const double NothingM = 1e-3;

    private sealed record Spot(Place Place, string? Way, ImmutableHashSet<string> Spaces);

    private static Spot Of(BoatModel boat, Part part) => new(part.Place!, null, part.Space is { } space ? [space] : SpacesAt(boat, part.Place!, null));

    private static ImmutableHashSet<string> SpacesAt(BoatModel boat, Place place, string? own) =>
        [.. boat.All<Space>().Where(space => space.Contains(place) || space.Id == own).Select(space => space.Id)];

    /// <summary>The run; null where what is there is clear of engine and bilge, where there is none, or no place of an end is known.</summary>
    public static OtherRun? Of(BoatModel boat, Cable cable)
    {
        if (cable.Cores.Count == 0 || cable.Run.All(leg => IsClear(boat.Find<Space>(leg.Space ?? boat.Find<Way>(leg.Way ?? "")?.Space ?? ""))) || boat.Find<Part>(cable.Cores[0].From.Part) is not { Place: not null } from || boat.Find<Part>(cable.Cores[0].To.Part) is not { Place: not null } to)
        {
            return null;
        }

        Spot[] spots =
        [
            Of(boat, from), Of(boat, to),
            .. boat.All<Way>().Where(way => way.Means != WayKind.Bilge && way.Points.Count > 1 && IsClear(boat.Find<Space>(way.Space ?? ""))).SelectMany(way => way.Points.Select(point => new Spot(point, way.Id, SpacesAt(boat, point, way.Space)))),
        ];
        return Shortest(boat, spots) is { Length: > 1 } way ? Run(boat, spots, way) : null;
    }

    private static bool IsClear(Space? space) => space is null or { Use: not (SpaceUse.Engine or SpaceUse.Bilge) };

    private static double SquareM(Place a, Place b) => Math.Abs(a.XM - b.XM) + Math.Abs(a.YM - b.YM) + Math.Abs(a.ZM - b.ZM);

    // The space that both ends of a loose stretch are in, clear of engine and bilge; the first of the boat's.
    private static Space? Between(BoatModel boat, Spot a, Spot b) => boat.All<Space>().FirstOrDefault(space => a.Spaces.Contains(space.Id) && b.Spaces.Contains(space.Id) && IsClear(space));

    private static double? StretchM(BoatModel boat, Spot a, Spot b)
    {
        if (a.Way is not null && a.Way == b.Way)
        {
            return AlongM(boat.Find<Way>(a.Way)!, a.Place, b.Place);
        }

        double looseM = SquareM(a.Place, b.Place);
        return looseM <= MostLooseM && (looseM < NothingM || Between(boat, a, b) is not null) ? looseM : null;
    }

    private static double AlongM(Way way, Place a, Place b)
    {
        int from = way.Points.ToList().IndexOf(a), to = way.Points.ToList().IndexOf(b);
        return Enumerable.Range(Math.Min(from, to), Math.Abs(to - from)).Sum(at => way.Points[at].DistanceM(way.Points[at + 1]));
    }

    // Dijkstra over a few dozen spots; of two as short the one found first.
    private static int[]? Shortest(BoatModel boat, Spot[] spots)
    {
        double[] best = [0, .. Enumerable.Repeat(double.PositiveInfinity, spots.Length - 1)];
        int[] before = [.. Enumerable.Repeat(-1, spots.Length)];
        HashSet<int> open = [.. Enumerable.Range(0, spots.Length)];
        while (open.Count > 0 && open.MinBy(spot => (best[spot], spot)) is var at && double.IsFinite(best[at]) && at != 1)
        {
            open.Remove(at);
            foreach (int next in open)
            {
                if (StretchM(boat, spots[at], spots[next]) is { } lengthM && best[at] + lengthM < best[next])
                {
                    (best[next], before[next]) = (best[at] + lengthM, at);
                }
            }
        }

        if (!double.IsFinite(best[1]))
        {
            return null;
        }

        List<int> way = [1];
        while (before[way[^1]] >= 0)
        {
            way.Add(before[way[^1]]);
        }

        return [.. Enumerable.Reverse(way)];
    }

    private static OtherRun? Run(BoatModel boat, Spot[] spots, int[] way)
    {
        ImmutableArray<RunLeg>.Builder legs = ImmutableArray.CreateBuilder<RunLeg>();
        for (int step = 1; step < way.Length; step++)
        {
            (Spot a, Spot b) = (spots[way[step - 1]], spots[way[step]]);
            bool isAlong = a.Way is not null && a.Way == b.Way;
            double lengthM = Math.Round(Math.Ceiling((StretchM(boat, a, b)!.Value / StepM) - 1e-9) * StepM, 3);
            if (lengthM > 0 && isAlong)
            {
                legs.Add(new RunLeg { Way = a.Way, LengthM = lengthM });
            }
            else if (lengthM > 0 && Between(boat, a, b) is { } space)
            {
                legs.Add(new RunLeg { Space = space.Id, LengthM = lengthM });
            }
        }

        string words = string.Join(", ", legs.Select(leg => boat.Find(leg.Way ?? leg.Space!)!.Title).Distinct());
        return legs.Count == 0 ? null : new OtherRun(legs.ToValueList(), Math.Round(legs.Sum(leg => leg.LengthM), 3), words);
    }
}
