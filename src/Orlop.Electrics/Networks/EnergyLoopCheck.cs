using Orlop.Numerics;

namespace Orlop.Electrics.Networks;

/// <summary>
/// Finds converters that feed themselves, through others or alone: the output of each meets the input of the next when conductors and
/// contacts join their terminals, plus to plus and minus to minus or crossed.
/// </summary>
internal static class EnergyLoopCheck
{
    public static IEnumerable<NetworkFault> FindFaults(Wiring wiring)
    {
        var count = wiring.Converters.Length;
        if (count == 0)
        {
            yield break;
        }

        var feeds = Feeds(wiring);
        var isReported = new bool[count];
        for (var first = 0; first < count; first++)
        {
            if (!isReported[first] && RoundFrom(first, feeds) is { } round)
            {
                foreach (var converter in round)
                {
                    isReported[converter] = true;
                }

                var ids = round.Select(k => wiring.Converters[k].Id).ToArray();
                var message = ids.Length == 1
                    ? $"Converter '{ids[0]}' is fed by its own output."
                    : $"Power would go round: converters '{string.Join("', '", ids)}' feed one another in a ring.";
                yield return new NetworkFault(NetworkFaultKind.EnergyLoop, [.. ids], message);
            }
        }
    }

    private static int[][] Feeds(Wiring wiring)
    {
        var metal = new DisjointSets(wiring.JunctionCount);
        for (var k = 0; k < wiring.Start(BranchKind.Battery); k++)
        {
            metal.Merge(wiring.Branches[k].A, wiring.Branches[k].B);
        }

        var outputs = wiring.Branches.AsSpan(wiring.Start(BranchKind.ConverterOutput), wiring.Converters.Length).ToArray();
        var inputs = wiring.Branches.AsSpan(wiring.Start(BranchKind.ConverterInput)).ToArray();
        return [.. outputs.Select(o => inputs
            .Where(i => (Meet(o.A, i.A) && Meet(o.B, i.B)) || (Meet(o.A, i.B) && Meet(o.B, i.A)))
            .Select(i => i.Index).ToArray())];

        bool Meet(int first, int other) => metal.Find(first) == metal.Find(other);
    }

    /// <summary>The shortest ring of converters that comes back to the first, or null.</summary>
    private static List<int>? RoundFrom(int first, int[][] feeds)
    {
        var from = new int[feeds.Length];
        Array.Fill(from, -1);
        var queue = new Queue<int>([first]);
        while (queue.TryDequeue(out var converter))
        {
            foreach (var next in feeds[converter])
            {
                if (next == first)
                {
                    var round = new List<int>();
                    for (var k = converter; k != first; k = from[k])
                    {
                        round.Add(k);
                    }

                    round.Add(first);
                    round.Reverse();
                    return round;
                }

                if (from[next] < 0)
                {
                    from[next] = converter;
                    queue.Enqueue(next);
                }
            }
        }

        return null;
    }
}
