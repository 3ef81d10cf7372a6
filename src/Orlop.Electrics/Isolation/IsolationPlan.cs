using System.Collections.Immutable;

namespace Orlop.Electrics.Isolation;

/// <summary>
/// Finds the least unwelcome set of devices to open and sources to stop so that nothing live reaches a part: a minimum cut between all live poles and the
/// part. The cost is the lowest possible when every device opens a single edge. A device of several poles is one cost for several edges, which a cut cannot
/// weigh exactly: it is searched once with the full cost on every pole and once with the cost shared among them, devices that are not needed are closed
/// again, and the cheaper set is taken.
/// </summary>
public static class IsolationPlan
{
    /// <summary>Divisible by every number of poles up to 10, so that shared costs stay whole.</summary>
    private const long CostUnit = 2520;

    public static IsolationResult Find(IsolationInput input)
    {
        ArgumentNullException.ThrowIfNull(input);
        var graph = new WiringGraph(input);
        IsolationChecks.Refuse(input, graph);

        var hopeless = Hopeless(input, graph);
        ImmutableArray<string> targets = [.. input.TargetNodes.Where(node => !graph.IsGrounded(node) && hopeless.All(dead => dead.Node != node))];
        var wasLive = targets.Any(LiveWith(input, graph, OpenedSet.Nothing).Has);
        var opened = wasLive ? Cheapest(input, graph, targets) : OpenedSet.Nothing;
        var around = graph.Around(input.TargetNodes);
        var live = LiveWith(input, graph, opened);
        var liveNodes = live.Nodes.OrderBy(around.StepCountTo).ThenBy(node => node, StringComparer.Ordinal);
        var openings = OpeningOrder.Of(input, graph, around, opened);
        return new IsolationResult
        {
            Status = (hopeless.IsEmpty, targets.IsEmpty, wasLive) switch
            {
                (true, _, false) => IsolationStatus.AlreadyDead,
                (true, _, true) => IsolationStatus.CanBeMadeDead,
                (false, false, _) => IsolationStatus.PartlyDead,
                (false, true, _) => IsolationStatus.CannotBeMadeDead,
            },
            Openings = openings,
            Cost = openings.Sum(opening => (long)opening.Cost),
            KeepOpen = KeepOpen(input, graph, targets, opened),
            StaysLive = [.. input.Sources.Where(source => !opened.Stops(source)).Select(source => Stay(source, graph, around, opened)).OfType<StaysLive>()],
            Proofs = [.. Proofs(input.TargetNodes)],
            TryMeterAtNode = liveNodes.FirstOrDefault(),
            CannotBeMadeDead = hopeless,
        };
    }

    private static LiveReach LiveWith(IsolationInput input, WiringGraph graph, OpenedSet opened) =>
        graph.LiveFrom(input.Sources.Where(source => !opened.Stops(source)).SelectMany(source => source.PoleNodes), opened.Conducts);

    private static ImmutableArray<CannotBeMadeDead> Hopeless(IsolationInput input, WiringGraph graph)
    {
        var found = ImmutableArray.CreateBuilder<CannotBeMadeDead>();
        foreach (var source in input.Sources.Where(source => source.Stop is null))
        {
            var reach = graph.LiveFrom(source.PoleNodes, edge => edge.IsClosed && edge.Opening is null);
            found.AddRange(input.TargetNodes.Where(node => reach.Has(node) && found.All(dead => dead.Node != node))
                .Select(node => new CannotBeMadeDead(node, source.Id, source.LiveBecause, reach.PathTo(node))));
        }

        return found.ToImmutable();
    }

    private static OpenedSet Cheapest(IsolationInput input, WiringGraph graph, ImmutableArray<string> targets)
    {
        var costs = OpeningOrder.Costs(input);
        var poleCounts = input.Edges.Where(edge => edge.IsClosed && edge.Opening is not null).CountBy(edge => edge.Opening!.DeviceId).ToDictionary();
        return new[] { Search(_ => 1), Search(device => poleCounts[device]) }.MinBy(set => set.DeviceIds.Concat(set.SourceIds).Sum(id => (long)costs[id]))!;

        OpenedSet Search(Func<string, int> share) =>
            WithoutNeedless(input, graph, targets, costs, Cut(input, graph, targets, opening => (opening.Cost * CostUnit) / share(opening.DeviceId)));
    }

