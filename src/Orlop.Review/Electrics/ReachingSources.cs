using Orlop.Boat.Things;
using Orlop.Boat.Topology;

namespace Orlop.Review.Electrics;

/// <summary>Which sources reach a part without passing a grounded node, with everything closed: the wiring falls into pieces between grounded nodes.</summary>
internal sealed class ReachingSources
{
    private readonly Dictionary<string, int> _pieceOf = new(StringComparer.Ordinal);
    private readonly Dictionary<int, List<Part>> _sourcesIn = [];

    /// <param name="parts">The parts of the boat; those that give power count.</param>
    /// <param name="wiring">The wiring.</param>
    /// <param name="grounding">Which nodes end a piece.</param>
    public ReachingSources(IEnumerable<Part> parts, Wiring wiring, Grounding grounding)
    {
        int pieceCount = 0;
        foreach (string node in wiring.Nodes)
        {
            if (!grounding.IsGrounded(node) && !_pieceOf.ContainsKey(node))
            {
                Fill(node, pieceCount++, wiring, grounding);
            }
        }

        foreach (Part part in parts)
        {
            if (Poles.Giving(part) is { } poles && _pieceOf.TryGetValue(poles.Plus, out int piece))
            {
                if (!_sourcesIn.TryGetValue(piece, out List<Part>? sources))
                {
                    _sourcesIn[piece] = sources = [];
                }

                sources.Add(part);
            }
        }
    }

    /// <summary>The sources that reach any of these nodes; a node that nothing is wired to is passed over.</summary>
    public IEnumerable<Part> To(IEnumerable<string> nodes) => nodes
        .Select(node => _pieceOf.TryGetValue(node, out int piece) ? piece : -1)
        .Distinct()
        .SelectMany(piece => _sourcesIn.GetValueOrDefault(piece, []));

    private void Fill(string start, int piece, Wiring wiring, Grounding grounding)
    {
        Queue<string> queue = new([start]);
        _pieceOf[start] = piece;
        while (queue.TryDequeue(out string? node))
        {
            foreach (WiringEdge edge in wiring.At(node))
            {
                string next = edge.Other(node);
                if (!grounding.IsGrounded(next) && _pieceOf.TryAdd(next, piece))
                {
                    queue.Enqueue(next);
                }
            }
        }
    }
}
