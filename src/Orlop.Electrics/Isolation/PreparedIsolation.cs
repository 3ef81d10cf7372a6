using System.Collections.Immutable;

namespace Orlop.Electrics.Isolation;

/// <summary>
/// Wiring made ready once, to find for one part after another the least unwelcome set of devices to open and sources to stop so that
/// nothing live reaches it: a minimum cut between all live poles and the part. The cost is the lowest possible when every device opens a
/// single edge. A device of several poles is one cost for several edges, which a cut cannot weigh exactly: it is searched once with the
/// full cost on every pole and once with the cost shared among them, devices that are not needed are closed again, and the cheaper set is
/// taken. For one reader at a time.
/// </summary>
public sealed class PreparedIsolation
{
    /// <summary>Divisible by every number of poles up to 10, so that shared costs stay whole.</summary>
    private const long CostUnit = 2520;

    private readonly IsolationWiring _wiring;
    private readonly WiringGraph _graph;
    private readonly LiveReach _liveAsItIs;

    // For each source that cannot be stopped, what it reaches along edges that cannot be opened.
    private readonly ImmutableArray<(IsolationSource Source, LiveReach Reach)> _alwaysLive;

    /// <summary>Reads the wiring; its target nodes are not looked at.</summary>
    /// <exception cref="ArgumentException">The wiring cannot be reasoned about; the message names the place.</exception>
    public PreparedIsolation(IsolationInput input)
    {
        ArgumentNullException.ThrowIfNull(input);
        _graph = new WiringGraph(input);
        IsolationChecks.Refuse(input, _graph);
        _wiring = new IsolationWiring(input, _graph);
        _liveAsItIs = _wiring.LiveWith(_wiring.NothingOpened);
        bool[] fixedEdges = [.. input.Edges.Select(edge => edge.IsClosed && edge.Opening is null)];
        _alwaysLive = [.. input.Sources.Where(source => source.Stop is null).Select(source => (source, _graph.LiveFrom(source.PoleNodes.Select(_graph.Number), fixedEdges)))];
    }

    /// <summary>The plan that makes these nodes dead.</summary>
    /// <param name="targetNodes">The nodes of the part, at least one, each of the wiring.</param>
    /// <exception cref="ArgumentException">No node is given, or one is not of the wiring.</exception>
    public IsolationResult Find(ImmutableArray<string> targetNodes)
    {
        IsolationChecks.RefuseTargets(targetNodes, _graph);
        ImmutableArray<CannotBeMadeDead> hopeless = Hopeless(targetNodes);
        int[] targets = [.. targetNodes.Where(node => hopeless.All(dead => dead.Node != node)).Select(_graph.Number).Where(node => !_graph.IsGrounded(node))];
        bool wasLive = targets.Any(_liveAsItIs.Has);
        OpenedSet opened = wasLive ? Cheapest(targets) : _wiring.NothingOpened;
        LiveReach around = _graph.Around(targetNodes.Select(_graph.Number));
        LiveReach live = _wiring.LiveWith(opened);
        bool[] conducts = _wiring.Conducts(opened);
        ImmutableArray<(IsolationSource Source, LiveReach Reach)> running =
            [.. _wiring.Running(opened).Select(source => (source, _graph.LiveFrom(source.PoleNodes.Select(_graph.Number), conducts)))];
        ImmutableArray<Opening> openings = OpeningOrder.Of(_wiring, _graph, around, opened, running);
        return new IsolationResult
        {
            Status = (hopeless.IsEmpty, targets.Length == 0, wasLive) switch
            {
                (true, _, false) => IsolationStatus.AlreadyDead,
                (true, _, true) => IsolationStatus.CanBeMadeDead,
                (false, false, _) => IsolationStatus.PartlyDead,
                (false, true, _) => IsolationStatus.CannotBeMadeDead,
            },
            Openings = openings,
            Cost = openings.Sum(opening => (long)opening.Cost),
            KeepOpen = KeepOpen(targets, opened),
            StaysLive = [.. running.Where(source => source.Reach.Count > 0).Select(source => Stay(source.Source, source.Reach, around))],
            Proofs = [.. Proofs(targetNodes)],
            TryMeterAtNode = live.Count == 0 ? null : _graph.Names[live.Nodes.MinBy(around.StepCountTo)],
            CannotBeMadeDead = hopeless,
        };
    }

    private ImmutableArray<CannotBeMadeDead> Hopeless(ImmutableArray<string> targetNodes)
    {
        var found = ImmutableArray.CreateBuilder<CannotBeMadeDead>();
        foreach ((IsolationSource source, LiveReach reach) in _alwaysLive)
        {
            found.AddRange(targetNodes.Where(node => reach.Has(_graph.Number(node)) && found.All(dead => dead.Node != node))
                .Select(node => new CannotBeMadeDead(node, source.Id, source.LiveBecause, reach.PathTo(_graph.Number(node)))));
        }

        return found.ToImmutable();
    }

    private OpenedSet Cheapest(int[] targets)
    {
        OpenedSet atFullCost = Search(opening => opening.Cost * CostUnit);
        OpenedSet atSharedCost = _wiring.HasSeveralPoles ? Search(opening => (opening.Cost * CostUnit) / _wiring.PoleCountOf(opening.DeviceId)) : atFullCost;
        return _wiring.CostOf(atSharedCost) < _wiring.CostOf(atFullCost) ? atSharedCost : atFullCost;

        OpenedSet Search(Func<EdgeOpening, long> capacityOf) => _wiring.WithoutNeedless(_wiring.Cut(targets, capacityOf, CostUnit), targets);
    }

    private ImmutableArray<string> KeepOpen(int[] targets, OpenedSet opened)
    {
        return [.. _wiring.OpenNow.Where(device => targets.Any(_wiring.LiveWith(opened, device).Has))];
    }

    private StaysLive Stay(IsolationSource source, LiveReach reach, LiveReach around)
    {
        int nearest = reach.Nodes.MinBy(around.StepCountTo);
        return new StaysLive(source.Id, source.LiveBecause, [.. reach.Nodes.Select(node => _graph.Names[node])], _graph.Names[nearest], reach.PathTo(nearest));
    }

    private static IEnumerable<DeadProof> Proofs(ImmutableArray<string> nodes)
    {
        for (int i = 0; i < nodes.Length; i++)
        {
            for (int j = i + 1; j < nodes.Length; j++)
            {
                yield return new DeadProof(nodes[i], nodes[j]);
            }
        }

        foreach (string node in nodes)
        {
            yield return new DeadProof(node, null);
        }
    }
}
