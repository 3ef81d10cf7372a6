using System.Collections.Immutable;

namespace Orlop.Electrics.Isolation;

/// <summary>Puts openings in working order: AC, then charging, then nearest the part first, battery leads last.</summary>
internal static class OpeningOrder
{
    public static ImmutableArray<Opening> Of(IsolationInput input, WiringGraph graph, LiveReach around, OpenedSet opened)
    {
        var reaches = input.Sources.Where(source => !opened.Stops(source))
            .Select(source => (source.Kind, Reach: graph.LiveFrom(source.PoleNodes, opened.Conducts))).ToImmutableArray();
        var stops = input.Sources.Where(opened.Stops)
            .Select(source => (Opening: new Opening(source.Id, null, source.Stop!.How, [], source.Stop.Cost), Rank: Rank(source.Kind), Near: source.PoleNodes.Min(around.StepCountTo)));
        var devices = input.Edges.Where(edge => edge.Opening is not null && opened.DeviceIds.Contains(edge.Opening.DeviceId))
            .GroupBy(edge => edge.Opening!.DeviceId)
            .Select(edges => (Opening: Open(edges), Rank: Rank(edges, reaches), Near: edges.Min(edge => Math.Min(around.StepCountTo(edge.A), around.StepCountTo(edge.B)))));
        return [.. stops.Concat(devices).OrderBy(item => item.Rank).ThenBy(item => item.Near).ThenBy(item => item.Opening.Id, StringComparer.Ordinal).Select(item => item.Opening)];
    }

    /// <summary>Cost of opening each device and stopping each source that can be.</summary>
    public static Dictionary<string, int> Costs(IsolationInput input) =>
        input.Edges.Where(edge => edge.Opening is not null).Select(edge => (Id: edge.Opening!.DeviceId, edge.Opening.Cost))
            .Concat(input.Sources.Where(source => source.Stop is not null).Select(source => (source.Id, source.Stop!.Cost)))
            .Distinct().ToDictionary(pair => pair.Id, pair => pair.Cost);

    private static Opening Open(IGrouping<string, IsolationEdge> edges)
    {
        var opening = edges.First().Opening!;
        return new Opening(opening.DeviceId, opening.Means, null, [.. edges.Select(edge => edge.Id).Order(StringComparer.Ordinal)], opening.Cost);
    }

    private static int Rank(SourceKind kind) => kind switch
    {
        SourceKind.AlternatingCurrent => 0,
        SourceKind.Charging => 1,
        _ => 2,
    };

    private static int Rank(IEnumerable<IsolationEdge> edges, ImmutableArray<(SourceKind Kind, LiveReach Reach)> reaches)
    {
        if (edges.First().Opening!.Means == OpeningMeans.LiftBatteryLead)
        {
            return 3;
        }

        var kinds = reaches.Where(pair => edges.Any(edge => pair.Reach.Has(edge.A) || pair.Reach.Has(edge.B))).Select(pair => pair.Kind).ToHashSet();
        if (kinds.Contains(SourceKind.AlternatingCurrent))
        {
            return 0;
        }

        return kinds.Contains(SourceKind.Charging) && !kinds.Contains(SourceKind.Battery) ? 1 : 2;
    }
}
