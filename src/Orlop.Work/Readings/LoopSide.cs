using System.Collections.Immutable;
using Orlop.Boat.Topology;
using Orlop.Review.Readings;

namespace Orlop.Work.Readings;

/// <summary>One side of a loop, from where power comes to where it goes: the drops read on it, and the least that is lost where none was.</summary>
/// <param name="Read">The readings that together cover most of it, none twice.</param>
/// <param name="UnreadLeastV">The least that is expected to be lost on the stretches between them.</param>
/// <param name="IsWhole">All of it was read.</param>
internal sealed record LoopSide(ImmutableArray<LoopSide.Part> Read, double UnreadLeastV, bool IsWhole)
{
    /// <summary>A reading that lies along the side, in the direction of the side.</summary>
    internal sealed record Part(LoopMisfit.Voltage Voltage, int From, int To, double LostV);

    /// <summary>What was read as lost.</summary>
    public double LostV => Read.Sum(part => part.LostV);

    /// <summary>The side between two nodes; null where no conductors join them, or where what an unread stretch loses cannot be told.</summary>
    public static LoopSide? Of(ConditionPrediction prediction, string from, string to, IEnumerable<LoopMisfit.Voltage> drops)
    {
        ImmutableArray<WiringEdge> way = prediction.Between(from, to);
        if (way.IsEmpty && from != to)
        {
            return null;
        }

        List<string> nodes = [from];
        foreach (WiringEdge edge in way)
        {
            nodes.Add(edge.Other(nodes[^1]));
        }

        ImmutableArray<Part> read = Cover([.. drops.Select(drop => Along(nodes, drop)).OfType<Part>()], nodes.Count);
        double unreadV = 0;
        int at = 0;
        foreach ((int start, int end) in read.Select(part => (part.From, part.To)).Append((nodes.Count - 1, nodes.Count - 1)))
        {
            if (start > at)
            {
                if (prediction.Voltage(nodes[at], nodes[start]).Band is not { Nominal.Value: >= 0 } band)
                {
                    return null;
                }

                unreadV += Math.Max(0, band.Least.Value);
            }

            at = end;
        }

        return new LoopSide(read, unreadV, read.Sum(part => part.To - part.From) == nodes.Count - 1);
    }

    private static Part? Along(List<string> nodes, LoopMisfit.Voltage drop)
    {
        int plus = nodes.IndexOf(drop.Plus), minus = nodes.IndexOf(drop.Minus);
        return plus < 0 || minus < 0 ? null : plus < minus ? new Part(drop, plus, minus, drop.ReadV) : new Part(drop, minus, plus, -drop.ReadV);
    }

    // The parts that cover the most pieces without overlap: the best up to each node from the best up to those before.
    private static ImmutableArray<Part> Cover(ImmutableArray<Part> parts, int nodeCount)
    {
        (int Covered, ImmutableArray<Part> Parts)[] best = new (int, ImmutableArray<Part>)[nodeCount];
        best[0] = (0, []);
        for (int node = 1; node < nodeCount; node++)
        {
            best[node] = best[node - 1];
            foreach (Part part in parts.Where(part => part.To == node && best[part.From].Covered + node - part.From > best[node].Covered))
            {
                best[node] = (best[part.From].Covered + node - part.From, best[part.From].Parts.Add(part));
            }
        }

        return best[^1].Parts;
    }
}
