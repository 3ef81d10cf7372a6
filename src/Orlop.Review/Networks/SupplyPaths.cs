using Orlop.Boat.Things;
using Orlop.Boat.Topology;

namespace Orlop.Review.Networks;

/// <summary>
/// Which elements carry power to each part that takes it, in one condition: the shortest way to every source that reaches its positive or
/// live pole, the way back to the same sources, and every element that lies in a loop with one of these. Used to tell which results a missing value spoils.
/// </summary>
public sealed class SupplyPaths
{
    private static readonly HashSet<string> None = [];

    private readonly Dictionary<string, HashSet<string>> _elementsOf = new(StringComparer.Ordinal);
    private readonly Dictionary<string, HashSet<string>> _takersOf = new(StringComparer.Ordinal);

    private readonly Dictionary<string, int> _loops;
    private readonly ILookup<int, string> _byLoop;

    private SupplyPaths(Dictionary<string, int> loops)
    {
        _loops = loops;
        _byLoop = loops.ToLookup(pair => pair.Value, pair => pair.Key);
    }

    /// <summary>The elements on the way to a taker, the sources at its end among them; empty when nothing feeds it.</summary>
    public IReadOnlySet<string> ElementsTo(string takerId) => _elementsOf.GetValueOrDefault(takerId, None);

    /// <summary>The elements in a loop with this one, itself among them; empty when it lies in none.</summary>
    public IEnumerable<string> LoopOf(string elementId) => _loops.TryGetValue(elementId, out int loop) ? _byLoop[loop] : [];

    /// <summary>The takers that an element feeds, those behind a converter among them.</summary>
    public IReadOnlySet<string> TakersBehind(string elementId) => _takersOf.GetValueOrDefault(elementId, None);

    /// <summary>The supply paths of the parts of a boat in a condition.</summary>
    public static SupplyPaths Of(IReadOnlyCollection<Part> parts, Wiring wiring, string conditionId)
    {
        Dictionary<string, int> loops = WiringLoops.Of(wiring, conditionId);
        SupplyPaths paths = new(loops);
        ILookup<int, string> byLoop = paths._byLoop;
        Dictionary<string, Part> giving = new(StringComparer.Ordinal);
        foreach (Part part in parts)
        {
            if (Poles.Giving(part) is { } poles)
            {
                giving.TryAdd(poles.Plus, part);
                giving.TryAdd(poles.Minus, part);
            }
        }

        foreach (Part part in parts)
        {
            if (Poles.Taking(part) is { } poles)
            {
                HashSet<string> elements = [];
                HashSet<string> sources = AddWays(wiring, conditionId, poles.Plus, source => source.Id != part.Id, giving, loops, byLoop, elements);
                AddWays(wiring, conditionId, poles.Minus, source => sources.Contains(source.Id), giving, loops, byLoop, elements);
                paths._elementsOf[part.Id] = elements;
            }
        }

        foreach (string taker in paths._elementsOf.Keys)
        {
            paths.Feed(taker, taker, []);
        }

        return paths;
    }

    // Marks every element on the way to a taker, and through a converter the way to that converter.
    private void Feed(string taker, string via, HashSet<string> seen)
    {
        if (!seen.Add(via))
        {
            return;
        }

        foreach (string element in _elementsOf[via])
        {
            if (!_takersOf.TryGetValue(element, out HashSet<string>? takers))
            {
                _takersOf[element] = takers = [];
            }

            takers.Add(taker);
            if (_elementsOf.ContainsKey(element))
            {
                Feed(taker, element, seen);
            }
        }
    }

    // Sources share a load: the search goes on past the first of them.
    private static HashSet<string> AddWays(
        Wiring wiring, string conditionId, string start, Func<Part, bool> counts, Dictionary<string, Part> giving,
        Dictionary<string, int> loops, ILookup<int, string> byLoop, HashSet<string> elements)
    {
        HashSet<string> sources = [];
        Dictionary<string, WiringEdge?> reachedBy = new(StringComparer.Ordinal) { [start] = null };
        Queue<string> queue = new([start]);
        while (queue.TryDequeue(out string? node))
        {
            if (giving.TryGetValue(node, out Part? source) && counts(source))
            {
                sources.Add(source.Id);
                elements.Add(source.Id);
                for (string step = node; reachedBy[step] is { } edge; step = edge.Other(step))
                {
                    elements.Add(edge.Id);
                    if (loops.TryGetValue(edge.Id, out int loop))
                    {
                        elements.UnionWith(byLoop[loop]);
                    }
                }
            }

            foreach (WiringEdge edge in wiring.At(node))
            {
                if (edge.IsClosedIn(conditionId) && reachedBy.TryAdd(edge.Other(node), edge))
                {
                    queue.Enqueue(edge.Other(node));
                }
            }
        }

        return sources;
    }
}
