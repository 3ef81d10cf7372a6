using System.Collections.Immutable;

namespace Orlop.Electrics.Isolation;

/// <summary>Puts openings in working order: AC, then charging, then nearest the part first, battery leads last.</summary>
internal static class OpeningOrder
{
    /// <param name="wiring">The devices and sources.</param>
    /// <param name="graph">The wiring.</param>
    /// <param name="around">What lies near the part.</param>
    /// <param name="opened">What is opened and stopped.</param>
    /// <param name="running">The sources that are not stopped, and what each still reaches.</param>
    public static ImmutableArray<Opening> Of(
        IsolationWiring wiring, WiringGraph graph, LiveReach around, OpenedSet opened, ImmutableArray<(IsolationSource Source, LiveReach Reach)> running)
    {
        var stops = wiring.Stopped(opened)
            .Select(source => (Opening: new Opening(source.Id, null, source.Stop!.How, [], source.Stop.Cost), Rank: Rank(source.Kind), Near: source.PoleNodes.Min(Near)));
        var devices = wiring.OpenedEdges(opened)
            .Select(edges => (Opening: Open(edges), Rank: Rank(edges, graph, running), Near: edges.Min(edge => Math.Min(Near(edge.A), Near(edge.B)))));
        return [.. stops.Concat(devices).OrderBy(item => item.Rank).ThenBy(item => item.Near).ThenBy(item => item.Opening.Id, StringComparer.Ordinal).Select(item => item.Opening)];

        int Near(string node) => around.StepCountTo(graph.Number(node));
    }

    private static Opening Open(IEnumerable<IsolationEdge> edges)
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

    private static int Rank(IEnumerable<IsolationEdge> edges, WiringGraph graph, ImmutableArray<(IsolationSource Source, LiveReach Reach)> running)
    {
        if (edges.First().Opening!.Means == OpeningMeans.LiftBatteryLead)
        {
            return 3;
        }

        HashSet<SourceKind> kinds = [.. running.Where(pair => edges.Any(edge => pair.Reach.Has(graph.Number(edge.A)) || pair.Reach.Has(graph.Number(edge.B)))).Select(pair => pair.Source.Kind)];
        if (kinds.Contains(SourceKind.AlternatingCurrent))
        {
            return 0;
        }

        return kinds.Contains(SourceKind.Charging) && !kinds.Contains(SourceKind.Battery) ? 1 : 2;
    }
}
