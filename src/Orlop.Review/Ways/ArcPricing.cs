using System.Collections.Immutable;
using Orlop.Boat.Things;
using Orlop.Boat.Values;

namespace Orlop.Review.Ways;

/// <summary>Makes the pieces of a cable's routes and says what each costs.</summary>
/// <param name="view">The boat's ways.</param>
/// <param name="cable">The cable.</param>
/// <param name="shareOf">The share of a charge that this cable pays: 1 alone, 0 where another cable pays it already.</param>
internal sealed class ArcPricing(WaysView view, Cable cable, Func<string, double> shareOf)
{
    private readonly RouteRules _rules = view.Rules;

    /// <summary>Along a way, from one length to another.</summary>
    public RouteArc Along(int from, int to, WayLine line, double fromM, double toM)
    {
        ImmutableArray<Place> points = line.Between(fromM, toM);
        PassedHole[] holes = [.. PassedHole.Of(line.Way).Where(hole => hole.Hole.Place is { } place && IsBetween(line, place, Math.Min(fromM, toM), Math.Max(fromM, toM)))];
        return Priced(new RouteArc(from, to, line.Way, null, view.UseOf(line.Way), points, 0, [], [.. holes]), Math.Abs(toM - fromM), isLoose: false, isEntry: false);
    }

    /// <summary>From a joined way into another.</summary>
    public RouteArc Into(int from, int to, WayLine line, Place left, Place joined) =>
        Priced(new RouteArc(from, to, line.Way, null, view.UseOf(line.Way), [left, joined], 0, [], HolesAnywhere(line.Way)), left.DistanceM(joined), isLoose: false, isEntry: true);

    /// <summary>Out of a way to a part beside it.</summary>
    public RouteArc OutOf(int from, int to, WayLine line, Place left, Place reached) =>
        Priced(new RouteArc(from, to, line.Way, null, view.UseOf(line.Way), [left, reached], 0, [], []), left.DistanceM(reached), isLoose: false, isEntry: false);

    /// <summary>Loose in a space; into a way where it ends at one.</summary>
    public RouteArc Loose(int from, int to, Space space, Way? into, Place start, Place end)
    {
        RouteArc arc = Priced(new RouteArc(from, to, null, space, space.Use, [start, end], 0, [], []), start.DistanceM(end), isLoose: true, isEntry: false);
        return into is null ? arc : arc with { Opens = Opened(into), Holes = HolesAnywhere(into), Costs = [.. arc.Costs, .. Entry(into, HolesAnywhere(into))] };
    }

    private static ImmutableArray<PassedHole> HolesAnywhere(Way way) => [.. PassedHole.Of(way).Where(hole => hole.Hole.Place is null)];

    private static bool IsBetween(WayLine line, Place hole, double leastM, double mostM)
    {
        (double alongM, _) = line.NearestTo(hole).MinBy(near => near.Place.DistanceM(hole));
        return alongM >= leastM && (alongM < mostM || (alongM == mostM && mostM >= line.LengthM - 1e-9));
    }

    private RouteArc Priced(RouteArc arc, double straightM, bool isLoose, bool isEntry)
    {
        double lengthM = straightM * (1 + _rules.SlackFraction);
        List<RouteCost> costs = [new RouteCost(CostKind.Length, lengthM)];
        Add(costs, KindOf(arc.Use), lengthM * (_rules.FactorOf(arc.Use) - 1));
        Add(costs, CostKind.Loose, isLoose ? lengthM * (_rules.LooseFactor - 1) : 0);
        Add(costs, CostKind.BesideAc, arc.Way is { } way && view.IsBesideOtherKind(way, cable) ? lengthM * (_rules.BesideAcFactor - 1) : 0);
        Add(costs, CostKind.Low, _rules.LowBelowM is { } low && arc.Line.Average(place => place.ZM) < low ? lengthM * (_rules.LowFactor - 1) : 0);
        costs.AddRange(isEntry ? Entry(arc.Way!, arc.Holes) : HoleCosts(arc.Holes));
        return arc with { LengthM = lengthM, Costs = [.. costs], Opens = isEntry ? Opened(arc.Way!) : null };
    }

    private static Way? Opened(Way way) => way.Opened is null ? null : way;

    private IEnumerable<RouteCost> Entry(Way way, ImmutableArray<PassedHole> holes)
    {
        IEnumerable<RouteCost> opening = way.Opened is null ? [] : [new RouteCost(CostKind.Opening, _rules.OpeningM * shareOf(SharedCharge.Opening(way)))];
        return opening.Concat(HoleCosts(holes));
    }

    private IEnumerable<RouteCost> HoleCosts(ImmutableArray<PassedHole> holes) => holes.Select(hole => hole.Hole.IsMade
        ? new RouteCost(CostKind.MadeHoles, _rules.MadeHoleM)
        : new RouteCost(CostKind.NewHoles, _rules.NewHoleM * shareOf(SharedCharge.Hole(hole))));

    private static void Add(List<RouteCost> costs, CostKind kind, double worthM)
    {
        if (worthM > 0)
        {
            costs.Add(new RouteCost(kind, worthM));
        }
    }

    private static CostKind KindOf(SpaceUse? use) => use switch
    {
        SpaceUse.Wet => CostKind.Wet,
        SpaceUse.Bilge => CostKind.Bilge,
        SpaceUse.Engine => CostKind.Engine,
        SpaceUse.OpenDeck => CostKind.Outside,
        SpaceUse.Dry => CostKind.Length,
        _ => CostKind.NotKnown,
    };
}
