using System.Collections.Immutable;
using Orlop.Boat.Things;

namespace Orlop.Review.Ways;

/// <summary>
/// Several cables planned together, so that holes to be made and what must be opened are paid for once, and no conduit gets too full of them. Each cable in turn takes
/// the way that is best beside the others until none finds a better one, from several starts; the best end is kept. It is not proven the best there is.
/// </summary>
/// <param name="Routes">For each cable its way.</param>
/// <param name="ApartM">What they cost when each pays for itself, in dry metres along a way.</param>
/// <param name="TogetherM">What they cost together.</param>
public sealed record JointRoutes(ImmutableArray<(Cable Cable, CableRoute Route)> Routes, double ApartM, double TogetherM)
{
    private const int MostRounds = 12;

    // The share of what is paid once that a cable is told at the start: all, its share, next to none.
    private static readonly double[] Starts = [1, 0.5, 0.2, 0];

    /// <summary>Plans them; null where a cable has no way or something is missing.</summary>
    public static JointRoutes? Plan(WaysView view, IReadOnlyList<Cable> cables)
    {
        ArgumentNullException.ThrowIfNull(view);
        ArgumentNullException.ThrowIfNull(cables);
        CableRoute?[] apart = [.. cables.Select(cable => RouteFinder.Find(view, cable).Routes.FirstOrDefault())];
        if (cables.Count == 0 || apart.Contains(null))
        {
            return null;
        }

        CableRoute[]? best = Starts.Select(share => Started(view, cables, share)).OfType<CableRoute[]>().Select(routes => Settled(view, cables, routes)).MinBy(routes => CostM(view, routes));
        return best is null ? null : new JointRoutes([.. cables.Zip(best)], apart.Sum(route => route!.CostM), CostM(view, best));
    }

    /// <summary>Holes that have to be made, each once.</summary>
    public ImmutableArray<PassedHole> NewHoles => [.. Routes.SelectMany(pair => pair.Route.Holes).Where(hole => !hole.Hole.IsMade).DistinctBy(SharedCharge.Hole)];

    /// <summary>What must be opened, each once.</summary>
    public ImmutableArray<Way> ToOpen => [.. Routes.SelectMany(pair => pair.Route.ToOpen).DistinctBy(way => way.Id)];

    // What routes cost with what is paid once paid once: lengths and made holes each, new holes and openings together.
    internal static double CostM(WaysView view, IEnumerable<CableRoute> routes)
    {
        CableRoute[] all = [.. routes];
        double each = all.Sum(route => route.Costs.Where(cost => cost.Kind is not (CostKind.NewHoles or CostKind.Opening)).Sum(cost => cost.WorthM));
        int holes = all.SelectMany(route => route.Holes).Where(hole => !hole.Hole.IsMade).DistinctBy(SharedCharge.Hole).Count();
        int openings = all.SelectMany(route => route.ToOpen).DistinctBy(way => way.Id).Count();
        return each + (holes * view.Rules.NewHoleM) + (openings * view.Rules.OpeningM);
    }

    // One after the other, each into what the ones before it leave of the conduits; null where one has no way left.
    private static CableRoute[]? Started(WaysView view, IReadOnlyList<Cable> cables, double share)
    {
        List<(Cable Cable, CableRoute Route)> taken = [];
        foreach (Cable cable in cables)
        {
            if (RouteFinder.Find(view, cable, 1, _ => share, FullOf(view, cables, taken, cable)).Routes is not [CableRoute route])
            {
                return null;
            }

            taken.Add((cable, route));
        }

        return [.. taken.Select(pair => pair.Route)];
    }

    private static CableRoute[] Settled(WaysView view, IReadOnlyList<Cable> cables, CableRoute[] routes)
    {
        bool hasChanged = true;
        for (int round = 0; round < MostRounds && hasChanged; round++)
        {
            hasChanged = false;
            for (int k = 0; k < routes.Length; k++)
            {
                (Cable Cable, CableRoute Route)[] others = [.. cables.Zip(routes).Where((_, index) => index != k)];
                HashSet<string> paid =
                [
                    .. others.SelectMany(other => other.Route.Holes).Where(hole => !hole.Hole.IsMade).Select(SharedCharge.Hole),
                    .. others.SelectMany(other => other.Route.ToOpen).Select(SharedCharge.Opening),
                ];
                CableRoute next = RouteFinder.Find(view, cables[k], 1, charge => paid.Contains(charge) ? 0 : 1, FullOf(view, cables, others, cables[k])).Routes[0];
                if (next.Words != routes[k].Words && CostM(view, [.. others.Select(other => other.Route), next]) < CostM(view, routes) - 1e-9)
                {
                    routes[k] = next;
                    hasChanged = true;
                }
            }
        }

        return routes;
    }

    // Conduits that the cable would make too full, beside what is in them and those that take them now.
    private static HashSet<string> FullOf(WaysView view, IReadOnlyList<Cable> cables, IEnumerable<(Cable Cable, CableRoute Route)> taken, Cable cable)
    {
        HashSet<string> planned = [.. cables.Select(one => one.Id)];
        return
        [
            .. taken.SelectMany(pair => pair.Route.Fills.Select(fill => (fill.Way, pair.Cable))).GroupBy(pair => pair.Way.Id).Where(way =>
            {
                IEnumerable<Cable> inIt = view.CablesIn(way.First().Way).Where(one => !planned.Contains(one.Id)).Concat(way.Select(pair => pair.Cable)).Append(cable);
                ConduitContents contents = ConduitContents.Of(view.Practice, way.First().Way, inIt);
                return contents is { FillFraction: { } fill, Limit: { } limit } && fill > limit.Value;
            }).Select(way => way.Key),
        ];
    }
}
