using System.Collections.Immutable;
using Orlop.Boat.Things;
using Orlop.Boat.Values;
using Orlop.Numerics.Graphs;

namespace Orlop.Review.Ways;

/// <summary>
/// The ways of a boat as a graph for one cable. Its stops are places on ways, and the two parts that the cable joins. From stop to stop it goes along a way, across
/// where two ways are joined, or loose through a space that both stops are in.
/// </summary>
internal sealed class RouteGraph
{
    /// <summary>Number of the stop at the first part.</summary>
    public const int Start = 0;

    /// <summary>Number of the stop at the other part.</summary>
    public const int End = 1;

    // Stops on a way nearer than this are one.
    private const double SameM = 0.01;

    private readonly WaysView _view;
    private readonly ArcPricing _pricing;
    private readonly ImmutableArray<WayLine> _lines;
    private readonly List<(WayLine Line, double AlongM, Place Place)> _stops = [];
    private readonly List<RouteArc> _arcs = [];

    private RouteGraph(WaysView view, ArcPricing pricing, IEnumerable<Way> ways)
    {
        _view = view;
        _pricing = pricing;
        _lines = [.. ways.Where(way => way.Points.Count > 1).Select(way => new WayLine(way))];
    }

    /// <summary>Its pieces, in the order of the graph's arcs.</summary>
    public IReadOnlyList<RouteArc> Arcs => _arcs;

    /// <summary>The graph.</summary>
    public WeightedGraph Graph { get; private set; } = new(0, []);

    /// <summary>How many stops it has.</summary>
    public int StopCount => _stops.Count + 2;

    /// <summary>The id of the way that a stop is on; null at the two parts.</summary>
    public string? WayAt(int stop) => stop is Start or End ? null : _stops[stop - 2].Line.Way.Id;

    /// <summary>The graph of a cable between two parts that have a place.</summary>
    public static RouteGraph Of(WaysView view, Cable cable, Part from, Part to, IEnumerable<Way> ways, Func<string, double> shareOf)
    {
        RouteGraph graph = new(view, new ArcPricing(view, cable, shareOf), ways);
        foreach (WayLine line in graph._lines)
        {
            graph.StopAt(line, 0);
            graph.StopAt(line, line.LengthM);
        }

        graph.JoinWays();
        graph.JoinPart(from, Start, isStart: true);
        graph.JoinPart(to, End, isStart: false);
        graph.JoinParts(from, to);
        graph.RunAlong();
        graph.Graph = new WeightedGraph(graph.StopCount, graph._arcs.Select(arc => new Arc(arc.From, arc.To, arc.CostM)));
        return graph;
    }

    private int StopAt(WayLine line, double alongM)
    {
        int index = _stops.FindIndex(stop => ReferenceEquals(stop.Line, line) && Math.Abs(stop.AlongM - alongM) < SameM);
        if (index < 0)
        {
            index = _stops.Count;
            _stops.Add((line, alongM, line.Between(alongM, alongM)[0]));
        }

        return index + 2;
    }

    private Place PlaceOf(int stop) => _stops[stop - 2].Place;

    private void JoinWays()
    {
        for (int i = 0; i < _lines.Length; i++)
        {
            for (int j = i + 1; j < _lines.Length; j++)
            {
                Join(_lines[i], _lines[j]);
            }
        }
    }

