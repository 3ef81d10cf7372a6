using System.Collections.Immutable;

namespace Orlop.Electrics.Isolation;

/// <summary>Devices opened and sources stopped.</summary>
internal sealed record OpenedSet(ImmutableHashSet<string> DeviceIds, ImmutableHashSet<string> SourceIds)
{
    public static OpenedSet Nothing { get; } = new([], []);

    public bool Conducts(IsolationEdge edge) => edge.IsClosed && (edge.Opening is null || !DeviceIds.Contains(edge.Opening.DeviceId));

    public bool Stops(IsolationSource source) => SourceIds.Contains(source.Id);

    public OpenedSet Without(string id) => new(DeviceIds.Remove(id), SourceIds.Remove(id));
}
