using System.Collections.Immutable;

namespace Orlop.Electrics.Isolation;

/// <summary>The devices and sources of the wiring, numbered, and what opening some of them does.</summary>
internal sealed class IsolationWiring
{
    private const int NoDevice = -1;

    private readonly IsolationInput _input;
    private readonly WiringGraph _graph;
    private readonly int[] _deviceOf;
    private readonly string[] _devices;
    private readonly int[] _deviceCosts;
    private readonly Dictionary<string, int> _poleCounts;
    private readonly (int A, int B)[] _ends;
    private readonly int[][] _polesOf;

    // Everything that can be undone, dearest first.
    private readonly (int Cost, string Id, int Device, int Source)[] _dearestFirst;

    public IsolationWiring(IsolationInput input, WiringGraph graph)
    {
        (_input, _graph) = (input, graph);
        EdgeOpening[] devices = [.. input.Edges.Select(edge => edge.Opening).OfType<EdgeOpening>().DistinctBy(opening => opening.DeviceId).OrderBy(opening => opening.DeviceId, StringComparer.Ordinal)];
        _devices = [.. devices.Select(device => device.DeviceId)];
        _deviceCosts = [.. devices.Select(device => device.Cost)];
        Dictionary<string, int> number = _devices.Index().ToDictionary(pair => pair.Item, pair => pair.Index, StringComparer.Ordinal);
        _deviceOf = [.. input.Edges.Select(edge => edge.Opening is { } opening ? number[opening.DeviceId] : NoDevice)];
        _poleCounts = input.Edges.Where(edge => edge.IsClosed && edge.Opening is not null).CountBy(edge => edge.Opening!.DeviceId).ToDictionary(StringComparer.Ordinal);
        _ends = [.. input.Edges.Select(edge => (graph.Number(edge.A), graph.Number(edge.B)))];
        _polesOf = [.. input.Sources.Select(source => source.PoleNodes.Select(graph.Number).ToArray())];
        _dearestFirst =
        [
            .. devices.Select((device, k) => (device.Cost, Id: device.DeviceId, Device: k, Source: -1))
                .Concat(input.Sources.Select((source, k) => (Cost: source.Stop?.Cost ?? 0, source.Id, Device: -1, Source: k)))
                .OrderByDescending(item => item.Cost).ThenBy(item => item.Id, StringComparer.Ordinal),
        ];
        OpenNow = [.. input.Edges.Where(edge => !edge.IsClosed && edge.Opening is not null).Select(edge => edge.Opening!.DeviceId).Distinct(StringComparer.Ordinal).Order(StringComparer.Ordinal)];
        NothingOpened = new OpenedSet(new bool[_devices.Length], new bool[input.Sources.Length]);
    }

    public OpenedSet NothingOpened { get; }

    /// <summary>Ids of the devices that are open as things stand.</summary>
    public ImmutableArray<string> OpenNow { get; }

    /// <summary>Some device opens more than one edge.</summary>
    public bool HasSeveralPoles => _poleCounts.Values.Any(count => count > 1);

    public int PoleCountOf(string device) => _poleCounts[device];

    /// <summary>The sources that are not stopped.</summary>
    public IEnumerable<IsolationSource> Running(OpenedSet opened) => _input.Sources.Where((_, k) => !opened.IsStopped(k));

    /// <summary>The sources that are stopped.</summary>
    public IEnumerable<IsolationSource> Stopped(OpenedSet opened) => _input.Sources.Where((_, k) => opened.IsStopped(k));

    /// <summary>The edges of the opened devices, device by device.</summary>
    public IEnumerable<IGrouping<int, IsolationEdge>> OpenedEdges(OpenedSet opened) =>
        _input.Edges.Where((_, k) => _deviceOf[k] >= 0 && opened.IsOpened(_deviceOf[k])).GroupBy(edge => Array.BinarySearch(_devices, edge.Opening!.DeviceId, StringComparer.Ordinal));