    // Where a point of the one comes near to the other: joined where near enough; otherwise across a space, once, where they are nearest.
    private void Join(WayLine one, WayLine other)
    {
        (double OneM, double OtherM, double GapM)[] meetings =
        [
            .. one.Points.SelectMany(point => other.NearestTo(point.Place).Select(near => (point.AlongM, near.AlongM, near.Place.DistanceM(point.Place)))),
            .. other.Points.SelectMany(point => one.NearestTo(point.Place).Select(near => (near.AlongM, point.AlongM, near.Place.DistanceM(point.Place)))),
        ];
        bool isJoined = false;
        foreach ((double oneM, double otherM, double gapM) in meetings.Where(meeting => meeting.GapM <= _view.Rules.JoinM).OrderBy(meeting => meeting.GapM))
        {
            (int a, int b) = (StopAt(one, oneM), StopAt(other, otherM));
            if (!_arcs.Any(arc => arc.From == a && arc.To == b))
            {
                _arcs.Add(_pricing.Into(a, b, other, PlaceOf(a), PlaceOf(b)));
                _arcs.Add(_pricing.Into(b, a, one, PlaceOf(b), PlaceOf(a)));
            }

            isJoined = true;
        }

        if (!isJoined)
        {
            foreach ((double oneM, double otherM, double gapM) in meetings.Where(meeting => meeting.GapM <= _view.Rules.MostLooseM).OrderBy(meeting => meeting.GapM))
            {
                (Place a, Place b) = (one.Between(oneM, oneM)[0], other.Between(otherM, otherM)[0]);
                if (Shared(_view.SpacesAt(one.Way, a), _view.SpacesAt(other.Way, b)) is { } space)
                {
                    (int from, int to) = (StopAt(one, oneM), StopAt(other, otherM));
                    _arcs.Add(_pricing.Loose(from, to, space, other.Way, a, b));
                    _arcs.Add(_pricing.Loose(to, from, space, one.Way, b, a));
                    return;
                }
            }
        }
    }

    // The space that both are in; the worst where there are several.
    private Space? Shared(IEnumerable<Space> one, IEnumerable<Space> other) =>
        one.IntersectBy(other.Select(space => space.Id), space => space.Id).OrderByDescending(space => _view.Rules.FactorOf(space.Use)).FirstOrDefault();

    private void JoinPart(Part part, int stop, bool isStart)
    {
        Place place = part.Place!;
        Space[] around = [.. _view.SpacesOf(part)];
        foreach (WayLine line in _lines)
        {
            var near = line.NearestTo(place).Concat(line.Points)
                .Select(point => (point.AlongM, point.Place, GapM: point.Place.DistanceM(place), Space: Shared(around, _view.SpacesAt(line.Way, point.Place))))
                .Where(point => point.Space is not null || point.GapM <= _view.Rules.JoinM)
                .OrderBy(point => point.GapM);
            foreach (var point in near.Take(line.IsClosed ? 2 : 1))
            {
                int on = StopAt(line, point.AlongM);
                _arcs.Add((point.Space, isStart) switch
                {
                    ({ } space, true) => _pricing.Loose(stop, on, space, line.Way, place, point.Place),
                    ({ } space, false) => _pricing.Loose(on, stop, space, null, point.Place, place),
                    (null, true) => _pricing.Into(stop, on, line, place, point.Place),
                    (null, false) => _pricing.OutOf(on, stop, line, point.Place, place),
                });
            }
        }
    }

    private void JoinParts(Part from, Part to)
    {
        if (Shared(_view.SpacesOf(from), _view.SpacesOf(to)) is { } space)
        {
            _arcs.Add(_pricing.Loose(Start, End, space, null, from.Place!, to.Place!));
        }
    }

    private void RunAlong()
    {
        foreach (WayLine line in _lines)
        {
            int[] stops = [.. Enumerable.Range(0, _stops.Count).Where(k => ReferenceEquals(_stops[k].Line, line)).OrderBy(k => _stops[k].AlongM)];
            for (int k = 1; k < stops.Length; k++)
            {
                (double fromM, double toM) = (_stops[stops[k - 1]].AlongM, _stops[stops[k]].AlongM);
                _arcs.Add(_pricing.Along(stops[k - 1] + 2, stops[k] + 2, line, fromM, toM));
                _arcs.Add(_pricing.Along(stops[k] + 2, stops[k - 1] + 2, line, toM, fromM));
            }
        }
    }
}
