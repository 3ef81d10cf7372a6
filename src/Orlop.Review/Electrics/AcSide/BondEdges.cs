using System.Collections.Immutable;
using Orlop.Boat.Things;
using Orlop.Boat.Topology;

namespace Orlop.Review.Electrics.AcSide;

/// <summary>
/// The joins along conductors between a source's neutral and earth: as many as there are ways from neutral terminals to earth terminals that share no conductor, each told by the conductor whose cutting parts it. Maximum flow is minimum cut (Ford and Fulkerson
/// 1956), every edge of the wiring passing one.
/// </summary>
internal sealed class BondEdges
{
    private readonly ElectricsView _view;
    private readonly string _condition;
    private readonly HashSet<string> _earth;
    private readonly Dictionary<string, int> _flow = new(StringComparer.Ordinal);

    private BondEdges(ElectricsView view, Condition condition)
    {
        (_view, _condition) = (view, condition.Id);
        _earth = [.. AcCircuits.Sources(view).Concat(AcCircuits.Takers(view)).Select(part => part.At(TerminalNames.Earth).ToString()), .. Bonds.Of(view.Boat.All<Part>()).Select(bond => bond.ToString())];
    }

    /// <summary>The nodes joined to the source's neutral before any earth terminal.</summary>
    public required HashSet<string> Joined { get; init; }

    /// <summary>The conductors that join neutral and earth, with the node of each on the side of the neutral.</summary>
    public required ImmutableArray<(WiringEdge Edge, string NeutralNode)> All { get; init; }

    /// <summary>Those of a source's neutral in a condition.</summary>
    public static BondEdges Of(ElectricsView view, Part source, Condition condition)
    {
        BondEdges search = new(view, condition) { Joined = [], All = [] };
        HashSet<string> joined = search.Reach([source.At(TerminalNames.Neutral).ToString()]);
        string[] neutrals = [.. AcCircuits.Sources(view).Concat(AcCircuits.Takers(view)).Select(part => part.At(TerminalNames.Neutral).ToString()).Where(joined.Contains)];
        while (search.Augment(neutrals))
        {
        }

        HashSet<string> side = search.Reach(neutrals);
        return new BondEdges(view, condition)
        {
            Joined = joined,
            All = [.. side.SelectMany(node => search.Closed(node).Where(edge => !side.Contains(edge.Other(node))).Select(edge => (edge, node)))],
        };
    }

    /// <summary>The nodes joined to the source's neutral without passing a residual-current device.</summary>
    public static HashSet<string> BeforeResidual(ElectricsView view, Part source, Condition condition) =>
        new BondEdges(view, condition) { Joined = [], All = [] }.Reach([source.At(TerminalNames.Neutral).ToString()], edge => edge.Owner is not Protection { ResidualA: not null });

    private IEnumerable<WiringEdge> Closed(string node) => _view.Wiring.At(node).Where(edge => edge.IsClosedIn(_condition));

    // What flows on along an edge from a node, of one that it may pass.
    private int Used(WiringEdge edge, string from) => _flow.GetValueOrDefault(edge.Id) * (edge.A == from ? 1 : -1);

    private HashSet<string> Reach(IEnumerable<string> starts, Func<WiringEdge, bool>? passes = null)
    {
        HashSet<string> reached = [.. starts];
        Queue<string> queue = new(reached);
        while (queue.TryDequeue(out string? node))
        {
            foreach (WiringEdge edge in Closed(node).Where(edge => Used(edge, node) < 1 && passes?.Invoke(edge) != false))
            {
                if (!_earth.Contains(edge.Other(node)) && reached.Add(edge.Other(node)))
                {
                    queue.Enqueue(edge.Other(node));
                }
            }
        }

        return reached;
    }

    private bool Augment(IEnumerable<string> starts)
    {
        Dictionary<string, WiringEdge?> reachedBy = starts.Distinct().ToDictionary(start => start, _ => (WiringEdge?)null, StringComparer.Ordinal);
        Queue<string> queue = new(reachedBy.Keys);
        while (queue.TryDequeue(out string? node))
        {
            foreach (WiringEdge edge in Closed(node).Where(edge => Used(edge, node) < 1))
            {
                string next = edge.Other(node);
                if (!reachedBy.TryAdd(next, edge))
                {
                    continue;
                }

                if (_earth.Contains(next))
                {
                    Push(next, reachedBy);
                    return true;
                }

                queue.Enqueue(next);
            }
        }

        return false;
    }

    private void Push(string end, Dictionary<string, WiringEdge?> reachedBy)
    {
        for (string node = end; reachedBy[node] is { } edge; node = edge.Other(node))
        {
            _flow[edge.Id] = _flow.GetValueOrDefault(edge.Id) + (edge.B == node ? 1 : -1);
        }
    }
}
