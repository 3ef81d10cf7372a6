using System.Collections.Immutable;
using Orlop.Electrics.Working;

namespace Orlop.Electrics.Isolation;

/// <summary>Refuses wiring that cannot be reasoned about, so that nothing missing is taken for dead.</summary>
internal static class IsolationChecks
{
    public static void Refuse(IsolationInput input, WiringGraph graph)
    {
        if (input.Sources.IsEmpty)
        {
            throw new ArgumentException("isolation: no source is given; a part without any known source cannot be called dead.", nameof(input));
        }

        RefuseUnknown(input.GroundedNodes, graph, nameof(input));

        foreach (var source in input.Sources)
        {
            if (source.PoleNodes.IsDefaultOrEmpty)
            {
                throw new ArgumentException($"isolation: source '{source.Id}' has no pole; at least one node is needed.", nameof(input));
            }

            Guard.InRange(source.Stop?.Cost ?? 1, 1, 1_000_000, "", source.Id);
        }

        foreach (var opening in input.Edges.Select(edge => edge.Opening).OfType<EdgeOpening>())
        {
            Guard.InRange(opening.Cost, 1, 1_000_000, "", opening.DeviceId);
        }

        foreach (var device in input.Edges.Select(edge => edge.Opening).OfType<EdgeOpening>().Distinct().GroupBy(opening => opening.DeviceId).Where(group => group.Count() > 1))
        {
            throw new ArgumentException($"isolation: the edges of device '{device.Key}' name different means or costs; all of a device's edges open as one.", nameof(input));
        }

        var ids = input.Edges.Select(edge => edge.Id).Concat(input.Feeds.Select(feed => feed.Id)).Concat(input.Sources.Select(source => source.Id));
        foreach (var twice in ids.GroupBy(id => id).Where(group => group.Count() > 1))
        {
            throw new ArgumentException($"isolation: id '{twice.Key}' is used {twice.Count()} times; edges, feeds and sources each need their own.", nameof(input));
        }

        foreach (var clash in input.Sources.Select(source => source.Id).Intersect(input.Edges.Select(edge => edge.Opening?.DeviceId).OfType<string>()))
        {
            throw new ArgumentException($"isolation: '{clash}' names both a source and a device.", nameof(input));
        }
    }

    /// <summary>Refuses a part that has no node, or one that the wiring does not have.</summary>
    public static void RefuseTargets(ImmutableArray<string> targetNodes, WiringGraph graph)
    {
        if (targetNodes.IsDefaultOrEmpty)
        {
            throw new ArgumentException("isolation: no target node is given; at least one is needed.", nameof(targetNodes));
        }

        RefuseUnknown(targetNodes, graph, nameof(targetNodes));
    }

    private static void RefuseUnknown(ImmutableArray<string> nodes, WiringGraph graph, string parameter)
    {
        foreach (string node in nodes.Where(node => !graph.Has(node)))
        {
            throw new ArgumentException($"isolation: node '{node}' touches no edge, feed or source.", parameter);
        }
    }
}
