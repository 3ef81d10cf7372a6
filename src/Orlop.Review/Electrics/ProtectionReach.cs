using System.Collections.Concurrent;
using System.Collections.Immutable;
using System.Globalization;
using Orlop.Boat.Things;
using Orlop.Boat.Topology;
using Orlop.Boat.Values;
using Orlop.Electrics.Protection;

namespace Orlop.Review.Electrics;

/// <summary>
/// The most that a conductor can be fed before something opens. Wherever on it a fault lies, current comes to it from each end through what is left of the
/// wiring without that conductor; each of these streams is limited by <see cref="GreatestFeed"/>, and the greater one flows in the conductor. A load's
/// current that passes through cannot be more than either. Grounded wiring ends a way.
/// </summary>
public sealed class ProtectionReach
{
    private const int Grounded = -1;

    private readonly ConcurrentDictionary<string, (FeedLimit AtA, FeedLimit AtB)> _without = new(StringComparer.Ordinal);
    private readonly ConcurrentDictionary<int, FeedLimit> _atPiece = new();
    private readonly Dictionary<string, int> _pieceOf = new(StringComparer.Ordinal);
    private readonly List<(WiringEdge Edge, FeedDevice Device)> _devices = [];
    private readonly List<(string Node, FeedSource Source)> _sources = [];
    private readonly int _pieceCount;
    private readonly Wiring _wiring;
    private readonly string _conditionId;

    /// <summary>The reach of sources in a condition.</summary>
    internal ProtectionReach(ImmutableArray<Part> sources, Wiring wiring, Grounding grounding, string conditionId)
    {
        _wiring = wiring;
        _conditionId = conditionId;
        foreach (string node in wiring.Nodes.Where(node => !grounding.IsGrounded(node)))
        {
            if (!_pieceOf.ContainsKey(node))
            {
                foreach (string joined in PlainMetal(node, null, grounding))
                {
                    _pieceOf[joined] = _pieceCount;
                }

                _pieceCount++;
            }
        }

        foreach (WiringEdge edge in wiring.Edges)
        {
            if (edge.Owner is Protection device && PieceOf(edge.A) is var a and not Grounded && PieceOf(edge.B) is var b and not Grounded)
            {
                _devices.Add((edge, new FeedDevice(device.Id, a, b, Known(device.RatedA.Value))));
            }
        }

        foreach (Part part in sources)
        {
            if (Poles.Giving(part) is { } poles)
            {
                Add(part, poles.Plus);
                Add(part, poles.Minus);
            }
        }
    }

    /// <summary>All that a reach is made from: equal for wirings of the same ends, ratings and open switches.</summary>
    internal static object KeyOf(Wiring wiring, object sources, string conditionId) => (sources, wiring.Edges.SelectMany(edge => new[]
    {
        edge.Id, edge.A, edge.B, edge.IsClosedIn(conditionId) ? "" : "open", edge.Owner is Protection device ? device.RatedA.Value.ToString("R", CultureInfo.InvariantCulture) : "",
    }).ToValueList());

    /// <summary>The most that a conductor, or a contact of a plug, can be fed at any place along it.</summary>
    public FeedLimit FeedOf(WiringEdge edge)
    {
        (FeedLimit atA, FeedLimit atB) = FeedsWithout(edge);
        FeedLimit greater = atA.MostA >= atB.MostA ? atA : atB;
        return greater with { LeastA = Math.Max(atA.LeastA, atB.LeastA) };
    }

    /// <summary>The most that can come to each end of an edge when that edge is taken away.</summary>
    public (FeedLimit AtA, FeedLimit AtB) FeedsWithout(WiringEdge edge) =>
        _without.TryGetValue(edge.Id, out (FeedLimit, FeedLimit) feeds) ? feeds : _without.GetOrAdd(edge.Id, Without(edge));

