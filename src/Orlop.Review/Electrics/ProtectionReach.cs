using System.Collections.Concurrent;
using System.Collections.Immutable;
using Orlop.Boat.Things;
using Orlop.Boat.Topology;

namespace Orlop.Review.Electrics;

/// <summary>
/// The worst that can feed each ungrounded node before something opens: over all ways from all sources, the largest of the smallest rating
/// on the way. Infinite where a battery reaches it with no fuse or breaker between. A widest-path search (Dijkstra's method with the
/// smaller of two ratings in place of the sum).
/// </summary>
public sealed class ProtectionReach
{
    private readonly Dictionary<string, double> _ratingA;
    private readonly ConcurrentDictionary<string, (double AtA, double AtB)> _without = new(StringComparer.Ordinal);
    private readonly ImmutableArray<Part> _sources;
    private readonly Wiring _wiring;
    private readonly Grounding _grounding;
    private readonly string _conditionId;

    /// <summary>The reach of sources in a condition.</summary>
    internal ProtectionReach(ImmutableArray<Part> sources, Wiring wiring, Grounding grounding, string conditionId)
    {
        _sources = sources;
        _wiring = wiring;
        _grounding = grounding;
        _conditionId = conditionId;
        _ratingA = Search(null);
    }

    /// <summary>Rating of the worst feed of a node: 0 when nothing reaches it, infinite when nothing protects it.</summary>
    public double WorstFeedA(string node) => _ratingA.GetValueOrDefault(node);

    /// <summary>The worst feed of each end of an edge when that edge is taken away: what can feed it from either end.</summary>
    public (double AtA, double AtB) FeedsWithout(WiringEdge edge) => _without.GetOrAdd(edge.Id, _ =>
    {
        Dictionary<string, double> without = Search(edge.Id);
        return (without.GetValueOrDefault(edge.A), without.GetValueOrDefault(edge.B));
    });

    /// <summary>What a source can push by itself: infinite for a battery, its own limit for the rest.</summary>
    public static double OwnLimitA(Part source) => source switch
    {
        Charger charger => charger.LimitA.Value,
        DcConverter converter => converter.RatedA.Value,
        Inverter inverter => inverter.RatedW.Value / inverter.OutputV.Value * (inverter.Overloads.Count == 0 ? 1 : inverter.Overloads.Max(overload => overload.RatingRatio)),
        ShoreInlet inlet => inlet.RatedA.Value,
        _ => double.PositiveInfinity,
    };

    private Dictionary<string, double> Search(string? withoutEdge)
    {
        Dictionary<string, double> best = new(StringComparer.Ordinal);
        PriorityQueue<string, double> queue = new();
        void Reach(string node, double ratingA)
        {
            if (!_grounding.IsGrounded(node) && ratingA > best.GetValueOrDefault(node))
            {
                best[node] = ratingA;
                queue.Enqueue(node, -ratingA);
            }
        }

        foreach (Part part in _sources)
        {
            if (Poles.Giving(part) is { } poles)
            {
                Reach(poles.Plus, OwnLimitA(part));
                Reach(poles.Minus, OwnLimitA(part));
            }
        }

        while (queue.TryDequeue(out string? node, out double priority))
        {
            if (-priority < best[node])
            {
                continue;
            }

            foreach (WiringEdge edge in _wiring.At(node).Where(edge => edge.Id != withoutEdge && edge.IsClosedIn(_conditionId)))
            {
                Reach(edge.Other(node), edge.Owner is Protection device ? Math.Min(-priority, device.RatedA.Value) : -priority);
            }
        }

        return best;
    }
}