    /// <summary>For each edge whether it conducts.</summary>
    /// <param name="opened">What is opened.</param>
    /// <param name="closed">A device that is open as things stand, closed all the same.</param>
    public bool[] Conducts(OpenedSet opened, string? closed = null)
    {
        bool[] conducts = new bool[_deviceOf.Length];
        for (int k = 0; k < conducts.Length; k++)
        {
            conducts[k] = _input.Edges[k].IsClosed ? _deviceOf[k] < 0 || !opened.IsOpened(_deviceOf[k]) : closed is not null && _input.Edges[k].Opening?.DeviceId == closed;
        }

        return conducts;
    }

    /// <summary>What the sources that are not stopped reach.</summary>
    public LiveReach LiveWith(OpenedSet opened, string? closed = null) =>
        _graph.LiveFrom(_polesOf.Where((_, k) => !opened.IsStopped(k)).SelectMany(poles => poles), Conducts(opened, closed));

    public long CostOf(OpenedSet opened) => _dearestFirst.Where(item => IsIn(item, opened)).Sum(item => (long)item.Cost);

    /// <summary>The same set without what is not needed to keep the targets dead, the dearest left out first.</summary>
    public OpenedSet WithoutNeedless(OpenedSet opened, int[] targets)
    {
        foreach (var item in _dearestFirst)
        {
            if (IsIn(item, opened))
            {
                OpenedSet fewer = item.Device >= 0 ? opened.WithoutDevice(item.Device) : opened.WithoutSource(item.Source);
                opened = targets.Any(LiveWith(fewer).Has) ? opened : fewer;
            }
        }

        return opened;
    }

    /// <summary>The cheapest cut between all live poles and the targets.</summary>
    /// <param name="targets">Nodes that can be made dead.</param>
    /// <param name="capacityOf">What opening one edge costs.</param>
    /// <param name="stopUnit">What a source's cost is multiplied by.</param>
    public OpenedSet Cut(int[] targets, Func<EdgeOpening, long> capacityOf, long stopUnit)
    {
        int nodeCount = _graph.Names.Length, sourceCount = _polesOf.Length;
        (int start, int end) = (nodeCount + sourceCount, nodeCount + sourceCount + 1);
        MinimumCut cut = new(end + 1, sourceCount + _polesOf.Sum(poles => poles.Length) + _ends.Length + _input.Feeds.Length + targets.Length);
        for (int k = 0; k < sourceCount; k++)
        {
            cut.Join(start, nodeCount + k, _input.Sources[k].Stop?.Cost * stopUnit ?? MinimumCut.Uncuttable, 0);
            foreach (int pole in _polesOf[k].Where(pole => !_graph.IsGrounded(pole)))
            {
                cut.Join(nodeCount + k, pole, MinimumCut.Uncuttable, 0);
            }
        }

        for (int k = 0; k < _ends.Length; k++)
        {
            if (CanCarry(k))
            {
                long capacity = _input.Edges[k].Opening is { } opening ? capacityOf(opening) : MinimumCut.Uncuttable;
                cut.Join(_ends[k].A, _ends[k].B, capacity, capacity);
            }
        }

        foreach (ConverterFeed feed in _input.Feeds)
        {
            (int from, int to) = (_graph.Number(feed.InputNode), _graph.Number(feed.OutputNode));
            if (!_graph.IsGrounded(from) && !_graph.IsGrounded(to))
            {
                cut.Join(from, to, MinimumCut.Uncuttable, 0);
            }
        }

        foreach (int target in targets)
        {
            cut.Join(target, end, MinimumCut.Uncuttable, 0);
        }

        bool[] isEndSide = cut.EndSide(start, end);
        bool[] devices = new bool[_devices.Length];
        for (int k = 0; k < _ends.Length; k++)
        {
            if (CanCarry(k) && isEndSide[_ends[k].A] != isEndSide[_ends[k].B])
            {
                devices[_deviceOf[k]] = true;
            }
        }

        return new OpenedSet(devices, isEndSide[nodeCount..start]);
    }

    private bool CanCarry(int edge) => _input.Edges[edge].IsClosed && !_graph.IsGrounded(_ends[edge].A) && !_graph.IsGrounded(_ends[edge].B);

    private static bool IsIn((int Cost, string Id, int Device, int Source) item, OpenedSet opened) =>
        item.Device >= 0 ? opened.IsOpened(item.Device) : opened.IsStopped(item.Source);
}
