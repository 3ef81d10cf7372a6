using System.Collections.Immutable;

namespace Orlop.Hull.Surfaces;

/// <summary>The order of the named lines from keel to deck that every section keeps.</summary>
internal static class LineOrder
{
    /// <summary>Null when two sections contradict each other.</summary>
    public static ImmutableArray<string>? Find(ImmutableArray<HullSection> sections)
    {
        var above = new Dictionary<string, HashSet<string>>(StringComparer.Ordinal);
        foreach (var section in sections)
        {
            string? before = null;
            foreach (var line in section.Points.Select(point => point.Line).OfType<string>())
            {
                above.TryAdd(line, new HashSet<string>(StringComparer.Ordinal));
                if (before is not null)
                {
                    above[before].Add(line);
                }

                before = line;
            }
        }

        var order = ImmutableArray.CreateBuilder<string>();
        var left = above.Keys.ToList();
        while (left.Count > 0)
        {
            var lowest = left.Find(line => !left.Exists(other => above[other].Contains(line)));
            if (lowest is null)
            {
                return null;
            }

            order.Add(lowest);
            left.Remove(lowest);
        }

        return order.ToImmutable();
    }
}