    private static OpenedSet Cut(IsolationInput input, WiringGraph graph, ImmutableArray<string> targets, Func<EdgeOpening, long> capacityOf)
    {
        var number = graph.Nodes.Where(node => !graph.IsGrounded(node)).Select((node, index) => (node, index)).ToDictionary(pair => pair.node, pair => pair.index);
        var (start, end) = (number.Count + input.Sources.Length, number.Count + input.Sources.Length + 1);
        var cut = new MinimumCut(end + 1);
        for (var i = 0; i < input.Sources.Length; i++)
        {
            var source = input.Sources[i];
            cut.Join(start, number.Count + i, source.Stop?.Cost * CostUnit ?? MinimumCut.Uncuttable, 0);
            foreach (var pole in source.PoleNodes.Where(number.ContainsKey))
            {
                cut.Join(number.Count + i, number[pole], MinimumCut.Uncuttable, 0);
            }
        }

        foreach (var edge in input.Edges.Where(edge => edge.IsClosed && number.ContainsKey(edge.A) && number.ContainsKey(edge.B)))
        {
            var capacity = edge.Opening is null ? MinimumCut.Uncuttable : capacityOf(edge.Opening);
            cut.Join(number[edge.A], number[edge.B], capacity, capacity);
        }

        foreach (var feed in input.Feeds.Where(feed => number.ContainsKey(feed.InputNode) && number.ContainsKey(feed.OutputNode)))
        {
            cut.Join(number[feed.InputNode], number[feed.OutputNode], MinimumCut.Uncuttable, 0);
        }

        foreach (var target in targets)
        {
            cut.Join(number[target], end, MinimumCut.Uncuttable, 0);
        }

        var isEndSide = cut.EndSide(start, end);
        return new OpenedSet(
            [.. input.Edges.Where(edge => edge.IsClosed && number.ContainsKey(edge.A) && number.ContainsKey(edge.B) && isEndSide[number[edge.A]] != isEndSide[number[edge.B]])
                .Select(edge => edge.Opening!.DeviceId)],
            [.. input.Sources.Where((_, i) => isEndSide[number.Count + i]).Select(source => source.Id)]);
    }

    private static OpenedSet WithoutNeedless(IsolationInput input, WiringGraph graph, ImmutableArray<string> targets, Dictionary<string, int> costs, OpenedSet opened)
    {
        foreach (var id in opened.DeviceIds.Concat(opened.SourceIds).OrderByDescending(id => costs[id]).ThenBy(id => id, StringComparer.Ordinal))
        {
            var fewer = opened.Without(id);
            var live = LiveWith(input, graph, fewer);
            if (!targets.Any(live.Has))
            {
                opened = fewer;
            }
        }

        return opened;
    }

    private static ImmutableArray<string> KeepOpen(IsolationInput input, WiringGraph graph, ImmutableArray<string> targets, OpenedSet opened)
    {
        var openDevices = input.Edges.Where(edge => !edge.IsClosed && edge.Opening is not null).Select(edge => edge.Opening!.DeviceId).Distinct();
        return [.. openDevices.Where(device => targets.Any(WhenClosed(device).Has)).Order(StringComparer.Ordinal)];

        LiveReach WhenClosed(string device) =>
            graph.LiveFrom(input.Sources.Where(source => !opened.Stops(source)).SelectMany(source => source.PoleNodes),
                edge => opened.Conducts(edge) || (!edge.IsClosed && edge.Opening?.DeviceId == device));
    }

    private static StaysLive? Stay(IsolationSource source, WiringGraph graph, LiveReach around, OpenedSet opened)
    {
        var reach = graph.LiveFrom(source.PoleNodes, opened.Conducts);
        ImmutableArray<string> nodes = [.. reach.Nodes.Order(StringComparer.Ordinal)];
        return nodes.IsEmpty ? null : Found(nodes.MinBy(around.StepCountTo)!);

        StaysLive Found(string nearest) => new(source.Id, source.LiveBecause, nodes, nearest, reach.PathTo(nearest));
    }

    private static IEnumerable<DeadProof> Proofs(ImmutableArray<string> nodes)
    {
        for (var i = 0; i < nodes.Length; i++)
        {
            for (var j = i + 1; j < nodes.Length; j++)
            {
                yield return new DeadProof(nodes[i], nodes[j]);
            }
        }

        foreach (var node in nodes)
        {
            yield return new DeadProof(node, null);
        }
    }
}
