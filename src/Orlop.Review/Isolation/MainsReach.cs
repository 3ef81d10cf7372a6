using Orlop.Electrics.Isolation;

namespace Orlop.Review.Isolation;

/// <summary>What mains from ashore reaches along conductors, devices and loads; what a charger makes of it is not mains.</summary>
internal static class MainsReach
{
    /// <summary>The nodes reached from the inlets' live terminals; none where there is no inlet.</summary>
    public static HashSet<string> Of(IsolationInput input, IEnumerable<string> starts)
    {
        HashSet<string> grounded = [.. input.GroundedNodes], reached = [.. starts];
        Queue<string> queue = new(reached);
        ILookup<string, string> next = input.Edges.SelectMany(edge => new[] { (From: edge.A, To: edge.B), (From: edge.B, To: edge.A) })
            .ToLookup(pair => pair.From, pair => pair.To, StringComparer.Ordinal);
        while (queue.TryDequeue(out string? node))
        {
            foreach (string other in next[node].Where(other => !grounded.Contains(other) && reached.Add(other)))
            {
                queue.Enqueue(other);
            }
        }

        return reached;
    }
}
