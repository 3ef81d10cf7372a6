using Orlop.Boat.Things;

namespace Orlop.Boat.Topology;

/// <summary>The sources whose poles metal joins to a node with every switch and fuse closed; no way leads through a source or a load.</summary>
/// <param name="Plus">Those joined by their plus or live pole.</param>
/// <param name="Minus">Those joined by their minus or neutral pole.</param>
public sealed record PolesReached(IReadOnlyList<Part> Plus, IReadOnlyList<Part> Minus)
{
    /// <summary>The poles that a node reaches.</summary>
    public static PolesReached From(BoatModel boat, Wiring wiring, string node)
    {
        ArgumentNullException.ThrowIfNull(boat);
        ArgumentNullException.ThrowIfNull(wiring);
        HashSet<string> seen = [node];
        Queue<string> queue = new(seen);
        while (queue.TryDequeue(out string? at))
        {
            foreach (WiringEdge edge in wiring.At(at).Where(edge => seen.Add(edge.Other(at))))
            {
                queue.Enqueue(edge.Other(at));
            }
        }

        PolePair[] giving = [.. boat.All<Part>().Select(Poles.Giving).OfType<PolePair>()];
        return new PolesReached(
            [.. giving.Where(poles => seen.Contains(poles.Plus)).Select(poles => poles.Part)],
            [.. giving.Where(poles => seen.Contains(poles.Minus)).Select(poles => poles.Part)]);
    }
}
