using System.Collections.Immutable;
using Orlop.Boat.Things;
using Orlop.Numerics.Graphs;

namespace Orlop.Review.Ways;

/// <summary>Puts the ways of several cables as trips that share what is paid once, and the plan found back as routes.</summary>
internal sealed class JointPlanner
{
    private readonly WaysView _view;
    private readonly IReadOnlyList<Cable> _cables;
    private readonly RouteGraph[] _graphs;
    private readonly ImmutableArray<string> _charges;
    private readonly ImmutableArray<Way> _conduits;

    public JointPlanner(WaysView view, IReadOnlyList<Cable> cables)
    {
        // Where they run now does not count: all of them are laid anew.
        (_view, _cables) = (view.With(cables.Select(cable => cable with { Run = [] })), cables);
        view = _view;
        // What each pays alone, without what is paid once.
        _graphs = [.. cables.Select(cable => RouteFinder.GraphOf(view, cable, _ => 0))];
        _charges = [.. _graphs.SelectMany(graph => graph.Arcs).SelectMany(arc => arc.Charges).Distinct().Order(StringComparer.Ordinal)];
        _conduits = [.. view.Ways.Where(ConduitContents.IsConduit)];
    }

    public JointRoutes? Plan(double apartM)
    {
        SharedTrips trips = new([.. _graphs.Select(TripOf)], [.. _charges.Select(WorthM)], (room, cables) => Fits(_conduits[room], cables));
        return SharedPaths.Find(trips, token: _view.Token) is { } found ? new JointRoutes(RoutesOf(trips, found), apartM, found.Weight, found.Least) : null;
    }

    private SharedTrip TripOf(RouteGraph graph) => new(graph.Graph.NodeCount, RouteGraph.Start, RouteGraph.End,
    [
        .. graph.Arcs.Select(arc => new SharedArc(
            arc.From, arc.To, arc.CostM, [.. arc.Charges.Select(charge => _charges.BinarySearch(charge, StringComparer.Ordinal))],
            arc.Way is { } way && _conduits.IndexOf(way) is >= 0 and var room ? room : null)),
    ]);

    private double WorthM(string charge) => SharedCharge.IsOpening(charge) ? _view.Rules.OpeningM : _view.Rules.NewHoleM;

    // Each alone fits, or the way would be left out for it; what is not known stands in no way's way.
    private bool Fits(Way conduit, IReadOnlyList<int> cables)
    {
        ConduitContents contents = ConduitContents.Of(_view.Practice, conduit, _view.CablesIn(conduit).Concat(cables.Select(index => _cables[index])));
        return !(contents is { FillFraction: { } fill, Limit: { } limit } && fill > limit.Value);
    }

    // Of what is paid once each pays alike, so that what the routes cost adds up to what they cost together.
    private ImmutableArray<(Cable Cable, CableRoute Route)> RoutesOf(SharedTrips trips, SharedPaths found)
    {
        ILookup<int, int> payers = found.Paths.SelectMany((path, trip) => path.SelectMany(arc => trips.Trips[trip].Arcs[arc].Charges).Select(charge => (charge, trip))).ToLookup(pair => pair.charge, pair => pair.trip);
        double ShareOf(string charge, int trip)
        {
            int[] all = [.. payers[_charges.BinarySearch(charge, StringComparer.Ordinal)]];
            return all.Contains(trip) ? 1.0 / all.Distinct().Count() / all.Count(payer => payer == trip) : 0;
        }

        RouteArc[][] arcs =
        [
            .. found.Paths.Select((path, trip) =>
            {
                RouteGraph shared = RouteFinder.GraphOf(_view, _cables[trip], charge => ShareOf(charge, trip));
                return path.Select(arc => shared.Arcs[arc]).ToArray();
            }),
        ];
        // How full conduits are, and what lies beside what, is told with all of them laid.
        WaysView laid = _view.With(_cables.Select((cable, trip) => RouteFinder.RouteOf(_view, cable, arcs[trip]).Taken(cable)));
        return [.. _cables.Select((cable, trip) => (cable, RouteFinder.RouteOf(laid, cable, arcs[trip])))];
    }
}