    /// <summary>What a source can push by itself: infinite for a battery, its own limit for the rest.</summary>
    public static double OwnLimitA(Part source) => source switch
    {
        Charger charger => charger.LimitA.Value,
        DcConverter converter => converter.RatedA.Value,
        Inverter inverter => inverter.RatedW.Value / inverter.OutputV.Value * (inverter.Overloads.Count == 0 ? 1 : inverter.Overloads.Max(overload => overload.RatingRatio)),
        ShoreInlet inlet => inlet.RatedA.Value,
        _ => double.PositiveInfinity,
    };

    private static double? Known(double valueA) => valueA > 0 ? valueA : null;

    private int PieceOf(string node) => _pieceOf.GetValueOrDefault(node, Grounded);

    private void Add(Part source, string node)
    {
        if (PieceOf(node) is var piece and not Grounded)
        {
            _sources.Add((node, new FeedSource(source.Id, piece, Known(OwnLimitA(source)))));
        }
    }

    // An edge that parts its piece of metal makes two of it: the far end's side gets a number of its own.
    private (FeedLimit AtA, FeedLimit AtB) Without(WiringEdge edge)
    {
        if (PieceOf(edge.A) is var piece && (piece == Grounded || PieceOf(edge.B) == Grounded))
        {
            return (FeedLimit.None, FeedLimit.None);
        }

        HashSet<string> atB = [.. PlainMetal(edge.B, edge, null)];
        if (atB.Contains(edge.A))
        {
            FeedLimit whole = AtPiece(piece);
            return (whole, whole);
        }

        // Most cores end at a load: nothing comes from there, and all that can come is what comes to the piece.
        bool isFedAtA = HasFeeds(node => PieceOf(node) == piece && !atB.Contains(node)), isFedAtB = HasFeeds(atB.Contains);
        if (!isFedAtA || !isFedAtB)
        {
            return (isFedAtA ? AtPiece(piece) : FeedLimit.None, isFedAtB ? AtPiece(piece) : FeedLimit.None);
        }

        List<FeedDevice> devices = new(_devices.Count);
        foreach ((WiringEdge own, FeedDevice device) in _devices.Where(each => each.Edge.Id != edge.Id))
        {
            devices.Add(device with { A = atB.Contains(own.A) ? _pieceCount : device.A, B = atB.Contains(own.B) ? _pieceCount : device.B });
        }

        FeedSource[] sources = [.. _sources.Select(each => atB.Contains(each.Node) ? each.Source with { At = _pieceCount } : each.Source)];
        return (GreatestFeed.Of(_pieceCount + 1, devices, sources, piece), GreatestFeed.Of(_pieceCount + 1, devices, sources, _pieceCount));
    }

    private bool HasFeeds(Func<string, bool> isOnSide) => _sources.Exists(each => isOnSide(each.Node)) || _devices.Exists(each => isOnSide(each.Edge.A) || isOnSide(each.Edge.B));

    private FeedLimit AtPiece(int piece) => _atPiece.GetOrAdd(
        piece, _ => GreatestFeed.Of(_pieceCount, [.. _devices.Select(each => each.Device)], [.. _sources.Select(each => each.Source)], piece));

    // What is joined to a node with no fuse or breaker between, without one edge.
    private IEnumerable<string> PlainMetal(string start, WiringEdge? without, Grounding? grounding)
    {
        HashSet<string> seen = [start];
        Queue<string> queue = new(seen);
        while (queue.TryDequeue(out string? node))
        {
            yield return node;
            foreach (WiringEdge edge in _wiring.At(node))
            {
                string next = edge.Other(node);
                bool isGrounded = grounding?.IsGrounded(next) ?? !_pieceOf.ContainsKey(next);
                if (edge.Id != without?.Id && edge.Owner is not Protection && edge.IsClosedIn(_conditionId) && !isGrounded && seen.Add(next))
                {
                    queue.Enqueue(next);
                }
            }
        }
    }
}
