using Orlop.Boat;
using Orlop.Boat.Things;
using Orlop.Boat.Topology;
using Orlop.Boat.Values;

namespace Orlop.Review.Tests;

/// <summary>Small boats wired at random, and what can be said of them by trying every way.</summary>
internal static class RandomWiring
{
    public const string Condition = "in-use";

    /// <summary>Six bars, up to two banks and two lamps, joined by links, fuses and a switch that is open; plus sides only.</summary>
    public static BoatModel Boat(int seed)
    {
        Random random = new(seed);
        List<Thing> things = [new Condition { Id = Condition, ChargeFraction = 1, LowestChargeFraction = 0.5 }, SmallBoat.Battery("bank-0"), SmallBoat.Battery("bank-1"), SmallBoat.Lamp("lamp-0", 1), SmallBoat.Lamp("lamp-1", 2)];
        List<Terminal> nodes = [new("bank-0", "+"), new("bank-1", "+"), new("lamp-0", "+"), new("lamp-1", "+")];
        for (int bar = 0; bar < 4; bar++)
        {
            things.Add(new Busbar { Id = $"bar-{bar}" });
            nodes.Add(new Terminal($"bar-{bar}", "bar"));
        }

        things.Add(new Busbar { Id = "minus", IsBonded = true });
        things.AddRange(new[] { "bank-0", "bank-1", "lamp-0", "lamp-1" }.Select(id => new Link { Id = $"{id}-minus", From = new Terminal(id, "-"), To = new Terminal("minus", "bar") }));
        int joinCount = 5 + random.Next(5);
        for (int join = 0; join < joinCount; join++)
        {
            Terminal from = nodes[random.Next(nodes.Count)], to = nodes[random.Next(nodes.Count)];
            if (from == to)
            {
                continue;
            }

            if (random.Next(2) == 0)
            {
                things.Add(new Link { Id = $"link-{join}", From = from, To = to });
                continue;
            }

            things.Add(random.Next(6) == 0
                ? new IsolatorSwitch { Id = $"device-{join}", OpenIn = [Condition] }
                : new Protection { Id = $"device-{join}", Means = ProtectionMeans.Fuse, RatedA = 5 * (1 + random.Next(6)) });
            things.Add(new Link { Id = $"in-{join}", From = from, To = new Terminal($"device-{join}", "in") });
            things.Add(new Link { Id = $"out-{join}", From = new Terminal($"device-{join}", "out"), To = to });
        }

        return new BoatModel { Things = [.. things] };
    }

    /// <summary>Every way from a node that passes no node twice, as the edges it takes; the empty way among them.</summary>
    public static IEnumerable<(string End, WiringEdge[] Edges)> Ways(Wiring wiring, string start, Func<string, bool> mayPass)
    {
        return From(start, [start], []);

        IEnumerable<(string, WiringEdge[])> From(string node, HashSet<string> seen, List<WiringEdge> taken)
        {
            yield return (node, [.. taken]);
            foreach (WiringEdge edge in wiring.At(node).Where(edge => edge.IsClosedIn(Condition)))
            {
                string next = edge.Other(node);
                if (!mayPass(next) || !seen.Add(next))
                {
                    continue;
                }

                taken.Add(edge);
                foreach ((string, WiringEdge[]) way in From(next, seen, taken))
                {
                    yield return way;
                }

                taken.RemoveAt(taken.Count - 1);
                seen.Remove(next);
            }
        }
    }
}
